//! Too much vibration for one pair of hands.

use super::VibrationReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::tool::{CUTTING_VIBRATION_M_S2, HSE_TABLE_1};

/// The record.
pub static RECORD: Record = Record {
    id: "vibration",
    title: "Hand-arm vibration",
    what: "The machine shakes the hands. Action value A(8) 2.5 m/s², limit 5 m/s² where the European \
           directive holds.",
    why: "White, numb fingers and lost grip, which do not come back. Cold and a tight grip make it worse.",
    what_to_do: "Sharp disc, light grip, warm hands, breaks; split the work over people or days.",
    sources: &[&doc::EU_VIBRATION, &doc::HSE_POINTS, &HSE_TABLE_1],
    formula: "A(8) = √(Σ a²·T / 8 h); points 2·a²·T",
    example: super::A8.example,
    phrases: &[OVER_LIMIT, OVER_ACTION, UNKNOWN],
    ..Record::HAZARD
};

const OVER_LIMIT: Phrase = Phrase {
    id: "vibration-over-limit",
    title: "vibration A(8) {day} m/s², limit {limit} m/s²",
    detail: "{a} m/s² for {minutes} minutes in the day with this machine, {points} points with \
             everything else: A(8) {day}, limit {limit}{borrowed}, reached after {to_limit} minutes. \
             Split the work over {people} people or days, at most {to_limit} minutes each; below the \
             action value {action} it takes {people_action}. Keep warm, sharp disc, light grip. Check \
             your current rules.",
};
const OVER_ACTION: Phrase = Phrase {
    id: "vibration-over-action",
    title: "vibration A(8) {day} m/s², action value {action} m/s²",
    detail: "{a} m/s² for {minutes} minutes in the day with this machine, {points} points with \
             everything else: A(8) {day}, action value {action}{borrowed}, reached after {to_action} \
             minutes. Split the work over {people_action} people or days, at most {to_action} minutes \
             each; keep warm, sharp disc, light grip. Check your current rules.",
};
const UNKNOWN: Phrase = Phrase {
    id: "vibration-unknown",
    title: "vibration of the machine is not known",
    detail: "Magnitude {a} m/s²: no hand machine is without vibration. Take the maker's figure, or \
             {usual} m/s² for a grinder on stone, and enter machine.vibration.",
};

/// Said when a value is reached, or nothing is known.
pub(super) fn assess(report: &VibrationReport, notes: &mut Notes) {
    let values = values(report);
    let limits = report.values;
    if report.a_m_s2 <= 0.0 {
        notes.caution_on(&UNKNOWN, CUTTING_VIBRATION_M_S2.likely_source, &values);
    }
    if report.a8_day_m_s2 > limits.limit_m_s2 {
        notes.caution_on(&OVER_LIMIT, limits.source, &values);
    } else if report.a8_day_m_s2 >= limits.action_m_s2 {
        notes.caution_on(&OVER_ACTION, limits.source, &values);
    }
}

fn values(report: &VibrationReport) -> [(&'static str, String); 12] {
    // A permitted time is never rounded up, a time to be spent never down.
    let floor = |minutes: Option<f64>| number(minutes.unwrap_or(0.0).floor(), 0);
    let minutes = (report.trigger_min + report.other_hours * 60.0).ceil();
    [
        ("a", number(report.reckoned_m_s2, 1)),
        ("minutes", number(minutes, 0)),
        ("points", number(report.points_day, 0)),
        ("day", number(report.a8_day_m_s2, 1)),
        ("limit", report.values.limit_m_s2.to_string()),
        ("action", report.values.action_m_s2.to_string()),
        ("to_limit", floor(report.minutes_to_limit)),
        ("to_action", floor(report.minutes_to_action)),
        ("people", number(report.shares_to_limit, 0)),
        ("people_action", number(report.shares_to_action, 0)),
        ("borrowed", report.values.standing.words().to_owned()),
        ("usual", CUTTING_VIBRATION_M_S2.likely.to_string()),
    ]
}
