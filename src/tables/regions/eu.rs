//! European Union.

use super::{
    ENGINEERED_NOT_FOUND, ISO_LIFT, UK_MASKS_BORROWED, eu_noise, eu_vibration, osha_cleaning,
};
use crate::tables::documents as doc;
use crate::tables::region::{RegionCode, RegionRecord, SilicaLimit, Standing};

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::Eu,
    silica: SilicaLimit {
        limit_mg_m3: 0.1,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &doc::EU_SILICA,
    },
    silica_advice: &[],
    masks: UK_MASKS_BORROWED,
    vibration: eu_vibration(Standing::Own),
    noise: eu_noise(Standing::Own),
    hand_lift: ISO_LIFT,
    engineered_stone: ENGINEERED_NOT_FOUND,
    cleaning: osha_cleaning(Standing::Borrowed),
    authority: "the labour inspectorate of your country",
};
