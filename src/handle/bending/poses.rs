//! The ways of lying that are worked out for each piece.

use serde::Serialize;

use crate::handle::lifting::record::Lift;
use crate::handle::loads::Load;
use crate::job::Stone;
use crate::units::GRAVITY;

use super::bend::{Beam, Orientation, PlateSection, Reaction};
use super::judged::{Bending, Diagram};
use super::trestles::best_supports;

/// Own weight is multiplied by this for the jolts of handling (PCI Journal 2010).
pub const HANDLING_FACTOR: f64 = 1.2;

/// Bending of one piece under its own weight in several ways of lying.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Strength {
    /// Stress allowed: strength ÷ safety factor, `MPa`.
    pub allowed_mpa: f64,
    /// Flexural strength, `MPa`.
    pub strength_mpa: f64,
    /// The strength is divided by this.
    pub safety_factor: f64,
    /// Where the strength comes from.
    pub strength_source: String,
    /// Own weight is multiplied by this.
    pub handling_factor: f64,
    /// Thickness it is worked out with: the thinnest reading, mm.
    pub thickness_mm: f64,
    /// Flat, on the two supports that stress it least.
    pub best: Bending,
    /// Flat, supported only at its two ends. One end lifted off the floor is the same.
    pub ends_only: Bending,
    /// Flat on the best two supports, then one end lifted off them: the worse end.
    pub one_end_lifted: Bending,
    /// In the hands of the lifters, as they hold it; nothing when nobody does.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub carried: Option<Bending>,
    /// On edge, on the same two supports as `best`.
    pub best_on_edge: Bending,
    /// On edge, supported only at its two ends.
    pub ends_on_edge: Bending,
    /// Moments along it, lying as in `best`.
    pub diagram: Diagram,
}

impl Strength {
    /// Works out every way of lying of a beam made by [`section()`].
    #[must_use]
    pub fn of(beam: &Beam<'_>, stone: &Stone, lift: &Lift, hands: Option<&[Reaction]>) -> Self {
        let allowed_mpa = stone.strength_mpa / stone.safety_factor;
        let lay = |what, orientation, supports| {
            let props = beam.on_two(supports);
            Bending::of(beam, what, orientation, &props, allowed_mpa)
        };
        let [from, to] = beam.strip().reach();
        let best = best_supports(beam);
        let lifted = [[best[0], to], [from, best[1]]].map(|s| {
            lay(
                "flat, one end lifted off the supports",
                Orientation::Flat,
                s,
            )
        });
        let [one, other] = lifted;
        let carried = hands.map(|hands| {
            let what = match lift.orientation {
                Orientation::Flat => "flat, carried by the people below",
                Orientation::OnEdge => "on edge, carried by the people below",
            };
            Bending::of(beam, what, lift.orientation, hands, allowed_mpa)
        });
        Self {
            allowed_mpa,
            strength_mpa: stone.strength_mpa,
            safety_factor: stone.safety_factor,
            strength_source: stone.strength_source.clone(),
            handling_factor: HANDLING_FACTOR,
            thickness_mm: stone.thickness.least,
            best: lay("flat on two supports, best placed", Orientation::Flat, best),
            ends_only: lay(
                "flat, supported only at its ends",
                Orientation::Flat,
                [from, to],
            ),
            one_end_lifted: one.worse(other),
            carried,
            best_on_edge: lay(
                "on edge on the same two supports",
                Orientation::OnEdge,
                best,
            ),
            ends_on_edge: lay(
                "on edge, supported only at its ends",
                Orientation::OnEdge,
                [from, to],
            ),
            diagram: Diagram::of(beam, &beam.on_two(best)),
        }
    }
}

/// A piece's weight and thickness: the high mass, the handling factor, the thinnest reading.
#[must_use]
pub fn section(load: &Load, stone: &Stone) -> PlateSection {
    let weight_n = HANDLING_FACTOR * GRAVITY * load.mass.high.kg();
    PlateSection {
        weight_n_per_mm2: weight_n / load.region.area(),
        thickness_mm: stone.thickness.least,
    }
}
