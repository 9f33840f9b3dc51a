//! Norway.

use super::{
    ENGINEERED_NOT_FOUND, ISO_LIFT, UK_MASKS_BORROWED, eu_noise, eu_vibration, osha_cleaning,
};
use crate::tables::region::{RegionCode, RegionRecord, SilicaLimit, Standing};
use crate::tables::{Source, Sure};

/// Norwegian limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, 8 hours: halved in July 2021, the number is from memory",
    "Norwegian regulation on action and limit values",
    "",
    2021,
    Sure::Memory,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::No,
    silica: SilicaLimit {
        limit_mg_m3: 0.05,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &SILICA,
    },
    silica_advice: &[],
    masks: UK_MASKS_BORROWED,
    vibration: eu_vibration(Standing::Own),
    noise: eu_noise(Standing::Own),
    hand_lift: ISO_LIFT,
    engineered_stone: ENGINEERED_NOT_FOUND,
    cleaning: osha_cleaning(Standing::Borrowed),
    authority: "the Norwegian labour inspection authority",
};
