//! Too much noise in a day.

use super::NoiseReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::region::NoiseMeasure;
use crate::tables::tool::{BARBOSA, CUTTING_NOISE_DB, IFA_4214};

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
    phrases: &[
        OVER_LIMIT,
        OVER_ACTION,
        OSHA_OVER_LIMIT,
        OSHA_OVER_ACTION,
        UNKNOWN,
    ],
    ..Record::HAZARD
};

const OVER_LIMIT: Phrase = Phrase {
    id: "noise-over-limit",
    title: "noise L_EX,8h {day} dB(A), limit {limit} dB(A)",
    detail: "{level} dB(A) for {hours} hours of the day with this machine: L_EX,8h {day_exact}, limit \
             {limit} dB(A){borrowed}; it holds under the protector, and none is proven enough. At this \
             level {to_duty} minutes reach {duty} dB(A). Hearing protection for everybody within \
             earshot, from the first start of the machine; NIOSH recommends at most {niosh} minutes \
             unprotected. Check your current rules.",
};
const OVER_ACTION: Phrase = Phrase {
    id: "noise-over-action",
    title: "noise L_EX,8h {day} dB(A), action value {action} dB(A)",
    detail: "{level} dB(A) for {hours} hours of the day with this machine: L_EX,8h {day_exact} before \
             ear protection, action value {action} dB(A){borrowed}. At this level {to_duty} minutes \
             reach {duty} dB(A). Hearing protection for everybody within earshot, from the first start \
             of the machine; NIOSH recommends at most {niosh} minutes unprotected. Check your current \
             rules.",
};
const OSHA_OVER_LIMIT: Phrase = Phrase {
    id: "noise-over-osha-limit",
    title: "noise TWA {day} dBA, limit {limit} dBA",
    detail: "{level} dBA for {hours} hours of the day with this machine: TWA {day_exact}, limit \
             {limit} dBA{borrowed} before ear protection. At this level {to_duty} minutes reach {duty} \
             dBA. Hearing protection for everybody within earshot, from the first start of the \
             machine; NIOSH recommends at most {niosh} minutes unprotected. Check your current rules.",
};
const OSHA_OVER_ACTION: Phrase = Phrase {
    id: "noise-over-osha-action",
    title: "noise TWA {day} dBA, action level {action} dBA",
    detail: "{level} dBA for {hours} hours of the day with this machine: TWA {day_exact}, action level \
             {action} dBA{borrowed} before ear protection. At this level {to_duty} minutes reach \
             {duty} dBA. Hearing protection for everybody within earshot, from the first start of the \
             machine; NIOSH recommends at most {niosh} minutes unprotected. Check your current rules.",
};
const UNKNOWN: Phrase = Phrase {
    id: "noise-unknown",
    title: "noise of the machine is not known",
    detail: "Level {level} dB(A): no grinder is silent. Take the maker's figure, or {usual} dB(A) for \
             a large disc on stone, and enter machine.noise. Wear hearing protection until then.",
};

/// Said when a value is reached, or nothing is known.
pub(super) fn assess(report: &NoiseReport, notes: &mut Notes) {
    let limits = report.values;
    let values = values(report);
    if report.level_db <= 0.0 {
        notes.caution_on(&UNKNOWN, CUTTING_NOISE_DB.source, &values);
    }
    let Some(day) = day(report) else {
        return;
    };
    let ([over_limit, over_action], counts) = match limits.measure {
        // The limit of the directive holds under the protector.
        NoiseMeasure::EqualEnergy => (
            [&OVER_LIMIT, &OVER_ACTION],
            report.protector.day_at_ear_db.unwrap_or(day),
        ),
        NoiseMeasure::OshaDose => ([&OSHA_OVER_LIMIT, &OSHA_OVER_ACTION], day),
    };
    if counts > limits.limit_db {
        notes.caution_on(over_limit, limits.source, &values);
    } else if day >= limits.action_db {
        notes.caution_on(over_action, limits.source, &values);
    }
}

/// The day in the region's own measure, without protection.
fn day(report: &NoiseReport) -> Option<f64> {
    match report.values.measure {
        NoiseMeasure::EqualEnergy => report.lex_8h_db,
        NoiseMeasure::OshaDose => report.osha_twa_db,
    }
}

fn values(report: &NoiseReport) -> [(&'static str, String); 11] {
    let day = day(report).unwrap_or(0.0);
    [
        ("level", number(report.level_db, 0)),
        ("hours", number(report.hours, 1)),
        ("day", number(day, 0)),
        ("day_exact", number(day, 1)),
        ("limit", number(report.values.limit_db, 0)),
        ("action", number(report.values.action_db, 0)),
        ("duty", number(report.values.duty_db, 0)),
        // A permitted time is never rounded up.
        ("to_duty", number(report.minutes_to_duty.floor(), 0)),
        (
            "niosh",
            number((report.niosh_minutes * 10.0).floor() / 10.0, 1),
        ),
        ("borrowed", report.values.standing.words().to_owned()),
        ("usual", CUTTING_NOISE_DB.value.to_string()),
    ]
}
