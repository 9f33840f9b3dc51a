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

/// Green's integrals of an arc whose centre lies at `c` from the base point.
pub(super) fn arc_moments(arc: &Arc, c: Vector) -> (f64, f64, f64) {
    let (r, s, e) = (arc.radius, arc.start, arc.start + arc.sweep);
    let ((ss, cs), (se, ce)) = (s.sin_cos(), e.sin_cos());
    let area = 0.5 * (r * r * arc.sweep + r * (c.x * (se - ss) - c.y * (ce - cs)));
    // Integrals of cos, cos², cos³ and sin, sin², sin³ over the sweep.
    let double = 0.25 * ((2.0 * e).sin() - (2.0 * s).sin());
    let (c1, c2) = (se - ss, 0.5 * arc.sweep + double);
    let c3 = (se - se.powi(3) / 3.0) - (ss - ss.powi(3) / 3.0);
    let (s1, s2) = (cs - ce, 0.5 * arc.sweep - double);
    let s3 = (ce.powi(3) / 3.0 - ce) - (cs.powi(3) / 3.0 - cs);
    let x = 0.5 * r * (c.x * c.x * c1 + 2.0 * c.x * r * c2 + r * r * c3);
    let y = 0.5 * r * (c.y * c.y * s1 + 2.0 * c.y * r * s2 + r * r * s3);
    (area, x, y)
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
