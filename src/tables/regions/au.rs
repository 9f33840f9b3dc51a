//! Australia.

use super::base::BORROWED;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, LimitChange, RegionRecord, SilicaLimit,
};
use crate::tables::stone::Figure;
use crate::tables::{Source, Sure};

/// Australian limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, 8 hours; the workplace exposure limits list replaces it from 1 December 2026",
    "Workplace exposure standards for airborne contaminants",
    "",
    2019,
    Sure::Read,
);
/// Australian ban.
pub static BAN: Source = Source::new(
    "engineered stone benchtops, panels and slabs (1 % silica or more, resin-bound) banned from 1 July 2024",
    "Safe Work Australia",
    "",
    2024,
    Sure::Read,
);
/// Australian rule for processing.
pub static CONTROLLED_PROCESSING: Source = Source::new(
    "any material with 1 % silica or more: processed with a control only, from 1 September 2024",
    "Safe Work Australia",
    "",
    2024,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "au",
    name: "Australia",
    silica: SilicaLimit {
        change: Some(LimitChange {
            on: "2026-12-01",
            on_words: "1 December 2026",
            by: "the workplace exposure limits list",
        }),
        ..SilicaLimit::own(0.05, &SILICA)
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::Banned,
        words: "Making, supplying, processing and installing benchtops, panels and slabs of engineered stone (1 % silica or more, resin-bound; sintered and porcelain excluded) is banned from 1 July 2024.",
        source: &BAN,
    },
    controlled_from: Some(Figure {
        value: 0.01,
        source: &CONTROLLED_PROCESSING,
    }),
    authority: "the work health and safety regulator of your state or territory",
    ..BORROWED
};
