//! Wet cutting on a protected mains supply with a machine made for it.

use super::{is_mains, is_protected, is_wet};
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "wet-mains",
    title: "Wet cutting on the mains",
    what: "A machine rated for water, on a supply with RCD, GFCI or 110 V, in the wet.",
    why: "What is left are plugs and joints lying in water, leads that are cut, and a protection that does \
          not trip because nobody tried it.",
    what_to_do: "Press the test button before the first cut. No joint of two leads on the ground, every lead \
                 in a loop that lets water drip off before the plug, dry hands at plug and switch.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[CARE],
    ..Record::HAZARD
};

const CARE: Phrase = Phrase {
    id: "wet-mains",
    title: "wet cutting on the mains: try the protection first",
    detail: "Test button pressed before the first cut, and it must trip. Plugs and joints off the ground and \
             dry, leads hung in a loop so that water drips off before the plug, dry hands at plug and \
             switch. It trips while cutting: stop, find out why, never hold it in.",
};

/// Said when nothing worse is.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let machine = &job.machine;
    if is_wet(job) && is_mains(job) && machine.wet_rated && is_protected(machine.protected) {
        notes.caution_on(&CARE, &doc::COMMON_PRACTICE, &[]);
    }
}
