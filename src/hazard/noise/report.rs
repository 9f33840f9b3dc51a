//! What is known of the noise of the day.

use serde::Serialize;

use crate::hazard::noise::protector::ProtectorReport;
use crate::tables::region::NoiseValues;

use super::NoisePeriod;

/// Noise of the day.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct NoiseReport {
    /// Level at the ear while cutting, dB(A).
    pub level_db: f64,
    /// Time at it in the day, this job and the other work with this machine, hours.
    pub hours: f64,
    /// Other machines of the same day.
    pub spells: Vec<NoisePeriod>,
    /// Level over 8 hours, equal energy, dB(A), all of the day; nothing without time at it.
    pub lex_8h_db: Option<f64>,
    /// Minutes at this machine's level until the duty value of the region.
    pub minutes_to_duty: f64,
    /// OSHA's dose in percent, where the region uses it.
    pub osha_dose_percent: Option<f64>,
    /// OSHA's time-weighted average, dBA, where the region uses it.
    pub osha_twa_db: Option<f64>,
    /// Minutes that NIOSH recommends at most at this level.
    pub niosh_minutes: f64,
    /// What the hearing protector leaves.
    pub protector: ProtectorReport,
    /// Action and limit of the region.
    pub values: NoiseValues,
}
