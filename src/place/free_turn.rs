//! A turn that lays no edge on an edge and yet saves sawing.
//!
//! The search goes over the turns that lay an edge along an edge: they save whole cuts. On a slab that runs
//! askew the cuts right across it may be so long that a turn in between takes less. No place that saws every
//! edge takes less than the edges' own lengths ([`least_mm2`]): where that is no saving worth telling, none is
//! looked for. Otherwise turns [`STEP_DEG`] apart are tried by the bound on their work, and the best is
//! turned on from there. What is found is told, not taken, since an edge along an edge is easier to set
//! out; and only where no smaller rectangle is left of the slab.

use crate::diag::{Finding, Phrase};
use crate::job::{Job, PlaceHow};
use crate::place::evaluator::{Evaluator, OpenNodes};
use crate::words::{Unit, Value};

use super::candidate::steady_work_mm2;
use super::{EdgeUse, Placement, fixing_lines, share};

/// The least part of the sawing that is worth an odd turn (judgement).
const WORTH: f64 = 0.10;
/// Turns that are tried lie so far apart, degrees (judgement).
const STEP_DEG: u32 = 5;

pub(crate) const TURN_SAVES: Phrase = Phrase::of_job("turn-saves").key("place.turn");

/// What a turn in between saves, if that is worth telling.
pub(super) fn saving(job: &Job, best: &Placement) -> Option<Finding> {
    if !matches!(job.place.how, PlaceHow::Search) {
        return None;
    }
    let limit = best.work_mm2 * (1.0 - WORTH);
    let free = (least_mm2(job, best) < limit).then(|| freely(job, limit))??;
    if !leaves_as_much(job, &free, best) {
        return None;
    }
    let saved = 100.0 * (1.0 - free.work_mm2 / best.work_mm2);
    let [at, to] = fixing_lines(&free).map(Value::name);
    let args = [
        ("turn", Value::of(free.pose.turn.to_degrees(), Unit::Degree)),
        ("saved", Value::of(saved, Unit::Percent).down()),
        ("at", at),
        ("to", to),
    ];
    Some(Finding::of(&TURN_SAVES, args, "judgement"))
}

/// Whether the largest rectangle that is left of the slab is no smaller, where it is worth having.
fn leaves_as_much(job: &Job, free: &Placement, best: &Placement) -> bool {
    let left = |place: &Placement| place.best_rectangle(job.slab.shape.outline());
    let worth = left(best).filter(|r| share::is_worth_having(Some(r)));
    worth.is_none_or(|r| left(free).is_some_and(|f| f.area() >= r.area()))
}

/// The least that a place takes where every straight edge is sawn, mm²: each just as long as the edge is.
fn least_mm2(job: &Job, best: &Placement) -> f64 {
    let top = &job.top.shape;
    let sawn = |edge: usize| match best.uses[edge] {
        EdgeUse::UsedUp | EdgeUse::Bowed { .. } => 0.0,
        EdgeUse::Sawn { .. } | EdgeUse::Flush { .. } => {
            top.edge_seg(edge).map_or(0.0, |seg| seg.length())
        }
    };
    let edges: f64 = (0..top.count()).map(sawn).sum();
    edges * job.stone.thickness.mean + steady_work_mm2(job, top)
}

/// The place with the least work below a limit at any turn, as far as turns by steps show one; none that
/// is within the error of the tape.
fn freely(job: &Job, most_mm2: f64) -> Option<Placement> {
    let step = f64::from(STEP_DEG).to_radians();
    let turns = (0..360 / STEP_DEG).map(|k| f64::from(k) * step);
    let mut open_nodes = OpenNodes::at(job, turns);
    let mut evaluator = Evaluator::below(job, most_mm2);
    let mut best: Option<Placement> = None;
    let mut limit_mm2 = most_mm2;
    while let Some(turn) = open_nodes.next(limit_mm2) {
        evaluator.look(turn, |place| {
            if place.work_mm2 < limit_mm2 {
                limit_mm2 = place.work_mm2;
                best = Some(place);
            }
            limit_mm2
        });
        if !evaluator.is_patient() {
            break;
        }
    }
    let best = best?;
    let eased = Some(evaluator.eased(best.clone(), step)).filter(|e| e.work_mm2 < most_mm2);
    let sure = |p: &Placement| p.least_spare_mm >= 2.0 * job.slab.tape_error_mm;
    Some(eased.unwrap_or(best)).filter(sure)
}
