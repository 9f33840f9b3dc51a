//! Places turned, scaled, mirrored and slanted.

use crate::geom::{Point, Vector};

/// A place (x, y) goes to (a·x + c·y + e, b·x + d·y + f), as in SVG.
#[derive(Clone, Copy, Debug)]
pub(super) struct Affine {
    pub(super) a: f64,
    pub(super) b: f64,
    pub(super) c: f64,
    pub(super) d: f64,
    pub(super) e: f64,
    pub(super) f: f64,
}

impl Affine {
    /// Nothing moves.
    pub(super) const IDENTITY: Self = Self::scale(1.0, 1.0);

    /// Scaled along both axes.
    pub(super) const fn scale(x: f64, y: f64) -> Self {
        Self {
            a: x,
            b: 0.0,
            c: 0.0,
            d: y,
            e: 0.0,
            f: 0.0,
        }
    }

    /// The unit circle about the origin made an ellipse: two half axes, turned and shifted.
    pub(super) fn ellipse(centre: Point, (rx, ry): (f64, f64), turn: f64) -> Self {
        let (sin, cos) = turn.sin_cos();
        Self {
            a: rx * cos,
            b: rx * sin,
            c: -ry * sin,
            d: ry * cos,
            e: centre.x,
            f: centre.y,
        }
    }

    /// Where a place goes.
    pub(super) fn apply(&self, p: Point) -> Point {
        Point::new(
            self.a * p.x + self.c * p.y + self.e,
            self.b * p.x + self.d * p.y + self.f,
        )
    }

    /// This after another.
    pub(super) fn after(&self, first: &Self) -> Self {
        let origin = self.apply(Point::new(first.e, first.f));
        let column = |x: f64, y: f64| Vector::new(self.a * x + self.c * y, self.b * x + self.d * y);
        let (x, y) = (column(first.a, first.b), column(first.c, first.d));
        Self {
            a: x.x,
            b: x.y,
            c: y.x,
            d: y.y,
            e: origin.x,
            f: origin.y,
        }
    }

    /// The one scale of a transformation that leaves circles circles, negative when it mirrors.
    pub(super) fn similarity(&self) -> Option<f64> {
        let (x, y) = (Vector::new(self.a, self.b), Vector::new(self.c, self.d));
        let scale = x.length();
        let even = (y.length() - scale).abs() <= 1e-9 * scale;
        let square = x.dot(y).abs() <= 1e-9 * scale * scale;
        (even && square && scale > 0.0).then(|| scale * x.cross(y).signum())
    }
}
