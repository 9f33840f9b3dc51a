//! A vacuum lifter: its rated load, and where its cups go.

use serde::Serialize;

use crate::geom::{Point, Region, Vector};
use crate::handle::bending::axes::Axes;
use crate::handle::bending::bend::Orientation;
use crate::handle::lifting::hold::Holder;
use crate::handle::loads::Load;
use crate::job::{Flaw, FlawPlace};
use crate::units::Mass;

/// A vacuum lifter is to be rated for this many times the mass (common practice).
pub const UTILISATION: f64 = 2.0;
/// A cup is so wide, mm (judgement: the usual one for hands).
pub const CUP_MM: f64 = 200.0;
/// Stone left between a cup and an edge, a cutout or a flaw, mm (judgement).
pub const CLEAR_MM: f64 = 40.0;
/// Places tried along and across the stone, between the balance point and its end or side.
const STEPS: u8 = 40;
/// The pairs are wanted this part of the way from the balance point to the nearer end (judgement,
/// next to 0.586, where an even strip is bent least).
const WANTED_SHARE: f64 = 0.58;

/// A stone under a vacuum lifter.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Vacuum {
    /// The load that must be marked on it.
    #[serde(rename = "rated_kg")]
    pub rated: Mass,
    /// Where the cups go.
    pub cups: Cups,
}

/// Where the cups go.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Cups {
    /// In pairs opposite each other about the balance point.
    Placed {
        /// How the stone may hang from them: flat, or on edge only.
        orientation: Orientation,
        /// Their middles, slab frame.
        at: Vec<Point>,
        /// From the end of the stone and from its right-hand long side, looking along it, mm.
        from_end_and_side_mm: Vec<[f64; 2]>,
        /// Weight on each.
        #[serde(rename = "each_kg")]
        each: Mass,
    },
    /// No pair about the balance point is clear of edges, cutouts and flaws and bends the stone no further
    /// than is allowed.
    NoRoom,
}

impl Vacuum {
    /// What a vacuum lifter needs for a stone with these flaws.
    #[must_use]
    pub(super) fn of(load: &Load, axes: &Axes, flaws: &[Flaw], holder: &Holder<'_>) -> Self {
        let mass = load.mass.high;
        Self {
            rated: Mass::from_kg(mass.kg() * UTILISATION),
            cups: cups(load, axes, flaws, holder),
        }
    }
}

fn cups(load: &Load, axes: &Axes, flaws: &[Flaw], holder: &Holder<'_>) -> Cups {
    let balance = load.region.centroid();
    let places = |off: Vec<Vector>| off.into_iter().map(|v| balance + v).collect::<Vec<Point>>();
    let ways = [Orientation::Flat, Orientation::OnEdge]
        .into_iter()
        .map(|orientation| {
            let bends = |off: Vec<Vector>| holder.holds(orientation, &places(off));
            (
                orientation,
                places(offsets(&load.region, axes, flaws, &bends)),
            )
        });
    let Some((orientation, at)) = ways.into_iter().find(|(_, at)| !at.is_empty()) else {
        return Cups::NoRoom;
    };
    let seen = |p: &Point| {
        let (u, v) = axes.seen(*p);
        [u, v]
    };
    let count = u32::try_from(at.len()).unwrap_or(u32::MAX);
    Cups::Placed {
        orientation,
        from_end_and_side_mm: at.iter().map(seen).collect(),
        each: Mass::from_kg(load.mass.high.kg() / f64::from(count)),
        at,
    }
}

/// From the balance point to each cup. Two pairs, each a cup and its opposite, the nearest to the
/// wanted places that bending allows; one pair when two do not go on; none when that does not.
fn offsets(
    region: &Region,
    axes: &Axes,
    flaws: &[Flaw],
    allowed: &dyn Fn(Vec<Vector>) -> bool,
) -> Vec<Vector> {
    let face = CupFace { region, flaws };
    let balance = region.centroid();
    let columns = columns(region, axes);
    let clear = |off: &Vector| face.takes(balance + *off) && face.takes(balance - *off);
    let across = axes.direction().left();
    let aside = |v: &Vector| v.dot(across).abs();
    let mirrored = |v: Vector| v - across * (2.0 * v.dot(across));
    let far = |v: &Vector| 2.0 * aside(v) >= CUP_MM + CLEAR_MM;
    let four = |v: Vector| vec![v, mirrored(v), -mirrored(v), -v];
    // Opposite cups bear alike, so that bending is the same wherever across the stone a column's cups are.
    let both = |column: &Vec<Vector>| {
        let room = |v: &&Vector| far(v) && clear(v) && clear(&mirrored(**v));
        let spot = column.iter().find(room).copied();
        spot.filter(|v| allowed(four(*v)))
    };
    if let Some(v) = columns.iter().find_map(both) {
        return four(v);
    }
    // A single pair lies as nearly along the stone as it can.
    let one = columns.into_iter().flat_map(|mut column| {
        column.retain(clear);
        let first = column.first().copied();
        let allowed = first.is_some_and(|v| allowed(vec![v, -v]));
        if allowed { column } else { Vec::new() }
    });
    let one = one.min_by(|a, b| aside(a).total_cmp(&aside(b)));
    one.map_or_else(Vec::new, |v| vec![v, -v])
}

/// Where one cup of a pair may go, seen from the balance point: on the stone's right half, in columns across it, the
/// nearest to the wanted place along the stone first, and in each the farthest across.
fn columns(region: &Region, axes: &Axes) -> Vec<Vec<Vector>> {
    let (u, v) = axes.seen(region.centroid());
    let along_mm = u.min(axes.length_mm() - u);
    let across_mm = v.min(axes.width_mm() - v);
    let (along, across) = (axes.direction(), axes.direction().left());
    let share = |i: u8| f64::from(i) / f64::from(STEPS);
    let mut steps: Vec<u8> = (1..=STEPS).collect();
    steps.sort_by(|a, b| {
        let off = |i: &u8| (share(*i) - WANTED_SHARE).abs();
        off(a).total_cmp(&off(b)).then(a.cmp(b))
    });
    let apart = move |i: &u8| 2.0 * share(*i) * along_mm >= CUP_MM + CLEAR_MM;
    let column = |i: u8| {
        let rows = (0..=STEPS).rev();
        rows.map(|j| along * (share(i) * along_mm) + across * (share(j) * across_mm))
            .collect()
    };
    steps.into_iter().filter(apart).map(column).collect()
}

/// The face that the cups hold on.
struct CupFace<'a> {
    region: &'a Region,
    flaws: &'a [Flaw],
}

impl CupFace<'_> {
    /// Whether a cup here is clear of everything.
    fn takes(&self, at: Point) -> bool {
        let reach = CUP_MM / 2.0 + CLEAR_MM;
        self.region.outer.depth(at) >= reach
            && self.region.holes.iter().all(|h| h.depth(at) <= -reach)
            && self.flaws.iter().all(|f| away(f, at) >= reach)
    }
}

/// Distance from a flaw, mm; nothing or less inside it.
fn away(flaw: &Flaw, at: Point) -> f64 {
    match &flaw.place {
        FlawPlace::Spot {
            at: middle,
            across_mm,
        } => middle.distance(at) - across_mm / 2.0,
        FlawPlace::Line(points) => points
            .windows(2)
            .map(|w| crate::geom::Seg::Line(w[0], w[1]).distance(at))
            .fold(f64::INFINITY, f64::min),
        FlawPlace::Area(outline) => -outline.depth(at),
    }
}
