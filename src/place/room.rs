//! How much stone lies beyond an edge.

use crate::geom::{Line, Outline, Point, SAME_MM};

/// Width of the stone beyond an edge, measured square to it along its whole length, mm: the least
/// distance from the edge outwards to the slab's boundary.
///
/// `edge` runs counter-clockwise round the top from `from` to `to` (which may be the same point).
/// 0 when the edge lies on the boundary or outside it. Infinite when no boundary lies beyond.
#[must_use]
pub fn beyond(slab: &Outline, edge: &Line, from: Point, to: Point) -> f64 {
    let (first, last) = (edge.foot(from), edge.foot(to));
    let out = edge.along.right();
    let over = |p: &Point| {
        let foot = edge.foot(*p);
        foot >= first - SAME_MM && foot <= last + SAME_MM
    };
    let corners = slab
        .flattened()
        .into_iter()
        .filter(over)
        .map(|p| -edge.left_of(p));
    let rays = [from, to].into_iter().flat_map(|end| {
        let ray = Line {
            point: end,
            along: out,
        };
        slab.segs()
            .iter()
            .flat_map(move |s| s.line_crossings(&ray))
            .collect::<Vec<_>>()
    });
    corners
        .chain(rays)
        .filter(|d| *d >= -SAME_MM)
        .fold(f64::INFINITY, f64::min)
        .max(0.0)
}
