//! Concave arcs, the kept stone outside the circle, made of straight plunges inside it.
//!
//! A slot is longest in the face, 2·c(0). Its ends must stay inside the circle, so the disc's outer face
//! stands at d = √(r² − c(0)²) from the centre. That leaves r − d of stone beside the middle of every
//! slot, and beside its ends at depth z, where the slot is shorter, r − √(d² + c(z)²).

use std::f64::consts::TAU;

use crate::geom::{Arc, Line, Outline, Point, Vector};
use crate::job::{Disc, Finish, Job};

use super::disc::{Sunk, full_depth};
use super::kept::{Joint, Kept, Whose};
use super::ordinates::arm_or_chord;
use super::set_out::point_ties;
use super::station::{struck, taped};
use super::{
    Because, ConcaveArc, CurveSetOut, Cut, CutKind, LeftOver, Remains, Removal, Tangents, Tool,
    curve, passes,
};

impl ConcaveArc {
    /// For a sawn arc of a radius in mm; nothing when the disc's cut in the face is as long as the
    /// circle is wide: then the disc cannot do it.
    #[must_use]
    pub fn of(radius: f64, sunk: Sunk) -> Option<Self> {
        let square = radius * radius - sunk.face_mm * sunk.face_mm;
        (square > 0.0).then(|| {
            let face_at = square.sqrt();
            Self {
                face_at,
                sagitta: radius - face_at,
                left_under: radius - face_at.hypot(sunk.under_mm),
            }
        })
    }

    /// Largest angle between stations, radians: neighbouring faces still meet at the underside,
    /// d·tan(Δ/2) ≤ c(t).
    #[must_use]
    pub fn widest_step(&self, sunk: Sunk) -> f64 {
        2.0 * (sunk.under_mm / self.face_at).atan()
    }
}

/// A hollow arc to be made by plunges.
#[derive(Clone, Debug)]
pub struct WantedConcave<'a> {
    /// Whose it is.
    pub whose: Whose,
    /// Name of the corner or edge.
    pub name: String,
    /// The sawn arc, run with the kept stone to its left: its sweep is negative.
    pub arc: &'a Arc,
    /// How the piece before it and the piece after it meet it.
    pub joints: [Joint; 2],
    /// Stone left on it, mm.
    pub allowance_mm: f64,
    /// What is done to the edge afterwards.
    pub finish: Finish,
    /// Why it comes at this place in the order.
    pub because: Because,
}

/// The range of the stations' angles, counter-clockwise, and what closes it at its lower and upper end.
struct StationRange {
    low: f64,
    high: f64,
    ends: [Joint; 2],
    whole: bool,
}

/// Plans the plunges inside a hollow arc. Nothing when the disc's cut in the face is too long for the
/// circle, or kept stone leaves no station clear.
#[must_use]
pub fn plan(
    job: &Job,
    wanted: &WantedConcave<'_>,
    kept: &Kept,
    stone: &Outline,
    disc: &Disc,
) -> Option<Cut> {
    let sunk = Sunk::of(job, disc);
    let arc = wanted.arc;
    let hollow = ConcaveArc::of(arc.radius, sunk)?;
    let span = span(wanted, hollow, sunk);
    let slot = |angle: f64| slot(arc.centre, angle, hollow.face_at, sunk.face_mm, disc.kerf);
    let is_clear = |angle: f64| kept.is_clear_of(slot(angle));
    let (low, high) = curve::clear_span(span.low, span.high, is_clear)?;
    let step = hollow.widest_step(sunk);
    let count = ((high - low) / step - 1e-9)
        .ceil()
        .clamp(1.0, curve::MOST_STATIONS);
    let step = (high - low) / count;
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = count as usize + usize::from(!span.whole);
    #[allow(clippy::cast_precision_loss)]
    let angles: Vec<f64> = (0..count).map(|i| low + step * i as f64).collect();
    let row = (stone, -curve::WORTH_A_PLUNGE_MM, sunk.face_mm);
    let stations = curve::stations(arc.centre, hollow.face_at, angles.iter().copied(), row);
    let stations = taped(&stations, span.whole);
    let passes = passes::depths(
        job.passes.score_mm,
        job.passes.plunge_step_mm,
        full_depth(job),
    );
    let length = arc.radius * arc.sweep.abs();
    let face_mm2 = length * job.stone.thickness.mean;
    // Turned with its near face to the pivot, the disc has its whole kerf inside the outer face.
    let arm = hollow.face_at - disc.kerf + job.circle_jig.offset_mm;
    let set_out = CurveSetOut {
        pivot: arc.centre,
        pivot_ties: point_ties(&job.slab.shape, arc.centre),
        pivot_on: curve::pivot_place(stone, kept, arc.centre),
        radius: arc.radius + wanted.allowance_mm,
        sawn_radius: arc.radius,
        arm,
        reach: curve::reach(job.circle_jig.reach_mm, arm),
        step,
        slot_half: sunk.face_mm,
        slot_half_under: sunk.under_mm,
        tangents: Tangents::round(arc, job.passes.cusp_mm),
        inside: Some(hollow),
        struck: struck(job, &stations),
        stations: stations.clone(),
    };
    let mut left_to_remove = left_beside(arc, hollow);
    left_to_remove.extend(left_at_joints(
        &span,
        arc.centre,
        hollow,
        disc.kerf,
        step,
        [low, high],
        kept,
    ));
    let plunged = [stations.first(), stations.last()].map(|s| s.is_some_and(|s| s.in_stone));
    let ends = [(low, plunged[0]), (high, plunged[1])];
    let run_outs = run_outs(&span, arc.centre, hollow, sunk, disc.kerf, ends);
    let run_out = if run_outs.is_empty() {
        0.0
    } else {
        sunk.run_out_mm()
    };
    left_to_remove.extend(run_outs);
    Some(Cut {
        cutout: wanted.whose.cutout_number(),
        because: wanted.because.clone(),
        full_depth: full_depth(job),
        allowance: wanted.allowance_mm,
        finish: wanted.finish,
        length,
        face_mm2,
        minutes: face_mm2 / 100.0 / job.passes.rate_cm2_per_min * job.passes.curve_factor,
        run_off: run_out == 0.0 && !span.whole,
        run_out,
        strokes: curve::strokes(
            &passes,
            &stations,
            arc.centre,
            hollow.face_at - disc.kerf / 2.0,
        ),
        passes,
        left_to_remove,
        ..Cut::begun(
            CutKind::Curve,
            wanted.name.clone(),
            Tool::Disc(disc.clone()),
            arm_or_chord(job, kept, arc, set_out),
        )
    })
}

