//! Outside arcs, made of straight plunges tangent to the arc.
//!
//! A disc cuts straight and is never steered round a curve. At each station it is set tangent to
//! the sawn arc, its near face touching the arc from outside, and lowered straight down.

mod finding;

pub(crate) use finding::{GROUND, NO_ARM, WITHOUT_ARM};
pub use finding::{against_jig, ground_only};

use std::f64::consts::TAU;

use crate::cut::tangents::cusp_height;
use crate::geom::{Arc, Line, Outline, Point, Side, Vector};
use crate::job::{Disc, Finish, Job};

use super::disc::{Sunk, full_depth};
use super::kept::{Kept, Whose};
use super::ordinates::arm_or_chord;
use super::set_out::point_ties;
use super::station::{struck, taped};
use super::{
    Because, CurveSetOut, Cut, CutKind, LeftOver, Pass, PivotPlace, Reach, Remains, Removal,
    Station, Stroke, StrokeKind, Tangents, Tool, passes,
};

/// Largest angle between stations, radians: the ridge is no higher than `cusp` and the near faces
/// still meet at the underside, where the slot is `half_under` long to each side. Lengths in mm.
#[must_use]
pub fn widest_step(radius: f64, cusp: f64, half_under: f64) -> f64 {
    let for_cusp = 2.0 * (radius / (radius + cusp)).acos();
    let for_separation = 2.0 * (half_under / radius).atan();
    for_cusp.min(for_separation)
}

/// More stations than this on one arc are not planned; the disc or the cusp is at fault then.
pub(super) const MOST_STATIONS: f64 = 720.0;

/// An outside arc to be made by plunges.
#[derive(Clone, Debug)]
pub struct WantedCurve<'a> {
    /// Whose it is.
    pub whose: Whose,
    /// Name of the corner or edge.
    pub name: String,
    /// The sawn arc, run with the kept stone to its left: its sweep is positive.
    pub arc: &'a Arc,
    /// Stone left on it, mm.
    pub allowance_mm: f64,
    /// What is done to the edge afterwards.
    pub finish: Finish,
    /// Why it comes at this place in the order.
    pub because: Because,
}

/// Plans the plunges round an outside arc; `stone` is what the straight trims have left. Stations whose
/// slot would run into other kept stone are moved in until it clears. Nothing when no station is clear.
#[must_use]
pub fn plan(
    job: &Job,
    wanted: &WantedCurve<'_>,
    kept: &Kept,
    stone: &Outline,
    disc: &Disc,
) -> Option<Cut> {
    let sawn = wanted.arc;
    let full_depth = full_depth(job);
    let sunk = Sunk::of(job, disc);
    let whole = sawn.sweep >= TAU - 1e-9;
    let is_clear = |angle: f64| kept.is_clear_of(slot(sawn, angle, sunk.face_mm, disc.kerf));
    let (low, high) = clear_span(sawn.start, sawn.start + sawn.sweep, is_clear)?;
    let widest = widest_step(sawn.radius, job.passes.cusp_mm, sunk.under_mm);
    let count = ((high - low) / widest).ceil().clamp(1.0, MOST_STATIONS);
    let step = (high - low) / count;
    // Round a whole circle the last station would be the first one again.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = count as usize + usize::from(!whole);
    #[allow(clippy::cast_precision_loss)]
    let angles = (0..count).map(|i| low + step * i as f64);
    // Just off the near face: a strip of waste thinner than the kerf is worth a plunge too.
    let off_mm = WORTH_A_PLUNGE_MM.min(disc.kerf / 2.0);
    let row = (stone, off_mm, sunk.face_mm);
    let stations = taped(&stations(sawn.centre, sawn.radius, angles, row), whole);
    let passes = passes::depths(job.passes.score_mm, job.passes.plunge_step_mm, full_depth);
    let cusp = cusp_height(sawn.radius, step);
    let length = sawn.radius * sawn.sweep;
    let face_mm2 = length * job.stone.thickness.mean;
    let arm = sawn.radius + job.circle_jig.offset_mm;
    let set_out = CurveSetOut {
        pivot: sawn.centre,
        pivot_ties: point_ties(&job.slab.shape, sawn.centre),
        pivot_on: pivot_place(stone, kept, sawn.centre),
        radius: sawn.radius - wanted.allowance_mm,
        sawn_radius: sawn.radius,
        arm,
        reach: reach(job.circle_jig.reach_mm, arm),
        step,
        slot_half: sunk.face_mm,
        slot_half_under: sunk.under_mm,
        tangents: Tangents::round(sawn, job.passes.cusp_mm),
        inside: None,
        struck: struck(job, &stations),
        stations: stations.clone(),
    };
    Some(Cut {
        cutout: wanted.whose.cutout_number(),
        because: wanted.because.clone(),
        full_depth,
        allowance: wanted.allowance_mm,
        finish: wanted.finish,
        length,
        face_mm2,
        minutes: face_mm2 / 100.0 / job.passes.rate_cm2_per_min * job.passes.curve_factor,
        cusp,
        strokes: strokes(
            &passes,
            &stations,
            sawn.centre,
            sawn.radius + disc.kerf / 2.0,
        ),
        passes,
        left_to_remove: left(sawn, cusp, [low, high]),
        ..Cut::begun(
            CutKind::Curve,
            wanted.name.clone(),
            Tool::Disc(disc.clone()),
            arm_or_chord(job, kept, sawn, set_out),
        )
    })
}

