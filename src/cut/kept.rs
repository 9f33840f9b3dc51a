//! The stone that is kept, as the saw leaves it: its boundary piece by piece, and what is clear of it.

use std::f64::consts::PI;

use crate::geom::{Arc, Line, Outline, Point, Region, SAME_MM, Seg, Side, seg};
use crate::job::{Job, Part};
use crate::place::{EdgeUse, Placement};
use crate::words::{Arg, Value};

/// A tool may lie on the boundary, and over it by the rounding of the numbers, mm.
const TOUCH_MM: f64 = 1e-3;
/// A change of direction smaller than this is none, radians.
const SMOOTH: f64 = 1e-6;

/// Whose boundary it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Whose {
    /// The top's own.
    Top,
    /// That of a cutout, counted from 0.
    Cutout(usize),
}

impl Whose {
    /// The cutout's number, counted from 1.
    #[must_use]
    pub const fn cutout_number(self) -> Option<usize> {
        match self {
            Self::Top => None,
            Self::Cutout(i) => Some(i + 1),
        }
    }

    /// A piece of the boundary by its name, as findings say it.
    #[must_use]
    pub fn part(self, name: &str) -> Value {
        let id = match name {
            ALL_ROUND => ["part-all-round", "part-all-round-opening"],
            _ if name.contains('-') => ["part-edge", "part-edge-opening"],
            _ if name.contains(',') => ["part-corners", "part-corners-opening"],
            _ => ["part-corner", "part-corner-opening"],
        };
        let mut gaps: Vec<Arg> = vec![("name", Value::name(name))];
        gaps.extend(self.cutout_number().map(|n| ("cutout", Value::count(n))));
        Value::message(id[gaps.len() - 1], gaps)
    }
}

/// One straight or curved piece of a boundary.
#[derive(Clone, Debug)]
pub struct BoundaryPiece {
    /// Where it runs, kept stone to its left.
    pub seg: Seg,
    /// The edges or corners it belongs to: more than one where they lie on one circle.
    pub parts: Vec<Part>,
    /// Its name: `1-2`, `2`, `2, 3` where several corners are one curve, `all round` for a circle.
    pub name: String,
    /// Stone left on it, mm.
    pub allowance_mm: f64,
    /// Whether its face is on the stone already and is not made again.
    pub ready: bool,
    /// Whether the saw makes it; not when it lies on an edge of the slab.
    pub sawn: bool,
}

/// One closed boundary, kept stone to its left.
#[derive(Clone, Debug)]
pub struct Ring {
    /// Whose it is.
    pub whose: Whose,
    /// Its pieces in order.
    pub pieces: Vec<BoundaryPiece>,
}

/// How two pieces of a boundary meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Joint {
    /// At an outside corner.
    Outside,
    /// Without a change of direction.
    Smooth,
    /// At an inside corner: the kept stone lies on more than half of the way round.
    Inside,
}

/// The kept stone.
#[derive(Clone, Debug)]
pub struct Kept {
    /// Its boundaries: the top's first, then one for each cutout.
    pub rings: Vec<Ring>,
    region: Region,
}

impl Ring {
    /// The piece before another.
    #[must_use]
    pub fn before(&self, piece: usize) -> usize {
        (piece + self.pieces.len() - 1) % self.pieces.len()
    }

    /// The piece after another.
    #[must_use]
    pub fn after(&self, piece: usize) -> usize {
        (piece + 1) % self.pieces.len()
    }

    /// How a piece meets the one after it.
    #[must_use]
    pub fn joint_after(&self, piece: usize) -> Joint {
        if self.pieces.len() == 1 {
            return Joint::Smooth;
        }
        let (a, b) = (&self.pieces[piece].seg, &self.pieces[self.after(piece)].seg);
        let turn = a.heading(1.0).cross(b.heading(0.0));
        if turn.abs() <= SMOOTH {
            Joint::Smooth
        } else if turn > 0.0 {
            Joint::Outside
        } else {
            Joint::Inside
        }
    }
}

impl BoundaryPiece {
    /// The arc of a piece whose kept stone lies outside the circle.
    #[must_use]
    pub fn hollow(&self) -> Option<&Arc> {
        self.arc().filter(|arc| arc.sweep < 0.0)
    }

    /// The arc of a piece whose kept stone lies inside the circle.
    #[must_use]
    pub fn bulging(&self) -> Option<&Arc> {
        self.arc().filter(|arc| arc.sweep > 0.0)
    }

