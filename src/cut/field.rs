//! The field of a practice cut: a rectangle laid into an offcut, and the slab it lies on.

use crate::geom::{Line, Outline, OutlineFault, Point, SAME_MM, Seg, Side, Vector};

use super::practice::BETWEEN_MM;
use crate::job::Job;
use crate::place::flaw;

/// A rectangle: from its first corner along one side, the other side to its right.
#[derive(Clone)]
pub(super) struct Field {
    pub(super) from: Point,
    pub(super) along: Vector,
    pub(super) long: f64,
    pub(super) wide: f64,
}

/// An offcut, or a part of one, that a field may lie in: at least so far from its boundary, mm, that it
/// stays one piece.
pub(super) struct Room<'a> {
    pub(super) ring: &'a Outline,
    pub(super) holes: &'a [Outline],
    pub(super) least_mm: f64,
}

impl Room<'_> {
    pub(super) fn holds(&self, field: &Field) -> bool {
        let least = self.least_mm - SAME_MM;
        let in_ring = self.ring.side(field.from) == Side::Inside && !field.crosses(self.ring);
        let clear = |hole: &Outline| {
            let inside = field.holds(hole.segs()[0].start());
            let outside = hole.side(field.from) == Side::Outside && !field.crosses(hole);
            !inside && outside && field.distance(hole) >= least
        };
        in_ring && field.distance(self.ring) >= least && self.holes.iter().all(clear)
    }
}

impl Field {
    pub(super) fn outline(&self) -> Result<Outline, OutlineFault> {
        Outline::polygon(&self.corners())
    }

    /// The ends of a line beside its first side, so far to its right, mm.
    pub(super) fn along_at(&self, right_mm: f64) -> [Point; 2] {
        let from = self.from + self.along.right() * right_mm;
        [from, from + self.along * self.long]
    }

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

    fn holds(&self, p: Point) -> bool {
        let line = Line {
            point: self.from,
            along: self.along,
        };
        let (foot, off) = (line.foot(p), -line.left_of(p));
        (0.0..=self.long).contains(&foot) && (0.0..=self.wide).contains(&off)
    }

    pub(super) fn is_apart_from(&self, other: &Self) -> bool {
        other.outline().is_ok_and(|other| {
            let inside = other.side(self.from) != Side::Outside;
            let around = self.holds(other.segs()[0].start());
            !inside && !around && !self.crosses(&other) && self.distance(&other) >= BETWEEN_MM
        })
    }
}

/// The slab to practise on, and the boundaries of what is kept of it.
pub(super) struct Ground<'a> {
    pub(super) job: &'a Job,
    pub(super) sawn: &'a [Outline],
}

impl Ground<'_> {
    /// From the kept stone, mm.
    pub(super) fn clearance(&self, field: &Field) -> f64 {
        let each = self.sawn.iter().map(|s| field.distance(s));
        each.fold(f64::INFINITY, f64::min)
    }

    /// Whether a field lies at least the least strip from the slab's edges and from every flaw.
    pub(super) fn is_sound(&self, field: &Field) -> bool {
        let slab = self.job.slab.shape.outline();
        let least = self.job.place.least_strip_mm;
        let Ok(outline) = field.outline() else {
            return false;
        };
        let mut flaws = self.job.slab.flaws.iter();
        field.distance(slab) >= least
            && flaws.all(|f| flaw::distance(&outline, f) >= f.clear_mm + least)
    }

    /// Whether a guide beside a cut lies on the slab on one side of it, and clamps reach both its ends.
    pub(super) fn has_guide(&self, field: &Field) -> bool {
        let guide = &self.job.guide;
        let slab = self.job.slab.shape.outline();
        let beside = [-guide.offset_mm, field.wide + guide.offset_mm];
        beside.into_iter().any(|by| {
            let [from, to] = field.along_at(by);
            let middle = from.midpoint(to);
            let line = Line::through(from, to);
            let on_slab = [from, to, middle].iter().all(|p| slab.depth(*p) >= 0.0);
            let reached = |p: &Point| slab.distance(*p) <= CLAMP_MM;
            let chord = slab.chord(&line, middle).map_or(0.0, |c| c.length());
            on_slab && (chord <= guide.length_mm || [from, to].iter().all(reached))
        })
    }
}

/// So far in from the edge a clamp holds a guide, mm (judgement: the throat of a common clamp).
const CLAMP_MM: f64 = 120.0;
