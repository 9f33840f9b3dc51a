//! A closed, simple, counter-clockwise boundary made of lines and arcs.

use serde::{Serialize, Serializer};

use super::point::{Bounds, Point, Pose};
use super::seg::{Seg, flattened_ring, ring};
use super::{SAME_MM, seg};

/// A closed boundary that does not cross itself, run counter-clockwise.
///
/// It cannot be made otherwise: [`Outline::new`] checks. Area and centroid are exact for lines
/// and arcs, to the rounding of `f64`.
#[derive(Clone, Debug, PartialEq)]
pub struct Outline {
    segs: Vec<Seg>,
}

/// Where a point lies with respect to an outline.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Farther than [`SAME_MM`] inside.
    Inside,
    /// On the boundary, to [`SAME_MM`].
    On,
    /// Farther than [`SAME_MM`] outside.
    Outside,
}

/// Why pieces do not make an outline. Pieces are counted from 0 in the order given.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum OutlineFault {
    /// A coordinate is not a finite number.
    NotFinite {
        /// The piece that has it.
        piece: usize,
    },
    /// Fewer than two pieces, or no area.
    Empty,
    /// A piece shorter than [`SAME_MM`].
    NoLength {
        /// The piece.
        piece: usize,
    },
    /// A piece does not begin where the one before it ended.
    Gap {
        /// The piece.
        piece: usize,
        /// Distance between the two ends, mm.
        gap_mm: f64,
    },
    /// Two pieces touch or cross where they should not.
    Crossing {
        /// The earlier piece.
        first: usize,
        /// The later piece.
        second: usize,
        /// Where they meet.
        at: Point,
    },
}

impl Outline {
    /// An outline from its pieces in order, in either direction.
    ///
    /// # Errors
    /// See [`OutlineFault`]. Cost: n log n, and the pairs of pieces whose boxes overlap along x.
    pub fn new(segs: Vec<Seg>) -> Result<Self, OutlineFault> {
        check_pieces(&segs)?;
        check_simple(&segs)?;
        let outline = Self { segs };
        let area = outline.signed_area();
        if area.abs() <= SAME_MM {
            return Err(OutlineFault::Empty);
        }
        Ok(if area < 0.0 {
            outline.reversed()
        } else {
            outline
        })
    }

    /// A polygon from its corners in order.
    ///
    /// # Errors
    /// As [`Outline::new`].
    pub fn polygon(corners: &[Point]) -> Result<Self, OutlineFault> {
        Self::new(ring(corners))
    }

    /// A circle. The radius must be a positive finite number.
    ///
    /// # Errors
    /// As [`Outline::new`].
    pub fn circle(centre: Point, radius: f64) -> Result<Self, OutlineFault> {
        Self::new(seg::circle(centre, radius))
    }

    /// An outline from pieces known to be closed and to cross nothing, as cutting an outline in two
    /// leaves them; there must be at least one.
    pub(super) fn trusted(segs: Vec<Seg>) -> Self {
        Self { segs }
    }

    /// The pieces, counter-clockwise.
    #[must_use]
    pub fn segs(&self) -> &[Seg] {
        &self.segs
    }

