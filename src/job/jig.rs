//! What leads the cuts, and how deep each goes.

use crate::units::Mass;

/// The straight guide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guide {
    /// Length, mm.
    pub length_mm: f64,
    /// From the guide's edge to the disc's near face, by test cut, mm.
    pub offset_mm: f64,
    /// Overlap of two set-ups of a short guide, mm.
    pub overlap_mm: f64,
}

/// The circle jig.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CircleJig {
    /// From the jig's arm mark to the disc's near face, mm.
    pub offset_mm: f64,
    /// Shortest and longest arm, mm.
    pub reach_mm: (f64, f64),
}

/// Depths and rates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Passes {
    /// Depth of the scoring pass, mm.
    pub score_mm: f64,
    /// Deepest step of a run, mm.
    pub step_mm: f64,
    /// Deepest step of a plunge, mm.
    pub plunge_step_mm: f64,
    /// How far the disc goes through the stone, mm.
    pub through_mm: f64,
    /// Highest ridge left between plunges, mm.
    pub cusp_mm: f64,
    /// Sawn face per minute, cm².
    pub rate_cm2_per_min: f64,
    /// True when the rate is a guess and not the practice cut's own figure.
    pub rate_is_guess: bool,
    /// Length sawn from the far side first, mm.
    pub far_end_mm: f64,
    /// How many times longer a curve takes than a straight cut of the same face.
    pub curve_factor: f64,
    /// How many times longer a stopped cut counts than one that runs off the stone.
    pub stopped_factor: f64,
    /// Setting-up time for each cut, minutes.
    pub set_up_min: f64,
    /// The heaviest piece of waste that a curve may free at once.
    pub waste_piece: Mass,
}
