//! Cutting indoors.

use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Job, Workplace};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "indoors-exhaust",
    title: "Indoors: air must be drawn out as well",
    what: "Cutting in a room, a garage, a tent or any place where the dust cannot drift away.",
    why: "Fine dust stays in the air of a room for hours, and settles where it is stirred up for weeks.",
    what_to_do: "Cut outdoors if it can be done. Otherwise exhaust the air to the open, close off the \
                 room, let nobody in without a respirator, and clean with the right vacuum before \
                 anybody uses it.",
    sources: &[&doc::OSHA_TABLE_1],
    phrases: &[EXHAUST],
    ..Record::HAZARD
};

const EXHAUST: Phrase = Phrase::of_job("indoors-exhaust")
    .harm(Harm::KillsLater)
    .key("dust.where");

/// Said indoors.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.dust.place == Workplace::Indoors {
        notes.warn_on(&EXHAUST, &doc::OSHA_TABLE_1, &[]);
    }
}
