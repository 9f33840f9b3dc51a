//! Convex polygons: hulls, sums, and lines through them.

use super::point::{Bounds, Line, Point, Vector};

/// Corners of a clipped hull closer than this are one, mm.
const ROUNDING_MM: f64 = 1e-9;

/// A convex ring of points, counter-clockwise, at least three unless the input had fewer.
#[derive(Clone, Debug, PartialEq)]
pub struct Hull(pub Vec<Point>);

impl Hull {
    /// The convex hull of points. Collinear points are dropped. n log n.
    #[must_use]
    pub fn around(mut points: Vec<Point>) -> Self {
        points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
        points.dedup();
        if points.len() < 3 {
            return Self(points);
        }
        let half = |points: &mut dyn Iterator<Item = Point>| {
            let mut chain: Vec<Point> = Vec::new();
            for p in points {
                while chain.len() > 1 && {
                    let (a, b) = (chain[chain.len() - 2], chain[chain.len() - 1]);
                    (b - a).cross(p - b) <= 0.0
                } {
                    chain.pop();
                }
                chain.push(p);
            }
            chain.pop();
            chain
        };
        let mut lower = half(&mut points.iter().copied());
        lower.extend(half(&mut points.iter().rev().copied()));
        Self(lower)
    }

    /// The upright rectangle that is a box.
    #[must_use]
    pub fn upright(bounds: &Bounds) -> Self {
        let (low, high) = (bounds.min, bounds.max);
        Self(vec![
            low,
            Point::new(high.x, low.y),
            high,
            Point::new(low.x, high.y),
        ])
    }

    /// The shifts at which a convex shape touches or covers some part of a convex zone: the zone
    /// with the shape turned inside out laid round it. Linear in the corners.
    #[must_use]
    pub fn shifts_that_touch(zone: &Self, shape: &Self) -> Self {
        let (n, m) = (zone.0.len(), shape.0.len());
        if n == 0 || m == 0 {
            return Self(Vec::new());
        }
        // Both rings are walked from their lowest corner; the shape's turned about is from its highest.
        let (mut i, mut j) = (zone.lowest(1.0), shape.lowest(-1.0));
        let (mut of_zone, mut of_shape) = (0, 0);
        let mut ring = Vec::with_capacity(n + m);
        while of_zone < n || of_shape < m {
            ring.push(Point::ORIGIN + (zone.0[i] - shape.0[j]));
            let (a, b) = (zone.edge(i), -shape.edge(j));
            let turn = a.cross(b);
            let (first, second) = (of_zone < n, of_shape < m);
            if first && (turn >= 0.0 || !second) {
                i = (i + 1) % n;
                of_zone += 1;
            }
            if second && (turn <= 0.0 || !first) {
                j = (j + 1) % m;
                of_shape += 1;
            }
        }
        Self(ring)
    }

    /// The lowest corner, the leftmost of them; the highest and rightmost for a `sign` of −1.
    fn lowest(&self, sign: f64) -> usize {
        let key = |p: &Point| (sign * p.y, sign * p.x);
        let corners = self.0.iter().enumerate();
        let lowest = corners.min_by(|(_, a), (_, b)| {
            let (a, b) = (key(a), key(b));
            a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
        });
        lowest.map_or(0, |(i, _)| i)
    }

    fn edge(&self, from: usize) -> Vector {
        self.0[(from + 1) % self.0.len()] - self.0[from]
    }

    /// How far it reaches in a direction of length 1, mm from the origin.
    #[must_use]
    pub fn reach(&self, direction: Vector) -> f64 {
        let along = self.0.iter().map(|p| p.to_vector().dot(direction));
        along.fold(f64::NEG_INFINITY, f64::max)
    }

    /// The part that lies to the left of a line or within `slack` mm of it; empty when none does.
    #[must_use]
    pub fn left_of(&self, line: &Line, slack: f64) -> Self {
        let n = self.0.len();
        let depth: Vec<f64> = self.0.iter().map(|p| line.left_of(*p) + slack).collect();
        let mut kept = Vec::with_capacity(n + 1);
        for i in 0..n {
            let next = (i + 1) % n;
            if depth[i] >= 0.0 {
                kept.push(self.0[i]);
            }
            if (depth[i] > 0.0 && depth[next] < 0.0) || (depth[i] < 0.0 && depth[next] > 0.0) {
                let share = depth[i] / (depth[i] - depth[next]);
                kept.push(self.0[i] + (self.0[next] - self.0[i]) * share);
            }
        }
        // What two clips leave closer together than rounding can tell has no direction.
        kept.dedup_by(|a, b| a.distance(*b) <= ROUNDING_MM);
        while kept.len() > 1 && kept[0].distance(kept[kept.len() - 1]) <= ROUNDING_MM {
            kept.pop();
        }
        Self(kept)
    }

