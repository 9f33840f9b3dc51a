//! Pieces of a boundary that run one way along the stone: the width of a cross-section, and the
//! stone to the left of it with its moment, are signed sums over them.

use std::f64::consts::PI;

use super::axes::Axes;
use crate::geom::{Arc, Seg};

/// A piece of boundary as a function of `u`, mm.
#[derive(Clone, Copy, Debug)]
pub(crate) struct BoundaryCourse {
    from: f64,
    to: f64,
    /// +1 where the stone ends above it, −1 where it begins.
    sign: f64,
    path: Path,
}

#[derive(Clone, Copy, Debug)]
enum Path {
    Straight {
        v: f64,
        slope: f64,
    },
    Round {
        u: f64,
        v: f64,
        radius: f64,
        side: f64,
    },
}

impl BoundaryCourse {
    /// Height of the boundary at `u`; beyond its ends, that of the nearer end.
    pub(crate) fn v(&self, u: f64) -> f64 {
        let u = u.clamp(self.from, self.to);
        match self.path {
            Path::Straight { v, slope } => v + slope * (u - self.from),
            Path::Round {
                u: centre,
                v,
                radius,
                side,
            } => {
                let away = u - centre;
                v + side * (radius * radius - away * away).max(0.0).sqrt()
            }
        }
    }

    /// The piece's part in the width of the section.
    pub(crate) fn width_share(&self, u: f64) -> f64 {
        self.sign * self.v(u)
    }

    /// The piece's part in the stone between the start of the course and `u`, mm², and in its
    /// moment about `u = 0`, mm³. Closed forms: exact but for rounding.
    pub(crate) fn swept(&self, u: f64) -> (f64, f64) {
        let (area, moment) = match self.path {
            Path::Straight { v, slope } => {
                let d = u - self.from;
                let area = d * (v + 0.5 * slope * d);
                let about_start = d * d * (0.5 * v + slope * d / 3.0);
                (area, self.from * area + about_start)
            }
            Path::Round {
                u: centre,
                v,
                radius,
                side,
            } => {
                let (a, b) = (self.from - centre, u - centre);
                let (first, last) = (cap(a, radius), cap(b, radius));
                let area = v * (b - a) + side * (last.0 - first.0);
                let about_centre = 0.5 * v * (b * b - a * a) + side * (last.1 - first.1);
                (area, centre * area + about_centre)
            }
        };
        (self.sign * area, self.sign * moment)
    }

    /// First and last `u`.
    pub(crate) fn ends(&self) -> [f64; 2] {
        [self.from, self.to]
    }

    /// Whether a cross-section at `u` meets it.
    pub(crate) fn covers(&self, u: f64) -> bool {
        self.from <= u && u < self.to
    }
}

/// `∫ √(r² − x²) dx` and `∫ x·√(r² − x²) dx` from 0 to `x`, but for constants.
fn cap(x: f64, radius: f64) -> (f64, f64) {
    let x = x.clamp(-radius, radius);
    let height = (radius * radius - x * x).max(0.0).sqrt();
    let area = 0.5 * (x * height + radius * radius * (x / radius).asin());
    (area, -height.powi(3) / 3.0)
}

/// The courses of one piece of a counter-clockwise boundary; `hole` turns stone and air about.
pub(crate) fn courses(seg: &Seg, axes: &Axes, hole: bool) -> Vec<BoundaryCourse> {
    let stone_side = if hole { 1.0 } else { -1.0 };
    match seg {
        Seg::Line(a, b) => {
            let (a, b) = (axes.seen(*a), axes.seen(*b));
            straight(a, b, stone_side).into_iter().collect()
        }
        Seg::Arc(arc) => round(arc, axes, stone_side),
    }
}

fn straight(a: (f64, f64), b: (f64, f64), stone_side: f64) -> Option<BoundaryCourse> {
    let run = b.0 - a.0;
    let (low, high) = if run < 0.0 { (b, a) } else { (a, b) };
    (run != 0.0).then(|| BoundaryCourse {
        from: low.0,
        to: high.0,
        sign: stone_side * run.signum(),
        path: Path::Straight {
            v: low.1,
            slope: (high.1 - low.1) / (high.0 - low.0),
        },
    })
}

/// An arc parted where it turns back along `u`.
fn round(arc: &Arc, axes: &Axes, stone_side: f64) -> Vec<BoundaryCourse> {
    let (u, v) = axes.seen(arc.centre);
    let start = arc.start - axes.direction().angle();
    let end = start + arc.sweep;
    let (low, high) = (start.min(end), start.max(end));
    let mut marks = vec![low];
    let mut turn = (low / PI).floor() + 1.0;
    while turn * PI < high {
        marks.push(turn * PI);
        turn += 1.0;
    }
    marks.push(high);
    marks
        .windows(2)
        .filter_map(|w| {
            let at = |angle: f64| u + arc.radius * angle.cos();
            let run = (at(w[1]) - at(w[0])) * arc.sweep.signum();
            (run != 0.0).then(|| BoundaryCourse {
                from: at(w[0]).min(at(w[1])),
                to: at(w[0]).max(at(w[1])),
                sign: stone_side * run.signum(),
                path: Path::Round {
                    u,
                    v,
                    radius: arc.radius,
                    side: f64::midpoint(w[0], w[1]).sin().signum(),
                },
            })
        })
        .collect()
}