    /// Area enclosed, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        self.signed_area()
    }

    /// Balance point of a plate of even thickness with this outline.
    #[must_use]
    pub fn centroid(&self) -> Point {
        let (base, area, x, y) = self.moments();
        Point::new(base.x + x / area, base.y + y / area)
    }

    /// Area and its first moments about the origin: mm², mm³, mm³.
    #[must_use]
    pub fn first_moments(&self) -> (f64, f64, f64) {
        let (base, area, x, y) = self.moments();
        (area, x + area * base.x, y + area * base.y)
    }

    /// Length around, mm.
    #[must_use]
    pub fn perimeter(&self) -> f64 {
        self.segs.iter().map(Seg::length).sum()
    }

    /// The upright box around it.
    #[must_use]
    pub fn bounds(&self) -> Bounds {
        self.segs
            .iter()
            .map(Seg::bounds)
            .reduce(Bounds::joined)
            .unwrap_or_else(|| Bounds::around([]))
    }

    /// Shortest distance from a point to the boundary, mm.
    #[must_use]
    pub fn distance(&self, point: Point) -> f64 {
        let nearer = |nearest: f64, seg: &Seg| {
            if seg.least_distance(point) < nearest {
                nearest.min(seg.distance(point))
            } else {
                nearest
            }
        };
        self.segs.iter().fold(f64::INFINITY, nearer)
    }

    /// Where a point lies.
    #[must_use]
    pub fn side(&self, point: Point) -> Side {
        self.side_at(point, self.distance(point))
    }

    /// Where a point lies whose distance to the boundary is known.
    fn side_at(&self, point: Point, distance: f64) -> Side {
        if distance <= SAME_MM {
            return Side::On;
        }
        if self.turns_about(point) > 0 {
            Side::Inside
        } else {
            Side::Outside
        }
    }

    /// How many times it turns about a point that is not on it. Each piece is seen as its chord and the
    /// circular segment beyond; neighbours share the very same joint, so that rounding opens no gap.
    fn turns_about(&self, point: Point) -> i32 {
        let Some(last) = self.segs.last() else {
            return 0;
        };
        let first = self.segs[0].start();
        let (mut turns, mut from) = (0, first);
        for (seg, next) in self.segs.iter().zip(self.segs.iter().skip(1)) {
            let to = next.start();
            turns += turns_of(seg, from, to, point);
            from = to;
        }
        turns + turns_of(last, from, first, point)
    }

    /// How deep a point lies inside, mm; negative outside.
    #[must_use]
    pub fn depth(&self, point: Point) -> f64 {
        let distance = self.distance(point);
        match self.side_at(point, distance) {
            Side::Outside => -distance,
            Side::Inside | Side::On => distance,
        }
    }

    /// True when every part of `inner` is inside or on this outline, to within `slack` mm.
    ///
    /// Exact for straight pieces against straight pieces; an arc's inside is probed at its ends,
    /// at the points nearest to this outline's corners and at chords of [`super::FLATTEN_MM`].
    #[must_use]
    pub fn holds(&self, inner: &Self, slack: f64) -> bool {
        self.deepest_breach(inner) <= slack
    }

    /// The farthest that `inner` reaches outside this outline, mm; 0 when it does not.
    #[must_use]
    pub fn deepest_breach(&self, inner: &Self) -> f64 {
        let inner_points = flattened_ring(&inner.segs);
        let corners = self.segs.iter().map(Seg::start);
        let nearest = corners
            .filter(|c| inner.side(*c) == Side::Inside)
            .map(|c| inner.distance(c));
        inner_points
            .into_iter()
            .map(|p| -self.depth(p))
            .chain(nearest)
            .fold(0.0, f64::max)
    }

    /// The pieces run clockwise, as a hole is written.
    #[must_use]
    pub fn clockwise(&self) -> Vec<Seg> {
        self.segs.iter().rev().map(Seg::reversed).collect()
    }

    /// The outline carried along by a pose.
    #[must_use]
    pub fn posed(&self, pose: Pose) -> Self {
        Self {
            segs: self.segs.iter().map(|s| s.posed(pose)).collect(),
        }
    }

    /// The ring of chords that stands in for it in booleans, on the outline and within
    /// [`super::FLATTEN_MM`] of it.
    #[must_use]
    pub fn flattened(&self) -> Vec<Point> {
        flattened_ring(&self.segs)
    }

    /// True when no corner of it is an inside corner and no arc is hollow.
    #[must_use]
    pub fn is_convex(&self) -> bool {
        let hollow = |s: &Seg| matches!(s, Seg::Arc(a) if a.sweep < 0.0);
        let next = self.segs.iter().cycle().skip(1);
        !self.segs.iter().any(hollow)
            && self
                .segs
                .iter()
                .zip(next)
                .all(|(a, b)| a.heading(1.0).cross(b.heading(0.0)) >= -1e-9)
    }

    fn signed_area(&self) -> f64 {
        self.moments().1
    }

    fn moments(&self) -> (Point, f64, f64, f64) {
        // About a point of its own, so that a small outline far from the origin keeps its digits.
        let base = self.segs[0].start();
        let (area, x, y) = self.segs.iter().fold((0.0, 0.0, 0.0), |sum, s| {
            let m = s.moments(base);
            (sum.0 + m.0, sum.1 + m.1, sum.2 + m.2)
        });
        (base, area, x, y)
    }

    fn reversed(self) -> Self {
        Self {
            segs: self.clockwise(),
        }
    }
}

