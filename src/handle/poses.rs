//! The ways of lying that are worked out for each piece.

use serde::Serialize;

use super::Load;
use super::axes::Axes;
use super::bend::{Beam, BendVerdict, Bending, Lie, Slice};
use super::strip::Strip;
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
    /// On edge, on the same two supports as `best`.
    pub best_on_edge: Bending,
    /// On edge, supported only at its two ends.
    pub ends_on_edge: Bending,
    /// How the sums were made.
    pub integration: Integration,
}

/// How the cross-sections were added up.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Integration {
    /// Stations along the stone.
    pub stations: usize,
    /// Area by the stations less the exact area, as a part of the exact area.
    pub area_error: f64,
    /// Balance point by the stations less the exact one, mm along the stone.
    pub balance_error_mm: f64,
}

impl Strength {
    /// Works out every way of lying, with the high mass and the thinnest reading.
    #[must_use]
    pub fn of(load: &Load, axes: Axes, stone: &Stone) -> Self {
        let strip = Strip::new(&load.region, axes);
        let area = load.region.area();
        let slice = Slice {
            weight_n_per_mm2: HANDLING_FACTOR * GRAVITY * load.mass.high.kg() / area,
            thickness_mm: stone.thickness.least,
        };
        let beam = Beam::new(&strip, slice);
        let allowed_mpa = stone.strength_mpa / stone.safety_factor;
        let lay = |what, lie, supports| judged(&strip, &beam, what, lie, supports, allowed_mpa);
        let ends = [0.0, axes.length_mm()];
        let best = best_supports(&beam);
        let lifted = [[best[0], ends[1]], [ends[0], best[1]]]
            .map(|s| lay("flat, one end lifted off the supports", Lie::Flat, s));
        Self {
            allowed_mpa,
            strength_mpa: stone.strength_mpa,
            safety_factor: stone.safety_factor,
            strength_source: stone.strength_source.clone(),
            handling_factor: HANDLING_FACTOR,
            thickness_mm: stone.thickness.least,
            best: lay("flat on two supports, best placed", Lie::Flat, best),
            ends_only: lay("flat, supported only at its ends", Lie::Flat, ends),
            one_end_lifted: worse(lifted),
            best_on_edge: lay("on edge on the same two supports", Lie::OnEdge, best),
            ends_on_edge: lay("on edge, supported only at its ends", Lie::OnEdge, ends),
            integration: Integration {
                stations: strip.stations(),
                area_error: strip.area() / area - 1.0,
                balance_error_mm: strip.middle() - axes.seen(load.region.centroid()).0,
            },
        }
    }
}

fn worse([a, b]: [Bending; 2]) -> Bending {
    if b.worst.stress_mpa > a.worst.stress_mpa {
        b
    } else {
        a
    }
}

fn judged(
    strip: &Strip,
    beam: &Beam<'_>,
    what: &'static str,
    lie: Lie,
    supports: [f64; 2],
    allowed_mpa: f64,
) -> Bending {
    let worst = beam.worst(lie, supports);
    Bending {
        what,
        worst,
        support_lines: supports.map(|u| strip.chord_at(u)),
        worst_line: strip.chord_at(worst.at_mm),
        verdict: BendVerdict::of(worst.stress_mpa, allowed_mpa),
    }
}
