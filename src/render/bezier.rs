//! Arcs as cubic curves.

use std::f64::consts::FRAC_PI_4;

use crate::geom::{Arc, Point};

/// One cubic curve after its start point: two handles and the end.
pub(super) type Cubic = [Point; 3];

/// The curves along an arc, each over 45° or less (within 5e-6 of the radius).
pub(super) fn cubics(arc: &Arc) -> Vec<Cubic> {
    // 1e-9: an arc of exactly 90° must not become three pieces through rounding.
    let pieces = (arc.sweep.abs() / FRAC_PI_4 - 1e-9).ceil().max(1.0);
    let step = arc.sweep / pieces;
    let handle = 4.0 / 3.0 * (step / 4.0).tan() * arc.radius;
    let mut found = Vec::new();
    let mut piece = 0.0;
    while piece < pieces {
        let (from, to) = (arc.start + step * piece, arc.start + step * (piece + 1.0));
        let tangent = |angle: f64| crate::geom::Vector::at_angle(angle).left();
        let (a, b) = (arc.at_angle(from), arc.at_angle(to));
        found.push([a + tangent(from) * handle, b - tangent(to) * handle, b]);
        piece += 1.0;
    }
    found
}
