//! The stone that the saw leaves on each edge and corner of a job's top.

use crate::job::{CornerCut, Finish, Job, Part, Shape};

/// The allowance of an edge's finish; that of the curve that has used it up, where one has; what is
/// left on it where its face is on the stone already.
pub(super) fn edge_allowance(job: &Job, edge: usize) -> f64 {
    if let Some(left_mm) = job.top.ready_mm(Part::Edge(edge)) {
        return left_mm;
    }
    if job.top.shape.edge_seg(edge).is_none() {
        let all = job
            .top
            .finishes
            .iter()
            .map(|f| job.top.allowances.for_finish(*f));
        corner_allowance(job, edge, &all.collect::<Vec<_>>())
    } else {
        job.top.allowances.for_finish(job.top.finishes[edge])
    }
}

/// The allowance on a treated corner, `edges` being those of the edges. Corners that have used up the
/// edge between them are one curve and share their edges.
///
/// Bulging: the largest of its edges' finishes; that of a polished edge when all of them are the
/// slab's own. An inside corner that is rounded: the smallest of its edges' allowances, or the curve
/// would not reach them.
pub(super) fn corner_allowance(job: &Job, corner: usize, edges: &[f64]) -> f64 {
    if let Some(left_mm) = job.top.ready_mm(Part::Corner(corner)) {
        return left_mm;
    }
    let shape = &job.top.shape;
    let around = edges_of_curve(shape, corner);
    if shape.is_inside_corner(corner) && matches!(shape.corner_cuts()[corner], CornerCut::Round(_))
    {
        let each = around.iter().map(|e| edges[*e]);
        return each.fold(f64::INFINITY, f64::min);
    }
    let finishes = around.iter().map(|e| job.top.finishes[*e]);
    if finishes.clone().all(|f| f == Finish::Factory) {
        return job.top.allowances.polish_mm;
    }
    finishes
        .map(|f| job.top.allowances.for_finish(f))
        .fold(0.0, f64::max)
}

/// The edges on either side of a corner: past every used-up one, up to and with the next that is left.
fn edges_of_curve(shape: &Shape, corner: usize) -> Vec<usize> {
    let n = shape.count();
    let up_to_one_left = |edges: Vec<usize>| {
        let left = edges.iter().position(|e| shape.edge_seg(*e).is_some());
        let count = left.map_or(n, |at| at + 1);
        edges.into_iter().take(count)
    };
    let before = up_to_one_left((1..=n).map(|k| (corner + n - k) % n).collect());
    let after = up_to_one_left((0..n).map(|k| (corner + k) % n).collect());
    before.chain(after).collect()
}
