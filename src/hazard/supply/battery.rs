//! A battery machine in the wet.

use super::is_wet;
use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::{Job, Power};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "battery-wet",
    title: "Battery machine in the wet",
    what: "A battery machine that its maker allows water on.",
    why: "There is no shock from the mains, but a wet pack can short, heat up and burn, and a machine with \
          its pack in starts when the switch is touched.",
    what_to_do: "Keep pack and contacts dry, change packs away from the slurry, take the pack out before the \
                 disc is touched.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[PACK],
    ..Record::HAZARD
};

const PACK: Phrase = Phrase::of_every_job("battery-wet").harm(Harm::Maims);

/// Said for wet cutting on a battery.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if is_wet(job) && job.machine.power == Power::Battery {
        notes.check(Moment::Cutting, &PACK, &doc::COMMON_PRACTICE, &[]);
    }
}
