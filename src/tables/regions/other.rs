//! Anywhere else: the strictest published value of each kind, and it says so.

use super::{TEAM_FACTORS, au, eu_noise, eu_vibration, nz, osha_cleaning};
use crate::tables::documents as doc;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, HandLift, MaskRule, RegionCode, RegionRecord,
    SilicaLimit, Standing,
};
use crate::tables::respirator::MaskScheme;

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::Other,
    silica: SilicaLimit {
        limit_mg_m3: 0.025,
        action_mg_m3: None,
        standing: Standing::Borrowed,
        source: &nz::SILICA,
    },
    silica_advice: &[],
    masks: MaskRule {
        scheme: MaskScheme::Strictest,
        standing: Standing::Borrowed,
        source: &doc::UK_MASKS,
    },
    vibration: eu_vibration(Standing::Borrowed),
    noise: eu_noise(Standing::Borrowed),
    hand_lift: HandLift {
        one_person_kg: 16.0,
        standing: Standing::Borrowed,
        source: &doc::HSE_LIFTING,
        team_factors: TEAM_FACTORS,
        team_standing: Standing::Borrowed,
        team_source: &doc::HSE_TEAM,
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::Banned,
        words: "Your region is not on file. The strictest published rule is a ban (Australia, from 1 July 2024): name your region, or learn from your authority whether engineered stone may be cut at all.",
        source: &au::BAN,
    },
    cleaning: osha_cleaning(Standing::Borrowed),
    authority: "the labour inspectorate or health authority where you are",
};
