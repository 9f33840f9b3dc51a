//! United Kingdom.

use super::base::BORROWED;
use crate::tables::documents as doc;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, HandLift, HearingMethod, HearingRule, MaskRule,
    NoiseValues, RegionRecord, Rule, SilicaLimit, Standing, VibrationValues,
};
use crate::tables::{Source, Sure, supply};

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
    code: "uk",
    name: "United Kingdom",
    silica: SilicaLimit::own(0.1, &SILICA),
    masks: MaskRule {
        standing: Standing::Own,
        ..BORROWED.masks
    },
    vibration: VibrationValues {
        standing: Standing::Own,
        source: &VIBRATION,
        ..BORROWED.vibration
    },
    noise: NoiseValues {
        standing: Standing::Own,
        source: &NOISE,
        ..BORROWED.noise
    },
    hand_lift: HandLift {
        standing: Standing::Own,
        source: &doc::HSE_LIFTING,
        team_standing: Standing::Own,
        ..BORROWED.hand_lift
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::WetAndPoweredRespirator,
        words: "HSE treats dry cutting of engineered stone as unacceptable and asks for a powered respirator with a factor of at least 20 besides water.",
        source: &ENGINEERED,
    },
    vacuum: Rule {
        standing: Standing::Own,
        ..BORROWED.vacuum
    },
    supply: Rule {
        words: supply::RCD_30_OR_110,
        standing: Standing::Own,
        source: &supply::RCD,
    },
    hearing: HearingRule {
        method: HearingMethod::RealWorld,
        standing: Standing::Own,
        source: &doc::HSE_REAL_WORLD,
    },
    authority: "the Health and Safety Executive, or your local authority",
    ..BORROWED
};
