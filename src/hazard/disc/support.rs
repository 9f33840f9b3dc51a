//! Both sides of the cut held.

use crate::diag::Phrase;
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

const HELD: Phrase = Phrase {
    id: "support-both-sides",
    title: "both sides of the cut are held, close to it",
    detail: "Bearers under both sides near the cut and at the edges of the stone, so that the kerf \
             stays open to its end. The waste lies on its own bearers before the last pass; no hand, \
             foot or knee below it.",
};

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    notes.caution_on(&HELD, &doc::GRINDER_WARNINGS, &[]);
}
