//! A straight-sided figure taken apart into convex pieces.

use super::hull::Hull;
use super::point::{Line, Point};

/// Sine of the change of direction below which a corner is straight.
const STRAIGHT: f64 = 1e-9;
/// Corners of the pieces closer than this are one, mm.
const SAME: f64 = 1e-7;

/// Convex pieces that together cover a simple counter-clockwise ring and nothing else, to 1e-7 mm.
///
/// One cut for each inside corner, along one of its edges carried on: the shortest first. Cost:
/// inside corners² × corners. A ring that is not simple gives its convex hull.
#[must_use]
pub fn parts(ring: &[Point]) -> Vec<Hull> {
    let mut open = vec![cleaned(ring.to_vec())];
    let mut done = Vec::new();
    // Each cut does away with one inside corner and makes none.
    let mut left = ring.len();
    while let Some(ring) = open.pop() {
        if ring.len() < 3 {
            continue;
        }
        let inside = inside_corners(&ring);
        if inside.is_empty() {
            done.push(Hull(ring));
            continue;
        }
        match shortest_cut(&ring, &inside).filter(|_| left > 0) {
            Some(cut) => {
                left -= 1;
                open.extend(split(&ring, &cut).map(cleaned));
            }
            None => done.push(Hull::around(ring)),
        }
    }
    done
}

/// A cut from a corner to a point of an edge.
struct Cut {
    corner: usize,
    edge: usize,
    to: Point,
    length: f64,
}

fn inside_corners(ring: &[Point]) -> Vec<usize> {
    let n = ring.len();
    let turns_right = |i: &usize| {
        let (u, v) = (
            ring[*i] - ring[(i + n - 1) % n],
            ring[(i + 1) % n] - ring[*i],
        );
        u.cross(v) < -STRAIGHT * u.length() * v.length()
    };
    (0..n).filter(turns_right).collect()
}

fn shortest_cut(ring: &[Point], inside: &[usize]) -> Option<Cut> {
    let n = ring.len();
    let both_ways = |i: &usize| {
        let i = *i;
        [(i + n - 1) % n, (i + 1) % n].map(|from| cut_along(ring, i, ring[from]))
    };
    let cuts = inside.iter().flat_map(both_ways).flatten();
    cuts.min_by(|a, b| a.length.total_cmp(&b.length))
}

/// The cut from a corner straight on, as seen from its neighbour `from`, to the nearest edge.
fn cut_along(ring: &[Point], corner: usize, from: Point) -> Option<Cut> {
    let n = ring.len();
    let at = ring[corner];
    let line = Line {
        point: at,
        along: (at - from).unit(),
    };
    let mut nearest: Option<Cut> = None;
    for edge in (0..n).filter(|e| *e != corner && (*e + 1) % n != corner) {
        let (a, b) = (ring[edge], ring[(edge + 1) % n]);
        let (da, db) = (line.left_of(a), line.left_of(b));
        if (da > SAME && db > SAME) || (da < -SAME && db < -SAME) || (da - db).abs() <= 1e-12 {
            continue;
        }
        let share = (da / (da - db)).clamp(0.0, 1.0);
        let to = a + (b - a) * share;
        let length = line.foot(to);
        let nearer = |c: &Cut| length < c.length;
        if length > SAME && nearest.as_ref().is_none_or(nearer) {
            nearest = Some(Cut {
                corner,
                edge,
                to,
                length,
            });
        }
    }
    nearest
}

fn split(ring: &[Point], cut: &Cut) -> [Vec<Point>; 2] {
    let n = ring.len();
    let run = |from: usize, to: usize| {
        let count = (to + n - from) % n + 1;
        (0..count).map(move |k| (from + k) % n)
    };
    let side = |from: usize, to: usize| -> Vec<Point> {
        let corners = run(from, to).map(|i| ring[i]);
        corners.chain([cut.to]).collect()
    };
    let mut second = vec![cut.to];
    second.extend(run((cut.edge + 1) % n, cut.corner).map(|i| ring[i]));
    [side(cut.corner, cut.edge), second]
}

/// A ring without corners named twice and corners that turn nowhere.
fn cleaned(mut ring: Vec<Point>) -> Vec<Point> {
    ring.dedup_by(|a, b| a.distance(*b) <= SAME);
    while ring.len() > 1 && ring[0].distance(ring[ring.len() - 1]) <= SAME {
        ring.pop();
    }
    let n = ring.len();
    let turns = |i: &usize| {
        let (u, v) = (
            ring[*i] - ring[(i + n - 1) % n],
            ring[(i + 1) % n] - ring[*i],
        );
        u.cross(v).abs() > STRAIGHT * u.length() * v.length()
    };
    let corners: Vec<usize> = (0..n).filter(turns).collect();
    corners.into_iter().map(|i| ring[i]).collect()
}
