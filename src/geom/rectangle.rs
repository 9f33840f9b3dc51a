//! The best rectangle that can still be cut from a piece.

use super::outline::Outline;
use super::point::{Point, Pose, Vector};
use super::seg::Seg;

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

/// Lines laid across the piece in each direction, besides those through its corners.
const STRIPS: u32 = 48;

/// A large rectangle inside an outline with a side along one of its straight edges.
///
/// For each straight edge direction the piece is cut into a grid by lines through every corner
/// and at even spacings; the answer is the largest block of cells that lie wholly inside. Exact
/// when the piece's edges are square to each other; elsewhere a valid rectangle that falls short
/// of the best by no more than one grid spacing on each side. Nothing for a piece without straight edges.
/// Cost: directions × grid².
#[must_use]
pub fn best_along_edges(outline: &Outline) -> Option<Rectangle> {
    let mut directions: Vec<f64> = Vec::new();
    for seg in outline.segs() {
        if let Seg::Line(a, b) = seg {
            let turn = (*b - *a).angle().rem_euclid(std::f64::consts::FRAC_PI_2);
            if directions.iter().all(|d| (d - turn).abs() > 1e-6) {
                directions.push(turn);
            }
        }
    }
    directions
        .into_iter()
        .filter_map(|turn| best_upright(outline, turn))
        .max_by(|a, b| a.area().total_cmp(&b.area()))
}

/// The best rectangle at one turn.
fn best_upright(outline: &Outline, turn: f64) -> Option<Rectangle> {
    let pose = Pose::new(-turn, Vector::default());
    let turned = outline.posed(pose);
    let ring = turned.flattened();
    let xs = marks(ring.iter().map(|p| p.x), &turned, |s| s.start().x);
    let ys = marks(ring.iter().map(|p| p.y), &turned, |s| s.start().y);
    let rows: Vec<Vec<bool>> = ys
        .windows(2)
        .map(|y| row_inside(&ring, &xs, y[0], y[1]))
        .collect();
    let (x, y) = largest_block(&rows, &xs, &ys)?;
    let corners = [(x.0, y.0), (x.1, y.0), (x.1, y.1), (x.0, y.1)];
    Some(Rectangle {
        corners: corners.map(|(x, y)| pose.undo(Point::new(x, y))),
    })
}

/// Grid marks: the corners' coordinates and even spacings between the extremes.
fn marks(all: impl Iterator<Item = f64>, outline: &Outline, of: impl Fn(&Seg) -> f64) -> Vec<f64> {
    let (low, high) = all.fold((f64::INFINITY, f64::NEG_INFINITY), |m, v| {
        (m.0.min(v), m.1.max(v))
    });
    let even = (0..=STRIPS).map(|i| low + (high - low) * f64::from(i) / f64::from(STRIPS));
    let mut marks: Vec<f64> = outline.segs().iter().map(of).chain(even).collect();
    marks.sort_by(f64::total_cmp);
    marks.dedup_by(|a, b| (*a - *b).abs() < 1e-6);
    marks
}

/// Which cells of one row lie inside a ring: cells no edge of the ring runs through, and whose
/// middle is inside.
fn row_inside(ring: &[Point], xs: &[f64], low: f64, high: f64) -> Vec<bool> {
    let middle = f64::midpoint(low, high);
    let edges: Vec<(Point, Point)> = ring
        .iter()
        .zip(ring.iter().cycle().skip(1))
        .map(|(a, b)| (*a, *b))
        .filter(|(a, b)| a.y.max(b.y) > low + 1e-9 && a.y.min(b.y) < high - 1e-9)
        .collect();
    let at = |a: &Point, b: &Point, y: f64| a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y);
    // The x range each edge sweeps within the row, and where it crosses the row's middle.
    let swept: Vec<(f64, f64)> = edges
        .iter()
        .map(|(a, b)| {
            if (a.y - b.y).abs() < 1e-12 {
                return (a.x.min(b.x), a.x.max(b.x));
            }
            let clip = |y: f64| at(a, b, y.clamp(low, high));
            let (p, q) = (clip(a.y), clip(b.y));
            (p.min(q), p.max(q))
        })
        .collect();
    let crossings: Vec<f64> = edges
        .iter()
        .filter(|(a, b)| (a.y > middle) != (b.y > middle))
        .map(|(a, b)| at(a, b, middle))
        .collect();
    xs.windows(2)
        .map(|x| {
            let centre = f64::midpoint(x[0], x[1]);
            let cut = swept.iter().any(|s| s.1 > x[0] + 1e-9 && s.0 < x[1] - 1e-9);
            !cut && crossings.iter().filter(|c| **c > centre).count() % 2 == 1
        })
        .collect()
}

type Range = (f64, f64);

/// The block of inside cells with the greatest area.
fn largest_block(rows: &[Vec<bool>], xs: &[f64], ys: &[f64]) -> Option<(Range, Range)> {
    let mut best: Option<(f64, Range, Range)> = None;
    for bottom in 0..rows.len() {
        let mut open = rows[bottom].clone();
        for top in bottom..rows.len() {
            for (o, inside) in open.iter_mut().zip(&rows[top]) {
                *o &= *inside;
            }
            let Some(x) = longest_run(&open, xs) else {
                break;
            };
            let y = (ys[bottom], ys[top + 1]);
            let area = (x.1 - x.0) * (y.1 - y.0);
            if best.as_ref().is_none_or(|b| area > b.0) {
                best = Some((area, x, y));
            }
        }
    }
    best.map(|(_, x, y)| (x, y))
}

/// The longest stretch of open cells.
fn longest_run(open: &[bool], xs: &[f64]) -> Option<Range> {
    let mut best: Option<Range> = None;
    let mut start: Option<usize> = None;
    for i in 0..=open.len() {
        match (open.get(i).copied().unwrap_or(false), start) {
            (true, None) => start = Some(i),
            (false, Some(from)) => {
                let run = (xs[from], xs[i]);
                if best.is_none_or(|b| run.1 - run.0 > b.1 - b.0) {
                    best = Some(run);
                }
                start = None;
            }
            _ => {}
        }
    }
    best
}