/// The ridges between plunges, and the stone at an end that no plunge reaches.
fn left(sawn: &Arc, cusp: f64, [low, high]: [f64; 2]) -> Vec<LeftOver> {
    let left = |angle: f64, length: f64| LeftOver {
        why: Remains::Cusps,
        at: sawn.at_angle(angle),
        length,
        heading: None,
        left: length,
        by: Removal::Ground,
    };
    let end = sawn.start + sawn.sweep;
    let unreached = |angle: f64, by: f64| {
        let high = cusp_height(sawn.radius, 2.0 * by.min(1.4));
        (by > 1e-6).then(|| left(angle, high))
    };
    std::iter::once(left(sawn.start + sawn.sweep / 2.0, cusp))
        .chain(unreached(sawn.start, low - sawn.start))
        .chain(unreached(end, end - high))
        .collect()
}

/// The rectangle of a slot in the face, counter-clockwise.
fn slot(sawn: &Arc, angle: f64, half: f64, kerf: f64) -> [Point; 4] {
    let out = Vector::at_angle(angle);
    let along = out.left() * half;
    let (near, far) = (sawn.at_angle(angle), sawn.at_angle(angle) + out * kerf);
    [far - along, far + along, near + along, near - along]
}

/// Angles tried along an arc for stations that are clear of kept stone.
const TRIED: u32 = 96;

/// The longest stretch of angles between two whose stations are clear, ends included; nothing when none
/// is. The whole stretch, to the digit, when all are.
pub(super) fn clear_span(
    low: f64,
    high: f64,
    is_clear: impl Fn(f64) -> bool,
) -> Option<(f64, f64)> {
    let angle = |i: u32| low + (high - low) * f64::from(i) / f64::from(TRIED);
    let clear: Vec<bool> = (0..=TRIED).map(|i| is_clear(angle(i))).collect();
    let mut best: Option<(u32, u32)> = None;
    let mut first = None;
    for i in 0..=TRIED {
        let here = clear[i as usize];
        let from = *first.get_or_insert(i);
        if here && best.is_none_or(|(a, b)| i - from >= b - a) {
            best = Some((from, i));
        }
        if !here {
            first = None;
        }
    }
    let (from, to) = best?;
    let edge = |clear: f64, beyond: f64| {
        let (mut in_it, mut out_of_it) = (clear, beyond);
        for _ in 0..40 {
            let middle = f64::midpoint(in_it, out_of_it);
            if is_clear(middle) {
                in_it = middle;
            } else {
                out_of_it = middle;
            }
        }
        in_it
    };
    let low_end = if from == 0 {
        low
    } else {
        edge(angle(from), angle(from - 1))
    };
    let high_end = if to == TRIED {
        high
    } else {
        edge(angle(to), angle(to + 1))
    };
    Some((low_end, high_end))
}

/// The stations of a row of plunges round a pivot, where the disc's face touches a circle. `off_mm` outwards of it stone
/// is looked for along half the slot to either side.
pub(super) fn stations(
    pivot: Point,
    radius: f64,
    angles: impl IntoIterator<Item = f64>,
    (stone, off_mm, half): (&Outline, f64, f64),
) -> Vec<Station> {
    let mut stations: Vec<Station> = Vec::new();
    for (i, angle) in angles.into_iter().enumerate() {
        let out = Vector::at_angle(angle);
        let touch = pivot + out * radius;
        let chord = stations.last().map_or(0.0, |s| s.touch.distance(touch));
        let slot = Line {
            point: touch + out * off_mm,
            along: out.left(),
        };
        stations.push(Station {
            number: i + 1,
            angle,
            touch,
            chord,
            taped_from: i + 1,
            taped: 0.0,
            in_stone: meets_stone(stone, &slot, half),
        });
    }
    stations
}

/// Less stone than this in a slot is no reason to plunge, mm.
pub(super) const WORTH_A_PLUNGE_MM: f64 = 0.1;

/// Whether a line along a slot runs through stone within the slot's length.
pub(super) fn meets_stone(stone: &Outline, slot: &Line, half: f64) -> bool {
    let mut marks: Vec<f64> = stone
        .segs()
        .iter()
        .flat_map(|s| s.line_crossings(slot))
        .filter(|d| d.abs() < half)
        .chain([-half, half])
        .collect();
    marks.sort_by(f64::total_cmp);
    marks.windows(2).any(|w| {
        let middle = slot.at(f64::midpoint(w[0], w[1]));
        w[1] - w[0] > WORTH_A_PLUNGE_MM && stone.side(middle) == Side::Inside
    })
}

/// Ring by ring: every station to one depth, then every station to the next, the disc's centre
/// `radius` mm from the pivot.
pub(super) fn strokes(
    passes: &[Pass],
    stations: &[Station],
    pivot: Point,
    radius: f64,
) -> Vec<Stroke> {
    let plunge = |pass: &Pass, station: &Station| {
        let out = Vector::at_angle(station.angle);
        let centre = pivot + out * radius;
        Stroke {
            pass: pass.number,
            kind: StrokeKind::Plunge,
            from: centre,
            to: centre,
            heading: out.left().angle(),
            depth: pass.depth,
        }
    };
    let live: Vec<&Station> = stations.iter().filter(|s| s.in_stone).collect();
    passes
        .iter()
        .flat_map(|pass| live.iter().map(move |s| plunge(pass, s)))
        .collect()
}

pub(super) fn pivot_place(stone: &Outline, kept: &Kept, pivot: Point) -> PivotPlace {
    if kept.region().side(pivot) == Side::Inside {
        PivotPlace::Top
    } else if kept.region().outer.side(pivot) == Side::Inside {
        PivotPlace::Cutout
    } else if stone.side(pivot) == Side::Inside {
        PivotPlace::Waste
    } else {
        PivotPlace::Off
    }
}

pub(super) fn reach((shortest, longest): (f64, f64), arm: f64) -> Reach {
    if arm < shortest {
        Reach::TooShortBy(shortest - arm)
    } else if arm > longest {
        Reach::TooLongBy(arm - longest)
    } else {
        Reach::Within
    }
}
