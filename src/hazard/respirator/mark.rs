//! A powered respirator whose class mark nobody read.

use super::{Required, RespiratorReport};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::documents::{UK_MEMORY, UK_QUOTED};
use crate::tables::record::Record;
use crate::tables::respirator::Assigned;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-class",
    title: "Class mark of a powered respirator",
    what: "Powered hoods are marked TH1, TH2 or TH3, powered masks TM1, TM2 or TM3; American ones are told \
           apart as half and full face.",
    why: "The factor runs from 10 to 40 in the British scheme, from 50 to 1000 in the American one.",
    what_to_do: "Read the mark and enter it as dust.respirator: th1, th2, th3, tm1, tm2, tm3, \
                 powered-half-mask or powered-full-face. Until then the lowest factor counts.",
    sources: &[&UK_QUOTED, &UK_MEMORY, &doc::OSHA_MASKS],
    phrases: &[UNREAD],
    ..Record::HAZARD
};

const UNREAD: Phrase = Phrase::of_job("respirator-class")
    .harm(Harm::KillsLater)
    .key("dust.respirator");

/// Said when the lowest mark would be too little and the highest enough.
pub(super) fn assess(report: &RespiratorReport, notes: &mut Notes) {
    let (Required::AtLeast(apf), Some(given)) = (report.required, report.assigned) else {
        return;
    };
    let Assigned::ByMark {
        least,
        most,
        marks,
        source,
    } = given
    else {
        return;
    };
    if least >= apf || most < apf {
        return;
    }
    let values = [
        ("mask", Value::term(report.at_hand)),
        ("least", least.to_string().into()),
        ("most", most.to_string().into()),
        ("marks", Value::term(marks)),
        ("apf", apf.to_string().into()),
        ("borrowed", Value::term(report.required_standing.words())),
    ];
    notes.open_on(&UNREAD, source, &values);
}
