//! Run-down.

use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "disc-run-down",
    title: "Run-down time",
    what: "A disc turns on for seconds after the switch is off.",
    why: "It takes hold of stone, hose, lead or knee when the machine is put down turning.",
    what_to_do: "Hold it clear until the disc stands still. Plug or battery out before the disc is touched.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[STILL],
    ..Record::HAZARD
};

const STILL: Phrase = Phrase {
    id: "disc-run-down",
    title: "the disc turns on after the switch is off",
    detail: "Seconds, longer with a big disc: hold the machine clear of stone, hose and clothes until \
             the disc stands still, then put it down. Plug or battery out before the disc is touched.",
};

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    notes.caution_on(&STILL, &doc::COMMON_PRACTICE, &[]);
}
