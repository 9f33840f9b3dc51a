//! The data of an SVG path as lines, arcs and curves.

use std::f64::consts::{PI, TAU};

use svgtypes::{PathParser, PathSegment};

use super::affine::Affine;
use super::bit::Bit;
use crate::geom::{Arc, Point, Seg, Vector};

/// The subpaths of a path, each with whether it is closed.
///
/// # Errors
/// Where the data cannot be read.
pub(super) fn subpaths(data: &str) -> Result<Vec<(Vec<Bit>, bool)>, String> {
    let mut pen = Pen::default();
    for segment in PathParser::from(data) {
        let segment = segment.map_err(|e| format!("its path cannot be read: {e}"))?;
        pen.follow(segment);
    }
    pen.lift(false);
    Ok(pen.done)
}

#[derive(Default)]
struct Pen {
    at: Point,
    first: Point,
    /// The last handle of the curve before, cubic and quadratic.
    handle: [Option<Point>; 2],
    bits: Vec<Bit>,
    done: Vec<(Vec<Bit>, bool)>,
}

impl Pen {
    fn follow(&mut self, segment: PathSegment) {
        use PathSegment as S;
        let handles = std::mem::take(&mut self.handle);
        match segment {
            S::MoveTo { abs, x, y } => {
                self.lift(false);
                self.at = self.place(abs, x, y);
                self.first = self.at;
            }
            S::LineTo { abs, x, y } => self.line(self.place(abs, x, y)),
            S::HorizontalLineTo { abs, x } => {
                let x = if abs { x } else { self.at.x + x };
                self.line(Point::new(x, self.at.y));
            }
            S::VerticalLineTo { abs, y } => {
                let y = if abs { y } else { self.at.y + y };
                self.line(Point::new(self.at.x, y));
            }
            S::ClosePath { .. } => {
                self.line(self.first);
                self.lift(true);
            }
            S::EllipticalArc { .. } => self.arc(segment),
            curve => self.curve(curve, handles),
        }
    }

    fn place(&self, abs: bool, x: f64, y: f64) -> Point {
        if abs {
            Point::new(x, y)
        } else {
            self.at + Vector::new(x, y)
        }
    }

    fn line(&mut self, to: Point) {
        if to != self.at {
            self.bits.push(Bit::line(self.at, to));
        }
        self.at = to;
    }

    fn curve(&mut self, curve: PathSegment, [cubic, quadratic]: [Option<Point>; 2]) {
        use PathSegment as S;
        let mirrored = |handle: Option<Point>| handle.map_or(self.at, |h| self.at + (self.at - h));
        let at = self.at;
        let thirds = |handle: Point, to: Point| {
            [
                at + (handle - at) * (2.0 / 3.0),
                to + (handle - to) * (2.0 / 3.0),
            ]
        };
        let (handles, to, quadratic) = match curve {
            S::CurveTo {
                abs,
                x1,
                y1,
                x2,
                y2,
                x,
                y,
            } => {
                let handles = [self.place(abs, x1, y1), self.place(abs, x2, y2)];
                (handles, self.place(abs, x, y), None)
            }
            S::SmoothCurveTo { abs, x2, y2, x, y } => {
                let handles = [mirrored(cubic), self.place(abs, x2, y2)];
                (handles, self.place(abs, x, y), None)
            }
            S::Quadratic { abs, x1, y1, x, y } => {
                let (handle, to) = (self.place(abs, x1, y1), self.place(abs, x, y));
                (thirds(handle, to), to, Some(handle))
            }
            S::SmoothQuadratic { abs, x, y } => {
                let (handle, to) = (mirrored(quadratic), self.place(abs, x, y));
                (thirds(handle, to), to, Some(handle))
            }
            _ => return,
        };
        self.bits.push(Bit::Cubic([at, handles[0], handles[1], to]));
        self.handle = [quadratic.is_none().then_some(handles[1]), quadratic];
        self.at = to;
    }

    fn arc(&mut self, arc: PathSegment) {
        let PathSegment::EllipticalArc {
            abs,
            rx,
            ry,
            x_axis_rotation,
            large_arc,
            sweep,
            x,
            y,
        } = arc
        else {
            return;
        };
        let to = self.place(abs, x, y);
        let turn = x_axis_rotation.to_radians();
        match elliptical(self.at, to, (rx.abs(), ry.abs()), turn, (large_arc, sweep)) {
            Some(bits) => {
                self.bits.extend(bits);
                self.at = to;
            }
            None => self.line(to),
        }
    }

    /// Ends a subpath.
    fn lift(&mut self, closed: bool) {
        let bits = std::mem::take(&mut self.bits);
        if !bits.is_empty() {
            self.done.push((bits, closed));
        }
        self.at = if closed { self.first } else { self.at };
    }
}

/// An arc by its ends (SVG 1.1, appendix F.6.5); nothing when it is a straight line.
fn elliptical(
    from: Point,
    to: Point,
    (rx, ry): (f64, f64),
    turn: f64,
    (large, sweep): (bool, bool),
) -> Option<Vec<Bit>> {
    if rx <= 0.0 || ry <= 0.0 || from == to {
        return None;
    }
    // In the frame in which the ellipse is a unit circle, scaled up where it would not reach.
    let half = ((from - to) * 0.5).turned(-turn);
    let half = Vector::new(half.x / rx, half.y / ry);
    let grow = half.length().max(1.0);
    let (rx, ry, half) = (rx * grow, ry * grow, half * (1.0 / grow));
    let off = (1.0 / half.dot(half) - 1.0).max(0.0).sqrt();
    let side = if large == sweep { -1.0 } else { 1.0 };
    let centre = Vector::new(half.y, -half.x) * (off * side);
    let start = (half - centre).angle();
    let end = (-half - centre).angle();
    let way = (end - start).rem_euclid(TAU);
    let way = if sweep { way } else { way - TAU };
    let middle = from.midpoint(to) + Vector::new(centre.x * rx, centre.y * ry).turned(turn);
    let onto = Affine::ellipse(middle, (rx, ry), turn);
    Some(unit_arc(start, way, &onto))
}

/// A part of the unit circle carried along, in pieces of a half circle or less.
pub(super) fn unit_arc(start: f64, way: f64, onto: &Affine) -> Vec<Bit> {
    let count = if way.abs() > PI + 1e-9 { 2_u8 } else { 1 };
    let sweep = way / f64::from(count);
    (0..count)
        .flat_map(|i| {
            let arc = Arc {
                centre: Point::ORIGIN,
                radius: 1.0,
                start: start + sweep * f64::from(i),
                sweep,
            };
            Bit::Seg(Seg::Arc(arc)).moved(onto)
        })
        .collect()
}
