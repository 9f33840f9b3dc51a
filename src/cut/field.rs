//! The field of a practice cut: a rectangle laid into an offcut, and the slab it lies on.

use crate::geom::{Bounds, Line, Outline, OutlineFault, Point, SAME_MM, Seg, Side, Vector};
use crate::job::{Flaw, Job};
use crate::place::flaw;

use super::{Cut, SetOut};

/// A rectangle: from its first corner along one side, the other side to its right.
#[derive(Clone)]
pub(super) struct Field {
    pub(super) from: Point,
    pub(super) along: Vector,
    pub(super) long: f64,
    pub(super) wide: f64,
}

/// A boundary with the points that are measured to: its corners, and points along its arcs.
pub(super) struct Boundary<'a> {
    pub(super) outline: &'a Outline,
    points: Vec<Point>,
}

impl<'a> Boundary<'a> {
    pub(super) fn of(outline: &'a Outline) -> Self {
        // A tenth of a millimetre is nothing to a clearance.
        let points = outline.segs().iter().flat_map(|s| s.flattened(0.1));
        Self {
            outline,
            points: points.collect(),
        }
    }
}

/// An offcut, or a part of one, that a field may lie in: at least so far from its boundary, mm, that it
/// stays one piece.
pub(super) struct PracticeRoom<'a> {
    pub(super) ring: Boundary<'a>,
    pub(super) holes: Vec<Boundary<'a>>,
    pub(super) least_mm: f64,
}

impl PracticeRoom<'_> {
    pub(super) fn holds(&self, field: &Field) -> bool {
        let least = self.least_mm - SAME_MM;
        let ring = self.ring.outline;
        let clear = |hole: &Boundary<'_>| {
            let inside = field.holds(hole.outline.segs()[0].start());
            let outside = hole.outline.side(field.from) == Side::Outside;
            !inside && outside && !field.crosses(hole.outline) && field.distance(hole) >= least
        };
        ring.side(field.from) == Side::Inside
            && field.distance(&self.ring) >= least
            && !field.crosses(ring)
            && self.holes.iter().all(clear)
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

    /// Shortest distance between the field's boundary and another, mm: to chords of an arc. Linear in the
    /// other's pieces and points.
    pub(super) fn distance(&self, other: &Boundary<'_>) -> f64 {
        let theirs = other.points.iter().map(|p| self.off(*p));
        theirs.fold(self.farthest(other), f64::min)
    }

    /// No smaller than the distance to another boundary, mm, and sooner found: that of the corners.
    pub(super) fn farthest(&self, other: &Boundary<'_>) -> f64 {
        let corners = self.corners().into_iter();
        let each = corners.map(|c| other.outline.distance(c));
        each.fold(f64::INFINITY, f64::min)
    }

    /// Shortest distance of a point from the field's boundary, mm.
    fn off(&self, p: Point) -> f64 {
        let from = p - self.from;
        let beyond = |at: f64, length: f64| (-at).max(at - length);
        let out = Vector::new(
            beyond(from.dot(self.along), self.long),
            beyond(from.dot(self.along.right()), self.wide),
        );
        if out.x <= 0.0 && out.y <= 0.0 {
            -out.x.max(out.y)
        } else {
            Vector::new(out.x.max(0.0), out.y.max(0.0)).length()
        }
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

    /// Whether some stone is left between two fields: a side of one parts them, and then the nearest point of one of
    /// them is a corner.
    pub(super) fn is_apart_from(&self, other: &Self) -> bool {
        let beyond = |a: &Self, b: &Self| {
            let corners = b.corners();
            a.sides().iter().any(|side| {
                let line = Line::through(side.start(), side.end());
                corners.iter().all(|c| line.left_of(*c) < 0.0)
            })
        };
        let off = |a: &Self, b: &Self| b.corners().into_iter().all(|c| a.off(c) >= BETWEEN_MM);
        (beyond(self, other) || beyond(other, self)) && off(self, other) && off(other, self)
    }
}

/// The slab to practise on, and the boundaries of what is kept of it.
pub(super) struct Ground<'a> {
    pub(super) job: &'a Job,
    pub(super) slab: Boundary<'a>,
    pub(super) sawn: Vec<Boundary<'a>>,
    /// The box round each flaw of the slab.
    pub(super) flaws: Vec<Bounds>,
    /// Where the guides of straight cuts lie and the machine runs, with the number of the cut; none when they are not
    /// kept off.
    pub(super) guides: Vec<(usize, Field)>,
}

/// Where the guide of a straight cut lies and the machine runs beside it, from end to end of the line.
pub(super) fn guide_of(cut: &Cut) -> Option<(usize, Field)> {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return None;
    };
    let [from, to] = [&set_out.face.start, &set_out.face.end].map(|end| end.at);
    let away = set_out.guide.start.at - from;
    let to_right = (to - from).right().dot(away) > 0.0;
    let (from, to) = if to_right { (from, to) } else { (to, from) };
    let field = Field {
        from,
        along: (to - from).unit(),
        long: from.distance(to),
        wide: set_out.guide_to_face + GUIDE_MM,
    };
    Some((cut.number, field))
}

impl Ground<'_> {
    /// Whether no guide comes to lie and no machine runs on a field in waste that a cut frees: on whole stone both
    /// stand firm.
    pub(super) fn is_off_guides(&self, field: &Field, freed_by: usize) -> bool {
        let mut before = self.guides.iter().filter(|(cut, _)| *cut <= freed_by);
        before.all(|(_, guide)| field.is_apart_from(guide))
    }

    /// From the kept stone, mm.
    pub(super) fn clearance(&self, field: &Field) -> f64 {
        let each = self.sawn.iter().map(|s| field.distance(s));
        each.fold(f64::INFINITY, f64::min)
    }

    /// No smaller than the clearance, mm, and sooner found.
    pub(super) fn clearance_at_most(&self, field: &Field) -> f64 {
        let each = self.sawn.iter().map(|s| field.farthest(s));
        each.fold(f64::INFINITY, f64::min)
    }

    /// Whether a field lies at least the least strip from the slab's edges and from every flaw.
    pub(super) fn is_sound(&self, field: &Field) -> bool {
        let least = self.job.place.least_strip_mm;
        let around = Bounds::around(field.corners());
        let flaws = self.job.slab.flaws.iter().zip(&self.flaws);
        let near = flaws.filter(|(f, own)| own.gap(&around) < f.clear_mm + least);
        let near: Vec<&Flaw> = near.map(|(flaw, _)| flaw).collect();
        let off = |outline: &Outline, f: &Flaw| flaw::distance(outline, f) - f.clear_mm;
        let clear = |outline: Outline| near.iter().all(|f| off(&outline, f) >= least);
        field.distance(&self.slab) >= least && (near.is_empty() || field.outline().is_ok_and(clear))
    }

    /// Whether a guide beside a cut lies on the slab on one side of it, and clamps reach both its ends.
    pub(super) fn has_guide(&self, field: &Field) -> bool {
        let guide = &self.job.guide;
        let slab = self.slab.outline;
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
pub(super) const CLAMP_MM: f64 = 120.0;

/// Between practice slots, mm (judgement).
pub(super) const BETWEEN_MM: f64 = 12.0;

/// How wide a guide is, mm (judgement: a common rail).
pub(crate) const GUIDE_MM: f64 = 80.0;
