//! The hearing protector: unknown, too weak, too strong, or of another scheme.

use super::NoiseReport;
use super::protector::Rating;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;

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

const UNKNOWN: Phrase = Phrase {
    id: "protector-unknown",
    title: "hearing protector not known",
    detail: "{level} dB(A) at the ear while cutting, {duty} dB(A) over the day makes protection a \
             duty; what is worn against it nobody said. Read SNR, H M L or NRR on the box and enter it \
             in [protector].",
};
const WEAK: Phrase = Phrase {
    id: "protector-too-weak",
    title: "hearing protector too weak: {day} dB(A) over the day under it",
    detail: "{level} dB(A) while cutting, {holds} dB held back{borrowed}: {ear} at the ear, {day} over \
             the day, at most {duty}. A protector with a higher rating, plugs under muffs, or fewer \
             minutes.",
};
const STRONG: Phrase = Phrase {
    id: "protector-too-strong",
    title: "hearing protector too strong: {ear} dB(A) at the ear",
    detail: "{level} dB(A) while cutting, {holds} dB held back{borrowed}: {ear} at the ear. Below \
             {quiet} dB(A) calls and warnings are missed: agree on hand signs, or take one with a \
             lower rating.",
};
const FOREIGN: Phrase = Phrase {
    id: "protector-foreign-rating",
    title: "the protector's rating is not the one that is reckoned with here",
    detail: "SNR, H M L (EN 352) and NRR (American) are tested differently and never exchanged. It was \
             reckoned by its own scheme, the stricter way: {holds} dB held back. Ask for the rating \
             that counts where you are.",
};

/// Said when the day needs protection and it is not right.
pub(super) fn assess(report: &NoiseReport, notes: &mut Notes) {
    let protector = &report.protector;
    let values = values(report);
    let rule = protector.rule.source;
    let Some(at_ear) = protector.at_ear_db else {
        notes.caution_on(&UNKNOWN, report.values.source, &values);
        return;
    };
    notes.used(rule);
    if protector.niosh_holds_db.is_some() {
        notes.used(&doc::NIOSH_PROTECTOR);
    }
    if protector.rating == Rating::Foreign {
        notes.caution_on(&FOREIGN, rule, &values);
    }
    if protector
        .day_at_ear_db
        .is_some_and(|day| day > report.values.duty_db)
    {
        notes.caution_on(&WEAK, rule, &values);
    } else if at_ear < TOO_QUIET_DB {
        notes.caution_on(&STRONG, &doc::EN_458, &values);
    }
}

fn values(report: &NoiseReport) -> [(&'static str, String); 7] {
    let protector = &report.protector;
    let shown = |level: Option<f64>| number(level.unwrap_or(0.0), 0);
    [
        ("level", number(report.level_db, 0)),
        ("duty", number(report.values.duty_db, 0)),
        ("holds", number(protector.holds_db.unwrap_or(0.0), 1)),
        ("ear", shown(protector.at_ear_db)),
        ("day", shown(protector.day_at_ear_db)),
        ("quiet", number(TOO_QUIET_DB, 0)),
        ("borrowed", protector.rule.standing.words().to_owned()),
    ]
}
