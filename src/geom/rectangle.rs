//! The best rectangle that can still be cut from a piece.

use std::f64::consts::FRAC_PI_2;

use super::level::Levels;
use super::outline::Outline;
use super::point::{Point, Pose, Vector};
use super::seg::Seg;
use super::straighten::coarsened;

/// A rectangle inside a piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Rectangle {
    /// Its corners, counter-clockwise.
    pub corners: [Point; 4],
}

impl Rectangle {
    /// The longer and the shorter side, mm.
    #[must_use]
    pub fn sides(&self) -> (f64, f64) {
        let [a, b, c, _] = self.corners;
        let (u, v) = (a.distance(b), b.distance(c));
        (u.max(v), u.min(v))
    }

    /// Area, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        let (long, short) = self.sides();
        long * short
    }
}

/// How far the chords that stand for a piece's arcs may lie inside it, mm.
const ARC_MM: f64 = 0.25;
/// How much longer one side of a better rectangle might be, mm.
const WITHIN_MM: f64 = 0.05;

/// The largest rectangle inside an outline with a side along one of its straight edges.
///
/// Exact for straight-sided pieces, with or without inside corners; at arcs it keeps up to 0.25 mm
/// away. Nothing for a piece without straight edges. Cost: directions × corners² boxes, few of which are
/// searched.
#[must_use]
pub fn best_along_edges(outline: &Outline) -> Option<Rectangle> {
    larger_along_edges(outline, 0.0)
}

/// The same, if it is larger than an area, mm²: much sooner known when it is not.
#[must_use]
pub fn larger_along_edges(outline: &Outline, than_mm2: f64) -> Option<Rectangle> {
    let ring = outline.enclosed(ARC_MM);
    let mut best = Best {
        area: than_mm2,
        rectangle: None,
    };
    for turn in directions(outline) {
        best.look(&ring, turn, 0.0);
    }
    best.rectangle
}

/// A piece with more corners than this has been sawn round a curve, corner by corner.
const FEW_CORNERS: usize = 12;
/// Directions that are tried in such a piece: those of its longest edges (judgement: its short ones are
/// the plunges' marks).
const LONGEST_EDGES: usize = 4;

/// The marks of plunges are cut off up to this deep, mm (judgement: a saw's tolerance).
const MARK_MM: f64 = 1.5;
/// Less than a tile of 100 × 100, mm²: nobody turns a rule about on it for the last square millimetre (judgement).
const SCRAP_MM2: f64 = 10_000.0;

/// A large rectangle that can be had from a piece of waste: the largest at any angle from one of few
/// corners; from one sawn round a curve, or smaller than a tile, the largest along one of its four longest edges.
#[must_use]
pub fn best_of_piece(outline: &Outline) -> Option<Rectangle> {
    let straight = |seg: &Seg| matches!(seg, Seg::Line(..));
    let segs = outline.segs();
    let worth = outline.area() >= SCRAP_MM2;
    if worth && segs.len() <= FEW_CORNERS && segs.iter().all(straight) {
        return best_at_any_angle(outline);
    }
    let ring = coarsened(outline.enclosed(ARC_MM), MARK_MM);
    let mut best = Best::nothing();
    for turn in directions(outline).into_iter().take(LONGEST_EDGES) {
        best.look(&ring, turn, 0.0);
    }
    best.rectangle
}

/// The largest rectangle inside an outline at any angle.
///
/// No side of a better one is longer by more than 0.05 mm; at arcs it keeps up to 0.25 mm away. A
/// rectangle holds another that is turned a little and hardly smaller: angles in between are left out
/// where even that could not be the best.
#[must_use]
pub fn best_at_any_angle(outline: &Outline) -> Option<Rectangle> {
    let ring = outline.enclosed(ARC_MM);
    let bounds = outline.bounds();
    let across = bounds.width().hypot(bounds.height());
    let mut best = Best::nothing();
    for turn in directions(outline) {
        best.look(&ring, turn, 0.0);
    }
    // A piece that is a rectangle holds none that is larger.
    if best.area >= outline.area() - WITHIN_MM * across {
        return best.rectangle;
    }
    // Half a quarter turn each, refined where it may pay.
    let mut open = vec![(0.0, FRAC_PI_2)];
    while let Some((from, to)) = open.pop() {
        let (middle, half) = (f64::midpoint(from, to), (to - from) / 2.0);
        // What a rectangle loses at most when it is turned by so much and kept inside itself.
        let loss = half * across * across;
        let worth = loss >= best.area || best.look(&ring, middle, loss);
        if worth && loss > WITHIN_MM * across {
            open.extend([(from, middle), (middle, to)]);
        }
    }
    best.rectangle
}

/// Directions of the straight edges within a quarter turn, radians, those of the longest edges first.
fn directions(outline: &Outline) -> Vec<f64> {
    let straight = outline.segs().iter().filter_map(|seg| match seg {
        Seg::Line(a, b) => Some(((*b - *a).angle().rem_euclid(FRAC_PI_2), a.distance(*b))),
        Seg::Arc(_) => None,
    });
    let mut edges: Vec<(f64, f64)> = straight.collect();
    edges.sort_by(|a, b| a.0.total_cmp(&b.0));
    edges.dedup_by(|next, kept| {
        let same = (next.0 - kept.0).abs() < 1e-9;
        if same {
            kept.1 = kept.1.max(next.1);
        }
        same
    });
    edges.sort_by(|a, b| b.1.total_cmp(&a.1));
    edges.into_iter().map(|(turn, _)| turn).collect()
}

/// The best rectangle so far.
struct Best {
    area: f64,
    rectangle: Option<Rectangle>,
}

impl Best {
    const fn nothing() -> Self {
        Self {
            area: 0.0,
            rectangle: None,
        }
    }

    /// Looks for a larger one at a turn. True when the best of the turn comes so near, or may.
    fn look(&mut self, ring: &[Point], turn: f64, near: f64) -> bool {
        let pose = Pose::new(-turn, Vector::default());
        let turned: Vec<Point> = ring.iter().map(|p| pose.apply(*p)).collect();
        let Some((low, high)) = Levels::of(&turned).best(self.area - near, self.area) else {
            return false;
        };
        let area = (high.x - low.x) * (high.y - low.y);
        if area > self.area {
            let corners = [
                low,
                Point::new(high.x, low.y),
                high,
                Point::new(low.x, high.y),
            ];
            self.area = area;
            self.rectangle = Some(Rectangle {
                corners: corners.map(|p| pose.undo(p)),
            });
        }
        true
    }
}
