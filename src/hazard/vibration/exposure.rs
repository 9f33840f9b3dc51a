//! Too much vibration for one pair of hands.

use super::{VibrationReport, whole_minutes};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::documents::HSE_TABLE_1;
use crate::tables::record::Record;
use crate::tables::tool::CUTTING_VIBRATION_M_S2;
use crate::words::{Arg, Unit, Value};

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

const OVER_LIMIT: Phrase = Phrase::of_job("vibration-over-limit")
    .harm(Harm::Lasting)
    .key("dust.days");
const OVER_ACTION: Phrase = Phrase::of_job("vibration-over-action")
    .harm(Harm::Lasting)
    .key("dust.days");
const UNKNOWN: Phrase = Phrase::of_job("vibration-unknown")
    .harm(Harm::Lasting)
    .key("machine.vibration");

/// A stop above the limit; said when the action value is reached, or nothing is known.
pub(super) fn assess(report: &VibrationReport, notes: &mut Notes) {
    let values = values(report);
    let limits = report.values;
    if report.a_m_s2 <= 0.0 {
        notes.open_on(&UNKNOWN, CUTTING_VIBRATION_M_S2.likely_source, &values);
    }
    if report.a8_day_m_s2 > limits.limit_m_s2 {
        notes.stop_on(&OVER_LIMIT, limits.source, &values);
    } else if report.a8_day_m_s2 >= limits.action_m_s2 {
        notes.warn_on(&OVER_ACTION, limits.source, values.clone());
    }
}

fn values(report: &VibrationReport) -> [Arg; 13] {
    // A permitted time is never rounded up, a time to be spent never down.
    let floor = |minutes: Option<f64>| Value::number(minutes.unwrap_or(0.0).floor(), 0);
    let minutes = (report.trigger_min + report.other_hours * 60.0).ceil();
    let all = whole_minutes(report.trigger_min) + whole_minutes(report.other_min);
    let value = |v: f64| Value::number(v, u8::from(v.fract() > 0.0));
    [
        (
            "a",
            Value::of(report.reckoned_m_s2, Unit::Vibration).decimals(1),
        ),
        ("minutes", Value::number(minutes, 0)),
        ("points", Value::number(report.points_day, 0)),
        ("day", Value::number(report.a8_day_m_s2, 1)),
        ("limit", value(report.values.limit_m_s2)),
        ("action", value(report.values.action_m_s2)),
        ("all", Value::number(all, 0)),
        ("to_limit", floor(report.minutes_to_limit)),
        ("to_action", floor(report.minutes_to_action)),
        ("people", Value::number(report.shares_to_limit, 0)),
        ("people_action", Value::number(report.shares_to_action, 0)),
        ("borrowed", Value::term(report.values.standing.words())),
        ("usual", CUTTING_VIBRATION_M_S2.likely.to_string().into()),
    ]
}
