//! Machine faster than the disc's mark.

use super::DiscReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;

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
    phrases: &[OVER, UNMARKED, MACHINE],
    ..Record::HAZARD
};

const OVER: Phrase = Phrase {
    id: "disc-over-marked-rpm",
    title: "{disc}: machine {machine} turns a minute, disc marked {marked}",
    detail: "The machine turns {over} a minute faster than the {marked} marked on the disc ({speed} \
             m/s, marked for {marked_speed} m/s). The disc may fly apart: use one marked for {machine} \
             or more, or a slower machine.",
};
const UNMARKED: Phrase = Phrase {
    id: "disc-mark-unknown",
    title: "{disc}: highest speed not known",
    detail: "Machine {machine} turns a minute, disc mark not known. Read the mark on the disc and enter \
             disc.max_rpm; a disc without a mark is not used.",
};
const MACHINE: Phrase = Phrase {
    id: "machine-speed-unknown",
    title: "speed of the machine is not known",
    detail: "Machine {machine} turns a minute: without its true speed no disc can be checked. Read the \
             plate and enter machine.rpm.",
};

/// A stop when the machine's speed is not known.
pub(super) fn machine(job: &Job, notes: &mut Notes) {
    let rpm = job.machine.rpm;
    if !(rpm.is_finite() && rpm > 0.0) {
        let values = [("machine", number(rpm, 0))];
        notes.stop_on(&MACHINE, &doc::GRINDER_WARNINGS, &values);
    }
}

/// A stop when the mark is passed or not known.
pub(super) fn assess(disc: &DiscReport, notes: &mut Notes) {
    let (machine, marked) = (disc.machine_rpm, disc.marked_rpm);
    let values = [
        ("disc", disc.name.clone()),
        ("machine", number(machine, 0)),
        ("marked", number(marked, 0)),
        ("over", number(machine - marked, 0)),
        ("speed", number(disc.rim_speed_m_s, 0)),
        ("marked_speed", number(disc.marked_speed_m_s, 0)),
    ];
    if !(marked.is_finite() && marked > 0.0) {
        notes.stop_on(&UNMARKED, &doc::GRINDER_WARNINGS, &values);
    } else if machine > marked {
        notes.stop_on(&OVER, &doc::GRINDER_WARNINGS, &values);
    }
}
