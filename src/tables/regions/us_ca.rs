//! California.

use super::base::AMERICAN;
use crate::tables::region::{EngineeredStoneLaw, EngineeredStoneRule, RegionRecord, SilicaLimit};
use crate::tables::stone::RICH_IN_SILICA;
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
    code: "us-ca",
    name: "California",
    silica: SilicaLimit {
        action_mg_m3: Some(0.025),
        ..SilicaLimit::own(0.05, &SILICA)
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::WetOnly,
        words: "Artificial stone above 0.1 % and natural stone above 10 % silica: wet methods only, and the rule has respirator duties of its own. Dry methods are banned from 1 January 2026.",
        source: &WET_METHODS,
    },
    wet_above: Some(RICH_IN_SILICA),
    authority: "Cal/OSHA",
    ..AMERICAN
};
