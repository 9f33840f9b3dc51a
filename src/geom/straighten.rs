//! Straight-sided figures that stand in for an outline with arcs, on a known side of it.

use std::f64::consts::FRAC_PI_4;

use super::arc::Arc;
use super::outline::Outline;
use super::point::{Line, Point, Vector};
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

/// A ring within a counter-clockwise ring, with fewer corners: the marks that plunges leave are cut off, no more
/// than `tolerance` mm deep each. A corner that sticks out is cut off by the chord between its neighbours; two
/// inside corners are joined where the sides beyond them meet. Cost: a few passes over the corners.
#[must_use]
pub(super) fn coarsened(mut ring: Vec<Point>, tolerance: f64) -> Vec<Point> {
    loop {
        let before = ring.len();
        ring = without_tips(&ring, tolerance);
        ring = with_inside_corners_joined(&ring, tolerance);
        if ring.len() == before || ring.len() < 4 {
            return ring;
        }
    }
}

/// How far `b` lies to the right of the line from `a` to `c`, mm: outside for a counter-clockwise ring.
fn sticks_out(a: Point, b: Point, c: Point) -> f64 {
    let chord = c - a;
    (b - a).cross(chord) / chord.length().max(f64::MIN_POSITIVE)
}

/// Leaves out corners that stick out by no more than the tolerance, never two next to each other.
fn without_tips(ring: &[Point], tolerance: f64) -> Vec<Point> {
    let n = ring.len();
    let mut kept: Vec<Point> = Vec::with_capacity(n);
    let mut left_out = false;
    for (i, b) in ring.iter().enumerate() {
        let (a, c) = (ring[(i + n - 1) % n], ring[(i + 1) % n]);
        let is_tip = (0.0..=tolerance).contains(&sticks_out(a, *b, c));
        left_out = is_tip && !left_out && !(i + 1 == n && kept.first() != ring.first());
        if !left_out {
            kept.push(*b);
        }
    }
    kept
}

/// Joins two inside corners next to each other where the sides beyond them meet, no farther than the tolerance
/// from the side between them.
fn with_inside_corners_joined(ring: &[Point], tolerance: f64) -> Vec<Point> {
    let n = ring.len();
    let mut joined: Vec<Point> = Vec::with_capacity(n);
    let mut i = 0;
    while i < n {
        let at = |k: usize| ring[(i + k) % n];
        let meeting = (i > 0 && i + 2 < n)
            .then(|| meeting([ring[i - 1], at(0), at(1), at(2)], tolerance))
            .flatten();
        match meeting {
            Some(point) if joined.last() == Some(&ring[i - 1]) => {
                joined.push(point);
                i += 2;
            }
            _ => {
                joined.push(at(0));
                i += 1;
            }
        }
    }
    joined
}

fn meeting([a, b, c, d]: [Point; 4], tolerance: f64) -> Option<Point> {
    let inside = |p: Point, q: Point, r: Point| (q - p).cross(r - q) < 0.0;
    if !inside(a, b, c) || !inside(b, c, d) {
        return None;
    }
    let meets = Line::through(a, b).meet(&Line::through(d, c))?;
    let deep = -sticks_out(b, meets, c);
    (deep > 0.0 && deep <= tolerance).then_some(meets)
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