    /// What lies at least `by_mm` inside every side; empty when nothing does. Corners × sides.
    #[must_use]
    pub fn eroded(&self, by_mm: f64) -> Self {
        let inwards = |left: Self, side: Line| left.left_of(&side, -by_mm);
        let left = self.sides().fold(self.clone(), inwards);
        if left.0.len() < 3 {
            Self(Vec::new())
        } else {
            left
        }
    }

    /// True when a side of either has all of the other on its outside or touching it: nothing of one
    /// lies inside the other. Exact for convex figures with area. Corners × corners.
    #[must_use]
    pub fn keeps_clear_of(&self, other: &Self) -> bool {
        let outside = |of: &Self, (a, b): (Point, Point)| {
            a != b && of.0.iter().all(|p| (b - a).cross(*p - a) <= 0.0)
        };
        self.edges().any(|edge| outside(other, edge))
            || other.edges().any(|edge| outside(self, edge))
    }

    /// The hull carried round the origin by an angle.
    #[must_use]
    pub fn turned(&self, angle: f64) -> Self {
        let (sin, cos) = angle.sin_cos();
        let turn = |p: &Point| Point::new(cos * p.x - sin * p.y, sin * p.x + cos * p.y);
        Self(self.0.iter().map(turn).collect())
    }

    /// The hull with another point as its origin.
    #[must_use]
    pub fn about(&self, centre: Point) -> Self {
        let by = centre.to_vector();
        Self(self.0.iter().map(|p| *p - by).collect())
    }

    /// Its sides, the hull to the left of each; a corner named twice gives none.
    pub fn sides(&self) -> impl Iterator<Item = Line> {
        self.edges()
            .filter(|(a, b)| a != b)
            .map(|(a, b)| Line::through(a, b))
    }

    /// Its edges, counter-clockwise.
    pub fn edges(&self) -> impl Iterator<Item = (Point, Point)> {
        let next = self.0.iter().cycle().skip(1);
        self.0.iter().zip(next).map(|(a, b)| (*a, *b))
    }
}

/// What lies farther than a margin inside a convex hull, made ready for many questions.
#[derive(Clone, Debug)]
pub struct Zone {
    bounds: Bounds,
    /// For each side its direction outwards and how far out it lies.
    sides: Vec<(Vector, f64)>,
}

impl Zone {
    /// What lies farther inside a hull than a margin, mm; with a margin below 0, also what lies so
    /// far outside. Nothing lies in a hull without area.
    #[must_use]
    pub fn inside(hull: &Hull, margin_mm: f64) -> Self {
        let side = |line: Line| {
            let out = line.along.right();
            (out, line.point.to_vector().dot(out) - margin_mm)
        };
        let area = hull.0.len() > 2;
        let by = Vector::new(margin_mm, margin_mm);
        let around = Bounds::around(hull.0.iter().copied());
        Self {
            bounds: Bounds {
                min: around.min + by,
                max: around.max - by,
            },
            sides: if area {
                hull.sides().map(side).collect()
            } else {
                Vec::new()
            },
        }
    }

    /// True when a point lies in it.
    #[must_use]
    pub fn holds(&self, p: Point) -> bool {
        let (low, high) = (self.bounds.min, self.bounds.max);
        p.x > low.x
            && p.x < high.x
            && p.y > low.y
            && p.y < high.y
            && !self.sides.is_empty()
            && self
                .sides
                .iter()
                .all(|(out, c)| out.x * p.x + out.y * p.y < *c)
    }

    /// False when its box surely keeps clear of a box.
    #[must_use]
    pub fn may_meet(&self, other: &Bounds) -> bool {
        self.bounds.min.x <= other.max.x
            && other.min.x <= self.bounds.max.x
            && self.bounds.min.y <= other.max.y
            && other.min.y <= self.bounds.max.y
    }

    /// The stretch of a line inside it, as distances along the line; nothing when the line misses
    /// it or only touches.
    #[must_use]
    pub fn stretch(&self, line: &Line) -> Option<(f64, f64)> {
        if self.sides.is_empty() {
            return None;
        }
        let (mut from, mut to) = (f64::NEG_INFINITY, f64::INFINITY);
        for (out, c) in &self.sides {
            let inside = c - (out.x * line.point.x + out.y * line.point.y);
            let leaving = out.dot(line.along);
            if leaving.abs() <= 1e-12 {
                if inside <= 0.0 {
                    return None;
                }
            } else if leaving > 0.0 {
                to = to.min(inside / leaving);
            } else {
                from = from.max(inside / leaving);
            }
            if from >= to {
                return None;
            }
        }
        Some((from, to))
    }
}
