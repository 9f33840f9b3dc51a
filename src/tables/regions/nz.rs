//! New Zealand.

use super::{
    ENGINEERED_NOT_FOUND, ISO_LIFT, UK_MASKS_BORROWED, eu_noise, eu_vibration, osha_cleaning,
};
use crate::tables::region::{RegionCode, RegionRecord, SilicaLimit, Standing};
use crate::tables::{Source, Sure};

/// New Zealand limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.025 mg/m³, 8 hours, advisory",
    "WorkSafe NZ, workplace exposure standards",
    "",
    2023,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::Nz,
    silica: SilicaLimit {
        limit_mg_m3: 0.025,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &SILICA,
    },
    silica_advice: &[],
    masks: UK_MASKS_BORROWED,
    vibration: eu_vibration(Standing::Borrowed),
    noise: eu_noise(Standing::Borrowed),
    hand_lift: ISO_LIFT,
    engineered_stone: ENGINEERED_NOT_FOUND,
    cleaning: osha_cleaning(Standing::Borrowed),
    authority: "WorkSafe New Zealand",
};
