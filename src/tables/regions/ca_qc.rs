//! Quebec.

use super::{ENGINEERED_NOT_FOUND, eu_noise, eu_vibration, niosh_lift, osha_cleaning};
use crate::tables::documents as doc;
use crate::tables::region::{MaskRule, RegionCode, RegionRecord, SilicaLimit, Standing};
use crate::tables::respirator::MaskScheme;
use crate::tables::{Source, Sure};

/// Quebec limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, 8 hours, since 28 April 2024",
    "RSST (regulation on occupational health and safety)",
    "",
    2024,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::CaQc,
    silica: SilicaLimit {
        limit_mg_m3: 0.05,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &SILICA,
    },
    silica_advice: &[],
    masks: MaskRule {
        scheme: MaskScheme::Us,
        standing: Standing::Borrowed,
        source: &doc::OSHA_MASKS,
    },
    vibration: eu_vibration(Standing::Borrowed),
    noise: eu_noise(Standing::Borrowed),
    hand_lift: niosh_lift(Standing::Borrowed),
    engineered_stone: ENGINEERED_NOT_FOUND,
    cleaning: osha_cleaning(Standing::Borrowed),
    authority: "the CNESST",
};
