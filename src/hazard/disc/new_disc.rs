//! The run of a new disc without load.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::tables::disc::TRIAL_RUN_MIN;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "new-disc-run",
    title: "One minute without load",
    what: "A newly mounted disc runs for a minute at full speed before it touches stone.",
    why: "A damaged disc nearly always breaks within that minute.",
    what_to_do: "Guard on, nobody in the plane of the disc, machine held away. It shakes: off, and \
                 look again.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[RUN],
    ..Record::HAZARD
};

const RUN: Phrase = Phrase::of_every_job("new-disc-run").harm(Harm::Maims);

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    let values = [("minutes", Value::number(TRIAL_RUN_MIN, 0))];
    notes.check(Moment::Before, &RUN, &doc::GRINDER_WARNINGS, values.clone());
}
