//! The run of a new disc without load.

use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::disc::TRIAL_RUN_MIN;
use crate::tables::documents as doc;
use crate::tables::record::Record;

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

const RUN: Phrase = Phrase {
    id: "new-disc-run",
    title: "a newly mounted disc runs {minutes} minute without load",
    detail: "{minutes} minute at full speed, guard on, machine held away, nobody in the plane of the \
             disc, for each mounting. It shakes or sings: off, let it stand still, look again.",
};

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    let values = [("minutes", number(TRIAL_RUN_MIN, 0))];
    notes.caution_on(&RUN, &doc::GRINDER_WARNINGS, &values);
}
