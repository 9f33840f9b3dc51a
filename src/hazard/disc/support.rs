//! Both sides of the cut held.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "support-both-sides",
    title: "Both sides of the cut held",
    what: "The waste is held level with the kept stone on both sides of every cut, close to it.",
    why: "A sagging piece closes the kerf on the disc, and the last strip breaks out of the kept stone.",
    what_to_do: "Bearers on both sides near the cut and at the ends; the waste is held before the last \
                 pass, never by a hand below.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[HELD],
    ..Record::HAZARD
};

const HELD: Phrase = Phrase::of_every_job("support-both-sides").harm(Harm::Maims);

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    notes.check(Moment::Cutting, &HELD, &doc::GRINDER_WARNINGS, &[]);
}
