//! The ways of lying that are worked out for each piece.

use serde::Serialize;

use super::Load;
use super::bend::{Beam, Lie, Prop, Slice};
use super::judged::{Bending, Diagram};
use super::lift::Lift;
use super::trestles::best_supports;
use crate::job::Stone;
use crate::tables::{Source, Sure};
use crate::units::GRAVITY;

/// Own weight is multiplied by this for the jolts of handling (PCI Journal 2010).
pub const HANDLING_FACTOR: f64 = 1.2;

/// Where the handling factor comes from.
pub(super) const HANDLING_SOURCE: Source = Source {
    what: "own weight times 1.2 while a slab is handled",
    document: "PCI Journal",
    clause: "",
    year: 2010,
    sure: Sure::Read,
};

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
    /// Flat in the hands of the lifters; nothing when their places do not hold it.
    pub carried: Option<Bending>,
    /// On edge, on the same two supports as `best`.
    pub best_on_edge: Bending,
    /// On edge, supported only at its two ends.
    pub ends_on_edge: Bending,
    /// Moments along it, lying as in `best`.
    pub diagram: Diagram,
}

impl Strength {
    /// Works out every way of lying of a beam made by [`slice()`].
    #[must_use]
    pub fn of(beam: &Beam<'_>, stone: &Stone, lift: &Lift) -> Self {
        let allowed_mpa = stone.strength_mpa / stone.safety_factor;
        let lay = |what, lie, supports| {
            let props = beam.on_two(supports);
            Bending::of(beam, what, lie, &props, allowed_mpa)
        };
        let [from, to] = beam.strip().reach();
        let best = best_supports(beam);
        let lifted = [[best[0], to], [from, best[1]]]
            .map(|s| lay("flat, one end lifted off the supports", Lie::Flat, s));
        let [one, other] = lifted;
        let carried = hands(beam, lift).map(|hands| {
            let what = "flat, carried by the people below";
            Bending::of(beam, what, Lie::Flat, &hands, allowed_mpa)
        });
        Self {
            allowed_mpa,
            strength_mpa: stone.strength_mpa,
            safety_factor: stone.safety_factor,
            strength_source: stone.strength_source.clone(),
            handling_factor: HANDLING_FACTOR,
            thickness_mm: stone.thickness.least,
            best: lay("flat on two supports, best placed", Lie::Flat, best),
            ends_only: lay("flat, supported only at its ends", Lie::Flat, [from, to]),
            one_end_lifted: one.worse(other),
            carried,
            best_on_edge: lay("on edge on the same two supports", Lie::OnEdge, best),
            ends_on_edge: lay(
                "on edge, supported only at its ends",
                Lie::OnEdge,
                [from, to],
            ),
            diagram: Diagram::of(beam, &beam.on_two(best)),
        }
    }
}

/// A piece's weight and thickness: the high mass, the handling factor, the thinnest reading.
#[must_use]
pub fn slice(load: &Load, stone: &Stone) -> Slice {
    let weight_n = HANDLING_FACTOR * GRAVITY * load.mass.high.kg();
    Slice {
        weight_n_per_mm2: weight_n / load.region.area(),
        thickness_mm: stone.thickness.least,
    }
}

/// The hands of the lifters as what holds the beam. People who stand level with each other add up.
#[must_use]
pub fn hands(beam: &Beam<'_>, lift: &Lift) -> Option<Vec<Prop>> {
    if lift.lifters.is_empty() || !lift.holds() {
        return None;
    }
    let mut props: Vec<Prop> = Vec::new();
    for lifter in &lift.lifters {
        let (at_mm, _) = beam.strip().axes().seen(lifter.point);
        let share = lifter.share.mass().kg() / lift.mass.kg();
        let force_n = share * beam.weight_n();
        match props
            .iter_mut()
            .find(|p| (p.at_mm - at_mm).abs() <= LEVEL_MM)
        {
            Some(prop) => prop.force_n += force_n,
            None if force_n > 0.0 => props.push(Prop { at_mm, force_n }),
            None => {}
        }
    }
    props.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
    Some(props)
}

/// Places along the stone closer together than this, mm, are one (rounding).
const LEVEL_MM: f64 = 1e-6;
