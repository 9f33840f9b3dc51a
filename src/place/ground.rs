//! The slab and the top made ready for the search: both taken apart into convex pieces.

use std::f64::consts::PI;

use crate::geom::hull::Hull;
use crate::geom::{Outline, Point, Seg, Vector, convex};
use crate::job::{Flaw, FlawPlace, Job, Part};

use super::allowance::{corner_allowance, edge_allowance};
use super::edge::{EdgeUse, beside_inside_corner, margin_mm};
use super::sawn::sawn_with;
use super::trim::{self, Trim};

/// How far straight sides may stand off the arcs they stand for when a place must be valid, mm.
pub(super) const FINE_MM: f64 = 0.02;
/// The same when it is only asked whether a turn is worth a closer look, mm.
const ROUGH_MM: f64 = 1.0;

/// On which side of arcs and clearances straight sides stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Approximation {
    /// Where they leave less room than there is: what fits is valid.
    Inner,
    /// Where they leave more room than there is: what does not fit cannot be valid.
    Outer,
    /// An outer one as fine as the inner: for proving that nothing fits.
    FineOuter,
}

impl Approximation {
    const fn tolerance(self) -> f64 {
        match self {
            Self::Inner | Self::FineOuter => FINE_MM,
            Self::Outer => ROUGH_MM,
        }
    }

    /// The corners that stand for stone to be had: the slab, an opening.
    fn room(self, outline: &Outline) -> Vec<Point> {
        match self {
            Self::Inner => outline.enclosed(self.tolerance()),
            Self::Outer | Self::FineOuter => outline.enclosing(self.tolerance()),
        }
    }

    /// The corners that stand for what needs room: the top, a flaw.
    fn need(self, outline: &Outline) -> Vec<Point> {
        match self {
            Self::Inner => outline.enclosing(self.tolerance()),
            Self::Outer | Self::FineOuter => outline.enclosed(self.tolerance()),
        }
    }
}

/// A figure as convex pieces, and the hull of all of them.
#[derive(Clone, Debug)]
pub(super) struct Body {
    pub(super) hull: Hull,
    pub(super) parts: Vec<Hull>,
}

impl Body {
    fn of(ring: Vec<Point>) -> Self {
        let parts = convex::parts(&ring);
        Self {
            hull: Hull::around(ring),
            parts,
        }
    }

    pub(super) fn turned(&self, turn: f64) -> Self {
        Self {
            hull: self.hull.turned(turn),
            parts: self.parts.iter().map(|p| p.turned(turn)).collect(),
        }
    }

    /// A body within this one from which the rest of it is everywhere at least so far away: each piece
    /// eroded by itself. Nothing when no piece is thick enough.
    pub(super) fn eroded(&self, by_mm: f64) -> Option<Self> {
        let eroded = self.parts.iter().map(|p| p.eroded(by_mm));
        let parts: Vec<Hull> = eroded.filter(|p| p.0.len() > 2).collect();
        let corners: Vec<Point> = parts.iter().flat_map(|p| p.0.iter().copied()).collect();
        (!parts.is_empty()).then(|| Self {
            hull: Hull::around(corners),
            parts,
        })
    }

    /// The body with another point as its origin.
    pub(super) fn about(&self, centre: Point) -> Self {
        Self {
            hull: self.hull.about(centre),
            parts: self.parts.iter().map(|p| p.about(centre)).collect(),
        }
    }
}

/// A straight piece of the slab's boundary.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rim {
    pub(super) from: Point,
    pub(super) to: Point,
    /// It stands for part of an arc.
    pub(super) of_arc: bool,
}

/// An inside corner of the slab, and the directions of its two edges there.
#[derive(Clone, Copy, Debug)]
pub(super) struct InsideCorner {
    pub(super) at: Point,
    pub(super) before: Vector,
    pub(super) after: Vector,
}

