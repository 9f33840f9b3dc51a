//! How much stone lies beyond an edge.

use crate::geom::{Line, Outline, Point, SAME_MM, Side};

/// How far along a ray it is looked whether it leads into the stone, mm; far above rounding.
const FIRST_STEP_MM: f64 = 1e-3;

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
        // From an end that lies on the slab's own edge a ray may lead into the stone: the room is
        // measured to where it leaves again.
        let leads_in = slab.side(ray.at(FIRST_STEP_MM)) == Side::Inside;
        slab.segs()
            .iter()
            .flat_map(move |s| s.line_crossings(&ray))
            .filter(move |d| !(leads_in && d.abs() <= SAME_MM))
            .collect::<Vec<_>>()
    });
    corners
        .chain(rays)
        .filter(|d| *d >= -SAME_MM)
        .fold(f64::INFINITY, f64::min)
        .max(0.0)
}
