//! Convex polygons cut by half planes: enough geometry to judge a place without the planner's.

use crate::replay::plane::{Place, apart, moved, to_stretch};

/// A straight line with the stone on its left.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Line {
    pub(crate) at: Place,
    pub(crate) along: Place,
}

impl Line {
    pub(crate) fn through(a: Place, b: Place) -> Self {
        let long = apart(a, b);
        Self {
            at: a,
            along: [(b[0] - a[0]) / long, (b[1] - a[1]) / long],
        }
    }

    pub(crate) fn out(&self) -> Place {
        [self.along[1], -self.along[0]]
    }

    /// The parallel line farther out.
    pub(crate) fn moved_out(&self, by: f64) -> Self {
        Self {
            at: moved(self.at, self.out(), by),
            along: self.along,
        }
    }

    /// Distance to the left, mm.
    pub(crate) fn left_of(&self, p: Place) -> f64 {
        self.along[0] * (p[1] - self.at[1]) - self.along[1] * (p[0] - self.at[0])
    }
}

/// The lines along the edges of a counter-clockwise polygon.
pub(crate) fn lines(ring: &[Place]) -> Vec<Line> {
    let next = ring.iter().cycle().skip(1);
    ring.iter()
        .zip(next)
        .map(|(a, b)| Line::through(*a, *b))
        .collect()
}

/// What lies left of a line.
pub(crate) fn clipped(ring: &[Place], line: &Line) -> Vec<Place> {
    let next = ring.iter().cycle().skip(1);
    let mut kept = Vec::new();
    for (a, b) in ring.iter().zip(next) {
        let (da, db) = (line.left_of(*a), line.left_of(*b));
        if da >= 0.0 {
            kept.push(*a);
        }
        if (da > 0.0 && db < 0.0) || (da < 0.0 && db > 0.0) {
            let share = da / (da - db);
            kept.push([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
        }
    }
    kept
}

/// Length of a line inside a convex polygon, mm.
pub(crate) fn chord(ring: &[Place], line: &Line) -> f64 {
    let next = ring.iter().cycle().skip(1);
    let foot = |p: Place| (p[0] - line.at[0]) * line.along[0] + (p[1] - line.at[1]) * line.along[1];
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for (a, b) in ring.iter().zip(next) {
        let (da, db) = (line.left_of(*a), line.left_of(*b));
        if (da > 1e-6) == (db > 1e-6) {
            continue;
        }
        let share = (da / (da - db)).clamp(0.0, 1.0);
        let at = foot([a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share]);
        (low, high) = (low.min(at), high.max(at));
    }
    // A line along an edge has all of the polygon on one side: nothing to saw.
    let beyond = ring.iter().any(|p| line.left_of(*p) < -1e-6);
    if beyond { (high - low).max(0.0) } else { 0.0 }
}

fn inside(ring: &[Place], p: Place) -> bool {
    lines(ring).iter().all(|l| l.left_of(p) >= 0.0)
}

fn cross(a: Place, b: Place, c: Place, d: Place) -> bool {
    let side = |p: Place, q: Place, r: Place| {
        (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
    };
    side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0
}

/// Distance between a convex polygon and a path of points, mm; 0 when they touch.
pub(crate) fn gap(ring: &[Place], path: &[Place]) -> f64 {
    if path.iter().any(|p| inside(ring, *p)) {
        return 0.0;
    }
    let edges: Vec<(Place, Place)> = ring
        .iter()
        .zip(ring.iter().cycle().skip(1))
        .map(|(a, b)| (*a, *b))
        .collect();
    let mut least = f64::INFINITY;
    for (a, b) in &edges {
        for p in path {
            least = least.min(to_stretch(*p, *a, *b));
        }
        for w in path.windows(2) {
            if cross(*a, *b, w[0], w[1]) {
                return 0.0;
            }
            least = least.min(to_stretch(*a, w[0], w[1]));
        }
    }
    least
}
