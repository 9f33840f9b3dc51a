//! How far a boundary is from other lines.

use crate::geom::{Bounds, Outline, Seg};

/// Distance between a top's boundary and some pieces, mm: 0 when they meet. Exact; pairs whose boxes lie
/// farther apart than the nearest so far are passed over.
pub(super) fn between(top: &Outline, pieces: &[Seg]) -> f64 {
    let boxes: Vec<Bounds> = top.segs().iter().map(Seg::bounds).collect();
    let mut nearest = f64::INFINITY;
    for piece in pieces {
        let own = piece.bounds();
        for (seg, around) in top.segs().iter().zip(&boxes) {
            if around.gap(&own) < nearest {
                nearest = nearest.min(seg.gap(piece));
            }
        }
    }
    nearest
}
