//! The long direction of a stone, and its own frame along it.

use crate::geom::hull::Hull;
use crate::geom::{Point, Pose, Region, Vector};

/// Hull edges shorter than this, mm, are rounding and have no direction.
const NO_DIRECTION_MM: f64 = 1e-3;

/// A frame along a stone: `u` from one end along the long direction, `v` across it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axes {
    origin: Point,
    along: Vector,
    length_mm: f64,
    width_mm: f64,
}

impl Axes {
    /// The frame whose `v` spans the least width of the stone, over all directions.
    ///
    /// `u` runs to the right, or up when the stone lies upright.
    #[must_use]
    pub fn of(region: &Region) -> Self {
        let hull = Hull::around(region.outer.flattened()).0;
        let next = hull.iter().cycle().skip(1);
        let narrowest = hull
            .iter()
            .zip(next)
            .map(|(a, b)| *b - *a)
            .filter(|edge| edge.length() > NO_DIRECTION_MM)
            .map(|edge| rightwards(edge.unit()))
            .map(|along| (span(&hull, along.left()), along))
            .reduce(|best, next| {
                if next.0 < best.0 - crate::geom::SAME_MM {
                    next
                } else {
                    best
                }
            });
        let along = narrowest.map_or(Vector::new(1.0, 0.0), |n| n.1);
        Self::along(region, along)
    }

    /// The frame with a given direction of length 1. Its lengths are exact, arcs included.
    #[must_use]
    pub fn along(region: &Region, along: Vector) -> Self {
        let turned = region
            .outer
            .posed(Pose::new(-along.angle(), Vector::default()))
            .bounds();
        Self {
            origin: Point::ORIGIN + along * turned.min.x + along.left() * turned.min.y,
            along,
            length_mm: turned.width(),
            width_mm: turned.height(),
        }
    }

    /// The frame a quarter turn on: its `u` runs across the stone.
    #[must_use]
    pub fn across(&self, region: &Region) -> Self {
        Self::along(region, self.along.left())
    }

    /// A point of the slab's frame as `(u, v)`, mm.
    #[must_use]
    pub fn seen(&self, point: Point) -> (f64, f64) {
        let d = point - self.origin;
        (d.dot(self.along), d.dot(self.along.left()))
    }

    /// The point of the slab's frame at `(u, v)`.
    #[must_use]
    pub fn point(&self, u: f64, v: f64) -> Point {
        self.origin + self.along * u + self.along.left() * v
    }

    /// The long direction, length 1.
    #[must_use]
    pub fn direction(&self) -> Vector {
        self.along
    }

    /// Length along `u`, mm.
    #[must_use]
    pub fn length_mm(&self) -> f64 {
        self.length_mm
    }

    /// Width along `v`, mm.
    #[must_use]
    pub fn width_mm(&self) -> f64 {
        self.width_mm
    }
}

/// How far points spread along an axis, mm.
fn span(points: &[Point], axis: Vector) -> f64 {
    let along = points.iter().map(|p| p.to_vector().dot(axis));
    let (low, high) = along.fold((f64::INFINITY, f64::NEG_INFINITY), |s, d| {
        (s.0.min(d), s.1.max(d))
    });
    high - low
}

fn rightwards(along: Vector) -> Vector {
    let upright = along.x.abs() <= 1e-9;
    if along.x < 0.0 && !upright || upright && along.y < 0.0 {
        -along
    } else {
        along
    }
}
