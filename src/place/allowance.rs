//! The stone that the saw leaves on each edge and corner of a job's top.

use crate::job::{Finish, Job, Part};

/// The allowance on a rounded or clipped corner: the largest of its edges' finishes; that of a
/// polished edge when all of them are the slab's own. Corners that have used up the edge between
/// them are one curve and share their edges.
pub(super) fn corner_allowance(job: &Job, corner: usize) -> f64 {
    if let Some(left_mm) = job.top.ready_mm(Part::Corner(corner)) {
        return left_mm;
    }
    let (shape, n) = (&job.top.shape, job.top.shape.count());
    let used_up = |edge: usize| shape.edge_seg(edge).is_none();
    // Past every used-up edge, up to and with the next straight one.
    let along = |edges: Vec<usize>| {
        let straight = edges.iter().position(|e| !used_up(*e));
        let count = straight.map_or(n, |at| at + 1);
        edges.into_iter().take(count)
    };
    let before = along((1..=n).map(|k| (corner + n - k) % n).collect());
    let after = along((0..n).map(|k| (corner + k) % n).collect());
    let finishes: Vec<Finish> = before.chain(after).map(|e| job.top.finishes[e]).collect();
    if finishes.iter().all(|f| *f == Finish::Factory) {
        return job.top.allowances.polish_mm;
    }
    finishes
        .into_iter()
        .map(|f| job.top.allowances.for_finish(f))
        .fold(0.0, f64::max)
}

/// The allowance on an edge that is sawn: that of its finish, or of the curve that has used it up.
pub(super) fn edge_allowance(job: &Job, edge: usize) -> f64 {
    if let Some(left_mm) = job.top.ready_mm(Part::Edge(edge)) {
        return left_mm;
    }
    if job.top.shape.edge_seg(edge).is_none() {
        corner_allowance(job, edge)
    } else {
        job.top.allowances.for_finish(job.top.finishes[edge])
    }
}
