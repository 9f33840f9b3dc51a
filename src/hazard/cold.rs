//! Cold water on hands.

use super::moment::Moment;
use super::notes::Notes;
use crate::diag::{Harm, Phrase};
use crate::job::{Job, Workplace};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "cold-water",
    title: "Cold water and cold hands",
    what: "Wet cutting soaks sleeves and gloves for an hour or more.",
    why: "Cold hands feel less, grip harder and are harmed sooner by vibration. In frost the floor \
          freezes and the water stands still in the hose, and with it the dust control.",
    what_to_do: "Waterproof sleeves, dry gloves to change, warm-up breaks; no wet cutting in frost.",
    sources: &[&doc::COMMON_PRACTICE, &doc::EU_VIBRATION],
    phrases: &[COLD, FROST],
    ..Record::HAZARD
};

const COLD: Phrase = Phrase::of_every_job("cold-water").harm(Harm::Lasting);
const FROST: Phrase = Phrase::of_every_job("frost").harm(Harm::Maims);

/// Said for wet cutting; frost outdoors.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if !job.dust.is_wet() {
        return;
    }
    notes.check(Moment::Cutting, &COLD, &doc::COMMON_PRACTICE, &[]);
    if job.dust.place == Workplace::Outdoors {
        notes.check(Moment::Before, &FROST, &doc::COMMON_PRACTICE, &[]);
    }
}
