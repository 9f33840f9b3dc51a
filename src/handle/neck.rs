//! Narrow stone at inside corners.
//!
//! At an inside corner, or a tight hollow, the stone is cut in thought by the shortest ways to the
//! edges opposite. The lighter-turning side is taken to hang on the other by that chord alone, lying
//! flat: what happens when the stone is picked up on one side of it.

use serde::Serialize;

use super::bend::Slice;
use super::judged::BendVerdict;
use super::rail::SAME_PLACE_MM;
use super::splint::Splint;
use super::stand::CORNER_SINE;
use super::{Load, Marks};
use crate::geom::{Line, Outline, Point, Region, SAME_MM, Seg};
use crate::units::Mass;

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
    pub hanging: Mass,
    /// Moment it passes, N·m, handling factor included.
    pub moment_nm: f64,
    /// Stress in it, `MPa`.
    pub stress_mpa: f64,
    /// How that stands to what is allowed.
    pub verdict: BendVerdict,
    /// A brace, when the verdict asks for one and timber can do it.
    pub splint: Option<Splint>,
}

/// The most stressed neck of every inside corner.
#[must_use]
pub fn necks(load: &Load, slice: Slice, allowed_mpa: f64, marks: &Marks) -> Vec<Neck> {
    let corners = inside_corners(&load.region.outer);
    let necks = corners.into_iter().filter_map(|at| {
        let ways = load.region.outer.segs().iter();
        let ways = ways.filter_map(|seg| across(&load.region, at, seg.at(seg.nearest(at))));
        let worst = ways.max_by(|a, b| a.stress(slice).total_cmp(&b.stress(slice)))?;
        Some(worst.neck(load, slice, allowed_mpa, marks))
    });
    necks.collect()
}

/// Inside corners, and the middles of tight hollows.
fn inside_corners(outer: &Outline) -> Vec<Point> {
    let segs = outer.segs();
    let joints = segs.iter().zip(segs.iter().cycle().skip(1));
    let sharp = joints
        .filter(|(a, b)| a.heading(1.0).cross(b.heading(0.0)) < -CORNER_SINE)
        .map(|(_, b)| b.start());
    let hollow = segs.iter().filter_map(|s| match s {
        Seg::Arc(arc) if arc.sweep < -CORNER_SINE && arc.radius <= TIGHT_MM => Some(s.at(0.5)),
        _ => None,
    });
    sharp.chain(hollow).collect()
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

/// The chord from an inside corner to a point of the edge, when it runs through stone all the way
/// and no farther.
fn across(region: &Region, from: Point, to: Point) -> Option<Parted> {
    let width = from.distance(to);
    if width <= 1.0 {
        return None;
    }
    let line = Line::through(from, to);
    let chord = region.outer.chord(&line, from.midpoint(to))?;
    let whole = (chord.length() - width).abs() <= 1e-3 && chord.start.distance(from) <= 1e-3;
    if !whole {
        return None;
    }
    let parts = [&chord.left, &chord.right].map(|p| hanging(p, region, &line));
    let (area, turn) = parts.into_iter().min_by(|a, b| a.1.total_cmp(&b.1))?;
    Some(Parted {
        chord: [from, to],
        width,
        area,
        turn,
    })
}

/// Area of a part, holes taken off, and its moment about a line.
fn hanging(part: &Outline, region: &Region, line: &Line) -> (f64, f64) {
    let holes = region.holes.iter();
    let own = holes.filter(|h| part.depth(h.centroid()) > SAME_MM);
    let all = std::iter::once((part, 1.0)).chain(own.map(|h| (h, -1.0)));
    let (area, turn) = all.fold((0.0, 0.0), |sum, (outline, sign)| {
        let area = sign * outline.area();
        (
            sum.0 + area,
            sum.1 + area * line.left_of(outline.centroid()),
        )
    });
    (area, turn.abs())
}

impl Parted {
    fn moment(&self, slice: Slice) -> f64 {
        slice.weight_n_per_mm2 * self.turn
    }

    fn stress(&self, slice: Slice) -> f64 {
        6.0 * self.moment(slice) / (self.width * slice.thickness_mm.powi(2))
    }

    fn neck(&self, load: &Load, slice: Slice, allowed_mpa: f64, marks: &Marks) -> Neck {
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
