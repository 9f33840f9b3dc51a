//! Netherlands.

use super::{
    ENGINEERED_NOT_FOUND, ISO_LIFT, UK_MASKS_BORROWED, eu_noise, eu_vibration, osha_cleaning,
};
use crate::tables::region::{RegionCode, RegionRecord, SilicaLimit, Standing};
use crate::tables::{Source, Sure};

/// Dutch limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.075 mg/m³, 8 hours",
    "national list of limit values",
    "",
    0,
    Sure::Quoted,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::Nl,
    silica: SilicaLimit {
        limit_mg_m3: 0.075,
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
    authority: "the Dutch labour inspectorate",
};
