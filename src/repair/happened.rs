//! What has happened to the stone, put together.

use crate::geom::{Point, Pose, Seg, Side, Vector};
use crate::job::{Assumption, Cutout, Job, PlaceHow, PlaceWish, Shape, Support, SupportPlace, Top};
use crate::place::{NoFit, Placement};
use crate::repair::faces::Faces;
use crate::repair::no_way::no_way;
use crate::repair::opening::Opened;
use crate::repair::smaller::Smaller;
use crate::repair::stone::Now;
use crate::words::{Message, Value};

/// A job that has been begun, and what becomes of it.
#[derive(Clone, Copy)]
pub(super) struct Happened<'a> {
    pub(super) job: &'a Job,
    pub(super) placement: &'a Placement,
    pub(super) faces: &'a Faces,
    pub(super) smaller: &'a Smaller,
    pub(super) opened: &'a [Opened],
    /// Edges that are ground down to their lines before the next cut.
    pub(super) ground: &'a [usize],
    /// Which cuts the numbers given are.
    pub(super) numbered: Option<&'a Assumption>,
    pub(super) now: &'a Now,
}

impl Happened<'_> {
    /// The job that is left.
    pub(super) fn rest(&self) -> Result<Job, NoFit> {
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
pub(super) fn inside(
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