/// A flaw with its clearance, and what of it an opening of the top may take out.
#[derive(Clone, Debug)]
pub(super) struct FlawZone {
    pub(super) parts: Vec<Hull>,
    /// Points of the flaw itself and how far it reaches with its clearance round them, mm.
    pub(super) points: Vec<Point>,
    pub(super) around: f64,
}

/// The top as sawn when some of its edges have no allowance.
#[derive(Clone, Debug)]
pub(super) struct Variant {
    bare: Vec<usize>,
    corners: Vec<f64>,
    sawn: Option<(Outline, Vec<Part>)>,
    pub(super) body: Option<Body>,
}

/// Everything the search asks of a job at every turn. The slab's pieces are in the slab's frame, the
/// top's in its own.
#[derive(Clone, Debug)]
pub(super) struct Ground<'a> {
    pub(super) job: &'a Job,
    sides: Approximation,
    pub(super) slab_hull: Hull,
    /// What lies in the slab's hull and not in the slab.
    pub(super) pockets: Vec<Hull>,
    pub(super) rim: Vec<Rim>,
    /// A ring that the slab surely holds.
    pub(super) ring: Vec<Point>,
    pub(super) inside_corners: Vec<InsideCorner>,
    /// The faces to be sawn when no edge lies on the slab's, in the top's frame.
    pub(super) faces: Vec<Trim>,
    pub(super) flaws: Vec<FlawZone>,
    pub(super) finished: Body,
    /// Convex pieces of the finished openings.
    pub(super) openings: Vec<Hull>,
    variants: Vec<Variant>,
}

impl<'a> Ground<'a> {
    pub(super) fn of(job: &'a Job, sides: Approximation) -> Self {
        let slab = job.slab.shape.outline();
        let ring = sides.room(slab);
        let slab_hull = Hull::around(ring.clone());
        let all = variant(job, &[], sides);
        Self {
            job,
            sides,
            pockets: pockets(&ring, &slab_hull),
            slab_hull,
            rim: slab.segs().iter().flat_map(|s| rim_of(s, sides)).collect(),
            ring: slab.enclosed(FINE_MM),
            inside_corners: inside_corners(slab),
            flaws: zones(job, sides),
            finished: Body::of(sides.need(job.top.shape.outline())),
            openings: openings(job, sides),
            faces: faces(job, &all),
            variants: vec![all],
        }
    }

    /// The top as sawn all round, `bare` edges without an allowance.
    pub(super) fn variant(&mut self, bare: &[usize]) -> &Variant {
        let known = self.variants.iter().position(|v| v.bare == bare);
        let at = known.unwrap_or_else(|| {
            self.variants.push(variant(self.job, bare, self.sides));
            self.variants.len() - 1
        });
        &self.variants[at]
    }

    /// The top as sawn all round, in its own frame.
    pub(super) fn sawn_all_round(&self) -> Option<&Outline> {
        self.variants.first()?.sawn.as_ref().map(|(o, _)| o)
    }
}

fn variant(job: &Job, bare: &[usize], sides: Approximation) -> Variant {
    let top = &job.top.shape;
    let allowance = |edge| {
        if bare.contains(&edge) {
            0.0
        } else {
            edge_allowance(job, edge)
        }
    };
    let edges: Vec<f64> = (0..top.count()).map(allowance).collect();
    let corners: Vec<f64> = (0..top.count())
        .map(|corner| corner_allowance(job, corner, &edges))
        .collect();
    let sawn = sawn_with(top, &edges, &corners);
    let body = sawn
        .as_ref()
        .map(|(outline, _)| Body::of(sides.need(outline)));
    Variant {
        bare: bare.to_vec(),
        corners,
        sawn,
        body,
    }
}

fn faces(job: &Job, all: &Variant) -> Vec<Trim> {
    let parts = all
        .sawn
        .as_ref()
        .map_or(job.top.shape.parts(), |(_, parts)| parts);
    trim::faces(&job.top.shape, &all_sawn(job), &all.corners, parts)
}

