//! Compressed air.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::{Job, Power};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "air-hose",
    title: "Compressed air",
    what: "A machine driven by compressed air.",
    why: "A hose that comes off whips about; too much pressure turns the disc faster than its mark; the \
          exhaust stirs dust up and chills the hands.",
    what_to_do: "Couplings pinned, pressure set to the plate with a regulator, speed measured, exhaust led \
                 away from the stone, air shut off and the hose emptied before the disc is touched.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[HOSE],
    ..Record::HAZARD
};

const HOSE: Phrase = Phrase::of_every_job("air-hose").harm(Harm::Maims);

/// Said for air.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.machine.power == Power::Air {
        let values = [("rpm", format!("{:.0}", job.machine.rpm).into())];
        notes.check(Moment::Before, &HOSE, &doc::COMMON_PRACTICE, values.clone());
    }
}
