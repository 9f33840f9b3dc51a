//! Circular arcs, and where lines and circles meet.

use std::f64::consts::TAU;

use super::SAME_MM;
use super::point::{Line, Point, Vector};

/// A circular arc. Radius > 0, 0 < |sweep| ≤ 2π.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Arc {
    /// Centre of the circle.
    pub centre: Point,
    /// Radius, mm.
    pub radius: f64,
    /// Angle of the first point, radians counter-clockwise from x.
    pub start: f64,
    /// Angle run through, radians; positive counter-clockwise.
    pub sweep: f64,
}

/// An angle brought into [0, 2π).
#[must_use]
pub fn wrapped(angle: f64) -> f64 {
    let a = angle.rem_euclid(TAU);
    if a >= TAU { 0.0 } else { a }
}

impl Arc {
    /// The arc about a centre from one point to another, turning the way of `sign`.
    ///
    /// The radius is that of the start point; the end point is taken by its angle only.
    #[must_use]
    pub fn between(centre: Point, from: Point, to: Point, sign: f64) -> Self {
        let start = (from - centre).angle();
        let turn = wrapped(((to - centre).angle() - start) * sign.signum());
        Self {
            centre,
            radius: centre.distance(from),
            start,
            sweep: turn * sign.signum(),
        }
    }

    /// The point at an angle about the centre.
    #[must_use]
    pub fn at_angle(&self, angle: f64) -> Point {
        self.centre + Vector::at_angle(angle) * self.radius
    }

    /// How much of the sweep lies before an angle, 0 to 1; nothing when the angle is off the arc.
    ///
    /// `slack` is the angle, in radians, by which an angle may miss the ends.
    #[must_use]
    pub fn share_at(&self, angle: f64, slack: f64) -> Option<f64> {
        let turn = wrapped((angle - self.start) * self.sweep.signum());
        let full = self.sweep.abs();
        if turn <= full + slack {
            Some((turn / full).min(1.0))
        } else if turn >= TAU - slack {
            Some(0.0)
        } else {
            None
        }
    }

    /// Chords that keep within `tolerance` mm of the arc: how many.
    #[must_use]
    pub fn chords_within(&self, tolerance: f64) -> usize {
        let half = (1.0 - (tolerance / self.radius).min(1.0)).acos();
        let steps = (self.sweep.abs() / (2.0 * half)).ceil().max(1.0);
        // No drawing or boolean needs more; keeps a huge radius from costing memory.
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let steps = steps.min(4096.0) as usize;
        steps
    }
}

/// Green's integrals of an arc whose centre lies at `c` from the base point: those of its chord and
/// of the circular segment between the two, which keep their digits when the radius is large.
pub(super) fn arc_moments(arc: &Arc, c: Vector) -> (f64, f64, f64) {
    let (r, half) = (arc.radius, arc.sweep / 2.0);
    let to = |angle: f64| c + Vector::at_angle(angle) * r;
    let chord = line_moments(to(arc.start), to(arc.start + arc.sweep));
    let area = 0.5 * r * r * less_its_sine(arc.sweep);
    // The segment's first moment about the centre, along its axis, is (2/3)·r³·sin³(Δ/2).
    let axis = Vector::at_angle(arc.start + half);
    let from_chord = 2.0 / 3.0 * (r * half.sin()).powi(3) - area * r * half.cos();
    let moment = (c + axis * (r * half.cos())) * area + axis * from_chord;
    (chord.0 + area, chord.1 + moment.x, chord.2 + moment.y)
}

/// Green's integrals of a straight piece between two points seen from the base point.
pub(super) fn line_moments(a: Vector, b: Vector) -> (f64, f64, f64) {
    (
        0.5 * a.cross(b),
        (b.y - a.y) * (a.x * a.x + a.x * b.x + b.x * b.x) / 6.0,
        -(b.x - a.x) * (a.y * a.y + a.y * b.y + b.y * b.y) / 6.0,
    )
}

/// x − sin x, without losing digits where the two are nearly the same.
fn less_its_sine(x: f64) -> f64 {
    if x.abs() > 0.5 {
        return x - x.sin();
    }
    // The sine's own series from its second term on; the tenth is below rounding.
    let (mut term, mut sum) = (x, 0.0);
    for k in 1..10 {
        let n = f64::from(2 * k);
        term *= -x * x / (n * (n + 1.0));
        sum -= term;
    }
    sum
}

/// Where a line meets a circle: none, one (touching within [`SAME_MM`]) or two points.
pub(super) fn line_meets_circle(line: &Line, centre: Point, radius: f64) -> Vec<Point> {
    let foot = line.foot(centre);
    let away = line.left_of(centre);
    let half = radius * radius - away * away;
    // Touching: the half chord's square is below what SAME_MM of height makes of it.
    if half < -2.0 * radius * SAME_MM {
        vec![]
    } else if half <= radius * SAME_MM * SAME_MM {
        vec![line.at(foot)]
    } else {
        let half = half.sqrt();
        vec![line.at(foot - half), line.at(foot + half)]
    }
}

/// Where two circles meet.
pub(super) fn circles_meet(a: &Arc, b: &Arc) -> Vec<Point> {
    let apart = b.centre - a.centre;
    let d = apart.length();
    if d <= SAME_MM {
        return vec![];
    }
    let along = (a.radius * a.radius - b.radius * b.radius + d * d) / (2.0 * d);
    let axis = Line {
        point: a.centre + apart * (along / d),
        along: apart.left().unit(),
    };
    line_meets_circle(&axis, a.centre, a.radius)
}
