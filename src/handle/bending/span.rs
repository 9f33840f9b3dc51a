//! The widest stretch of the top between supports.
//!
//! The greatest circle that touches no support, with its middle under the stone and between the
//! supports: across two parallel cabinet sides its diameter is their distance.

use serde::Serialize;

use super::overhang::ReachLimit;
use super::rests::Rests;
use crate::geom::hull::Hull;
use crate::geom::{Line, Point, Side, Vector};
use crate::handle::loads::Load;

/// Nominal thickness and published free span, mm.
const BY_THICKNESS_MM: [(f64, f64); 2] = [(30.0, 914.0), (20.0, 610.0)];
/// Places tried along each side of the top.
const TRIES: u8 = 48;
/// The middle is found to this, mm.
const CLOSE_MM: f64 = 1e-3;
/// Points that stand for a round support.
const ROUND: u8 = 16;

/// The widest stretch between supports.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Span {
    /// Its width, mm.
    pub span_mm: f64,
    /// Its middle, slab frame.
    pub middle: Point,
    /// How wide it may be.
    pub limit: ReachLimit,
}

impl Span {
    /// Whether it is wider than what is published.
    #[must_use]
    pub fn is_over(&self) -> bool {
        match self.limit {
            ReachLimit::UpTo { limit_mm } => self.span_mm > limit_mm,
            ReachLimit::NonePublished => true,
        }
    }
}

/// The widest stretch; nothing when the supports enclose no area.
#[must_use]
pub fn widest(top: &Load, rests: &Rests, thickness_mm: f64) -> Option<Span> {
    let between = Between::new(top, rests)?;
    let bounds = top.region.outer.bounds();
    let step = bounds.width().max(bounds.height()) / f64::from(TRIES);
    let places = (0..=TRIES).flat_map(|i| (0..=TRIES).map(move |j| (f64::from(i), f64::from(j))));
    let places = places.map(|(i, j)| bounds.min + Vector::new(i, j) * step);
    let best = places
        .filter_map(|p| between.clear(p).map(|clear| (p, clear)))
        .reduce(|best, next| if next.1 > best.1 { next } else { best })?;
    let (middle, clear) = between.climbed(best, step);
    Some(Span {
        span_mm: 2.0 * clear,
        middle,
        limit: ReachLimit::of(thickness_mm, &BY_THICKNESS_MM),
    })
}

struct Between<'a> {
    top: &'a Load,
    rests: &'a Rests,
    hull: Vec<Line>,
}

impl<'a> Between<'a> {
    fn new(top: &'a Load, rests: &'a Rests) -> Option<Self> {
        let points = rests.places.iter().flat_map(|p| {
            let around = (0..ROUND).map(|k| {
                let turn = f64::from(k) * std::f64::consts::TAU / f64::from(ROUND);
                Vector::at_angle(turn) * p.radius_mm
            });
            let [a, b] = p.ends;
            around.flat_map(move |off| [a + off, b + off])
        });
        let hull = Hull::around(points.collect()).0;
        let next = hull.iter().cycle().skip(1);
        let edges: Vec<Line> = hull
            .iter()
            .zip(next)
            .map(|(a, b)| Line::through(*a, *b))
            .collect();
        (edges.len() > 2).then_some(Self {
            top,
            rests,
            hull: edges,
        })
    }

    /// Distance to the nearest support; nothing outside the hull of the supports or off the top. A
    /// cutout is spanned like stone.
    fn clear(&self, at: Point) -> Option<f64> {
        let inside = self.hull.iter().all(|edge| edge.left_of(at) >= 0.0);
        (inside && self.top.region.outer.side(at) != Side::Outside).then(|| self.rests.distance(at))
    }

    /// Uphill from a place in ever smaller steps.
    fn climbed(&self, from: (Point, f64), step: f64) -> (Point, f64) {
        let (mut best, mut step) = (from, step);
        while step > CLOSE_MM {
            let around = (0..ROUND).map(|k| {
                let turn = f64::from(k) * std::f64::consts::TAU / f64::from(ROUND);
                best.0 + Vector::at_angle(turn) * step
            });
            let next = around
                .filter_map(|p| self.clear(p).map(|clear| (p, clear)))
                .reduce(|a, b| if b.1 > a.1 { b } else { a });
            match next {
                Some(next) if next.1 > best.1 => best = next,
                _ => step /= 2.0,
            }
        }
        best
    }
}
