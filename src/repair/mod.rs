//! What is left of a job that did not go as planned, as a job of its own.
//!
//! The job as first planned is placed again, so that the wanted lines are known; the faces and chips that
//! really came out are laid against them. What the allowance takes up costs nothing. What it does
//! not makes the top smaller: an edge moves in, or a rounding grows. The stone as it is now becomes the
//! slab of a new job and the top's place on it is fixed; from there everything goes the usual way.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | the way from the old job to the new |
//! | [`faces`] | where each face lies, and how far in the stone is unhurt |
//! | [`stone`] | the stone as it is now: its outline, and the slab it makes |
//! | [`mod@settle`] | what becomes of one edge |
//! | [`smaller`] | the largest top of the same kind that the stone still holds |
//! | [`note`] | what happened and what it costs, as data |

pub mod faces;
pub mod note;
pub mod settle;
pub mod smaller;
pub mod stone;

pub use note::{
    ChipNote, CornerNow, EdgeNow, Letters, Outcome, Overhang, Repair, ToDo, TopMeasures,
};
pub use settle::{Settled, settle};

use crate::geom::{Point, Pose, Vector};
use crate::job::{AsCut, Cutout, Job, PlaceHow, PlaceWish, Support, SupportPlace, Top};
use crate::place::{self, NoFit, Placement};

use faces::Faces;
use smaller::Smaller;
use stone::Now;

/// The rest of a job.
#[derive(Clone, Debug)]
pub struct Repaired {
    /// The job that is left: its slab is the stone as it is now.
    pub job: Job,
    /// What happened and what it costs.
    pub note: Repair,
}

/// Plans again what is left of a job whose cutting has begun. Nothing when it says nothing of that.
///
/// # Errors
/// [`NoFit`] when the wanted top has no place on the slab, or when nothing of its kind can be had from
/// the stone as it is now.
pub fn after(job: &Job) -> Result<Option<Repaired>, NoFit> {
    let Some(as_cut) = &job.as_cut else {
        return Ok(None);
    };
    let (placement, _) = place::place(job)?;
    let faces = Faces::of(job, as_cut, &placement);
    faces.can_be_followed(&placement)?;
    let now = Now::of(job, &placement, &faces).ok_or_else(|| {
        no_way(
            &placement,
            "the faces that are said to be cut leave no stone".into(),
        )
    })?;
    let smaller = smaller::largest(job, as_cut, &placement, &faces, &now)?;
    let rest = rest(job, as_cut, &placement, &smaller, &now)?;
    let note = note::of(job, as_cut, &placement, &faces, &smaller, &now, &rest);
    Ok(Some(Repaired { job: rest, note }))
}

/// A refusal at the place the top had.
fn no_way(placement: &Placement, why: String) -> NoFit {
    NoFit {
        turn_deg: placement.pose.turn.to_degrees(),
        objections: Vec::new(),
        reasons: vec![why],
        fitting: Vec::new(),
    }
}

/// The job that is left.
fn rest(
    job: &Job,
    as_cut: &AsCut,
    placement: &Placement,
    smaller: &Smaller,
    now: &Now,
) -> Result<Job, NoFit> {
    let slab = now.slab(job, as_cut, placement).ok_or_else(|| {
        let why = "the stone as it is now has no outline that can be named".into();
        no_way(placement, why)
    })?;
    // In the wanted top's frame, from the wanted corner 1 to the corner 1 of the smaller one.
    let moved = smaller.corner_1;
    let shift = |p: Point| p - moved;
    let cutouts = cutouts(job, placement, smaller)?;
    let pose = now.frame.then(placement.pose, moved);
    Ok(Job {
        slab,
        top: Top {
            shape: smaller.shape.clone(),
            cutouts,
            ready: smaller.ready.clone(),
            ..job.top.clone()
        },
        base: job.base.as_ref().map(|b| b.posed(Pose::new(0.0, -moved))),
        supports: job.supports.iter().map(|s| shifted(s, &shift)).collect(),
        lift: crate::job::Lift {
            stand: job.lift.stand.iter().map(|p| shift(*p)).collect(),
            ..job.lift.clone()
        },
        place: PlaceWish {
            how: PlaceHow::AsCut {
                at: Point::ORIGIN + pose.shift,
                turn_deg: pose.turn.to_degrees(),
            },
            ..job.place.clone()
        },
        stone: crate::job::Stone {
            said: None,
            ..job.stone.clone()
        },
        as_cut: None,
        ..job.clone()
    })
}

fn shifted(support: &Support, shift: &impl Fn(Point) -> Point) -> Support {
    let place = match support.place {
        SupportPlace::Line(a, b) => SupportPlace::Line(shift(a), shift(b)),
        SupportPlace::Pad(at, across) => SupportPlace::Pad(shift(at), across),
    };
    Support {
        place,
        ..support.clone()
    }
}

/// The openings where they are, in the smaller top's frame; each must still lie inside it.
fn cutouts(job: &Job, placement: &Placement, smaller: &Smaller) -> Result<Vec<Cutout>, NoFit> {
    let moved = Pose::new(0.0, Vector::default() - smaller.corner_1);
    let each = job.top.cutouts.iter().map(|cutout| {
        let shape = cutout.shape.posed(moved);
        let out = smaller.shape.outline().deepest_breach(shape.outline());
        if out > crate::geom::SAME_MM {
            let why = format!(
                "{} would break the edge of what is left of the top by {out:.1} mm",
                cutout.what
            );
            return Err(no_way(placement, why));
        }
        Ok(Cutout {
            shape,
            ..cutout.clone()
        })
    });
    each.collect()
}
