//! Noise over a day: levels, doses, and the hours until a value.

use serde::Serialize;

use crate::tables::region::NoiseMeasure;

/// Hours of the reference day, h.
const REFERENCE_DAY_H: f64 = 8.0;

/// Minutes to an hour.
pub(super) const MIN_PER_H: f64 = 60.0;

/// Level that OSHA allows for 8 hours, dBA (29 CFR 1910.95).
const OSHA_CRITERION_DB: f64 = 90.0;

/// Decibels that halve OSHA's time (29 CFR 1910.95 App. A).
const OSHA_EXCHANGE_DB: f64 = 5.0;

/// Lowest level that enters OSHA's dose for hearing conservation, dBA (29 CFR 1910.95(d)(2)(i);
/// from memory, not confirmed).
const OSHA_THRESHOLD_DB: f64 = 80.0;

/// Slope of OSHA's TWA, dB for each tenfold dose, as the rule prints it: 5 / lg 2.
const OSHA_TWA_SLOPE_DB: f64 = 16.61;

/// Level that NIOSH allows for 8 hours, dBA.
const NIOSH_CRITERION_DB: f64 = 85.0;

/// Decibels that halve NIOSH's time.
const NIOSH_EXCHANGE_DB: f64 = 3.0;

/// Another machine of the same day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NoisePeriod {
    /// What it is.
    pub what: String,
    /// Level at the ear, dB(A).
    pub level_db: f64,
    /// How long, minutes.
    pub minutes: f64,
}

/// Level over 8 hours `10·lg(Σ T·10^(L/10) / 8 h)`, dB(A), of levels in dB(A), each with its hours.
///
/// No time at all gives minus infinity. Source: Directive 2003/10/EC; ISO 9612.
#[must_use]
pub fn lex_8h(spells: &[(f64, f64)]) -> f64 {
    let energy: f64 = spells
        .iter()
        .map(|(level, hours)| hours * 10_f64.powf(level / 10.0))
        .sum();
    10.0 * (energy / REFERENCE_DAY_H).log10()
}

/// Energy mean of levels measured over equal times, dB(A); not a number when there are none.
///
/// Source: ISO 9612:2009.
#[must_use]
pub fn mean_level(levels: &[f64]) -> f64 {
    #[allow(clippy::cast_precision_loss)] // A list of readings is far below 2^52 long.
    let count = levels.len() as f64;
    let energy: f64 = levels.iter().map(|level| 10_f64.powf(level / 10.0)).sum();
    10.0 * (energy / count).log10()
}

/// Hours at a level until the level over 8 hours reaches a value, both dB(A), equal energy.
#[must_use]
pub fn hours_to(level_db: f64, value_db: f64) -> f64 {
    REFERENCE_DAY_H * 10_f64.powf((value_db - level_db) / 10.0)
}

/// Hours that OSHA allows at a level in dBA: `8 / 2^((L − 90)/5)`. Source: 29 CFR 1910.95 App. A.
#[must_use]
pub fn osha_hours(level_db: f64) -> f64 {
    REFERENCE_DAY_H / ((level_db - OSHA_CRITERION_DB) / OSHA_EXCHANGE_DB).exp2()
}

/// OSHA's dose in percent, of levels in dBA, each with its hours.
///
/// Levels below 80 dBA do not count. Source: 29 CFR 1910.95 App. A.
#[must_use]
pub fn osha_dose(spells: &[(f64, f64)]) -> f64 {
    let share: f64 = spells
        .iter()
        .filter(|(level, _)| *level >= OSHA_THRESHOLD_DB)
        .map(|(level, hours)| hours / osha_hours(*level))
        .sum();
    share * 100.0
}

/// OSHA's time-weighted average, dBA, of a dose in percent: `16.61·lg(D/100) + 90`.
///
/// A dose of 0 gives minus infinity. Source: 29 CFR 1910.95 App. A.
#[must_use]
pub fn osha_twa(dose_percent: f64) -> f64 {
    OSHA_TWA_SLOPE_DB * (dose_percent / 100.0).log10() + OSHA_CRITERION_DB
}

/// Minutes that NIOSH recommends at most at a level in dBA: `480 / 2^((L − 85)/3)`.
#[must_use]
pub fn niosh_minutes(level_db: f64) -> f64 {
    REFERENCE_DAY_H * MIN_PER_H / ((level_db - NIOSH_CRITERION_DB) / NIOSH_EXCHANGE_DB).exp2()
}

pub(super) fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}

/// A day's level in a measure, dB(A); nothing without time at it.
pub(super) fn day_level(measure: NoiseMeasure, day: &[(f64, f64)]) -> Option<f64> {
    finite(match measure {
        NoiseMeasure::EqualEnergy => lex_8h(day),
        NoiseMeasure::OshaDose => osha_twa(osha_dose(day)),
    })
}
