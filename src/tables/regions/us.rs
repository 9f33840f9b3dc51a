//! United States.

use super::{ENGINEERED_NOT_FOUND, OSHA_NOISE, US_ADVICE, eu_vibration, niosh_lift, osha_cleaning};
use crate::tables::documents as doc;
use crate::tables::region::{MaskRule, RegionCode, RegionRecord, SilicaLimit, Standing};
use crate::tables::respirator::MaskScheme;

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::Us,
    silica: SilicaLimit {
        limit_mg_m3: 0.05,
        action_mg_m3: Some(0.025),
        standing: Standing::Own,
        source: &doc::OSHA_SILICA,
    },
    silica_advice: &US_ADVICE,
    masks: MaskRule {
        scheme: MaskScheme::Us,
        standing: Standing::Own,
        source: &doc::OSHA_MASKS,
    },
    vibration: eu_vibration(Standing::Borrowed),
    noise: OSHA_NOISE,
    hand_lift: niosh_lift(Standing::Own),
    engineered_stone: ENGINEERED_NOT_FOUND,
    cleaning: osha_cleaning(Standing::Own),
    authority: "OSHA, or your state's plan",
};
