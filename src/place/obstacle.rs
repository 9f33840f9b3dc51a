//! The shifts at which the top would touch an edge of the slab or the clearance of a flaw.

use crate::geom::hull::Hull;
use crate::geom::{Outline, Point, Seg, Vector};
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

/// Distance from a top to a flaw itself, mm, without its clearance: negative when some of the flaw
/// lies in the top, by how deep.
#[must_use]
pub fn distance(top: &Outline, flaw: &Flaw) -> f64 {
    match &flaw.place {
        FlawPlace::Spot { at, across_mm } => -top.depth(*at) - across_mm / 2.0,
        FlawPlace::Line(points) => {
            let segs: Vec<Seg> = points.windows(2).map(|w| Seg::Line(w[0], w[1])).collect();
            from_pieces(top, &segs)
        }
        FlawPlace::Area(outline) => {
            let inside = outline.depth(top.segs()[0].start());
            let apart = from_pieces(top, outline.segs());
            if inside > 0.0 {
                apart.min(-inside)
            } else {
                apart
            }
        }
    }
}

/// Points along each piece of a flaw at which its depth in the top is probed.
const PROBES: u32 = 32;

fn from_pieces(top: &Outline, pieces: &[Seg]) -> f64 {
    let probes = |s: &Seg| -> Vec<Point> {
        (0..=PROBES)
            .map(|i| s.at(f64::from(i) / f64::from(PROBES)))
            .collect()
    };
    let depths = pieces.iter().flat_map(probes).map(|p| top.depth(p));
    let deepest = depths.fold(f64::NEG_INFINITY, f64::max);
    if deepest > 0.0 {
        -deepest
    } else {
        between(top, pieces)
    }
}

/// Distance between a top's boundary and some pieces, mm: 0 when they meet. Arcs are probed at
/// their chords' ends.
fn between(top: &Outline, pieces: &[Seg]) -> f64 {
    let meets = |p: &Seg| top.segs().iter().any(|s| !s.meets(p).is_empty());
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
