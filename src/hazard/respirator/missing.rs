//! No respirator at hand.

use super::{Required, RespiratorReport};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Job, Respirator};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-missing",
    title: "No respirator at hand",
    what: "The job file names none, though one is asked for or nothing says that none is.",
    why: "Water and extraction hold back most of the dust, not all of it.",
    what_to_do: "First the open steps of the order of controls; then one that fits its wearer.",
    sources: &[&doc::OSHA_TABLE_1, &doc::HSE_STONEMASONRY],
    phrases: &[MISSING, UNSETTLED, NONE_ASKED],
    ..Record::HAZARD
};

const MISSING: Phrase = Phrase::of_job("respirator-missing")
    .harm(Harm::KillsLater)
    .key("dust.respirator");
const UNSETTLED: Phrase = Phrase::of_job("respirator-missing-unassessed")
    .harm(Harm::KillsLater)
    .key("dust.respirator");
const NONE_ASKED: Phrase = Phrase::of_job("respirator-none-asked")
    .harm(Harm::KillsLater)
    .key("dust.respirator");

/// A stop, unless the table asks for none.
pub(super) fn assess(job: &Job, report: &RespiratorReport, notes: &mut Notes) {
    if job.dust.respirator != Respirator::None {
        return;
    }
    let borrowed = ("borrowed", Value::term(report.required_standing.words()));
    let source = report.required_source;
    match report.required {
        Required::NoneAsked => notes.open_on(&NONE_ASKED, source, &[borrowed]),
        Required::MustBeAssessed => notes.stop_on(&UNSETTLED, source, &[borrowed]),
        Required::AtLeast(apf) => {
            notes.stop_on(
                &MISSING,
                source,
                &[borrowed, ("apf", apf.to_string().into())],
            );
        }
    }
}
