//! Narrow stone at inside corners.
//!
//! At an inside corner, or a tight hollow, the stone is cut in thought by the shortest ways to the
//! edges opposite. The lighter-turning side is taken to hang on the other by that chord alone, lying
//! flat: what happens when the stone is picked up on one side of it.

use serde::Serialize;

use crate::geom::{Line, Outline, Point, Region, Seg, Side};
use crate::handle::lifting::stand::CORNER_SINE;
use crate::handle::loads::{Load, Marks};
use crate::units::Mass;

use super::bend::PlateSection;
use super::judged::BendVerdict;
use super::rail::SAME_PLACE_MM;
use super::splint::Splint;

/// A hollow of a greater radius is a curve, which the cross-sections see, mm (judgement).
const TIGHT_MM: f64 = 150.0;

/// The narrowest stone at an inside corner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Neck {
    /// Name as printed: "neck at corner 4".
    pub name: String,
    /// Width, mm.
    pub width_mm: f64,
    /// The chord, from the corner on, slab frame.
    pub chord: [Point; 2],
    /// What hangs on it.
    #[serde(rename = "hanging_kg")]
    pub hanging: Mass,
    /// Moment it passes, N·m, handling factor included.
    pub moment_nm: f64,
    /// Stress in it, `MPa`.
    pub stress_mpa: f64,
    /// How that stands to what is allowed.
    pub verdict: BendVerdict,
    /// A brace, when the verdict asks for one and timber can do it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub splint: Option<Splint>,
}

/// The most stressed neck of every inside corner.
///
/// Areas and moments of what a chord parts come from running sums along the boundary, so a chord costs
/// the same however long the boundary is; whether it runs through stone is asked of the most stressed ones
/// only. Cost: inside corners × (n log n), n pieces of boundary.
#[must_use]
pub fn necks(load: &Load, slice: PlateSection, allowed_mpa: f64, marks: &Marks) -> Vec<Neck> {
    let rim = Rim::new(&load.region);
    let corners = inside_corners(&load.region.outer);
    let necks = corners.into_iter().filter_map(|from| {
        let worst = rim.worst(from, slice)?;
        Some(worst.neck(load, slice, allowed_mpa, marks))
    });
    necks.collect()
}

/// A place of the boundary: the piece, the share of the way along it, the point.
#[derive(Clone, Copy)]
struct BoundaryPlace {
    piece: usize,
    share: f64,
    at: Point,
}

/// Inside corners, and the middles of tight hollows.
fn inside_corners(outer: &Outline) -> Vec<BoundaryPlace> {
    let segs = outer.segs();
    let before = segs.iter().cycle().skip(segs.len() - 1);
    let pairs = before.zip(segs).enumerate();
    let inside = pairs.flat_map(|(piece, (a, b))| {
        let sharp = a.heading(1.0).cross(b.heading(0.0)) < -CORNER_SINE;
        let hollow =
            matches!(b, Seg::Arc(arc) if arc.sweep < -CORNER_SINE && arc.radius <= TIGHT_MM);
        let place = |share: f64| BoundaryPlace {
            piece,
            share,
            at: b.at(share),
        };
        let sharp = sharp.then(|| place(0.0));
        sharp.into_iter().chain(hollow.then(|| place(0.5)))
    });
    inside.collect()
}

/// Area and first moments about a base.
type Moments = (f64, f64, f64);

/// The outer boundary with running sums of what it encloses.
struct Rim<'a> {
    region: &'a Region,
    base: Point,
    /// Up to the start of each piece, and of the whole.
    sums: Vec<Moments>,
    /// The holes: middle and moments.
    holes: Vec<(Point, Moments)>,
}

impl<'a> Rim<'a> {
    fn new(region: &'a Region) -> Self {
        let base = region.outer.centroid();
        let mut sums = vec![(0.0, 0.0, 0.0)];
        let mut total = (0.0, 0.0, 0.0);
        for seg in region.outer.segs() {
            total = sum(total, seg.moments(base), 1.0);
            sums.push(total);
        }
        let holes = region.holes.iter().map(|hole| {
            let (middle, area) = (hole.centroid(), hole.area());
            let away = middle - base;
            (middle, (area, area * away.x, area * away.y))
        });
        Self {
            region,
            base,
            sums,
            holes: holes.collect(),
        }
    }

