//! Hand-arm vibration.

use serde::Serialize;

use super::Work;
use super::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::region::{Standing, VibrationValues};
use crate::tables::tool::{CUTTING_VIBRATION_M_S2, VIBRATION_UNCERTAINTY};

/// Hours of the reference day, h.
const REFERENCE_DAY_H: f64 = 8.0;
/// Minutes of the reference day.
const REFERENCE_DAY_MIN: f64 = REFERENCE_DAY_H * 60.0;

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
    /// Other vibrating work of the day, hours, taken at the same magnitude.
    pub other_hours: f64,
    /// A(8) of this job alone, m/s².
    pub a8_job_m_s2: f64,
    /// A(8) of the whole day, m/s².
    pub a8_day_m_s2: f64,
    /// Points for an hour.
    pub points_per_hour: f64,
    /// Points of this job.
    pub points_job: f64,
    /// Points of the whole day: 100 at the action value, 400 at the limit.
    pub points_day: f64,
    /// Minutes in a day until the action value; nothing when there is no vibration.
    pub minutes_to_action: Option<f64>,
    /// Minutes in a day until the limit value; nothing when there is no vibration.
    pub minutes_to_limit: Option<f64>,
    /// Action and limit of the region.
    pub values: VibrationValues,
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
    (a_m_s2 > 0.0).then(|| (value_m_s2 / a_m_s2).powi(2) * REFERENCE_DAY_MIN)
}

/// Vibration of the job, and what is over.
pub(super) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> VibrationReport {
    let values = job.region.record().vibration;
    let a = job.machine.vibration.a;
    let k = uncertainty(job, notes);
    let reckoned = a + k;
    let (job_h, other_h) = (work.hours(), job.dust.hours_today);
    let report = VibrationReport {
        a_m_s2: a,
        k_m_s2: k,
        reckoned_m_s2: reckoned,
        trigger_min: work.trigger_minutes,
        other_hours: other_h,
        a8_job_m_s2: a8(&[(reckoned, job_h)]),
        a8_day_m_s2: a8(&[(reckoned, job_h), (reckoned, other_h)]),
        points_per_hour: points(reckoned, 1.0),
        points_job: points(reckoned, job_h),
        points_day: points(reckoned, job_h + other_h),
        minutes_to_action: minutes_to(reckoned, values.action_m_s2),
        minutes_to_limit: minutes_to(reckoned, values.limit_m_s2),
        values,
    };
    notes.used(values.source);
    notes.used(&doc::HSE_POINTS);
    report_unknown(&report, notes);
    report_over(&report, notes);
    report
}

/// The maker's uncertainty; when none is stated, the published share of the magnitude.
fn uncertainty(job: &Job, notes: &mut Notes) -> f64 {
    let stated = job.machine.vibration.k;
    if stated > 0.0 {
        return stated;
    }
    notes.used(VIBRATION_UNCERTAINTY.source);
    job.machine.vibration.a * VIBRATION_UNCERTAINTY.value
}

fn report_unknown(report: &VibrationReport, notes: &mut Notes) {
    if report.a_m_s2 > 0.0 {
        return;
    }
    notes.caution(
        "vibration-unknown",
        CUTTING_VIBRATION_M_S2.likely_source,
        "vibration of the machine is not known",
        format!(
            "Magnitude {} m/s²: no hand machine is without vibration. Take the maker's figure, or \
             {} m/s² for a grinder on stone, and enter machine.vibration.",
            report.a_m_s2, CUTTING_VIBRATION_M_S2.likely
        ),
    );
}

fn report_over(report: &VibrationReport, notes: &mut Notes) {
    let (day, values) = (report.a8_day_m_s2, report.values);
    let (id, name, value, minutes) = if day > values.limit_m_s2 {
        (
            "vibration-over-limit",
            "limit",
            values.limit_m_s2,
            report.minutes_to_limit,
        )
    } else if day >= values.action_m_s2 {
        (
            "vibration-over-action",
            "action value",
            values.action_m_s2,
            report.minutes_to_action,
        )
    } else {
        return;
    };
    // A permitted time is never rounded up.
    let minutes = minutes.unwrap_or(0.0).floor();
    let total = report.trigger_min + report.other_hours * 60.0;
    let borrowed = match values.standing {
        Standing::Own => "",
        Standing::Borrowed => " (borrowed: none found for this region)",
    };
    notes.caution(
        id,
        values.source,
        format!("vibration A(8) {day:.1} m/s², {name} {value} m/s²"),
        format!(
            "{:.1} m/s² for {total:.0} minutes in the day: A(8) {day:.1}, {name} {value} m/s²\
             {borrowed}, reached after {minutes:.0} minutes. Split the work over {} people or days, \
             at most {minutes:.0} minutes each; keep warm, sharp disc, light grip. Check your \
             current rules.",
            report.reckoned_m_s2,
            shares(total, minutes),
        ),
    );
}

/// How many equal shares keep each within the minutes given.
fn shares(total_min: f64, each_min: f64) -> String {
    if each_min > 0.0 {
        format!("{:.0}", (total_min / each_min).ceil())
    } else {
        "more".into()
    }
}
