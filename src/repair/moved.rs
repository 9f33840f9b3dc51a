//! A figure with its edges moved.

use crate::job::{CornerCut, Shape};

/// Half the change of direction at a corner, radians.
pub(super) fn half_turn(shape: &Shape, corner: usize) -> f64 {
    let count = shape.count();
    let (before, after) = (
        shape.edge_line((corner + count - 1) % count).along,
        shape.edge_line(corner).along,
    );
    before.cross(after).atan2(before.dot(after)) / 2.0
}

/// A shape with its edges moved in; roundings keep their radius where there is room for it, else they
/// shrink with the edges.
pub(super) fn moved_in(shape: &Shape, by: &[f64], cuts: Vec<CornerCut>) -> Option<Shape> {
    if let Some(kept) = moved_in_exactly(shape, by, cuts) {
        return Some(kept);
    }
    let back: Vec<f64> = by.iter().map(|m| -m).collect();
    shape.grown(&back).ok()
}

/// The same with the corners' treatments as they are given.
pub(super) fn moved_in_exactly(shape: &Shape, by: &[f64], cuts: Vec<CornerCut>) -> Option<Shape> {
    let sharp = vec![CornerCut::Sharp; shape.count()];
    let base = Shape::bowed(
        shape.naming(),
        shape.corners().to_vec(),
        sharp,
        shape.bows().to_vec(),
    )
    .ok()?;
    let back: Vec<f64> = by.iter().map(|m| -m).collect();
    let moved = base.grown(&back).ok()?;
    Shape::bowed(
        shape.naming(),
        moved.corners().to_vec(),
        cuts,
        moved.bows().to_vec(),
    )
    .ok()
}