    /// The chord from an inside corner on that is stressed most of those that run through stone.
    fn worst(&self, from: BoundaryPlace, slice: PlateSection) -> Option<Parted> {
        let segs = self.region.outer.segs().iter().enumerate();
        let mut chords: Vec<(f64, Parted)> = segs
            .filter_map(|(piece, seg)| {
                let share = seg.nearest(from.at);
                let at = seg.at(share);
                let parted = self.parted(from, BoundaryPlace { piece, share, at })?;
                Some((parted.stress(slice), parted))
            })
            .collect();
        chords.sort_by(|a, b| b.0.total_cmp(&a.0));
        let found = chords.into_iter().find(|c| self.is_stone(c.1.chord));
        found.map(|c| c.1)
    }

    /// The lighter-turning part that a chord cuts off.
    fn parted(&self, from: BoundaryPlace, to: BoundaryPlace) -> Option<Parted> {
        let width = from.at.distance(to.at);
        if width <= 1.0 {
            return None;
        }
        let line = Line::through(from.at, to.at);
        let whole = *self.sums.last()?;
        let on = sum(self.up_to(to), self.up_to(from), -1.0);
        let on = if (to.piece, to.share) < (from.piece, from.share) {
            sum(on, whole, 1.0)
        } else {
            on
        };
        // Right of the chord: along the boundary to its end, and straight back.
        let right = sum(on, Seg::Line(to.at, from.at).moments(self.base), 1.0);
        let left = sum(whole, right, -1.0);
        let parts = [(left, 1.0), (right, -1.0)].map(|(part, side)| {
            let own = self.holes.iter().filter(|h| side * line.left_of(h.0) > 0.0);
            let net = own.fold(part, |net, hole| sum(net, hole.1, -1.0));
            let normal = line.along.left();
            let away = self.base - from.at;
            let turn = net.1 * normal.x + net.2 * normal.y + net.0 * away.dot(normal);
            (net.0, turn.abs())
        });
        let (area, turn) = parts.into_iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
        Some(Parted {
            chord: [from.at, to.at],
            width,
            area,
            turn,
        })
    }

    fn up_to(&self, place: BoundaryPlace) -> Moments {
        let piece = self.region.outer.segs().get(place.piece);
        let part = piece.map_or((0.0, 0.0, 0.0), |seg| {
            seg.part(0.0, place.share).moments(self.base)
        });
        let before = self.sums.get(place.piece).copied().unwrap_or_default();
        sum(before, part, 1.0)
    }

    /// Whether a chord runs through stone all the way, holes not looked at.
    fn is_stone(&self, [from, to]: [Point; 2]) -> bool {
        let (line, width) = (Line::through(from, to), from.distance(to));
        let within = |at: f64| at > NEAR_MM && at < width - NEAR_MM;
        let segs = self.region.outer.segs().iter();
        let mut crossings = segs.flat_map(|s| s.line_crossings(&line));
        !crossings.any(within) && self.region.outer.side(from.midpoint(to)) == Side::Inside
    }
}

/// Crossings nearer to a chord's end than this are the end, mm (rounding).
const NEAR_MM: f64 = 1e-3;

fn sum(a: Moments, b: Moments, sign: f64) -> Moments {
    (a.0 + sign * b.0, a.1 + sign * b.1, a.2 + sign * b.2)
}

/// Stone cut in two by a chord.
struct Parted {
    chord: [Point; 2],
    width: f64,
    /// Area of the part that hangs, mm².
    area: f64,
    /// Its moment about the chord, mm³.
    turn: f64,
}

impl Parted {
    fn moment(&self, slice: PlateSection) -> f64 {
        slice.weight_n_per_mm2 * self.turn
    }

    fn stress(&self, slice: PlateSection) -> f64 {
        6.0 * self.moment(slice) / (self.width * slice.thickness_mm.powi(2))
    }

    fn neck(&self, load: &Load, slice: PlateSection, allowed_mpa: f64, marks: &Marks) -> Neck {
        let (moment, stress_mpa) = (self.moment(slice), self.stress(slice));
        let verdict = BendVerdict::of(stress_mpa, allowed_mpa);
        let t = slice.thickness_mm;
        let splint = || Splint::for_rail(moment, self.width, t, self.width, allowed_mpa);
        Neck {
            name: marks.neck(self.chord[0]),
            width_mm: self.width,
            chord: self.chord,
            hanging: Mass::from_kg(load.mass.high.kg() * self.area / load.region.area()),
            moment_nm: moment / 1000.0,
            stress_mpa,
            verdict,
            splint: verdict.is_above().then(splint).flatten(),
        }
    }
}

impl Marks {
    fn neck(&self, at: Point) -> String {
        let near = self
            .corners
            .iter()
            .min_by(|a, b| a.1.distance(at).total_cmp(&b.1.distance(at)));
        near.filter(|c| c.1.distance(at) <= SAME_PLACE_MM)
            .map_or_else(
                || "neck at an inside corner".to_owned(),
                |c| format!("neck at corner {}", c.0),
            )
    }
}
