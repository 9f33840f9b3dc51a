//! The field of a practice cut: a rectangle laid into an offcut.

use crate::geom::{Line, Outline, Point, SAME_MM, Seg, Side, Vector};

use super::practice::{BETWEEN_MM, IN_OFFCUT_MM};

/// A rectangle: from its first corner along one side, the other side to its right.
#[derive(Clone)]
pub(super) struct Field {
    pub(super) from: Point,
    pub(super) along: Vector,
    pub(super) long: f64,
    pub(super) wide: f64,
}

impl Field {
    fn corners(&self) -> [Point; 4] {
        let (long, right) = (self.along * self.long, self.along.right() * self.wide);
        let a = self.from;
        [a, a + right, a + right + long, a + long]
    }

    fn sides(&self) -> [Seg; 4] {
        let c = self.corners();
        [0, 1, 2, 3].map(|i| Seg::Line(c[i], c[(i + 1) % 4]))
    }

    /// Shortest distance between the field's boundary and an outline's, mm: to chords of an arc.
    pub(super) fn distance(&self, outline: &Outline) -> f64 {
        let sides = self.sides();
        let near = |p: Point| {
            sides
                .iter()
                .map(|s| s.distance(p))
                .fold(f64::INFINITY, f64::min)
        };
        let theirs = outline.segs().iter().flat_map(|s| match s {
            Seg::Line(a, _) => vec![*a],
            // A tenth of a millimetre is nothing to a clearance.
            Seg::Arc(_) => s.flattened(0.1),
        });
        let ours = self.corners().into_iter().map(|c| outline.distance(c));
        theirs.map(near).chain(ours).fold(f64::INFINITY, f64::min)
    }

    fn crosses(&self, outline: &Outline) -> bool {
        let sides = self.sides();
        outline
            .segs()
            .iter()
            .any(|s| sides.iter().any(|side| !side.meets(s).is_empty()))
    }

    pub(super) fn lies_in(&self, ring: &Outline) -> bool {
        ring.side(self.from) == Side::Inside
            && !self.crosses(ring)
            && self.distance(ring) >= IN_OFFCUT_MM - SAME_MM
    }

    fn holds(&self, p: Point) -> bool {
        let line = Line {
            point: self.from,
            along: self.along,
        };
        let (foot, off) = (line.foot(p), -line.left_of(p));
        (0.0..=self.long).contains(&foot) && (0.0..=self.wide).contains(&off)
    }

    pub(super) fn is_clear_of(&self, hole: &Outline) -> bool {
        let inside = self.holds(hole.segs()[0].start());
        !inside
            && hole.side(self.from) == Side::Outside
            && !self.crosses(hole)
            && self.distance(hole) >= IN_OFFCUT_MM
    }

    pub(super) fn is_apart_from(&self, other: &Self) -> bool {
        Outline::polygon(&other.corners()).is_ok_and(|other| {
            let inside = other.side(self.from) != Side::Outside;
            let around = self.holds(other.segs()[0].start());
            !inside && !around && !self.crosses(&other) && self.distance(&other) >= BETWEEN_MM
        })
    }
}