    fn arc(&self) -> Option<&Arc> {
        match &self.seg {
            Seg::Arc(arc) => Some(arc),
            Seg::Line(..) => None,
        }
    }

    /// The first of the edges and corners it belongs to.
    #[must_use]
    pub fn part(&self) -> Part {
        self.parts[0]
    }
}

impl Kept {
    /// The kept stone of a placement: the sawn outlines of the top and of its cutouts.
    #[must_use]
    pub fn of(job: &Job, placement: &Placement) -> Self {
        let mut rings = vec![top_ring(job, placement)];
        rings.extend((0..placement.cutouts.len()).map(|i| cutout_ring(job, placement, i)));
        let region = Region {
            outer: placement.sawn.clone(),
            holes: placement.cutouts.iter().map(|c| c.sawn.clone()).collect(),
        };
        Self { rings, region }
    }

    /// The same with a cutout that one core hole makes: that hole is its boundary.
    #[must_use]
    pub fn bored(mut self, cutout: usize, hole: Outline) -> Self {
        if let (Some(ring), Some(old)) = (
            self.rings.get_mut(cutout + 1),
            self.region.holes.get_mut(cutout),
        ) && let Some(piece) = ring.pieces.first().cloned()
        {
            ring.pieces = hole
                .clockwise()
                .into_iter()
                .map(|seg| BoundaryPiece {
                    seg,
                    ..piece.clone()
                })
                .collect();
            *old = hole;
        }
        self
    }

    /// The kept stone as a region.
    #[must_use]
    pub const fn region(&self) -> &Region {
        &self.region
    }

    /// A point well inside the kept stone: a little way in from the middle of a piece of its boundary.
    #[must_use]
    pub fn inner_point(&self) -> Option<Point> {
        let candidates = self.segs().map(|s| s.at(0.5) + s.heading(0.5).left() * 1.0);
        candidates
            .into_iter()
            .find(|p| self.region.side(*p) == Side::Inside)
    }

    /// Distance from a point to the nearest boundary, mm.
    #[must_use]
    pub fn distance(&self, point: Point) -> f64 {
        self.segs()
            .map(|s| s.distance(point))
            .fold(f64::INFINITY, f64::min)
    }

    fn segs(&self) -> impl Iterator<Item = &Seg> {
        self.rings.iter().flat_map(|r| &r.pieces).map(|p| &p.seg)
    }

    /// Whether a rectangle, its corners given counter-clockwise, does not reach into the kept stone.
    #[must_use]
    pub fn is_clear_of(&self, corners: [Point; 4]) -> bool {
        let inset = |i: usize| {
            let (a, b, c) = (corners[(i + 3) % 4], corners[i], corners[(i + 1) % 4]);
            b + (a - b).unit() * TOUCH_MM + (c - b).unit() * TOUCH_MM
        };
        let inner = [inset(0), inset(1), inset(2), inset(3)];
        let edges = seg::ring(&inner);
        let inside =
            |p: Point| (0..4).all(|i| Line::through(inner[i], inner[(i + 1) % 4]).left_of(p) > 0.0);
        let crossed = self
            .segs()
            .any(|s| inside(s.start()) || edges.iter().any(|e| !e.meets(s).is_empty()));
        !crossed && self.region.side(inner[0]) != Side::Inside
    }

    /// Whether a circle does not reach into the kept stone.
    #[must_use]
    pub fn is_clear_of_circle(&self, centre: Point, radius: f64) -> bool {
        self.region.side(centre) == Side::Outside
            && self.segs().all(|s| s.distance(centre) >= radius - TOUCH_MM)
    }

    /// How far a strip to the right of a line, as wide as a kerf, stays clear of the kept stone both
    /// ways from a place on it, as distances along the line; infinite where nothing stops it.
    #[must_use]
    pub fn free_stretch(&self, line: &Line, width: f64, from: Point) -> (f64, f64) {
        let at = line.foot(from);
        let mut marks: Vec<f64> = Vec::new();
        for seg in self.segs() {
            for off in [TOUCH_MM, width - TOUCH_MM] {
                marks.extend(seg.line_crossings(&line.shifted_right(off)));
            }
            let within = |p: &Point| {
                let off = -line.left_of(*p);
                off > TOUCH_MM && off < width - TOUCH_MM
            };
            let found = extremes(seg, line).into_iter().filter(within);
            marks.extend(found.map(|p| line.foot(p)));
        }
        let below = marks.iter().copied().filter(|m| *m <= at);
        let above = marks.iter().copied().filter(|m| *m > at);
        (
            below.fold(f64::NEG_INFINITY, f64::max),
            above.fold(f64::INFINITY, f64::min),
        )
    }
}

