//! Germany.

use super::{
    ENGINEERED_NOT_FOUND, ISO_LIFT, UK_MASKS_BORROWED, eu_noise, eu_vibration, osha_cleaning,
};
use crate::tables::region::{RegionCode, RegionRecord, SilicaLimit, Standing};
use crate::tables::{Source, Sure};

/// German assessment criterion.
pub static SILICA: Source = Source::new(
    "silica assessment criterion 0.05 mg/m³, 8 hours",
    "BMAS notice; TRGS 559",
    "",
    2016,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::De,
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
    authority: "the Berufsgenossenschaft or the labour inspectorate of your state",
};
