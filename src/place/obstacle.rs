//! The shifts at which the top would touch an edge of the slab or the clearance of a flaw.

use crate::geom::hull::Hull;
use crate::geom::{Outline, Point, Vector};
use crate::job::{Flaw, FlawPlace};

/// Corners of the polygon that stands for a round clearance; it lies outside the circle.
const CIRCLE_CORNERS: u32 = 32;

/// Shifts of a convex part that make it cross the slab's boundary, one hull for each boundary piece.
#[must_use]
pub fn of_boundary(slab: &Outline, part: &[Point]) -> Vec<Hull> {
    let ring = slab.flattened();
    let next = ring.iter().cycle().skip(1);
    ring.iter()
        .zip(next)
        .map(|(a, b)| Hull::shifts_that_touch(&[*a, *b], part))
        .collect()
}

/// Shifts of a convex part that make it touch a flaw's clearance.
#[must_use]
pub fn of_flaw(flaw: &Flaw, part: &[Point]) -> Vec<Hull> {
    convex_parts(flaw)
        .iter()
        .map(|zone| Hull::shifts_that_touch(zone, part))
        .collect()
}

/// A flaw and its clearance as convex pieces. The inside of an area is not among them: a top that
/// lies wholly inside one is told by [`distance`].
fn convex_parts(flaw: &Flaw) -> Vec<Vec<Point>> {
    match &flaw.place {
        FlawPlace::Spot { at, across_mm } => vec![disc(*at, across_mm / 2.0 + flaw.clear_mm)],
        FlawPlace::Line(points) => points
            .windows(2)
            .map(|w| capsule(w[0], w[1], flaw.clear_mm))
            .collect(),
        FlawPlace::Area(outline) => {
            let ring = outline.flattened();
            let next = ring.iter().cycle().skip(1);
            ring.iter()
                .zip(next)
                .map(|(a, b)| capsule(*a, *b, flaw.clear_mm))
                .collect()
        }
    }
}

fn disc(at: Point, radius: f64) -> Vec<Point> {
    let step = std::f64::consts::TAU / f64::from(CIRCLE_CORNERS);
    let outside = radius / (step / 2.0).cos();
    (0..CIRCLE_CORNERS)
        .map(|i| at + Vector::at_angle(f64::from(i) * step) * outside)
        .collect()
}

fn capsule(a: Point, b: Point, radius: f64) -> Vec<Point> {
    let mut points = disc(a, radius);
    points.extend(disc(b, radius));
    points
}

/// Distance from a top to a flaw itself, mm, without its clearance: 0 when they touch.
#[must_use]
pub fn distance(top: &Outline, flaw: &Flaw) -> f64 {
    let inside = |p: Point| top.depth(p) >= 0.0;
    match &flaw.place {
        FlawPlace::Spot { at, .. } if inside(*at) => 0.0,
        FlawPlace::Spot { at, across_mm } => (top.distance(*at) - across_mm / 2.0).max(0.0),
        FlawPlace::Line(points) if points.iter().any(|p| inside(*p)) => 0.0,
        FlawPlace::Line(points) => points
            .windows(2)
            .map(|w| between(top, &[crate::geom::Seg::Line(w[0], w[1])]))
            .fold(f64::INFINITY, f64::min),
        FlawPlace::Area(outline) => {
            let swallowed =
                outline.depth(top.segs()[0].start()) >= 0.0 || inside(outline.segs()[0].start());
            if swallowed {
                0.0
            } else {
                between(top, outline.segs())
            }
        }
    }
}

/// Distance between a top's boundary and some pieces, mm: 0 when they meet. Arcs are probed at
/// their chords' ends.
fn between(top: &Outline, pieces: &[crate::geom::Seg]) -> f64 {
    let meets = |p: &crate::geom::Seg| top.segs().iter().any(|s| !s.meets(p).is_empty());
    if pieces.iter().any(meets) {
        return 0.0;
    }
    let from_top = top
        .flattened()
        .into_iter()
        .flat_map(|p| pieces.iter().map(move |s| s.distance(p)));
    let to_top = pieces
        .iter()
        .flat_map(|s| {
            s.flattened(crate::geom::FLATTEN_MM)
                .into_iter()
                .chain([s.end()])
        })
        .map(|p| top.distance(p));
    from_top.chain(to_top).fold(f64::INFINITY, f64::min)
}