/// The points of a piece that may be the first or last along a line: its ends, and where an arc runs
/// square to the line.
fn extremes(seg: &Seg, line: &Line) -> Vec<Point> {
    let mut found = vec![seg.start(), seg.end()];
    if let Seg::Arc(arc) = seg {
        let along = line.along.angle();
        let ends = [along, along + PI].into_iter();
        found.extend(
            ends.filter(|a| arc.share_at(*a, 0.0).is_some())
                .map(|a| arc.at_angle(a)),
        );
    }
    found
}

fn top_ring(job: &Job, placement: &Placement) -> Ring {
    let pieces = placement.sawn.segs().iter().zip(&placement.sawn_parts);
    let pieces = pieces.map(|(seg, part)| {
        let (allowance_mm, sawn) = match part {
            Part::Edge(i) => {
                let used = placement.uses[*i];
                let flush = matches!(used, EdgeUse::Flush { .. });
                (used.allowance_mm(), !flush)
            }
            Part::Corner(i) => (placement.corner_allowances[*i], true),
        };
        BoundaryPiece {
            seg: *seg,
            parts: vec![*part],
            name: placement.top.part_name(*part),
            allowance_mm,
            ready: job.top.ready_mm(*part).is_some(),
            sawn,
        }
    });
    Ring {
        whose: Whose::Top,
        pieces: joined(pieces.collect()),
    }
}

fn cutout_ring(job: &Job, placement: &Placement, cutout: usize) -> Ring {
    let opening = &placement.cutouts[cutout];
    let parts = opening.shape.parts().iter().zip(&opening.left_mm).rev();
    let pieces = opening.sawn.clockwise().into_iter().zip(parts);
    let pieces = pieces.map(|(seg, (part, left_mm))| BoundaryPiece {
        seg,
        parts: vec![*part],
        name: opening.shape.part_name(*part),
        allowance_mm: *left_mm,
        ready: job.top.cutouts[cutout].ready_mm(*part).is_some(),
        sawn: true,
    });
    Ring {
        whose: Whose::Cutout(cutout),
        pieces: joined(pieces.collect()),
    }
}

/// Neighbouring arcs of one circle made one curve: it has one pivot and is cut in one go.
fn joined(pieces: Vec<BoundaryPiece>) -> Vec<BoundaryPiece> {
    let mut whole: Vec<BoundaryPiece> = Vec::new();
    for piece in pieces {
        match whole.last_mut() {
            Some(last) if last.is_one_curve_with(&piece) => last.runs_on(piece),
            _ => whole.push(piece),
        }
    }
    let wraps = whole.len() > 1 && whole[whole.len() - 1].is_one_curve_with(&whole[0]);
    if wraps && let Some(mut last) = whole.pop() {
        last.runs_on(whole.remove(0));
        whole.insert(0, last);
    }
    if let [only] = &mut whole[..]
        && only.parts.len() > 1
    {
        ALL_ROUND.clone_into(&mut only.name);
    }
    whole
}

/// The name of core holes that make no corner but part a piece at the ends of its cuts.
pub const ENDS: &str = "ends";
/// The name of a boundary that is one circle.
pub const ALL_ROUND: &str = "all round";

impl BoundaryPiece {
    /// Whether another piece lies on the circle of this one, bends the same way, and is still to be made
    /// when this one is.
    fn is_one_curve_with(&self, other: &Self) -> bool {
        let arcs = self.arc().zip(other.arc());
        let one = arcs.is_some_and(|(a, b)| {
            a.centre.distance(b.centre) <= SAME_MM
                && (a.radius - b.radius).abs() <= SAME_MM
                && a.sweep.signum() == b.sweep.signum()
        });
        one && self.ready == other.ready
    }

    /// Adds the piece that follows on the same circle.
    fn runs_on(&mut self, next: Self) {
        if let (Seg::Arc(own), Seg::Arc(more)) = (&mut self.seg, &next.seg) {
            own.sweep += more.sweep;
        }
        self.name = format!("{}, {}", self.name, next.name);
        self.parts.extend(next.parts);
    }
}
