//! Vibration over a day: exposure, points, and the minutes until a value.

/// Hours of the reference day, h.
const REFERENCE_DAY_H: f64 = 8.0;

/// Minutes to an hour.
pub(super) const MIN_PER_H: f64 = 60.0;

/// Daily exposure `A(8) = √(Σ a²T / 8 h)`, m/s², of magnitudes in m/s², each with its hours.
///
/// Source: Directive 2002/44/EC, annex; ISO 5349-1.
///
/// ```
/// // ISO 5349-2, E.2.1: 7.4 m/s² for 2.5 h gives 4.1.
/// let a8 = kerfwright::hazard::vibration::a8(&[(7.4, 2.5)]);
/// assert!((a8 - 4.137).abs() < 5e-4);
/// ```
#[must_use]
pub fn a8(spells: &[(f64, f64)]) -> f64 {
    let energy: f64 = spells.iter().map(|(a, hours)| a * a * hours).sum();
    (energy / REFERENCE_DAY_H).sqrt()
}

/// Exposure points `2a²T` of a magnitude in m/s² over hours. Source: HSE ready-reckoner.
#[must_use]
pub fn points(a_m_s2: f64, hours: f64) -> f64 {
    2.0 * a_m_s2 * a_m_s2 * hours
}

/// Minutes in a day until A(8) reaches a value, both in m/s²; nothing without vibration.
#[must_use]
pub fn minutes_to(a_m_s2: f64, value_m_s2: f64) -> Option<f64> {
    (a_m_s2 > 0.0).then(|| (value_m_s2 / a_m_s2).powi(2) * REFERENCE_DAY_H * MIN_PER_H)
}

/// People or days, at least 1, over which points must be split so that none has more than a value
/// in m/s² allows.
#[must_use]
pub fn shares(points_day: f64, value_m_s2: f64) -> f64 {
    (points_day / points(value_m_s2, REFERENCE_DAY_H))
        .ceil()
        .max(1.0)
}

/// The shares of the whole minutes that are printed, so that who divides them finds the same.
pub(super) fn whole_shares(job_min: f64, other_min: f64, allowed_min: Option<f64>) -> f64 {
    let allowed = allowed_min.map_or(0.0, f64::floor);
    if allowed < 1.0 {
        return 1.0;
    }
    ((whole_minutes(job_min) + whole_minutes(other_min)) / allowed).ceil()
}

/// Minutes to be spent, whole: what is a hair over is not a minute more.
pub(crate) fn whole_minutes(minutes: f64) -> f64 {
    (minutes - 1e-6).ceil().max(0.0)
}
