//! Water on a machine that is not made for it.

use super::{is_mains, is_wet};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "water-not-rated",
    title: "Water on a machine that is not made for it",
    what: "Water is fed to the disc, but the machine's maker does not allow wet cutting.",
    why: "Slurry creeps into motor and switch. On a mains machine the housing can become live in wet \
          hands; the standard warnings for grinders forbid any accessory that needs liquid on a machine \
          not made for it. RCD and GFCI soften a shock, they do not make a wet machine.",
    what_to_do: "Use a machine whose maker allows water, or a shroud with an extractor strong enough.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[MAINS, OTHER],
    ..Record::HAZARD
};

const MAINS: Phrase = Phrase::of_job("water-on-mains-unrated")
    .harm(Harm::KillsNow)
    .key("machine.wet_rated");
const OTHER: Phrase = Phrase::of_job("water-not-rated")
    .harm(Harm::Maims)
    .key("machine.wet_rated");

/// A stop for every wet cut with a machine that is not rated.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if is_wet(job) && !job.machine.wet_rated {
        let phrase = if is_mains(job) { &MAINS } else { &OTHER };
        notes.stop_on(phrase, &doc::GRINDER_WARNINGS, &[]);
    }
}
