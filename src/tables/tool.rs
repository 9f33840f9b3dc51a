//! Vibration and noise of hand-held stone-cutting machines, for when the maker's figure is not given.

use super::stone::{Figure, Spread};
use super::{Source, Sure};

/// Vibration of grinders on stone.
pub static HSE_TABLE_1: Source = Source::new(
    "vibration of a grinder cutting stone: 4 to 13 m/s², use 9",
    "HSE stonemasonry advice on vibration",
    "Table 1",
    0,
    Sure::Read,
);
/// Noise of a hand masonry saw.
pub static BARBOSA: Source = Source::new(
    "noise of a hand masonry saw at the ear: up to 106.9 dB(A)",
    "Barbosa and Bertoli",
    "",
    0,
    Sure::Read,
);
/// Noise of a large diamond blade.
pub static IFA_4214: Source = Source::new(
    "noise of a 350 mm diamond blade: 105 to 107 dB(A)",
    "IFA 4214",
    "",
    0,
    Sure::Read,
);

/// Vibration of a grinder cutting stone, m/s²: use the likely value when the maker gives none.
pub const CUTTING_VIBRATION_M_S2: Spread =
    Spread::given([4.0, 9.0, 13.0], &HSE_TABLE_1, &HSE_TABLE_1);
/// Uncertainty of a vibration figure whose maker states none, as a share of it.
pub const VIBRATION_UNCERTAINTY: Figure = Figure {
    value: 0.4,
    source: &super::documents::HSE_UNCERTAINTY,
};
/// Level at the ear when the maker gives none, dB(A): the highest that was measured on stone.
pub const CUTTING_NOISE_DB: Figure = Figure {
    value: 107.0,
    source: &IFA_4214,
};
