//! Where the top lies when nothing pulls it: in the middle of the room it has.
//!
//! A leftover worth having is one big piece, and the top lies to one side for it. Without one, the room
//! beyond what every side needs is shared by both: the top stands as far off what it may not come near on
//! one side as on the other, as long as that takes no more sawing.

use crate::geom::rectangle::Rectangle;
use crate::geom::{Pose, Vector};
use crate::job::Job;

use super::candidate::valid;
use super::{EdgeUse, Placement};

/// A leftover is worth having when its largest rectangle is no narrower than this, mm (judgement: enough
/// for a small top; strips for upstands can be had from narrower ones).
const WORTH_ACROSS_MM: f64 = 200.0;
/// Sawing that nobody moves the top for, mm (judgement).
const NO_PULL_MM: f64 = 2.0;
/// The first step when it is felt out how far the top may move, mm.
const FIRST_STEP_MM: f64 = 4.0;
/// How closely that is found, mm.
const CLOSELY_MM: f64 = 0.05;
/// Nobody moves the top for less than this, mm (judgement).
const WORTH_MOVING_MM: f64 = 2.0;
/// How often the two directions are gone through.
const ROUNDS: usize = 2;

/// Whether a leftover is worth having.
pub(super) fn is_worth_having(leftover: Option<&Rectangle>) -> bool {
    leftover.is_some_and(|r| r.sides().1 >= WORTH_ACROSS_MM)
}

/// The place moved to the middle of the room it has, square to the edges that lie on none of the slab's.
pub(super) fn shared(job: &Job, place: Placement) -> Placement {
    let limit_mm2 = place.work_mm2 + NO_PULL_MM * job.stone.thickness.mean;
    let ways = free_ways(&place);
    let rounds = if ways.len() > 1 { ROUNDS } else { 1 };
    let mut best = place;
    for way in ways.iter().cycle().take(rounds * ways.len()) {
        let at = |by: f64| {
            let pose = Pose::new(best.pose.turn, best.pose.shift + *way * by);
            valid(job, pose).filter(|p| p.work_mm2 <= limit_mm2)
        };
        let (ahead, back) = (
            farthest(|by| at(by).is_some()),
            farthest(|by| at(-by).is_some()),
        );
        let by = (ahead - back) / 2.0;
        if by.abs() > WORTH_MOVING_MM
            && let Some(middle) = at(by)
        {
            best = middle;
        }
    }
    best
}

/// The directions in which the top may move without leaving an edge of the slab: along the only one it
/// lies on; both ways when it lies on none.
fn free_ways(place: &Placement) -> Vec<Vector> {
    let flush = place.uses.iter().enumerate();
    let lies = flush.filter(|(_, u)| matches!(u, EdgeUse::Flush { .. }));
    let on: Vec<Vector> = lies
        .map(|(edge, _)| place.top.edge_line(edge).along)
        .collect();
    match on.as_slice() {
        [] => {
            let along = Vector::at_angle(place.pose.turn);
            vec![along, along.left()]
        }
        [first, others @ ..] if others.iter().all(|o| o.cross(*first).abs() < 1e-3) => {
            vec![*first]
        }
        _ => Vec::new(),
    }
}

/// How far something may go before it first fails, mm: felt out by doubled steps, then halved.
fn farthest(goes: impl Fn(f64) -> bool) -> f64 {
    let (mut good, mut step) = (0.0, FIRST_STEP_MM);
    while goes(good + step) {
        good += step;
        step *= 2.0;
    }
    let mut bad = good + step;
    while bad - good > CLOSELY_MM {
        let middle = f64::midpoint(good, bad);
        if goes(middle) {
            good = middle;
        } else {
            bad = middle;
        }
    }
    good
}
