//! What regions share: a region's record starts from one of these and says what is its own.

use crate::tables::documents as doc;
use crate::tables::region::{
    EngineeredStoneLaw, EngineeredStoneRule, HandLift, HearingMethod, HearingRule, MaskRule,
    NoiseMeasure, NoiseValues, RegionRecord, Rule, SilicaLimit, Standing, VibrationValues,
};
use crate::tables::respirator::MaskScheme;
use crate::tables::{supply, vacuum};

/// Team factors of HSE L23: one, two, three, four people.
pub const TEAM_FACTORS: [f64; 4] = [1.0, 2.0 / 3.0, 0.5, 0.5];

/// Vibration values of the European directive.
#[must_use]
pub const fn eu_vibration(standing: Standing) -> VibrationValues {
    VibrationValues {
        action_m_s2: 2.5,
        limit_m_s2: 5.0,
        standing,
        source: &doc::EU_VIBRATION,
    }
}

/// Noise values of the European directive.
#[must_use]
pub const fn eu_noise(standing: Standing) -> NoiseValues {
    NoiseValues {
        measure: NoiseMeasure::EqualEnergy,
        action_db: 80.0,
        duty_db: 85.0,
        limit_db: 87.0,
        standing,
        source: &doc::EU_NOISE,
    }
}

/// Lifting by the load constant of NIOSH, with the British team factors.
#[must_use]
pub const fn niosh_lift(standing: Standing) -> HandLift {
    HandLift {
        one_person_kg: 23.0,
        standing,
        source: &doc::NIOSH_LIFTING,
        team_factors: TEAM_FACTORS,
        team_standing: Standing::Borrowed,
        team_source: &doc::HSE_TEAM,
    }
}

/// Half of NRR less 7, as OSHA reckons hearing protectors.
#[must_use]
pub const fn half_nrr(standing: Standing) -> HearingRule {
    HearingRule {
        method: HearingMethod::HalfNrr,
        standing,
        source: &doc::OSHA_PROTECTOR,
    }
}

/// American respirator factors.
#[must_use]
pub const fn us_masks(standing: Standing) -> MaskRule {
    MaskRule {
        scheme: MaskScheme::Us,
        standing,
        source: &doc::OSHA_MASKS,
    }
}

/// No rule of the region's own is on file: everything is borrowed, and nothing is looser than the
/// European directives and British advice.
pub const BORROWED: RegionRecord = RegionRecord {
    code: "",
    name: "",
    silica: SilicaLimit {
        standing: Standing::Borrowed,
        ..SilicaLimit::own(0.1, &doc::EU_SILICA)
    },
    silica_advice: &[],
    masks: MaskRule {
        scheme: MaskScheme::Uk,
        standing: Standing::Borrowed,
        source: &doc::UK_MASKS,
    },
    vibration: eu_vibration(Standing::Borrowed),
    noise: eu_noise(Standing::Borrowed),
    hand_lift: HandLift {
        one_person_kg: 25.0,
        standing: Standing::Borrowed,
        source: &doc::ISO_LIFTING,
        team_factors: TEAM_FACTORS,
        team_standing: Standing::Borrowed,
        team_source: &doc::HSE_TEAM,
    },
    engineered_stone: EngineeredStoneRule {
        law: EngineeredStoneLaw::NotFound,
        words: "No rule of this region on engineered stone is on file. Elsewhere it is banned \
                (Australia) or cut wet with a powered respirator only (Great Britain). Ask the \
                authority before cutting.",
        source: &doc::NOT_FOUND,
    },
    controlled_from: None,
    wet_above: None,
    cleaning: Rule {
        words: "No dry sweeping and no compressed air: vacuum with a HEPA or H-class unit, or wipe wet.",
        standing: Standing::Borrowed,
        source: &doc::OSHA_HOUSEKEEPING,
    },
    vacuum: Rule {
        words: vacuum::M_OR_H,
        standing: Standing::Borrowed,
        source: &doc::HSE_STONEMASONRY,
    },
    supply: Rule {
        words: supply::RCD_30,
        standing: Standing::Borrowed,
        source: &supply::RCD,
    },
    hearing: HearingRule {
        method: HearingMethod::AsTested,
        standing: Standing::Borrowed,
        source: &doc::EN_ISO_4869_2,
    },
    authority: "the labour inspectorate or health authority where you are",
};

/// A country where the European directives hold.
pub const EUROPEAN: RegionRecord = RegionRecord {
    silica: SilicaLimit::own(0.1, &doc::EU_SILICA),
    vibration: eu_vibration(Standing::Own),
    noise: eu_noise(Standing::Own),
    hearing: HearingRule {
        standing: Standing::Own,
        ..BORROWED.hearing
    },
    ..BORROWED
};

/// A place where American federal rules hold.
pub const AMERICAN: RegionRecord = RegionRecord {
    silica: SilicaLimit {
        action_mg_m3: Some(0.025),
        ..SilicaLimit::own(0.05, &doc::OSHA_SILICA)
    },
    silica_advice: &[
        SilicaLimit::own(0.05, &doc::NIOSH_SILICA),
        SilicaLimit::own(0.025, &doc::ACGIH_SILICA),
    ],
    masks: us_masks(Standing::Own),
    noise: NoiseValues {
        // The action level is 50 % of the dose, 85 dBA.
        measure: NoiseMeasure::OshaDose,
        action_db: 85.0,
        duty_db: 90.0,
        limit_db: 90.0,
        standing: Standing::Own,
        source: &doc::OSHA_NOISE,
    },
    hand_lift: niosh_lift(Standing::Own),
    cleaning: Rule {
        standing: Standing::Own,
        ..BORROWED.cleaning
    },
    vacuum: Rule {
        words: vacuum::HEPA,
        standing: Standing::Own,
        source: &doc::OSHA_TABLE_1,
    },
    supply: Rule {
        words: supply::GFCI_A,
        standing: Standing::Own,
        source: &supply::GFCI,
    },
    hearing: half_nrr(Standing::Own),
    ..BORROWED
};
