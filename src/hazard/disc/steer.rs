//! Never steer the disc.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "never-steer-the-disc",
    title: "A disc cuts straight",
    what: "A cutting disc is stiff along its cut and weak across it.",
    why: "Side load bends and breaks it; the standard warnings forbid curved cuts.",
    what_to_do: "Curves are made of straight plunges as drawn. No grinding with the flat of a cutting disc.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[STRAIGHT],
    ..Record::HAZARD
};

const STRAIGHT: Phrase = Phrase::of_every_job("never-steer-the-disc").harm(Harm::Maims);

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    notes.check(Moment::Cutting, &STRAIGHT, &doc::GRINDER_WARNINGS, &[]);
}
