//! An outline with holes in it.

use super::outline::{Outline, Side};
use super::point::Point;

/// One connected piece of stone: an outer boundary and the holes in it.
#[derive(Clone, Debug, PartialEq)]
pub struct Region {
    /// The outer boundary.
    pub outer: Outline,
    /// Holes, each an outline of its own, apart from each other and inside the outer one.
    pub holes: Vec<Outline>,
}

impl Region {
    /// A region without holes.
    #[must_use]
    pub const fn solid(outer: Outline) -> Self {
        Self {
            outer,
            holes: Vec::new(),
        }
    }

    /// Area of stone, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        self.first_moments().0
    }

    /// Balance point of an even plate.
    #[must_use]
    pub fn centroid(&self) -> Point {
        let (area, x, y) = self.first_moments();
        Point::new(x / area, y / area)
    }

    /// Area and its first moments about the origin: mm², mm³, mm³.
    #[must_use]
    pub fn first_moments(&self) -> (f64, f64, f64) {
        self.holes
            .iter()
            .map(Outline::first_moments)
            .fold(self.outer.first_moments(), |a, h| {
                (a.0 - h.0, a.1 - h.1, a.2 - h.2)
            })
    }

    /// Where a point lies with respect to the stone.
    #[must_use]
    pub fn side(&self, point: Point) -> Side {
        let mut side = self.outer.side(point);
        for hole in &self.holes {
            side = match (side, hole.side(point)) {
                (Side::Inside, Side::Inside) => Side::Outside,
                (Side::Inside, Side::On) => Side::On,
                (side, _) => side,
            };
        }
        side
    }

    /// Every boundary: the outer one first, then the holes.
    pub fn boundaries(&self) -> impl Iterator<Item = &Outline> {
        std::iter::once(&self.outer).chain(&self.holes)
    }
}
