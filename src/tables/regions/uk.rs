//! United Kingdom.

use super::{TEAM_FACTORS, osha_cleaning};
use crate::tables::documents as doc;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, HandLift, MaskRule, NoiseMeasure, NoiseValues,
    RegionCode, RegionRecord, SilicaLimit, Standing, VibrationValues,
};
use crate::tables::respirator::MaskScheme;
use crate::tables::{Source, Sure};

/// British limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.1 mg/m³, 8 hours",
    "EH40/2005",
    "4th ed.",
    2020,
    Sure::Read,
);
/// British vibration values.
pub static VIBRATION: Source = Source::new(
    "hand-arm vibration A(8): action 2.5 m/s², limit 5 m/s²",
    "Control of Vibration at Work Regulations",
    "",
    2005,
    Sure::Quoted,
);
/// British noise values.
pub static NOISE: Source = Source::new(
    "noise over 8 hours: 80 and 85 dB(A) action, 87 dB(A) limit under the ear protection",
    "Control of Noise at Work Regulations",
    "reg. 4",
    2005,
    Sure::Quoted,
);
/// British advice on engineered stone.
pub static ENGINEERED: Source = Source::new(
    "engineered stone: dry cutting is unacceptable; powered respirator with a factor of at least 20 besides water",
    "HSE stonemasonry pages",
    "",
    2026,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: RegionCode::Uk,
    silica: SilicaLimit {
        limit_mg_m3: 0.1,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &SILICA,
    },
    silica_advice: &[],
    masks: MaskRule {
        scheme: MaskScheme::Uk,
        standing: Standing::Own,
        source: &doc::UK_MASKS,
    },
    vibration: VibrationValues {
        action_m_s2: 2.5,
        limit_m_s2: 5.0,
        standing: Standing::Own,
        source: &VIBRATION,
    },
    noise: NoiseValues {
        measure: NoiseMeasure::EqualEnergy,
        action_db: 80.0,
        duty_db: 85.0,
        limit_db: 87.0,
        standing: Standing::Own,
        source: &NOISE,
    },
    hand_lift: HandLift {
        one_person_kg: 25.0,
        standing: Standing::Own,
        source: &doc::HSE_LIFTING,
        team_factors: TEAM_FACTORS,
        team_standing: Standing::Own,
        team_source: &doc::HSE_TEAM,
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::WetAndPoweredRespirator,
        words: "HSE treats dry cutting of engineered stone as unacceptable and asks for a powered respirator with a factor of at least 20 besides water.",
        source: &ENGINEERED,
    },
    cleaning: osha_cleaning(Standing::Borrowed),
    authority: "the Health and Safety Executive, or your local authority",
};
