//! Rim speed above the stripes.

use super::{DiscReport, rpm_at};
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::disc::{EN_12413, HAND_RIM_SPEED_M_S, HIGHEST_RIM_SPEED_M_S};
use crate::tables::record::Record;

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

const ABOVE_ALL: Phrase = Phrase {
    id: "rim-speed-over-limit",
    title: "{disc}: rim speed {speed} m/s, highest marked class {highest}",
    detail: "A {diameter} mm disc at {machine} turns a minute runs at {speed} m/s; no stripe allows \
             more than {highest}. Smaller disc or slower machine.",
};
const ABOVE_HAND: Phrase = Phrase {
    id: "rim-speed-above-hand-discs",
    title: "{disc}: rim speed {speed} m/s, hand discs are made for {hand}",
    detail: "A {diameter} mm disc at {machine} turns a minute runs at {speed} m/s. Above {hand} m/s \
             (red stripe) only a disc with a green stripe ({highest} m/s): look for it, or take \
             {slower} turns a minute or less.",
};

/// A stop above every stripe, a caution above that of hand discs.
pub(super) fn assess(disc: &DiscReport, notes: &mut Notes) {
    // Whole metres a second, as the stripes are marked.
    let speed = disc.rim_speed_m_s.round();
    let slower = rpm_at(disc.diameter_mm, HAND_RIM_SPEED_M_S).floor();
    let values = [
        ("disc", disc.name.clone()),
        ("diameter", number(disc.diameter_mm, 0)),
        ("machine", number(disc.machine_rpm, 0)),
        ("speed", number(speed, 0)),
        ("hand", number(HAND_RIM_SPEED_M_S, 0)),
        ("highest", number(HIGHEST_RIM_SPEED_M_S, 0)),
        ("slower", number(slower, 0)),
    ];
    if speed > HIGHEST_RIM_SPEED_M_S {
        notes.stop_on(&ABOVE_ALL, &EN_12413, &values);
    } else if speed > HAND_RIM_SPEED_M_S {
        notes.caution_on(&ABOVE_HAND, &EN_12413, &values);
    }
}
