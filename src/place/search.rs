//! The best place among all worth judging.
//!
//! Candidate turns are those that lay a straight edge of the top along one of the slab, and the vein's
//! directions. The shifts worth judging at each come from `turned`. A first look at every turn, with
//! arcs and clearances taken roughly and in the top's favour, tells the least work it can take; then
//! turns are looked at closely in the order of that work until no other can be better.

use crate::geom::Pose;
use crate::job::Job;
use crate::place::evaluator::{
    Evaluator, OpenNodes, SAME_WORK_MM2, nearer, rounded, smallest, turns,
};

use super::any_turn::{Sweep, sweep};
use super::candidate::judge;
use super::ground::{Approximation, Ground};
use super::turned::Turned;
use super::{Miss, Placement, Proof, share, vein};

/// Leftovers whose areas differ by less than this are equally good, mm².
const SAME_LEFTOVER_MM2: f64 = 1.0;

/// The best valid place.
///
/// # Errors
/// The nearest miss when there is none.
pub fn best(job: &Job) -> Result<Placement, Miss> {
    let mut found: Vec<Placement> = Vec::new();
    let mut least = f64::INFINITY;
    let mut evaluator = Evaluator::of(job);
    let mut open_nodes = OpenNodes::of(job);
    while let Some(turn) = open_nodes.next(least + SAME_WORK_MM2) {
        evaluator.look(turn, |placement| {
            least = least.min(placement.work_mm2);
            found.push(placement);
            least + SAME_WORK_MM2
        });
        if !evaluator.is_patient() {
            break;
        }
    }
    found.retain(|p| p.work_mm2 <= least + SAME_WORK_MM2);
    if let Some(best) = best_leftover(job, found) {
        return Ok(best);
    }
    let proof = match sweep(job) {
        Sweep::Found(found) => return Ok(share::shared(job, *found)),
        Sweep::Proved => Proof::AnyTurn,
        Sweep::Open => Proof::Searched,
    };
    Err(Miss {
        proof,
        ..nearest_miss(job)
    })
}

/// True when a place is found with an edge along an edge of the slab, or along the vein.
#[must_use]
pub fn fits(job: &Job) -> bool {
    let mut outer = Ground::of(job, Approximation::Outer);
    let mut evaluator = Evaluator::of(job);
    turns(job).into_iter().any(|turn| {
        let hope = vein::against(job, turn).is_none()
            && !Turned::of(&mut outer, turn).shifts(&outer).is_empty();
        hope && evaluator.any(turn)
    })
}

/// The most positions judged for the nearest miss (judgement: those that stick out least come first).
const MOST_MISSES: usize = 2000;

/// Among places of equal work the one to take: the largest rectangle in one offcut, then the smallest
/// turn, then the place nearest to the slab's first corner.
fn best_leftover(job: &Job, found: Vec<Placement>) -> Option<Placement> {
    let slab = job.slab.shape.outline();
    let mut best: Option<(f64, Placement)> = None;
    for place in found {
        let to_beat = best
            .as_ref()
            .map_or(0.0, |(left, _)| left - SAME_LEFTOVER_MM2);
        let Some(left) = place.best_leftover_mm2(slab, to_beat) else {
            continue;
        };
        if best
            .as_ref()
            .is_none_or(|b| better((left, &place), (b.0, &b.1)))
        {
            best = Some((left, place));
        }
    }
    best.map(|(_, place)| {
        let worth = share::is_worth_having(place.best_rectangle(slab).as_ref());
        if worth {
            place
        } else {
            share::shared(job, place)
        }
    })
}

fn better((left_a, a): (f64, &Placement), (left_b, b): (f64, &Placement)) -> bool {
    let (turn_a, turn_b) = (smallest(a.pose.turn), smallest(b.pose.turn));
    rounded(left_b / SAME_LEFTOVER_MM2)
        .total_cmp(&rounded(left_a / SAME_LEFTOVER_MM2))
        .then(rounded(turn_a * 1e6).total_cmp(&rounded(turn_b * 1e6)))
        .then(rounded(a.pose.shift.x * 1e3).total_cmp(&rounded(b.pose.shift.x * 1e3)))
        .then(rounded(a.pose.shift.y * 1e3).total_cmp(&rounded(b.pose.shift.y * 1e3)))
        .is_lt()
}

/// The position that breaks the rules by the least, among the likeliest.
pub(super) fn nearest_miss(job: &Job) -> Miss {
    let mut ground = Ground::of(job, Approximation::Inner);
    let mut near: Vec<(f64, Pose)> = Vec::new();
    for turn in turns(job) {
        let turned = Turned::of(&mut ground, turn);
        let shifts = turned.near_shifts(&ground).into_iter();
        near.extend(shifts.map(|shift| {
            let pose = Pose::new(turn, shift.to_vector());
            (turned.sticks_out_mm(&ground, shift), pose)
        }));
    }
    near.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut nearest = Miss {
        pose: Pose::default(),
        objections: Vec::new(),
        proof: Proof::ThisPlace,
    };
    let mut least = f64::INFINITY;
    for (sticks_out, pose) in near.into_iter().take(MOST_MISSES) {
        if sticks_out > least + 1e-6 {
            break;
        }
        if let Err(miss) = judge(job, pose)
            && nearer(miss.weight_mm(job), &miss, least, &nearest)
        {
            least = miss.weight_mm(job);
            nearest = miss;
        }
    }
    nearest
}
