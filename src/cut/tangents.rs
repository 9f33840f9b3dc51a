//! For comparison with plunges: straight cuts tangent to an arc, which leave a polygon.

use crate::geom::Arc;

use super::Tangents;

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

/// Height of the ridge between stations `step` apart, mm: r·(1/cos(Δ/2) − 1).
#[must_use]
pub fn cusp_height(radius: f64, step: f64) -> f64 {
    radius * (1.0 / (step / 2.0).cos() - 1.0)
}
