//! California.

use super::{OSHA_NOISE, US_ADVICE, eu_vibration, niosh_lift, osha_cleaning};
use crate::tables::documents as doc;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, MaskRule, RegionCode, RegionRecord, SilicaLimit,
    Standing,
};
use crate::tables::respirator::MaskScheme;
use crate::tables::{Source, Sure};

/// Californian limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, action level 0.025 mg/m³, 8 hours",
    "8 CCR 5204",
    "",
    2024,
    Sure::Quoted,
);
/// Californian rule for stone rich in silica.
pub static WET_METHODS: Source = Source::new(
    "wet methods for artificial stone above 0.1 % and natural stone above 10 % silica; dry methods banned from 1 January 2026",
    "8 CCR 5204; Labor Code 6359.1.5",
    "",
    2026,
    Sure::Quoted,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::UsCa,
    silica: SilicaLimit {
        limit_mg_m3: 0.05,
        action_mg_m3: Some(0.025),
        standing: Standing::Own,
        source: &SILICA,
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
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::WetOnly,
        words: "Artificial stone above 0.1 % and natural stone above 10 % silica: wet methods only, and the rule has respirator duties of its own. Dry methods are banned from 1 January 2026.",
        source: &WET_METHODS,
    },
    cleaning: osha_cleaning(Standing::Own),
    authority: "Cal/OSHA",
};
