//! For comparison with plunges: straight cuts tangent to an arc, which leave a polygon.

use serde::Serialize;

use super::curve::cusp_height;
use crate::geom::Arc;

/// Straight cuts tangent to an arc, run off at both ends, in place of plunges.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Tangents {
    /// How many leave corners no higher than the highest ridge that plunges may leave.
    pub cuts: usize,
    /// How far their corners stand out over the arc, mm.
    pub corner: f64,
    /// How far the corners of only four to the quarter circle would, mm.
    pub four_to_quarter: f64,
}

impl Tangents {
    /// For an arc and the highest ridge allowed, mm. The first and last cut lie half a step from the
    /// arc's ends, so that n cuts share the sweep evenly.
    #[must_use]
    pub fn round(arc: &Arc, cusp: f64) -> Self {
        let widest = 2.0 * (arc.radius / (arc.radius + cusp)).acos();
        let count = (arc.sweep.abs() / widest - 1e-9).ceil().clamp(1.0, 1000.0);
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let cuts = count as usize;
        Self {
            cuts,
            corner: cusp_height(arc.radius, arc.sweep.abs() / count),
            four_to_quarter: polygon_corner(arc.radius, 16),
        }
    }
}

/// How far the corners of a regular polygon of `sides` round a circle stand out over it, mm.
#[must_use]
pub fn polygon_corner(radius: f64, sides: u32) -> f64 {
    radius * (1.0 / (std::f64::consts::PI / f64::from(sides)).cos() - 1.0)
}
