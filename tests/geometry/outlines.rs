//! Random outlines of lines and arcs.

use kerfwright::geom::{Outline, Point, Seg, Vector};
use kerfwright::job::{CornerCut, Naming, Shape};
use proptest::prelude::*;

/// A corner: how far from the middle, as a share, and what is done to it.
type Corner = (f64, CornerCut);

/// Convex and hollow figures with rounded and clipped corners, about anywhere.
pub(crate) fn outline() -> impl Strategy<Value = Outline> {
    let corner = (0.45..1.0_f64, 0..3_u8, 0.05..0.45_f64);
    let at = (-3000.0..3000.0_f64, -3000.0..3000.0_f64);
    (
        prop::collection::vec(corner, 3..9),
        at,
        60.0..1500.0_f64,
        0.0..6.2_f64,
    )
        .prop_filter_map("no outline", |(corners, at, size, turn)| {
            let count = corners.len() as f64;
            let middle = Point::new(at.0, at.1);
            let ring: Vec<Point> = corners
                .iter()
                .enumerate()
                .map(|(i, c)| {
                    let angle = turn + std::f64::consts::TAU * i as f64 / count;
                    middle + Vector::at_angle(angle) * (c.0 * size)
                })
                .collect();
            let cuts: Vec<Corner> = corners
                .iter()
                .enumerate()
                .map(|(i, c)| (c.0, cut(&ring, i, c.1, c.2)))
                .collect();
            let cuts = cuts.into_iter().map(|c| c.1).collect();
            let shape = Shape::new(Naming::Numbers, ring, cuts).ok()?;
            Some(shape.outline().clone())
        })
}

/// A treatment that takes up to a share of the shorter edge beside the corner.
fn cut(ring: &[Point], i: usize, kind: u8, share: f64) -> CornerCut {
    let n = ring.len();
    let (before, here, after) = (ring[(i + n - 1) % n], ring[i], ring[(i + 1) % n]);
    let back = share * before.distance(here).min(here.distance(after));
    let (u, v) = ((before - here).unit(), (after - here).unit());
    let half = u.dot(v).clamp(-1.0, 1.0).acos() / 2.0;
    match kind {
        0 => CornerCut::Sharp,
        1 => CornerCut::Clip(back),
        _ => CornerCut::Round(back * half.tan()),
    }
}

/// Outlines without inside corners and without corners at all: every corner rounded.
pub(crate) fn smooth() -> impl Strategy<Value = Outline> {
    let size = (200.0..2500.0_f64, 200.0..900.0_f64);
    (size, 0.1..0.5_f64, 0.1..0.5_f64, -0.2..0.2_f64).prop_filter_map(
        "no outline",
        |((long, deep), a, b, skew)| {
            let short = long.min(deep);
            let ring = vec![
                Point::new(0.0, 0.0),
                Point::new(long, 0.0),
                Point::new(long + skew * short, deep),
                Point::new(skew * short, deep),
            ];
            let cuts = [a, b, a, b]
                .map(|s| CornerCut::Round(s * short * 0.6))
                .to_vec();
            let shape = Shape::new(Naming::Numbers, ring, cuts).ok()?;
            Some(shape.outline().clone())
        },
    )
}

/// Whether some piece is an arc.
pub(crate) fn has_arc(outline: &Outline) -> bool {
    outline.segs().iter().any(|s| matches!(s, Seg::Arc(_)))
}
