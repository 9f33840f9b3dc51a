//! A silica limit that is about to be replaced, or has been.

use super::notes::Notes;
use crate::diag::{Phrase, number};
use crate::job::Job;
use crate::tables::record::Record;
use crate::tables::region::LimitChange;
use crate::tables::regions::au;

/// The record.
pub static RECORD: Record = Record {
    id: "silica-limit-changes",
    title: "The silica limit is being replaced",
    what: "The limit printed for the region comes from a document that another one replaces on a known day.",
    why: "A sheet that is printed before that day and used after it shows a limit that no longer holds.",
    what_to_do: "Look up the limit that holds on the day of the work; the authority is named on the sheet.",
    sources: &[&au::SILICA],
    phrases: &[COMING, REPLACED],
    ..Record::HAZARD
};

const COMING: Phrase = Phrase {
    id: "silica-limit-changes",
    title: "the silica limit changes on {on}",
    detail: "Printed: {limit} mg/m³, {document}. From {on} {by} replaces that document: look up the \
             figure that holds on the day of the work with {authority}.",
};
const REPLACED: Phrase = Phrase {
    id: "silica-limit-replaced",
    title: "the printed silica limit was replaced on {on}",
    detail: "Printed: {limit} mg/m³, {document}. The job is dated on or after {on}, when {by} replaced that \
             document. The new figure is not on file: get it from {authority} and do not rely on \
             the printed one.",
};

/// Said where a change is known; the job's date tells whether it has come.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let record = job.region.record();
    let limit = record.silica;
    let Some(LimitChange { on, on_words, by }) = limit.change else {
        return;
    };
    let values = [
        ("on", on_words.to_owned()),
        ("by", by.to_owned()),
        ("limit", number(limit.limit_mg_m3, 2)),
        ("document", limit.source.cite()),
        ("authority", record.authority.to_owned()),
    ];
    // Dates written YYYY-MM-DD stand in the order of their letters.
    let come = job.heading.date.as_str() >= on;
    let phrase = if come { &REPLACED } else { &COMING };
    notes.caution_on(phrase, limit.source, &values);
}
