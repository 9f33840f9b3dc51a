//! How much stone lies beyond an edge.

use crate::geom::{Line, Outline, Point, SAME_MM, Seg, Side};

use super::tolerance::NO_STRIP_MM;

/// How far along a ray it is looked whether it leads into the stone, mm; far above rounding.
const FIRST_STEP_MM: f64 = 1e-3;
/// Sine of the angle between a sawn face and an edge of the slab from which on the slab's edge ends
/// the strip and does not make it narrow (judgement: 30°; below that the end is a sliver).
pub(super) const ENDS_A_STRIP: f64 = 0.5;

/// Width of the stone beyond an edge, measured square to it along its whole length, mm: the least
/// distance from the edge outwards to the slab's boundary.
///
/// `edge` runs counter-clockwise round the top from `from` to `to` (which may be the same point).
/// 0 when the boundary touches the edge, or lies up to `NO_STRIP_MM` inside it. Infinite when no boundary lies beyond. Slab
/// edges that cross the strip at 30° or more do not count: the strip ends there at its full width.
#[must_use]
pub fn beyond(slab: &Outline, edge: &Line, from: Point, to: Point) -> f64 {
    let (first, last) = (edge.foot(from), edge.foot(to));
    let over = |p: &Point| {
        let foot = edge.foot(*p);
        foot >= first - SAME_MM && foot <= last + SAME_MM
    };
    let corners = slab
        .flattened()
        .into_iter()
        .filter(over)
        .map(|p| -edge.left_of(p));
    let starts = [from, from.midpoint(to), to].into_iter();
    let starts = starts.take(if from == to { 1 } else { 3 });
    let rays = starts.flat_map(|start| along_ray(slab, start, edge));
    corners
        .chain(rays)
        .filter(|d| *d >= -NO_STRIP_MM)
        .fold(f64::INFINITY, f64::min)
        .max(0.0)
}

/// Where a ray square to the edge meets slab edges that make the strip narrow, mm from its start.
fn along_ray(slab: &Outline, start: Point, edge: &Line) -> Vec<f64> {
    let out = edge.along.right();
    let ray = Line {
        point: start,
        along: out,
    };
    let narrows = |s: &&Seg| match s {
        Seg::Line(a, b) => (*b - *a).unit().dot(out).abs() < ENDS_A_STRIP,
        Seg::Arc(_) => true,
    };
    let narrowing = slab.segs().iter().filter(narrows);
    let mut crossings: Vec<f64> = narrowing.flat_map(|s| s.line_crossings(&ray)).collect();
    // From a start that lies on the slab's own edge the ray may lead into the stone: the room is
    // measured to where it leaves again.
    let at_start = |d: &f64| d.abs() <= SAME_MM;
    if crossings.iter().any(at_start) && slab.side(ray.at(FIRST_STEP_MM)) == Side::Inside {
        crossings.retain(|d| !at_start(d));
    }
    crossings
}
