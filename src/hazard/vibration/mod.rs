//! Hand-arm vibration: formulas and report; the hazard stands in [`exposure`].

mod explained;
pub mod exposure;

use serde::Serialize;

use super::Work;
use super::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::region::VibrationValues;
use crate::tables::tool::VIBRATION_UNCERTAINTY;

pub use explained::{A8, POINTS, TIME};

/// Hours of the reference day, h.
const REFERENCE_DAY_H: f64 = 8.0;
/// Minutes to an hour.
const MIN_PER_H: f64 = 60.0;

/// Vibration of the job and the day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct VibrationReport {
    /// Magnitude, m/s².
    pub a_m_s2: f64,
    /// Uncertainty added to it, m/s².
    pub k_m_s2: f64,
    /// Magnitude that is reckoned with, `a + K`, m/s².
    pub reckoned_m_s2: f64,
    /// Time with the disc in the stone, minutes.
    pub trigger_min: f64,
    /// Other vibrating work of the day at the same magnitude, hours.
    pub other_hours: f64,
    /// All other work of the day, as minutes of this machine.
    pub other_min: f64,
    /// Other machines of the same day.
    pub spells: Vec<VibrationPeriod>,
    /// A(8) of this job alone, m/s².
    pub a8_job_m_s2: f64,
    /// A(8) of the whole day, m/s².
    pub a8_day_m_s2: f64,
    /// Points for an hour of this machine.
    pub points_per_hour: f64,
    /// Points of this job.
    pub points_job: f64,
    /// Points of the whole day: 100 at the action value, 400 at the limit.
    pub points_day: f64,
    /// Minutes of this machine in a day until the action value; nothing when there is no vibration.
    pub minutes_to_action: Option<f64>,
    /// Minutes of this machine in a day until the limit value; nothing when there is no vibration.
    pub minutes_to_limit: Option<f64>,
    /// People or days over which the whole day's work stays below the action value.
    pub shares_to_action: f64,
    /// People or days over which the whole day's work stays at or below the limit value.
    pub shares_to_limit: f64,
    /// Action and limit of the region.
    pub values: VibrationValues,
}

/// Another machine of the same day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct VibrationPeriod {
    /// What it is.
    pub what: String,
    /// Magnitude that is reckoned with, `a + K`, m/s².
    pub reckoned_m_s2: f64,
    /// How long, minutes.
    pub minutes: f64,
    /// Its points.
    pub points: f64,
}

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

/// Vibration of the job, and what is over.
pub(super) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> VibrationReport {
    let report = report(job, work, notes);
    notes.used(report.values.source);
    notes.used(&doc::HSE_POINTS);
    exposure::assess(&report, notes);
    report
}

fn report(job: &Job, work: &Work, notes: &mut Notes) -> VibrationReport {
    let values = job.region.record().vibration;
    let vibration = job.machine.vibration;
    let k = uncertainty(vibration.a, vibration.k, notes);
    let reckoned = vibration.a + k;
    let (job_h, other_h) = (work.hours_a_day(job), job.dust.hours_today);
    let spells = spells(job, notes);
    let mut day = vec![(reckoned, job_h), (reckoned, other_h)];
    day.extend(
        spells
            .iter()
            .map(|s| (s.reckoned_m_s2, s.minutes / MIN_PER_H)),
    );
    let points_day: f64 = day.iter().map(|(a, hours)| points(*a, *hours)).sum();
    let points_job = points(reckoned, job_h);
    let points_per_hour = points(reckoned, 1.0);
    let trigger_min = job_h * MIN_PER_H;
    let other_min = if points_per_hour > 0.0 {
        (points_day - points_job).max(0.0) / points_per_hour * MIN_PER_H
    } else {
        0.0
    };
    let to = |value| minutes_to(reckoned, value);
    let shares_to =
        |value| shares(points_day, value).max(whole_shares(trigger_min, other_min, to(value)));
    VibrationReport {
        a_m_s2: vibration.a,
        k_m_s2: k,
        reckoned_m_s2: reckoned,
        trigger_min,
        other_hours: other_h,
        other_min,
        spells,
        a8_job_m_s2: a8(&[(reckoned, job_h)]),
        a8_day_m_s2: a8(&day),
        points_per_hour,
        points_job,
        points_day,
        minutes_to_action: to(values.action_m_s2),
        minutes_to_limit: to(values.limit_m_s2),
        shares_to_action: shares_to(values.action_m_s2),
        shares_to_limit: shares_to(values.limit_m_s2),
        values,
    }
}

/// The shares of the whole minutes that are printed, so that who divides them finds the same.
fn whole_shares(job_min: f64, other_min: f64, allowed_min: Option<f64>) -> f64 {
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

fn spells(job: &Job, notes: &mut Notes) -> Vec<VibrationPeriod> {
    let one = |spell: &crate::job::ExposurePeriod, notes: &mut Notes| {
        let (a, k) = (spell.vibration.a, spell.vibration.k);
        let reckoned = a + uncertainty(a, k, notes);
        VibrationPeriod {
            what: spell.what.clone(),
            reckoned_m_s2: reckoned,
            minutes: spell.minutes,
            points: points(reckoned, spell.minutes / MIN_PER_H),
        }
    };
    job.today.iter().map(|spell| one(spell, notes)).collect()
}

/// The maker's uncertainty; when none is stated, the published share of the magnitude.
fn uncertainty(a: f64, stated: f64, notes: &mut Notes) -> f64 {
    if stated > 0.0 {
        return stated;
    }
    if a > 0.0 {
        notes.used(VIBRATION_UNCERTAINTY.source);
    }
    a * VIBRATION_UNCERTAINTY.value
}
