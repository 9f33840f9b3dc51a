//! Combustion engines: carbon monoxide.

use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Job, Power, Workplace};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "engine-fumes",
    title: "Combustion engine: carbon monoxide and fuel",
    what: "A saw or grinder with a petrol engine.",
    why: "Exhaust gas kills without smell or warning in a room, a pit or a closed yard. Fuel burns.",
    what_to_do: "In the open only, exhaust away from faces; refuel with the engine cold and still. Indoors a \
                 battery, air or mains machine.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[INDOORS, OUTDOORS],
    ..Record::HAZARD
};

const INDOORS: Phrase = Phrase::of_job("engine-indoors")
    .harm(Harm::KillsNow)
    .key("dust.where");
const OUTDOORS: Phrase = Phrase::of_job("engine-fumes").harm(Harm::KillsNow);

/// A stop indoors, a caution outdoors.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.machine.power != Power::Engine {
        return;
    }
    match job.dust.place {
        Workplace::Indoors => notes.stop_on(&INDOORS, &doc::COMMON_PRACTICE, &[]),
        Workplace::Outdoors => notes.warn_on(&OUTDOORS, &doc::COMMON_PRACTICE, &[]),
    }
}
