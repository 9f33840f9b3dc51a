//! The second person at the switch.

use super::moment::Moment;
use super::notes::Notes;
use crate::diag::{Harm, Phrase};
use crate::job::{DustMethod, Job, Power};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "second-person",
    title: "A second person at the switch",
    what: "Somebody who is not cutting stands where power and water are cut off, sees the cutter, and \
           can call help.",
    why: "Whoever is hurt or shocked by a machine cannot switch it off, and cannot call.",
    what_to_do: "Never cut alone. Show the second person plug, switch and tap before the start, agree \
                 on a sign to stop.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[ALONE, SECOND],
    ..Record::HAZARD
};

const ALONE: Phrase = Phrase::of_job("working-alone")
    .harm(Harm::KillsNow)
    .key("lift.check_call");
const SECOND: Phrase = Phrase::of_every_job("second-person").harm(Harm::KillsNow);

/// An open point for one person whom nobody calls; otherwise what the second person does.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let values = [
        ("people", job.lift.people.into()),
        ("at", Value::Case(at(job))),
    ];
    if job.lift.people >= 2 {
        notes.check(Moment::Before, &SECOND, &doc::COMMON_PRACTICE, &values);
    } else if job.lift.check_call.is_empty() {
        notes.open_on(&ALONE, &doc::COMMON_PRACTICE, &values);
    } else {
        let who = [("who", job.lift.check_call.clone().into())];
        notes.settle("settled-check-call", &doc::COMMON_PRACTICE, who);
    }
}

/// Where the machine or its water can be cut off by somebody else than who holds it.
const fn at(job: &Job) -> &'static str {
    match (job.machine.power, job.dust.method) {
        (Power::Mains, DustMethod::Water) => "plug-tap",
        (Power::Mains, DustMethod::Shroud | DustMethod::None) => "plug",
        (Power::Air, DustMethod::Water) => "valve-tap",
        (Power::Air, DustMethod::Shroud | DustMethod::None) => "valve",
        (Power::Battery | Power::Engine, DustMethod::Water) => "tap",
        (Power::Battery | Power::Engine, DustMethod::Shroud | DustMethod::None) => "sight",
    }
}
