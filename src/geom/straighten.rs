//! Straight-sided figures that stand in for an outline with arcs, on a known side of it.

use std::f64::consts::FRAC_PI_4;

use super::arc::Arc;
use super::outline::Outline;
use super::point::{Point, Vector};
use super::seg::Seg;

impl Outline {
    /// The corners of a straight-sided figure that holds the outline: tangents stand for arcs that
    /// bulge, chords for hollow ones. Nowhere much farther than `tolerance` mm from it.
    #[must_use]
    pub fn enclosing(&self, tolerance: f64) -> Vec<Point> {
        let corners = |s: &Seg| s.right_corners(tolerance);
        self.segs().iter().flat_map(corners).collect()
    }

    /// The corners of a straight-sided figure that the outline holds: chords stand for arcs that
    /// bulge, tangents for hollow ones. Nowhere much farther than `tolerance` mm from it.
    #[must_use]
    pub fn enclosed(&self, tolerance: f64) -> Vec<Point> {
        let corners = |s: &Seg| s.left_corners(tolerance);
        self.segs().iter().flat_map(corners).collect()
    }
}

impl Seg {
    /// The corners of a run of straight sides that keeps on the piece or to its left, its start
    /// included and its end not; nowhere much farther than `tolerance` mm from it.
    #[must_use]
    pub fn left_corners(&self, tolerance: f64) -> Vec<Point> {
        stand_in(self, tolerance, -1.0)
    }

    /// The corners of a run of straight sides that keeps on the piece or to its right, its start
    /// included and its end not; nowhere much farther than `tolerance` mm from it.
    #[must_use]
    pub fn right_corners(&self, tolerance: f64) -> Vec<Point> {
        stand_in(self, tolerance, 1.0)
    }
}

/// The corners that stand for a piece, its start included and its end not; tangents for arcs that
/// turn the way of `tangents`.
fn stand_in(seg: &Seg, tolerance: f64, tangents: f64) -> Vec<Point> {
    match seg {
        Seg::Arc(arc) if arc.sweep * tangents > 0.0 => along_tangents(arc, tolerance),
        _ => seg.flattened(tolerance),
    }
}

fn along_tangents(arc: &Arc, tolerance: f64) -> Vec<Point> {
    // No tangent reaches over more than an eighth of a circle, or its ends would go far.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let least = (arc.sweep.abs() / FRAC_PI_4).ceil() as usize;
    let count = arc.chords_within(tolerance).max(least).max(1);
    #[allow(clippy::cast_precision_loss)]
    let step = arc.sweep / count as f64;
    let out = arc.radius / (step / 2.0).cos();
    let mut corners = vec![arc.at_angle(arc.start)];
    let mut angle = arc.start + step / 2.0;
    for _ in 0..count {
        corners.push(arc.centre + Vector::at_angle(angle) * out);
        angle += step;
    }
    corners
}
