//! A trolley that carries the stone on edge.

use serde::Serialize;

use crate::geom::Point;
use crate::handle::bending::axes::Axes;
use crate::handle::lifting::guideline::LEVEL_PUSH;
use crate::handle::lifting::lift::tilts;
use crate::handle::loads::Load;
use crate::job;
use crate::units::Mass;

/// A ramp that rises 1 in this many (judgement: the steepest that is usual in front of doors).
pub const RAMP_RUN: f64 = 12.0;

/// A stone on edge on a trolley.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct OnTrolley {
    /// Between the lines that the outer wheels run on, mm.
    pub track_mm: f64,
    /// Height of the deck, mm.
    pub deck_mm: f64,
    /// The long side it stands on, the heavier one: its ends, slab frame.
    pub stands_on: [Point; 2],
    /// Height of the balance point above the deck, mm.
    pub balance_mm: f64,
    /// Height of the stone above the floor, mm.
    pub height_mm: f64,
    /// It tips over by itself on ground that falls across by this, degrees. The stone stands in
    /// the middle; the trolley's own mass and soft tyres are left out.
    pub tips_at_deg: f64,
    /// The load that must be marked on it.
    #[serde(rename = "rated_kg")]
    pub rated: Mass,
    /// Least push on level ground, as a mass (HSE L23); a rough floor takes more.
    #[serde(rename = "level_push_kg")]
    pub level_push: Mass,
    /// What a ramp of 1 in [`RAMP_RUN`] adds to the push, and pulls downhill, as a mass.
    #[serde(rename = "ramp_adds_kg")]
    pub ramp_adds: Mass,
}

impl OnTrolley {
    /// A stone on a trolley of these sizes.
    #[must_use]
    pub fn of(load: &Load, axes: &Axes, trolley: job::Trolley) -> Self {
        let [right, left] = tilts(load, axes);
        let lower = if left.balance_height_mm < right.balance_height_mm {
            left
        } else {
            right
        };
        let mass = load.mass.high;
        let over_floor = trolley.deck_mm + lower.balance_height_mm;
        Self {
            track_mm: trolley.track_mm,
            deck_mm: trolley.deck_mm,
            stands_on: lower.pivot,
            balance_mm: lower.balance_height_mm,
            height_mm: trolley.deck_mm + lower.height_mm,
            tips_at_deg: (trolley.track_mm / 2.0).atan2(over_floor).to_degrees(),
            rated: mass,
            level_push: Mass::from_kg(mass.kg() * LEVEL_PUSH),
            ramp_adds: Mass::from_kg(mass.kg() / RAMP_RUN.hypot(1.0)),
        }
    }
}
