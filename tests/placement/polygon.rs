//! Straight-sided polygons with inside corners, as lists of places: enough to judge a place by.

use crate::convex::{Line, lines};
use crate::replay::plane::{Place, apart, to_stretch};

/// Distance along a line.
pub(crate) fn foot(line: &Line, p: Place) -> f64 {
    (p[0] - line.at[0]) * line.along[0] + (p[1] - line.at[1]) * line.along[1]
}

pub(crate) fn on(line: &Line, at: f64) -> Place {
    [
        line.at[0] + line.along[0] * at,
        line.at[1] + line.along[1] * at,
    ]
}

pub(crate) fn edges(ring: &[Place]) -> impl Iterator<Item = (Place, Place)> + '_ {
    let next = ring.iter().cycle().skip(1);
    ring.iter().zip(next).map(|(a, b)| (*a, *b))
}

/// Whether a place lies inside, by the crossings of a ray to the right.
pub(crate) fn inside(ring: &[Place], p: Place) -> bool {
    let crossings = edges(ring).filter(|(a, b)| {
        (a[1] > p[1]) != (b[1] > p[1])
            && p[0] < a[0] + (b[0] - a[0]) * (p[1] - a[1]) / (b[1] - a[1])
    });
    crossings.count() % 2 == 1
}

pub(crate) fn to_ring(ring: &[Place], p: Place) -> f64 {
    let each = edges(ring).map(|(a, b)| to_stretch(p, a, b));
    each.fold(f64::INFINITY, f64::min)
}

/// How far a ring reaches out over another, mm.
pub(crate) fn sticks_out(ring: &[Place], over: &[Place]) -> f64 {
    let mut worst = 0.0_f64;
    for p in ring {
        if !inside(over, *p) {
            worst = worst.max(to_ring(over, *p));
        }
    }
    for p in over {
        if inside(ring, *p) {
            worst = worst.max(to_ring(ring, *p));
        }
    }
    for (a, b) in edges(ring) {
        for (c, d) in edges(over) {
            worst = worst.max(crossing(a, b, c, d));
        }
    }
    worst
}

/// How far two stretches reach over each other where they cross, mm; 0 when they do not.
fn crossing(a: Place, b: Place, c: Place, d: Place) -> f64 {
    let (first, second) = (Line::through(a, b), Line::through(c, d));
    let [p, q] = [c, d].map(|p| first.left_of(p));
    let [r, s] = [a, b].map(|p| second.left_of(p));
    if p * q >= 0.0 || r * s >= 0.0 {
        return 0.0;
    }
    [p, q, r, s]
        .map(f64::abs)
        .into_iter()
        .fold(f64::INFINITY, f64::min)
}

/// Where a line runs inside a ring, as distances along it.
pub(crate) fn runs(ring: &[Place], line: &Line) -> Vec<(f64, f64)> {
    let mut marks: Vec<f64> = edges(ring)
        .filter_map(|(a, b)| {
            let (da, db) = (line.left_of(a), line.left_of(b));
            ((da > 0.0) != (db > 0.0)).then(|| {
                let share = da / (da - db);
                foot(
                    line,
                    [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share],
                )
            })
        })
        .collect();
    marks.sort_by(f64::total_cmp);
    marks.chunks_exact(2).map(|w| (w[0], w[1])).collect()
}

/// The run of a line through or nearest to a place along it, and the stone left of it. Where the line
/// lies along an edge the cut ends: of a hair to either side the shorter.
pub(crate) fn cut(ring: &[Place], line: &Line, near: f64) -> Option<((f64, f64), Vec<Place>)> {
    let sides = [1e-6, -1e-6].map(|by| cut_beside(ring, &line.moved_out(by), near));
    let long = |c: &((f64, f64), Vec<Place>)| c.0.1 - c.0.0;
    match sides {
        [Some(a), Some(b)] => Some(if long(&a) <= long(&b) { a } else { b }),
        _ => None,
    }
}

fn cut_beside(ring: &[Place], line: &Line, near: f64) -> Option<((f64, f64), Vec<Place>)> {
    let away = |r: &(f64, f64)| (r.0 - near).max(near - r.1).max(0.0);
    let run = runs(ring, line)
        .into_iter()
        .filter(|r| r.1 - r.0 > 1e-6)
        .min_by(|a, b| away(a).total_cmp(&away(b)))?;
    let side = |k: usize| line.left_of(ring[k % ring.len()]) > 0.0;
    let at = |k: usize| {
        let (a, b) = (ring[k % ring.len()], ring[(k + 1) % ring.len()]);
        let share = line.left_of(a) / (line.left_of(a) - line.left_of(b));
        foot(
            line,
            [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share],
        )
    };
    let n = ring.len();
    let crossing = |mark: f64| {
        (0..n)
            .filter(|k| side(*k) != side(k + 1))
            .min_by(|a, b| (at(*a) - mark).abs().total_cmp(&(at(*b) - mark).abs()))
    };
    let (leaves, enters) = (crossing(run.1)?, crossing(run.0)?);
    let mut left = vec![on(line, run.0), on(line, run.1)];
    let mut k = (leaves + 1) % n;
    loop {
        left.push(ring[k]);
        if k == enters {
            break;
        }
        k = (k + 1) % n;
    }
    Some((run, left))
}

/// Distance between a polygon and a path, mm; 0 when they touch or the path lies inside.
pub(crate) fn gap(ring: &[Place], path: &[Place]) -> f64 {
    if path.iter().any(|p| inside(ring, *p)) {
        return 0.0;
    }
    let mut least = path
        .iter()
        .map(|p| to_ring(ring, *p))
        .fold(f64::INFINITY, f64::min);
    for w in path.windows(2) {
        let line = Line::through(w[0], w[1]);
        let long = apart(w[0], w[1]);
        if runs(ring, &line).iter().any(|r| r.0 < long && r.1 > 0.0) {
            return 0.0;
        }
        let corners = ring.iter().map(|p| to_stretch(*p, w[0], w[1]));
        least = corners.fold(least, f64::min);
    }
    least
}

/// The lines along all edges.
pub(crate) fn sides(ring: &[Place]) -> Vec<Line> {
    lines(ring)
}

/// Width of the stone beyond an edge: to the slab's corners over it, and along three rays to slab edges
/// that lie within 30° of it. `face` is the sawn face from the beginning of the edge
/// on; where it stands over the slab by no more than `over` there is no strip.
pub(crate) fn strip(slab: &[Place], face: &Line, long: f64, over: f64) -> f64 {
    const SAME: f64 = 1e-6;
    let out = face.out();
    let mut least = f64::INFINITY;
    for p in slab {
        let (at, by) = (foot(face, *p), -face.left_of(*p));
        if at >= -SAME && at <= long + SAME && by >= -over {
            least = least.min(by);
        }
    }
    for (a, b) in edges(slab) {
        let along = Line::through(a, b).along;
        if (along[0] * out[0] + along[1] * out[1]).abs() >= 0.5 {
            continue;
        }
        for at in [0.0, long / 2.0, long] {
            let ray = Line {
                at: on(face, at),
                along: out,
            };
            let (da, db) = (ray.left_of(a), ray.left_of(b));
            if (da > 0.0) != (db > 0.0) {
                let share = da / (da - db);
                let across = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
                let by = foot(&ray, across);
                if by >= -over {
                    least = least.min(by);
                }
            }
        }
    }
    least
}