/// The use of every edge when none lies on the slab's: each straight one is sawn.
fn all_sawn(job: &Job) -> Vec<EdgeUse> {
    let top = &job.top.shape;
    (0..top.count())
        .map(|edge| {
            let allowance_mm = edge_allowance(job, edge);
            let used_up = top.edge_seg(edge).is_none();
            if !top.is_straight(edge) {
                EdgeUse::Bowed { allowance_mm }
            } else if used_up && beside_inside_corner(top, edge) {
                EdgeUse::UsedUp
            } else {
                EdgeUse::Sawn { allowance_mm }
            }
        })
        .collect()
}

/// Convex pieces of what lies between a ring and its hull.
fn pockets(ring: &[Point], hull: &Hull) -> Vec<Hull> {
    let n = ring.len();
    let on_hull = |i: &usize| hull.0.contains(&ring[*i]);
    let corners: Vec<usize> = (0..n).filter(on_hull).collect();
    let next = corners.iter().cycle().skip(1);
    corners
        .iter()
        .zip(next)
        .flat_map(|(from, to)| {
            let count = (to + n - from) % n;
            // Back along the ring, so that the pocket lies to the left.
            let pocket: Vec<Point> = (0..=count).rev().map(|k| ring[(from + k) % n]).collect();
            convex::parts(&pocket)
        })
        .collect()
}

fn rim_of(seg: &Seg, sides: Approximation) -> Vec<Rim> {
    let mut points = match sides {
        Approximation::Inner => seg.left_corners(sides.tolerance()),
        Approximation::Outer | Approximation::FineOuter => seg.right_corners(sides.tolerance()),
    };
    points.push(seg.end());
    let of_arc = matches!(seg, Seg::Arc(_));
    let piece = |w: &[Point]| Rim {
        from: w[0],
        to: w[1],
        of_arc,
    };
    points.windows(2).map(piece).collect()
}

fn inside_corners(slab: &Outline) -> Vec<InsideCorner> {
    let next = slab.segs().iter().cycle().skip(1);
    let corners = slab.segs().iter().zip(next).map(|(a, b)| InsideCorner {
        at: b.start(),
        before: a.heading(1.0),
        after: b.heading(0.0),
    });
    corners
        .filter(|c| c.before.cross(c.after) < -1e-6)
        .collect()
}

fn openings(job: &Job, sides: Approximation) -> Vec<Hull> {
    let finished = job.top.cutouts.iter();
    let rings = finished.map(|c| sides.room(c.shape.outline()));
    match sides {
        // More than there is: what two pieces hold together counts.
        Approximation::FineOuter => rings.map(Hull::around).collect(),
        Approximation::Inner | Approximation::Outer => {
            rings.flat_map(|ring| convex::parts(&ring)).collect()
        }
    }
}

fn flaw_zone(flaw: &Flaw, sides: Approximation) -> FlawZone {
    let clear = flaw.clear_mm;
    match &flaw.place {
        FlawPlace::Spot { at, across_mm } => FlawZone {
            parts: vec![grown(&[*at], across_mm / 2.0 + clear, sides)],
            points: vec![*at],
            around: across_mm / 2.0 + clear,
        },
        FlawPlace::Line(points) => FlawZone {
            parts: chain(points, clear, sides),
            points: points.clone(),
            around: clear,
        },
        FlawPlace::Area(outline) => {
            let ring = sides.need(outline);
            let parts = convex::parts(&ring);
            FlawZone {
                parts: parts.iter().map(|p| grown(&p.0, clear, sides)).collect(),
                points: ring,
                around: clear,
            }
        }
    }
}

