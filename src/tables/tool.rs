//! Vibration and noise of hand-held stone-cutting machines, for when the maker's figure is not given.

use super::documents::{HSE_TABLE_1, HSE_UNCERTAINTY, IFA_4214};
use super::stone::{SourcedFigure, Spread};

/// Vibration of a grinder cutting stone, m/s²: use the likely value when the maker gives none.
pub const CUTTING_VIBRATION_M_S2: Spread = Spread {
    low: 4.0,
    likely: 9.0,
    high: 13.0,
    source: &HSE_TABLE_1,
    likely_source: &HSE_TABLE_1,
};
/// Uncertainty of a vibration figure whose maker states none, as a share of it.
pub const VIBRATION_UNCERTAINTY: SourcedFigure = SourcedFigure {
    value: 0.4,
    source: &HSE_UNCERTAINTY,
};
/// Level at the ear when the maker gives none, dB(A): the highest that was measured on stone.
pub const CUTTING_NOISE_DB: SourcedFigure = SourcedFigure {
    value: 107.0,
    source: &IFA_4214,
};
