//! The people, and what helps them.

use serde::Serialize;

use crate::geom::Point;
use crate::units::Mass;

/// Lifting.
#[derive(Clone, Debug)]
pub struct Lift {
    /// How many people.
    pub people: usize,
    /// What each can lift; one entry per person.
    pub each: Vec<Mass>,
    /// True when `each` is the region's guideline and not the user's figure.
    pub each_is_guideline: bool,
    /// Where they stand, in the top's frame; empty: to be proposed.
    pub stand: Vec<Point>,
    /// Height of the hands when the stone is lifted off the trestles, mm.
    pub hands_mm: f64,
    /// How far it is carried without a rest, mm.
    pub carry_mm: f64,
    /// Where two trestles stand while the slab is cut, mm from the end of the slab along its length;
    /// empty: to be proposed.
    pub trestles: Vec<f64>,
    /// What helps.
    pub aid: Aid,
    /// The load marked on the aid; nothing when it is not known.
    pub rated: Option<Mass>,
    /// The trolley's sizes.
    pub trolley: Trolley,
    /// Who knows where somebody who works alone is, and when they call; empty when nobody was named.
    pub check_call: String,
}

/// A trolley that carries the stone on edge.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Trolley {
    /// Between the lines that its outer wheels run on, mm.
    pub track_mm: f64,
    /// From the floor to what the stone stands on, mm.
    pub deck_mm: f64,
}

/// A lifting aid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Aid {
    /// Hands only.
    None,
    /// Trolley that carries the stone on edge.
    Trolley,
    /// Vacuum lifter.
    #[serde(rename = "vacuum lifter")]
    VacuumLifter,
    /// Gantry or hoist.
    Gantry,
}
