//! One record for each region, and the parts that several of them borrow.

pub mod au;
pub mod ca_qc;
pub mod de;
pub mod eu;
pub mod nl;
pub mod no;
pub mod nz;
pub mod other;
pub mod uk;
pub mod us;
pub mod us_ca;

use super::documents as doc;
use super::region::{
    EngineeredStoneLaw, EngineeredStoneRule, HandLift, MaskRule, NoiseMeasure, NoiseValues, Rule,
    SilicaLimit, Standing, VibrationValues,
};
use super::respirator::MaskScheme;

/// American advice on silica besides the law.
const US_ADVICE: [SilicaLimit; 2] = [
    SilicaLimit {
        limit_mg_m3: 0.05,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &doc::NIOSH_SILICA,
    },
    SilicaLimit {
        limit_mg_m3: 0.025,
        action_mg_m3: None,
        standing: Standing::Own,
        source: &doc::ACGIH_SILICA,
    },
];

/// Team factors of HSE L23: one, two, three, four people.
const TEAM_FACTORS: [f64; 4] = [1.0, 2.0 / 3.0, 0.5, 0.5];

/// Vibration values of the European directive.
const fn eu_vibration(standing: Standing) -> VibrationValues {
    VibrationValues {
        action_m_s2: 2.5,
        limit_m_s2: 5.0,
        standing,
        source: &doc::EU_VIBRATION,
    }
}

/// Noise values of the European directive.
const fn eu_noise(standing: Standing) -> NoiseValues {
    NoiseValues {
        measure: NoiseMeasure::EqualEnergy,
        action_db: 80.0,
        duty_db: 85.0,
        limit_db: 87.0,
        standing,
        source: &doc::EU_NOISE,
    }
}

/// Noise values of OSHA: the action level is 50 % of the dose, 85 dBA.
const OSHA_NOISE: NoiseValues = NoiseValues {
    measure: NoiseMeasure::OshaDose,
    action_db: 85.0,
    duty_db: 90.0,
    limit_db: 90.0,
    standing: Standing::Own,
    source: &doc::OSHA_NOISE,
};

/// British respirator factors where the region's own were not found.
const UK_MASKS_BORROWED: MaskRule = MaskRule {
    scheme: MaskScheme::Uk,
    standing: Standing::Borrowed,
    source: &doc::UK_MASKS,
};

/// The international reference mass, with the British team factors.
const ISO_LIFT: HandLift = HandLift {
    one_person_kg: 25.0,
    standing: Standing::Borrowed,
    source: &doc::ISO_LIFTING,
    team_factors: TEAM_FACTORS,
    team_standing: Standing::Borrowed,
    team_source: &doc::HSE_TEAM,
};

/// The load constant of NIOSH, with the British team factors.
const fn niosh_lift(standing: Standing) -> HandLift {
    HandLift {
        one_person_kg: 23.0,
        standing,
        source: &doc::NIOSH_LIFTING,
        team_factors: TEAM_FACTORS,
        team_standing: Standing::Borrowed,
        team_source: &doc::HSE_TEAM,
    }
}

/// OSHA's housekeeping rule.
const fn osha_cleaning(standing: Standing) -> Rule {
    Rule {
        words: "No dry sweeping and no compressed air: vacuum with a HEPA or H-class unit, or wipe wet.",
        standing,
        source: &doc::OSHA_HOUSEKEEPING,
    }
}

/// No rule on engineered stone was found.
const ENGINEERED_NOT_FOUND: EngineeredStoneRule = EngineeredStoneRule {
    law: EngineeredStoneLaw::NotFound,
    words: "No rule of this region on engineered stone is on file. Elsewhere it is banned \
            (Australia) or cut wet with a powered respirator only (Great Britain). Ask the \
            authority before cutting.",
    source: &doc::NOT_FOUND,
};
