//! A few places that differ, the best of each kind.

use crate::job::Job;
use crate::place::evaluator::{Evaluator, OpenNodes, SAME_WORK_MM2};

use super::search::best;
use super::{NoFit, Placement};

/// Two places differ when some corner of the top lies farther than this from where it was, mm (judgement:
/// less is an adjustment, not another place).
const APART_MM: f64 = 25.0;

/// The best few places that differ from each other, in the order of their work; the first is the one
/// that [`place`](super::place) takes. Two places differ when a person sees that they do. A place that the
/// job file has fixed is not looked at.
///
/// # Errors
/// [`NoFit`] when there is none.
pub fn several(job: &Job, count: usize) -> Result<Vec<Placement>, NoFit> {
    let first = best(job).map_err(|miss| miss.in_words(job))?;
    let mut found = vec![first];
    let mut evaluator = Evaluator::of(job);
    let mut open_nodes = OpenNodes::of(job);
    while let Some(turn) = open_nodes.next(limit(&found, count)) {
        evaluator.look(turn, |placement| {
            add(job, &mut found, placement, count);
            limit(&found, count)
        });
        if !evaluator.is_patient() {
            break;
        }
    }
    found.truncate(count);
    Ok(found)
}

/// Work above which a place cannot be among the best few, mm².
fn limit(found: &[Placement], count: usize) -> f64 {
    let last = count.checked_sub(1).and_then(|at| found.get(at));
    last.map_or(f64::INFINITY, |p| p.work_mm2)
}

/// Takes a place in, unless one of its kind takes no more work; the very best stays first.
fn add(job: &Job, found: &mut Vec<Placement>, placement: Placement, count: usize) {
    let better = |q: &Placement| placement.work_mm2 < q.work_mm2 - SAME_WORK_MM2;
    if found[..1].iter().any(|q| same_kind(job, q, &placement)) {
        return;
    }
    if let Some(at) = found.iter().position(|q| same_kind(job, q, &placement)) {
        if !better(&found[at]) {
            return;
        }
        found.retain(|q| !same_kind(job, q, &placement));
    }
    let at = found.iter().skip(1).position(better);
    found.insert(at.map_or(found.len(), |at| at + 1), placement);
    found.truncate(count.max(1));
}

/// Whether two places are the same as a person sees it: every corner of the top nearly where it was. A top with one finish all round and no openings is the same
/// whichever of its corners lies where.
fn same_kind(job: &Job, a: &Placement, b: &Placement) -> bool {
    let (a, b) = (a.top.corners(), b.top.corners());
    let near = |by: usize| {
        let mut pairs = a.iter().zip(b.iter().cycle().skip(by));
        pairs.all(|(p, q)| p.distance(*q) <= APART_MM)
    };
    let first = job.top.finishes.first();
    let plain = job.top.cutouts.is_empty() && job.top.finishes.iter().all(|f| Some(f) == first);
    let ways = if plain { b.len() } else { 1 };
    (0..ways).any(near)
}
