//! A disc larger than the machine and its guard are made for.

use super::DiscReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "disc-size",
    title: "A disc larger than the machine and its guard",
    what: "Each machine is made for a largest disc; its guard covers that one and none larger.",
    why: "A larger disc runs faster at its rim, stands out of the guard or needs the guard taken off, and \
          nothing is left between its pieces and the face.",
    what_to_do: "A disc of at most the size on the machine's plate, or a machine made for the larger one; the \
                 guard stays on.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[LARGER],
    ..Record::HAZARD
};

const LARGER: Phrase = Phrase::of_job("disc-larger-than-machine")
    .harm(Harm::KillsNow)
    .key("disc.diameter");

/// A stop when a disc is larger than the machine's largest.
pub(super) fn assess(disc: &DiscReport, job: &Job, notes: &mut Notes) {
    let Some(largest) = job.machine.largest_disc_mm else {
        return;
    };
    if disc.diameter_mm > largest {
        let values = [
            ("disc", disc.name.clone().into()),
            ("diameter", Value::size(disc.diameter_mm)),
            ("largest", Value::size(largest)),
        ];
        notes.stop_on(&LARGER, &doc::GRINDER_WARNINGS, &values);
    }
}
