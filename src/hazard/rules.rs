//! What stands above everything on the sheet.

use super::moment::Moment;
use super::notes::Notes;
use crate::diag::{Harm, Phrase};
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "local-rules-first",
    title: "Local rules, makers' instructions and competent people come first",
    what: "The sheet is a plan and a reminder. It is no permit, no risk assessment and no training.",
    why: "Rules differ from place to place and change; a machine's maker knows it better than any \
          table; lifting gear, electrics, structure and asbestos need people with a licence.",
    what_to_do: "Ask the authority named on the sheet for the rules now in force. Where the sheet \
                 and a rule, a manual or a competent person differ, they are right and the sheet is not.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[FIRST],
    ..Record::HAZARD
};

const FIRST: Phrase = Phrase::of_every_job("local-rules-first").harm(Harm::KillsLater);

/// Said on every sheet.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let record = job.region.record();
    let values = [
        ("region", Value::term(record.name)),
        ("authority", Value::term(record.authority)),
    ];
    notes.check(
        Moment::Before,
        &FIRST,
        &doc::COMMON_PRACTICE,
        values.clone(),
    );
}
