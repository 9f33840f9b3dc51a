//! What is known of each disc, and the speed of its rim.

use std::f64::consts::PI;

use serde::Serialize;

use crate::job::Bond;
use crate::tables::disc::HAND_RIM_SPEED_M_S;
use crate::tables::documents as doc;
use crate::tables::record::{Example, Record};

/// Rim speed.
pub static RIM_SPEED: Record = Record {
    id: "rim-speed",
    title: "Rim speed of a disc",
    what: "How fast the rim runs: circumference times turns.",
    why: "A disc is marked for a highest rim speed; above it the pull on the rim can tear it apart.",
    what_to_do: "Compare machine and mark in turns a minute; marks are rounded, so the formula decides.",
    sources: &[&doc::COMPUTED, &doc::EN_12413],
    formula: "v = π·D·n / 60000, m/s, D in mm, n in turns a minute",
    example: Some(example),
    ..Record::FORMULA
};

fn example() -> Example {
    const DISC_MM: f64 = 125.0;
    Example {
        given: format!("a {DISC_MM:.0} mm disc with a red stripe, {HAND_RIM_SPEED_M_S:.0} m/s"),
        result: format!("{:.0} turns a minute", rpm_at(DISC_MM, HAND_RIM_SPEED_M_S)),
    }
}

/// One disc on this machine.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DiscReport {
    /// Name as printed.
    pub name: String,
    /// Diameter, mm.
    pub diameter_mm: f64,
    /// Speed of the machine without load, turns a minute.
    pub machine_rpm: f64,
    /// Highest speed marked on the disc, turns a minute.
    pub marked_rpm: f64,
    /// Rim speed on this machine, m/s.
    pub rim_speed_m_s: f64,
    /// Rim speed at the marked turns, m/s.
    pub marked_speed_m_s: f64,
    /// Bore, mm.
    pub bore_mm: f64,
    /// Seat of the machine, mm.
    pub seat_mm: f64,
    /// What holds it together.
    pub bond: Bond,
}

/// Rim speed `πDn/60000`, m/s, of a diameter in mm at turns a minute.
///
/// ```
/// let speed = kerfwright::hazard::disc::rim_speed_m_s(230.0, 6643.0);
/// assert!((speed - 80.0).abs() < 0.01);
/// ```
#[must_use]
pub fn rim_speed_m_s(diameter_mm: f64, rpm: f64) -> f64 {
    // 60 seconds to a minute, 1000 mm to a metre.
    PI * diameter_mm * rpm / 60_000.0
}

/// Turns a minute at which a diameter in mm has a rim speed in m/s.
#[must_use]
pub fn rpm_at(diameter_mm: f64, speed_m_s: f64) -> f64 {
    speed_m_s * 60_000.0 / (PI * diameter_mm)
}