/// What a piece between two joints adds to the turns about a point: crossings of the ray from it to
/// the right. A joint level with the point counts as below it.
fn turns_of(seg: &Seg, from: Point, to: Point, point: Point) -> i32 {
    let side = (to - from).cross(point - from);
    let (rises, falls) = (
        from.y <= point.y && to.y > point.y,
        to.y <= point.y && from.y > point.y,
    );
    let chord = i32::from(rises && side > 0.0) - i32::from(falls && side < 0.0);
    let Seg::Arc(arc) = seg else {
        return chord;
    };
    // A point on the chord lies on the side to which the crossings put it.
    let on_right = to.y > from.y || (to.y == from.y && to.x < from.x);
    let right = side < 0.0 || (side == 0.0 && on_right);
    let in_circle = point.distance(arc.centre) < arc.radius;
    let bulges = arc.sweep > 0.0;
    let beyond = in_circle && right == bulges;
    chord + if beyond { i32::from(bulges) * 2 - 1 } else { 0 }
}

fn check_pieces(segs: &[Seg]) -> Result<(), OutlineFault> {
    if segs.len() < 2 {
        return Err(OutlineFault::Empty);
    }
    for (piece, seg) in segs.iter().enumerate() {
        let finite = seg.start().is_finite() && seg.end().is_finite() && seg.length().is_finite();
        if !finite {
            return Err(OutlineFault::NotFinite { piece });
        }
        if seg.length() <= SAME_MM {
            return Err(OutlineFault::NoLength { piece });
        }
        let before = segs[(piece + segs.len() - 1) % segs.len()].end();
        let gap_mm = before.distance(seg.start());
        if gap_mm > SAME_MM {
            return Err(OutlineFault::Gap { piece, gap_mm });
        }
    }
    Ok(())
}

/// Pieces are compared with those whose boxes overlap theirs along x: n log n and what overlaps. Of several crossings
/// that of the earliest pieces is told.
fn check_simple(segs: &[Seg]) -> Result<(), OutlineFault> {
    let boxes: Vec<Bounds> = segs.iter().map(Seg::bounds).collect();
    let mut order: Vec<usize> = (0..segs.len()).collect();
    order.sort_by(|a, b| boxes[*a].min.x.total_cmp(&boxes[*b].min.x));
    let mut found: Option<(usize, usize, Point)> = None;
    for (k, a) in order.iter().enumerate() {
        let reach = boxes[*a].max.x + SAME_MM;
        let beside = order[k + 1..]
            .iter()
            .take_while(|b| boxes[**b].min.x <= reach);
        for b in beside.filter(|b| !boxes[*a].keeps_off(&boxes[**b], SAME_MM)) {
            let (first, second) = (*a.min(b), *a.max(b));
            let earlier = found.is_none_or(|f| (second, first) < (f.0, f.1));
            if earlier && let Some(at) = crossing(segs, first, second) {
                found = Some((second, first, at));
            }
        }
    }
    match found {
        Some((second, first, at)) => Err(OutlineFault::Crossing { first, second, at }),
        None => Ok(()),
    }
}

/// Where two pieces meet other than at a joint that they share.
fn crossing(segs: &[Seg], first: usize, second: usize) -> Option<Point> {
    let mut joints = Vec::new();
    if first + 1 == second {
        joints.push(segs[second].start());
    }
    if second + 1 == first + segs.len() {
        joints.push(segs[first].start());
    }
    let stray = |p: &Point| joints.iter().all(|j| j.distance(*p) > 2.0 * SAME_MM);
    if let ([_], [Seg::Line(a, b), Seg::Line(c, d)]) = (&joints[..], [segs[first], segs[second]]) {
        // Two straight pieces with a joint meet elsewhere only where one is folded back on the other, with its end.
        let mut ends = [a, b, c, d].into_iter();
        let on_both =
            |p: &Point| segs[first].distance(*p) <= SAME_MM && segs[second].distance(*p) <= SAME_MM;
        return ends.find(|p| stray(p) && on_both(p));
    }
    let meets = segs[first].meets(&segs[second]);
    meets.into_iter().find(stray)
}

/// Written as a list of its pieces.
impl Serialize for Outline {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.segs.serialize(serializer)
    }
}
