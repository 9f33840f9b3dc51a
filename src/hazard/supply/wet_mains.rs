//! A protected mains supply; in the wet with a machine made for it.

use super::{is_mains, is_protected, is_wet};
use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "wet-mains",
    title: "Cutting on the mains",
    what: "A supply with RCD, GFCI or 110 V; in the wet a machine rated for water.",
    why: "What is left are plugs and joints lying in water, leads that are cut, and a protection that does \
          not trip because nobody tried it.",
    what_to_do: "Where there is a test button, press it before the first cut. No joint of two leads on the ground, every lead \
                 in a loop that lets water drip off before the plug, dry hands at plug and switch.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[CARE],
    ..Record::HAZARD
};

const CARE: Phrase = Phrase::of_every_job("wet-mains").harm(Harm::KillsNow);

/// Said when nothing worse is.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let machine = &job.machine;
    let fit = machine.wet_rated || !is_wet(job);
    if fit && is_mains(job) && is_protected(machine.protected) {
        notes.check(Moment::Before, &CARE, &doc::COMMON_PRACTICE, &[]);
    }
}
