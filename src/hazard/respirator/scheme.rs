//! A respirator that the region's scheme has no row for.

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
    id: "respirator-not-in-scheme",
    title: "A respirator of another scheme",
    what: "American factors (29 CFR 1910.134) are for respirators approved by NIOSH, British ones \
           (HSG53) for European classes.",
    why: "Each scheme tests masks in its own way: the same kind of mask carries 10 in one and 20 in \
          the other. A factor is never taken from one into the other.",
    what_to_do: "Use a respirator that is approved where the work is done.",
    sources: &[&doc::OSHA_MASKS, &doc::UK_MASKS, &UK_QUOTED, &UK_MEMORY],
    phrases: &[FOREIGN, FOREIGN_UNASKED],
    ..Record::HAZARD
};

const FOREIGN: Phrase = Phrase::of_job("respirator-not-in-scheme")
    .harm(Harm::KillsLater)
    .key("dust.respirator");
const FOREIGN_UNASKED: Phrase = Phrase::of_job("respirator-unlisted")
    .harm(Harm::KillsLater)
    .key("dust.respirator");

/// A stop where a factor is asked for.
pub(super) fn assess(report: &RespiratorReport, notes: &mut Notes) {
    if report.assigned != Some(Assigned::NotInScheme) {
        return;
    }
    let values = [
        ("mask", Value::term(report.at_hand)),
        ("borrowed", Value::term(report.required_standing.words())),
    ];
    let source = report.required_source;
    match report.required {
        Required::NoneAsked => notes.warn_on(&FOREIGN_UNASKED, source, values.clone()),
        Required::AtLeast(_) | Required::MustBeAssessed => {
            notes.stop_on(&FOREIGN, source, values.clone());
        }
    }
}
