//! Too much noise in a day.

use super::{NoiseReport, protection};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::documents::{BARBOSA, IFA_4214};
use crate::tables::record::Record;
use crate::tables::region::NoiseMeasure;
use crate::tables::tool::CUTTING_NOISE_DB;
use crate::words::{Arg, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "noise",
    title: "Noise",
    what: "A disc in stone makes 98 to 107 dB(A) at the ear.",
    why: "At such levels hearing is harmed within minutes. It does not come back, and the ringing stays.",
    what_to_do: "Hearing protection for everybody within earshot, from the first start of the machine; \
                 cut where the noise can go away; split the work over days.",
    sources: &[&doc::EU_NOISE, &doc::OSHA_NOISE, &IFA_4214, &BARBOSA],
    formula: "L_EX,8h = 10·lg(Σ T·10^(L/10) / 8 h)",
    example: super::LEX.example,
    phrases: &[OVER_LIMIT, UNKNOWN],
    ..Record::HAZARD
};

const OVER_LIMIT: Phrase = Phrase::of_job("noise-over-limit")
    .harm(Harm::Lasting)
    .key("protector");
const UNKNOWN: Phrase = Phrase::of_job("noise-unknown")
    .harm(Harm::Lasting)
    .key("machine.noise");

/// One entry for the noise with its protector: a stop over the limit under it, an open point while
/// level or protector is not known, a warning when it is too weak or too strong; otherwise settled.
pub(super) fn assess(report: &NoiseReport, notes: &mut Notes) {
    let limits = report.values;
    let values = values(report);
    if report.level_db <= 0.0 {
        notes.open_on(&UNKNOWN, CUTTING_NOISE_DB.source, &values);
    }
    // By equal energy too: OSHA's dose counts an hour of a disc for less than it is.
    let reached = |level: Option<f64>| level.is_some_and(|db| db >= limits.action_db);
    if !reached(day(report)) && !reached(report.lex_8h_db) {
        return;
    }
    let under = report.protector.day_at_ear_db;
    if under.is_some_and(|under| under > limits.limit_db) {
        notes.stop_on(&OVER_LIMIT, limits.source, &values);
    } else if !protection::assess(report, notes) {
        notes.settle("settled-noise", limits.source, values);
    }
}

/// The day in the region's own measure, without protection.
fn day(report: &NoiseReport) -> Option<f64> {
    match report.values.measure {
        NoiseMeasure::EqualEnergy => report.lex_8h_db,
        NoiseMeasure::OshaDose => report.osha_twa_db,
    }
}

fn values(report: &NoiseReport) -> [Arg; 12] {
    let day = day(report).unwrap_or(0.0);
    [
        ("level", Value::number(report.level_db, 0)),
        ("hours", Value::number(report.hours, 1)),
        ("day", Value::number(day, 0)),
        ("day_exact", Value::number(day, 1)),
        (
            "under",
            Value::number(report.protector.day_at_ear_db.unwrap_or(0.0), 1),
        ),
        ("limit", Value::number(report.values.limit_db, 0)),
        ("action", Value::number(report.values.action_db, 0)),
        ("duty", Value::number(report.values.duty_db, 0)),
        // A permitted time is never rounded up.
        ("to_duty", Value::number(report.minutes_to_duty.floor(), 0)),
        (
            "niosh",
            Value::number((report.niosh_minutes * 10.0).floor() / 10.0, 1),
        ),
        ("borrowed", Value::term(report.values.standing.words())),
        ("usual", CUTTING_NOISE_DB.value.to_string().into()),
    ]
}
