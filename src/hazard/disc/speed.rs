//! Machine faster than the disc's mark.

use super::DiscReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::{Unit, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "disc-speed",
    title: "Machine faster than the disc's mark",
    what: "The speed on the machine's plate must not be above the speed marked on the disc.",
    why: "The pull on the rim grows with the square of the speed. A disc that flies apart goes through \
          a guard.",
    what_to_do: "A disc marked for the machine's turns or more, or a slower machine. A disc without a \
                 mark is not used.",
    sources: &[&doc::GRINDER_WARNINGS],
    formula: super::RIM_SPEED.formula,
    example: super::RIM_SPEED.example,
    phrases: &[OVER, UNMARKED, MACHINE, ASSUMED],
    ..Record::HAZARD
};

const OVER: Phrase = Phrase::of_job("disc-over-marked-rpm")
    .harm(Harm::KillsNow)
    .key("disc.max_rpm");
const UNMARKED: Phrase = Phrase::of_job("disc-mark-unknown")
    .harm(Harm::KillsNow)
    .key("disc.max_rpm");
const MACHINE: Phrase = Phrase::of_job("machine-speed-unknown")
    .harm(Harm::KillsNow)
    .key("machine.rpm");

const ASSUMED: Phrase = Phrase::of_job("speed-assumed")
    .harm(Harm::KillsNow)
    .key("machine.rpm");

/// What turns, and the speed that was assumed for it.
fn speed_of(what: impl Into<Value>, rpm: f64) -> Value {
    let args = [("what", what.into()), ("speed", Value::number(rpm, 0))];
    Value::message("speed-assumed-of", args)
}

/// An open point when the speed of the machine or the mark of a disc was assumed.
pub(super) fn assumed(job: &Job, notes: &mut Notes) {
    let what = assumed_speeds(job);
    if !what.is_empty() {
        let values = [("what", Value::List(what))];
        notes.open_on(&ASSUMED, &doc::GRINDER_WARNINGS, values);
    }
}

/// The speeds of machine and discs that were assumed.
fn assumed_speeds(job: &Job) -> Vec<Value> {
    let mut what = Vec::new();
    if job.is_assumed("machine.rpm") {
        what.push(speed_of(Value::term("machine"), job.machine.rpm));
    }
    for (i, disc) in job.discs.iter().enumerate() {
        let whole = format!("disc[{i}]");
        if job.is_assumed(&whole) || job.is_assumed(&format!("{whole}.max_rpm")) {
            what.push(speed_of(disc.name.clone(), disc.max_rpm));
        }
    }
    what
}

/// A stop when the machine's speed is not known.
pub(super) fn machine(job: &Job, notes: &mut Notes) {
    let rpm = job.machine.rpm;
    if !(rpm.is_finite() && rpm > 0.0) {
        let values = [("machine", Value::number(rpm, 0))];
        notes.stop_on(&MACHINE, &doc::GRINDER_WARNINGS, values.clone());
    }
}

/// A stop when the mark is passed or not known.
pub(super) fn assess(disc: &DiscReport, job: &Job, notes: &mut Notes) {
    let (machine, marked) = (disc.machine_rpm, disc.marked_rpm);
    let values = [
        ("disc", disc.name.clone().into()),
        ("machine", Value::number(machine, 0)),
        ("marked", Value::number(marked, 0)),
        ("over", Value::number(machine - marked, 0)),
        (
            "speed",
            Value::of(disc.rim_speed_m_s, Unit::MetrePerSecond).decimals(0),
        ),
        (
            "marked_speed",
            Value::of(disc.marked_speed_m_s, Unit::MetrePerSecond).decimals(0),
        ),
    ];
    if !(marked.is_finite() && marked > 0.0) {
        notes.stop_on(&UNMARKED, &doc::GRINDER_WARNINGS, values.clone());
    } else if machine > marked {
        notes.stop_on(&OVER, &doc::GRINDER_WARNINGS, values.clone());
    } else if assumed_speeds(job).is_empty() {
        notes.settle("settled-speed", &doc::GRINDER_WARNINGS, values);
    }
}
