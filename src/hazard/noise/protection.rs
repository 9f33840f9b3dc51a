//! The hearing protector: unknown, too weak, too strong, or of another scheme.

use super::NoiseReport;
use super::protector::Rating;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::{Arg, Unit, Value};

/// Level at the ear below which warnings and calls are missed, dB(A) (EN 458, quoted).
pub const TOO_QUIET_DB: f64 = 70.0;

/// The record.
pub static RECORD: Record = Record {
    id: "hearing-protector",
    title: "Hearing protector",
    what: "What a protector leaves at the ear follows from its rating and from how the region derates \
           it. 75 to 80 dB(A) is good, below 70 is too quiet.",
    why: "Too little harms the hearing; too much, and the shout to stop is not heard.",
    what_to_do: "Enter the rating in [protector]. Worn all the time: a tenth of the time without it \
                 takes half of its worth. Both plugs and muffs only when one is not enough.",
    sources: &[
        &doc::EN_ISO_4869_2,
        &doc::HSE_REAL_WORLD,
        &doc::OSHA_PROTECTOR,
        &doc::NIOSH_PROTECTOR,
        &doc::EN_458,
    ],
    formula: super::protector::SNR.formula,
    example: super::protector::SNR.example,
    phrases: &[UNKNOWN, WEAK, STRONG, FOREIGN],
    ..Record::HAZARD
};

const UNKNOWN: Phrase = Phrase::of_job("protector-unknown")
    .harm(Harm::Lasting)
    .key("protector");
const WEAK: Phrase = Phrase::of_job("protector-too-weak")
    .harm(Harm::Lasting)
    .key("protector");
const STRONG: Phrase = Phrase::of_job("protector-too-strong")
    .harm(Harm::Lasting)
    .key("protector");
const FOREIGN: Phrase = Phrase::of_job("protector-foreign-rating")
    .harm(Harm::Lasting)
    .key("protector");

/// What is wrong with the protector of a day that needs one; whether anything is.
pub(super) fn assess(report: &NoiseReport, notes: &mut Notes) -> bool {
    let protector = &report.protector;
    let values = values(report);
    let rule = protector.rule.source;
    let Some(at_ear) = protector.at_ear_db else {
        notes.open_on(&UNKNOWN, report.values.source, &values);
        return true;
    };
    notes.used(rule);
    if protector.niosh_holds_db.is_some() {
        notes.used(&doc::NIOSH_PROTECTOR);
    }
    if protector.rating == Rating::Foreign {
        notes.warn_on(&FOREIGN, rule, values.clone());
    }
    let weak = protector.day_at_ear_db;
    if weak.is_some_and(|day| day > report.values.duty_db) {
        notes.warn_on(&WEAK, rule, values.clone());
    } else if at_ear < TOO_QUIET_DB {
        notes.warn_on(&STRONG, &doc::EN_458, values.clone());
    } else {
        return protector.rating == Rating::Foreign;
    }
    true
}

fn values(report: &NoiseReport) -> [Arg; 7] {
    let protector = &report.protector;
    let shown = |level: Option<f64>| Value::number(level.unwrap_or(0.0), 0);
    [
        (
            "level",
            Value::of(report.level_db, Unit::Decibel).decimals(0),
        ),
        ("duty", Value::number(report.values.duty_db, 0)),
        ("holds", Value::number(protector.holds_db.unwrap_or(0.0), 1)),
        ("ear", shown(protector.at_ear_db)),
        ("day", shown(protector.day_at_ear_db)),
        ("quiet", Value::of(TOO_QUIET_DB, Unit::Decibel).decimals(0)),
        ("borrowed", Value::term(protector.rule.standing.words())),
    ]
}
