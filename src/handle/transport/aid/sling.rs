//! A gantry or hoist: two slings under the stone on edge, one hook above the balance point.

use serde::Serialize;

use crate::geom::Point;
use crate::handle::bending::axes::Axes;
use crate::handle::bending::bend::Orientation;
use crate::handle::lifting::hold::Holder;
use crate::handle::loads::Load;
use crate::units::Mass;

/// Angle between the two legs at the hook, degrees (judgement: makers' tables usually count on 60
/// and never on more than 120).
pub const LEGS_DEG: f64 = 60.0;

/// The slings stand this share of the shorter side's length from the balance point, the first of them that
/// bending allows: on an even strip 0.2071 of its length from each end, where it is bent least (Gere,
/// Mechanics of Materials, problem 5.6-18): 1 − 2 × 0.2071; then nearer and farther (judgement).
const SHARES: [f64; 6] = [2.0 - std::f64::consts::SQRT_2, 0.5, 0.7, 0.4, 0.8, 0.3];

/// Two slings at equal load.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Slings {
    /// From the left end (lower end when upright) of the stone, mm.
    pub from_end_mm: [f64; 2],
    /// Where they pass the stone's long side, slab frame.
    pub at: [Point; 2],
    /// From the balance point to each, along the stone, mm.
    pub from_balance_mm: f64,
    /// Weight on each: half.
    #[serde(rename = "each_kg")]
    pub each: Mass,
    /// Angle between the legs at the hook, degrees.
    pub legs_deg: f64,
    /// Pull in each leg, as a part of the whole weight: `1 / (2·cos(α/2))`.
    pub tension_factor: f64,
    /// The same as a mass.
    #[serde(rename = "tension_kg")]
    pub tension: Mass,
    /// The hook is at least so high above the stone's upper edge, mm.
    pub hook_mm: f64,
}

impl Slings {
    /// Two slings at equal distances from the balance point, under a hook above it; nothing when the stone
    /// is bent too far on edge wherever they pass.
    #[must_use]
    pub(super) fn of(load: &Load, axes: &Axes, holder: &Holder<'_>) -> Option<Self> {
        let (balance, _) = axes.seen(load.region.centroid());
        let length = axes.length_mm();
        let ways = SHARES.map(|share| share * balance.min(length - balance));
        let at = |away: f64| [balance - away, balance + away];
        let allowed = |away: &f64| {
            let points = at(*away).map(|u| axes.point(u, 0.0));
            holder.holds(Orientation::OnEdge, &points)
        };
        let away = ways.into_iter().find(allowed)?;
        let from_end_mm = at(away);
        let factor = tension_factor(LEGS_DEG);
        let mass = load.mass.high;
        Some(Self {
            from_end_mm,
            at: from_end_mm.map(|u| axes.point(u, 0.0)),
            from_balance_mm: away,
            each: Mass::from_kg(mass.kg() / 2.0),
            legs_deg: LEGS_DEG,
            tension_factor: factor,
            tension: Mass::from_kg(mass.kg() * factor),
            hook_mm: away / (LEGS_DEG / 2.0).to_radians().tan(),
        })
    }
}

/// Pull in each of two equal legs as a part of the whole weight, for the angle between them in
/// degrees, less than 180.
///
/// ```
/// use kerfwright::handle::aid::sling::tension_factor;
/// assert!((tension_factor(0.0) - 0.5).abs() < 1e-12);
/// assert!((tension_factor(120.0) - 1.0).abs() < 1e-12);
/// ```
#[must_use]
pub fn tension_factor(legs_deg: f64) -> f64 {
    1.0 / (2.0 * (legs_deg / 2.0).to_radians().cos())
}
