//! The second person at the switch.

use super::notes::Notes;
use crate::diag::Phrase;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "second-person",
    title: "A second person at the switch",
    what: "Somebody who is not cutting stands where power and water are cut off, sees the cutter, and \
           can call help.",
    why: "Whoever is hurt or shocked by a machine cannot switch it off, and cannot call.",
    what_to_do: "Never cut alone. Show the second person plug, switch and tap before the start, agree \
                 on a sign to stop.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[ALONE, SECOND],
    ..Record::HAZARD
};

const ALONE: Phrase = Phrase {
    id: "working-alone",
    title: "one person only: nobody at the switch, nobody to call help",
    detail: "People entered: {people}, at least 2 while a disc turns (judgement). Find somebody who \
             stands by at plug and tap and does nothing else, or wait until there is somebody.",
};
const SECOND: Phrase = Phrase {
    id: "second-person",
    title: "a second person stands at the switch",
    detail: "Of the {people} people one stands where power and water are cut off, in sight of the \
             cutter, out of the line of the disc, with respirator and hearing protection. A raised \
             hand means off, and nobody asks why.",
};

/// Said by the number of people.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let values = [("people", job.lift.people.to_string())];
    let phrase = if job.lift.people < 2 { &ALONE } else { &SECOND };
    notes.caution_on(phrase, &doc::COMMON_PRACTICE, &values);
}