/// What the finished top keeps clear of: the flaws, and the margins of the edges it must keep off.
fn zones(job: &Job, sides: Approximation) -> Vec<FlawZone> {
    let slab = &job.slab;
    let margin = |edge: usize| {
        let by = margin_mm(job, edge);
        if by <= 0.0 {
            return None;
        }
        let rim = rim_of(&slab.shape.edge_seg(edge)?, sides);
        let ends = rim.iter().map(|r| r.from).chain(rim.last().map(|r| r.to));
        let ends: Vec<Point> = ends.collect();
        Some(FlawZone {
            parts: chain(&ends, by, sides),
            points: ends,
            around: by,
        })
    };
    let margins = (0..slab.shape.count()).filter_map(margin);
    let flaws = slab.flaws.iter().map(|f| flaw_zone(f, sides));
    flaws.chain(margins).collect()
}

/// What lies within a distance of a run of straight pieces, one convex hull for each: a strip along it,
/// round at the two ends of the run and on the outer side of each joint. Few corners where the run bends
/// little, whatever the distance.
fn chain(points: &[Point], by: f64, sides: Approximation) -> Vec<Hull> {
    let pieces: Vec<[Point; 2]> = points.windows(2).map(|w| [w[0], w[1]]).collect();
    let pieces: Vec<[Point; 2]> = pieces.into_iter().filter(|[a, b]| a != b).collect();
    if by <= 0.0 || pieces.is_empty() {
        return points.windows(2).map(|w| grown(w, by, sides)).collect();
    }
    let out = |[a, b]: &[Point; 2]| (*b - *a).unit().right();
    let one = |i: usize| {
        let [a, b] = pieces[i];
        let side = out(&pieces[i]);
        let mut corners = vec![a + side * by, a - side * by, b + side * by, b - side * by];
        // Backwards from the first piece, forwards from the last, and round each joint.
        if i == 0 {
            corners.extend(round(a, -side, PI, by, sides));
        }
        match pieces.get(i + 1) {
            None => corners.extend(round(b, side, PI, by, sides)),
            Some(next) => {
                let bend = side.cross(out(next)).atan2(side.dot(out(next)));
                // The outer side is to the right where the run bends to the left.
                let from = if bend > 0.0 { side } else { -side };
                corners.extend(round(b, from, bend, by, sides));
            }
        }
        Hull::around(corners)
    };
    (0..pieces.len()).map(one).collect()
}

/// Corners of straight sides that stand for an arc about a point, from a direction on through an angle.
fn round(about: Point, from: Vector, angle: f64, by: f64, sides: Approximation) -> Vec<Point> {
    let half = (by / (by + sides.tolerance())).acos();
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = (angle.abs() / half / 2.0).ceil() as u32;
    if count == 0 {
        return Vec::new();
    }
    let step = angle / f64::from(count);
    let corner = |share: f64, out: f64| about + from.turned(share * step) * out;
    match sides {
        Approximation::Inner => {
            let out = by / (step / 2.0).cos();
            (0..count)
                .map(|k| corner(f64::from(k) + 0.5, out))
                .collect()
        }
        Approximation::Outer | Approximation::FineOuter => {
            (0..=count).map(|k| corner(f64::from(k), by)).collect()
        }
    }
}

/// The convex hull of points, grown by a distance all round; a hair more, or less, where straight sides
/// stand for the round.
fn grown(points: &[Point], by: f64, sides: Approximation) -> Hull {
    if by <= 0.0 {
        return Hull::around(points.to_vec());
    }
    let tolerance = sides.tolerance();
    let half = (by / (by + tolerance)).acos();
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let quarter = ((PI / half / 4.0).ceil() as u32).clamp(2, 128);
    let count = 4 * quarter;
    let step = 2.0 * PI / f64::from(count);
    // Along a straight piece the sides lie exactly at the distance.
    let along = match points {
        [a, b] if a != b => (*b - *a).angle(),
        _ => 0.0,
    };
    let out = match sides {
        Approximation::Inner => by / (step / 2.0).cos(),
        Approximation::Outer | Approximation::FineOuter => by,
    };
    let around = |p: &Point| {
        let p = *p;
        (0..count).map(move |k| p + Vector::at_angle(along + (f64::from(k) + 0.5) * step) * out)
    };
    Hull::around(points.iter().flat_map(around).collect())
}
