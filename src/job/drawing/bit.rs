//! The smallest parts of a drawing: lines, arcs, cubic curves.

use std::f64::consts::FRAC_PI_8;

use super::affine::Affine;
use crate::geom::{Arc, Point, Seg, Vector};

/// A line, an arc or a cubic curve.
#[derive(Clone, Copy, Debug)]
pub(super) enum Bit {
    /// A line or an arc.
    Seg(Seg),
    /// A cubic Bézier curve.
    Cubic([Point; 4]),
}

/// Chords of a curve keep so near to it, mm.
const CHORD_MM: f64 = 0.002;
/// The most chords of one curve.
const MOST_CHORDS: f64 = 400.0;

impl Bit {
    /// A straight line.
    pub(super) const fn line(from: Point, to: Point) -> Self {
        Self::Seg(Seg::Line(from, to))
    }

    pub(super) fn start(&self) -> Point {
        match self {
            Self::Seg(seg) => seg.start(),
            Self::Cubic(knots) => knots[0],
        }
    }

    pub(super) fn end(&self) -> Point {
        match self {
            Self::Seg(seg) => seg.end(),
            Self::Cubic(knots) => knots[3],
        }
    }

    pub(super) fn reversed(&self) -> Self {
        match self {
            Self::Seg(seg) => Self::Seg(seg.reversed()),
            Self::Cubic([a, b, c, d]) => Self::Cubic([*d, *c, *b, *a]),
        }
    }

    /// Direction at its start and at its end.
    pub(super) fn headings(&self) -> [Vector; 2] {
        match self {
            Self::Seg(seg) => [seg.heading(0.0), seg.heading(1.0)],
            Self::Cubic(k) => {
                let first = k.iter().skip(1).find(|p| p.distance(k[0]) > 0.0);
                let last = k.iter().rev().skip(1).find(|p| p.distance(k[3]) > 0.0);
                [
                    first.map_or(Vector::default(), |p| (*p - k[0]).unit()),
                    last.map_or(Vector::default(), |p| (k[3] - *p).unit()),
                ]
            }
        }
    }

    /// Carried along by a transformation: an arc stays one where circles stay circles.
    pub(super) fn moved(&self, by: &Affine) -> Vec<Self> {
        match self {
            Self::Seg(Seg::Line(a, b)) => vec![Self::line(by.apply(*a), by.apply(*b))],
            Self::Seg(Seg::Arc(arc)) => moved_arc(arc, by),
            Self::Cubic(knots) => vec![Self::Cubic(knots.map(|p| by.apply(p)))],
        }
    }

    /// Points along a curve, the first and the last included.
    pub(super) fn chords([a, b, c, d]: [Point; 4]) -> Vec<Point> {
        let bend = |p: Point, q: Point, r: Point| ((r - q) - (q - p)).length();
        // The chords of n equal steps are off by at most (6/8)·bend/n².
        let steps = (0.75 * bend(a, b, c).max(bend(b, c, d)) / CHORD_MM).sqrt();
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let steps = steps.ceil().clamp(2.0, MOST_CHORDS) as u32;
        let at = |i: u32| {
            let t = f64::from(i) / f64::from(steps);
            let u = 1.0 - t;
            let weigh = [u * u * u, 3.0 * u * u * t, 3.0 * u * t * t, t * t * t];
            let sum = |of: fn(&Point) -> f64| {
                let knots = [a, b, c, d];
                knots.iter().zip(weigh).map(|(p, w)| of(p) * w).sum()
            };
            Point::new(sum(|p| p.x), sum(|p| p.y))
        };
        (0..=steps).map(at).collect()
    }
}

fn moved_arc(arc: &Arc, by: &Affine) -> Vec<Bit> {
    let Some(scale) = by.similarity() else {
        return cubics(arc)
            .into_iter()
            .map(|k| Bit::Cubic(k.map(|p| by.apply(p))))
            .collect();
    };
    let centre = by.apply(arc.centre);
    let from = by.apply(arc.at_angle(arc.start));
    vec![Bit::Seg(Seg::Arc(Arc {
        centre,
        radius: arc.radius * scale.abs(),
        start: (from - centre).angle(),
        sweep: arc.sweep * scale.signum(),
    }))]
}

/// An arc as curves of at most 22.5° (within 1e-8 of the radius).
fn cubics(arc: &Arc) -> Vec<[Point; 4]> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = (arc.sweep.abs() / FRAC_PI_8).ceil().clamp(1.0, 16.0) as u32;
    let step = arc.sweep / f64::from(count);
    let handle = 4.0 / 3.0 * (step / 4.0).tan() * arc.radius;
    let each = (0..count).map(|i| {
        let (from, to) = (
            arc.start + step * f64::from(i),
            arc.start + step * f64::from(i + 1),
        );
        let (a, b) = (arc.at_angle(from), arc.at_angle(to));
        let along = |angle: f64| Vector::at_angle(angle).left() * handle;
        [a, a + along(from), b - along(to), b]
    });
    each.collect()
}
