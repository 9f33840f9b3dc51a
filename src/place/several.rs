//! A few places that differ, the best of each kind.

use std::f64::consts::TAU;

use crate::job::Job;

use super::search::{Closer, Promising, SAME_WORK_MM2, best};
use super::{EdgeUse, NoFit, Placement};

/// Two places with the same edges on the slab's and the same turn are different when one lies farther
/// than this from the other, mm (judgement: a hand's breadth).
const APART_MM: f64 = 100.0;
/// Turns closer than this are one, radians (judgement: half a degree).
const SAME_TURN: f64 = 0.0087;

/// The best few places that differ from each other, in the order of their work; the first is the one
/// that [`place`](super::place) takes. Two places differ by the edges that lie on the slab's, by their
/// turn, or by lying well apart. A place that the job file has fixed is not looked at.
///
/// # Errors
/// [`NoFit`] when there is none.
pub fn several(job: &Job, count: usize) -> Result<Vec<Placement>, NoFit> {
    let first = best(job).map_err(|miss| miss.in_words(job))?;
    let mut found = vec![first];
    let mut closer = Closer::of(job);
    let mut promising = Promising::of(job);
    while let Some(turn) = promising.next(limit(&found, count)) {
        closer.look(turn, |placement| {
            add(&mut found, placement, count);
            limit(&found, count)
        });
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
fn add(found: &mut Vec<Placement>, placement: Placement, count: usize) {
    let better = |q: &Placement| placement.work_mm2 < q.work_mm2 - SAME_WORK_MM2;
    if found[..1].iter().any(|q| same_kind(q, &placement)) {
        return;
    }
    if let Some(at) = found.iter().position(|q| same_kind(q, &placement)) {
        if !better(&found[at]) {
            return;
        }
        found.retain(|q| !same_kind(q, &placement));
    }
    let at = found.iter().skip(1).position(better);
    found.insert(at.map_or(found.len(), |at| at + 1), placement);
    found.truncate(count.max(1));
}

fn same_kind(a: &Placement, b: &Placement) -> bool {
    let off = (a.pose.turn - b.pose.turn).rem_euclid(TAU);
    let apart = (a.pose.shift - b.pose.shift).length();
    off.min(TAU - off) <= SAME_TURN && apart <= APART_MM && flush(a) == flush(b)
}

/// The pairs of edges, the top's and the slab's, that lie on each other.
fn flush(placement: &Placement) -> Vec<(usize, usize)> {
    let uses = placement.uses.iter().enumerate();
    uses.filter_map(|(edge, used)| match used {
        EdgeUse::Flush { slab_edge, .. } => Some((edge, *slab_edge)),
        _ => None,
    })
    .collect()
}
