//! Run-down.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "disc-run-down",
    title: "Run-down time",
    what: "A disc turns on for seconds after the switch is off.",
    why: "It takes hold of stone, hose, lead or knee when the machine is put down turning.",
    what_to_do: "Hold it clear until the disc stands still. Plug or battery out before the disc is touched.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[STILL],
    ..Record::HAZARD
};

const STILL: Phrase = Phrase::of_every_job("disc-run-down").harm(Harm::Maims);

/// Said whenever a disc cuts.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let power = [("power", Value::Case(job.machine.power.case()))];
    notes.check(Moment::Cutting, &STILL, &doc::COMMON_PRACTICE, power);
}
