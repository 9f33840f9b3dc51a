//! Anywhere else: the strictest published value of each kind, and it says so.

use super::base::BORROWED;
use super::{au, nz};
use crate::tables::documents as doc;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, HandLift, HearingMethod, HearingRule, MaskRule,
    RegionRecord, Rule, SilicaLimit, Standing,
};
use crate::tables::respirator::MaskScheme;
use crate::tables::vacuum;

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "other",
    name: "other region (strictest published values)",
    silica: SilicaLimit {
        standing: Standing::Borrowed,
        ..nz::LIMIT
    },
    masks: MaskRule {
        scheme: MaskScheme::Strictest,
        ..BORROWED.masks
    },
    hand_lift: HandLift {
        one_person_kg: 16.0,
        source: &doc::HSE_LIFTING,
        ..BORROWED.hand_lift
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::Banned,
        words: "Your region is not on file. The strictest published rule is a ban (Australia, from 1 July 2024): name your region, or learn from your authority whether engineered stone may be cut at all.",
        source: &au::BAN,
    },
    vacuum: Rule {
        words: vacuum::H_ONLY,
        source: &vacuum::EN_60335_2_69,
        ..BORROWED.vacuum
    },
    hearing: HearingRule {
        method: HearingMethod::Least,
        ..BORROWED.hearing
    },
    ..BORROWED
};
