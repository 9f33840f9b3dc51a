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
//! | [`made`] | what the cuts that have been made took out where they stop inside the stone |
//! | [`opening`], `openings` | what becomes of an opening; the same as data |
//! | `moved` | a figure with its edges moved |
//! | [`smaller`] | the largest top of the same kind that the stone still holds |
//! | [`overhang`] | how far the top stands over its base |
//! | [`rim`] | what a larger opening gives cause to say |
//! | `numbered` | cuts told by their numbers on the sheet |
//! | [`note`] | what happened and what it costs, as data |
//! | [`lines`] | the top there is now as lines of a job file |

pub mod faces;
pub mod lines;
pub mod made;
mod moved;
pub mod note;
mod numbered;
pub mod opening;
mod openings;
pub mod overhang;
pub mod rim;
pub mod settle;
pub mod smaller;
pub mod stone;

pub use note::{
    ChipNote, CornerNow, EdgeNow, Letters, OpeningNow, Outcome, Rail, Repair, ToDo, TopMeasures,
};
pub use overhang::Overhang;
pub use settle::{Settled, settle};

use crate::diag::Findings;
use crate::geom::{Point, Pose, Seg, Side, Vector};
use crate::job::{Assumption, Cutout, Job, PlaceHow, PlaceWish, Shape, Support, SupportPlace, Top};
use crate::place::{self, NoFit, Placement, Proof, Stock};
use crate::words::{Message, Value};

use faces::Faces;
use opening::Opened;
use smaller::Smaller;
use stone::Now;

/// The rest of a job.
#[derive(Clone, Debug)]
pub struct Repaired {
    /// The job that is left: its slab is the stone as it is now.
    pub job: Job,
    /// What happened and what it costs.
    pub note: Repair,
    /// What that gives cause to say.
    pub findings: Findings,
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
    let (as_cut, told) = numbered::resolved(job, as_cut, &placement)?;
    let as_cut = &as_cut;
    let faces = Faces::of(job, as_cut, &placement);
    faces.can_be_followed(&placement)?;
    let ground = faces.ground_first(job, as_cut, &placement);
    let now = Now::of(job, as_cut, &placement, &faces.ground(&ground))
        .ok_or_else(|| no_way(&placement, Message::plain("repair-no-stone")))?;
    let opened = opening::all(job, as_cut.grind_mm, &placement, &faces)?;
    for (cutout, opened) in job.top.cutouts.iter().zip(&opened) {
        inside(&placement, &job.top.shape, cutout, &opened.shape)?;
    }
    let smaller = smaller::largest(job, as_cut, &placement, &faces, &now)?;
    let happened = Happened {
        job,
        placement: &placement,
        faces: &faces,
        smaller: &smaller,
        opened: &opened,
        ground: &ground,
        numbered: told.as_ref(),
        now: &now,
    };
    let rest = happened.rest()?;
    let note = note::of(&happened, &rest);
    let findings = rim::findings(&note);
    Ok(Some(Repaired {
        job: rest,
        note,
        findings,
    }))
}

/// A refusal at the place the top had.
fn no_way(placement: &Placement, why: Message) -> NoFit {
    NoFit {
        stock: Stock::Begun,
        turn_deg: placement.pose.turn.to_degrees(),
        objections: Vec::new(),
        reasons: vec![why],
        proof: Proof::ThisPlace,
        fitting: Vec::new(),
    }
}

/// A job that has been begun, and what becomes of it.
#[derive(Clone, Copy)]
struct Happened<'a> {
    job: &'a Job,
    placement: &'a Placement,
    faces: &'a Faces,
    smaller: &'a Smaller,
    opened: &'a [Opened],
    /// Edges that are ground down to their lines before the next cut.
    ground: &'a [usize],
    /// Which cuts the numbers given are.
    numbered: Option<&'a Assumption>,
    now: &'a Now,
}

impl Happened<'_> {
    /// The job that is left.
    fn rest(&self) -> Result<Job, NoFit> {
        let (job, placement, smaller, now) = (self.job, self.placement, self.smaller, self.now);
        let slab = now
            .slab(job, placement, self.faces)
            .ok_or_else(|| no_way(placement, Message::plain("repair-no-outline")))?;
        // In the wanted top's frame, from the wanted corner 1 to the corner 1 of the smaller one.
        let moved = smaller.corner_1;
        let shift = |p: Point| p - moved;
        let cutouts = self.cutouts()?;
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
            assumed: job
                .assumed
                .iter()
                .cloned()
                .chain(self.numbered.cloned())
                .chain(holes_drilled(now))
                .collect(),
            ..job.clone()
        })
    }

    /// The openings in the smaller top's frame; each must still lie inside it and clear of the others.
    fn cutouts(&self) -> Result<Vec<Cutout>, NoFit> {
        let (job, smaller) = (self.job, self.smaller);
        let moved = Pose::new(0.0, Vector::default() - smaller.corner_1);
        let mut clear: Vec<Cutout> = Vec::new();
        for (cutout, opened) in job.top.cutouts.iter().zip(self.opened) {
            let shape = opened.shape.posed(moved);
            inside(self.placement, &smaller.shape, cutout, &shape)?;
            if let Some(other) = clear.iter().find(|c| overlap(&c.shape, &shape)) {
                let [one, other] = [other, cutout].map(|c| Value::name(c.what.clone()));
                let gaps = [("one", one), ("other", other)];
                let why = Message::new("repair-openings-meet", gaps);
                return Err(no_way(self.placement, why));
            }
            clear.push(Cutout {
                shape,
                ready: opened.ready.clone(),
                ..cutout.clone()
            });
        }
        Ok(clear)
    }
}

/// What is taken for done although the job file does not say so.
fn holes_drilled(now: &Now) -> Option<Assumption> {
    let count = now.begun.drilled.len();
    (count > 0).then(|| Assumption {
        key: "as_cut.done".into(),
        value: format!("core holes drilled: {count}"),
        why: "they come before the first cut of their boundary".into(),
    })
}

/// Refuses an opening that breaks the edge of a top.
fn inside(
    placement: &Placement,
    top: &Shape,
    cutout: &Cutout,
    opening: &Shape,
) -> Result<(), NoFit> {
    let out = top.outline().deepest_breach(opening.outline());
    if out <= crate::geom::SAME_MM {
        return Ok(());
    }
    let opening = ("opening", Value::name(cutout.what.clone()));
    let by = ("by", Value::fine(out));
    let why = Message::new("repair-opening-breaks-edge", [opening, by]);
    Err(no_way(placement, why))
}

/// Whether two openings touch or overlap.
fn overlap(a: &Shape, b: &Shape) -> bool {
    let (a, b) = (a.outline(), b.outline());
    let touch = |s: &Seg| b.segs().iter().any(|t| !s.meets(t).is_empty());
    a.segs().iter().any(touch)
        || a.side(b.segs()[0].start()) != Side::Outside
        || b.side(a.segs()[0].start()) != Side::Outside
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