/// The angles that need stations: those of the arc, and where it runs on smoothly so far beyond its end
/// that the last slot reaches the point where arc and edge touch.
fn span(wanted: &WantedConcave<'_>, hollow: ConcaveArc, sunk: Sunk) -> StationRange {
    let arc = wanted.arc;
    let whole = arc.sweep.abs() >= TAU - 1e-9;
    let beyond = |joint: Joint| match joint {
        Joint::Smooth if !whole => (sunk.face_mm / hollow.face_at).atan(),
        _ => 0.0,
    };
    // Counter-clockwise the arc runs from its end to its start.
    let [start, end] = wanted.joints;
    StationRange {
        low: arc.start + arc.sweep - beyond(end),
        high: arc.start + beyond(start),
        ends: [end, start],
        whole,
    }
}

/// The rectangle of a slot in the face, counter-clockwise.
fn slot(pivot: Point, angle: f64, face_at: f64, half: f64, kerf: f64) -> [Point; 4] {
    let out = Vector::at_angle(angle);
    let along = out.left() * half;
    let (outer, inner) = (pivot + out * face_at, pivot + out * (face_at - kerf));
    [outer - along, outer + along, inner + along, inner - along]
}

fn left_beside(arc: &Arc, hollow: ConcaveArc) -> Vec<LeftOver> {
    let at = arc.at_angle(arc.start + arc.sweep / 2.0);
    let left = |why: Remains, length: f64| LeftOver {
        why,
        at,
        length,
        heading: None,
        left: length,
        by: Removal::Ground,
    };
    vec![
        left(Remains::Hollow, hollow.sagitta),
        left(Remains::HollowUnder, hollow.left_under),
    ]
}

/// Where an arc runs on smoothly, the first two slots leave a corner of stone between them low down that
/// may stand out farther than what is beside the slots.
fn left_at_joints(
    span: &StationRange,
    pivot: Point,
    hollow: ConcaveArc,
    kerf: f64,
    step: f64,
    [low, high]: [f64; 2],
    kept: &Kept,
) -> Vec<LeftOver> {
    let face = |angle: f64, at: f64| {
        let out = Vector::at_angle(angle);
        Line {
            point: pivot + out * at,
            along: out.left(),
        }
    };
    let corner = |first: f64, second: f64| {
        face(first, hollow.face_at - kerf).meet(&face(second, hollow.face_at))
    };
    let ends = [
        (low, low + step, span.ends[0]),
        (high, high - step, span.ends[1]),
    ];
    ends.into_iter()
        .filter(|(_, _, joint)| *joint == Joint::Smooth && !span.whole)
        .filter_map(|(first, second, _)| corner(first, second))
        .map(|at| (at, kept.distance(at)))
        .filter(|(_, length)| *length > hollow.sagitta)
        .map(|(at, length)| LeftOver {
            why: Remains::Hollow,
            at,
            length,
            heading: None,
            left: length,
            by: Removal::Ground,
        })
        .collect()
}

/// The run-outs of the first and last slot, where the arc joins a stopped cut or a core hole: towards the arc
/// where it runs on smoothly, away from it at an inside corner. None where there is no stone to plunge into.
fn run_outs(
    span: &StationRange,
    pivot: Point,
    hollow: ConcaveArc,
    sunk: Sunk,
    kerf: f64,
    [low, high]: [(f64, bool); 2],
) -> Vec<LeftOver> {
    if span.whole {
        return Vec::new();
    }
    let run_out = |angle: f64, turn: f64| {
        let out = Vector::at_angle(angle);
        let heading = out.left() * turn;
        let middle = pivot + out * (hollow.face_at - kerf / 2.0);
        LeftOver {
            why: Remains::RunOut,
            at: middle + heading * sunk.face_mm,
            length: sunk.run_out_mm(),
            heading: Some(heading.angle().to_degrees()),
            left: sunk.run_out_mm(),
            by: Removal::FromBelow,
        }
    };
    let each = [(low, span.ends[0], 1.0), (high, span.ends[1], -1.0)];
    each.into_iter()
        .filter(|((_, plunged), ..)| *plunged)
        .filter_map(|((angle, _), joint, inwards)| match joint {
            Joint::Outside => None,
            Joint::Smooth => Some(run_out(angle, inwards)),
            Joint::Inside => Some(run_out(angle, -inwards)),
        })
        .collect()
}
