//! Rim speed above the stripes.

use super::{DiscReport, rpm_at};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::disc::{HAND_RIM_SPEED_M_S, HIGHEST_RIM_SPEED_M_S};
use crate::tables::documents::EN_12413;
use crate::tables::record::Record;
use crate::words::{Unit, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "rim-speed-limit",
    title: "Rim speed above the stripe",
    what: "Stripes tell the highest rim speed: blue 50, yellow 63, red 80, green 100 m/s.",
    why: "Discs for hand machines are built for 80 m/s; above 100 no stripe exists.",
    what_to_do: "Smaller disc or slower machine; above 80 m/s only a disc with a green stripe.",
    sources: &[&EN_12413],
    formula: super::RIM_SPEED.formula,
    example: super::RIM_SPEED.example,
    phrases: &[ABOVE_ALL, ABOVE_HAND],
    ..Record::HAZARD
};

const ABOVE_ALL: Phrase = Phrase::of_job("rim-speed-over-limit")
    .harm(Harm::KillsNow)
    .key("disc.diameter");
const ABOVE_HAND: Phrase = Phrase::of_job("rim-speed-above-hand-discs")
    .harm(Harm::KillsNow)
    .key("disc.diameter");

/// A stop above every stripe, a caution above that of hand discs.
pub(super) fn assess(disc: &DiscReport, notes: &mut Notes) {
    // Whole metres a second, as the stripes are marked.
    let speed = disc.rim_speed_m_s.round();
    let slower = rpm_at(disc.diameter_mm, HAND_RIM_SPEED_M_S).floor();
    let values = [
        ("disc", disc.name.clone().into()),
        ("diameter", Value::size(disc.diameter_mm)),
        ("machine", Value::number(disc.machine_rpm, 0)),
        ("speed", Value::of(speed, Unit::MetrePerSecond).decimals(0)),
        ("hand", Value::number(HAND_RIM_SPEED_M_S, 0)),
        ("highest", Value::number(HIGHEST_RIM_SPEED_M_S, 0)),
        ("slower", Value::number(slower, 0)),
    ];
    if speed > HIGHEST_RIM_SPEED_M_S {
        notes.stop_on(&ABOVE_ALL, &EN_12413, values.clone());
    } else if speed > HAND_RIM_SPEED_M_S {
        notes.warn_on(&ABOVE_HAND, &EN_12413, values.clone());
    }
}
