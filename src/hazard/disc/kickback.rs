//! Kickback of a pinched disc.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "kickback-pinched-disc",
    title: "Kickback",
    what: "A disc that is pinched or jams throws the machine back along its own line, at once.",
    why: "It reaches face, neck or thigh before a hand can answer.",
    what_to_do: "Stand beside the line of the disc, two hands, guard on. After a pinch: stop, let it \
                 stand still, free it, enter again at full speed only.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[PINCHED],
    ..Record::HAZARD
};

const PINCHED: Phrase = Phrase::of_every_job("kickback-pinched-disc").harm(Harm::KillsNow);

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    notes.check(Moment::Cutting, &PINCHED, &doc::GRINDER_WARNINGS, &[]);
}
