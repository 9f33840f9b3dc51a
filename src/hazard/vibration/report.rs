//! What is known of the vibration of the day.

use serde::Serialize;

use crate::tables::region::VibrationValues;

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
