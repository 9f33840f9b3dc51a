//! Cold water on hands.

use super::notes::Notes;
use crate::diag::Phrase;
use crate::job::{DustMethod, Job, Place};
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

const COLD: Phrase = Phrase {
    id: "cold-water",
    title: "cold water: hands kept warm and dry",
    detail: "Waterproof sleeves, a dry pair of gloves for each hour, breaks in the warm. Cold, white \
             or numb fingers: stop for the day, cold makes vibration harm sooner.",
};
const FROST: Phrase = Phrase {
    id: "frost",
    title: "no wet cutting in frost",
    detail: "Below about 3 °C (judgement) slurry freezes underfoot and water stands still in hose and \
             nozzle: no water, no cutting. Empty machine and hose before the night.",
};

/// Said for wet cutting; frost outdoors.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.dust.method != DustMethod::Water {
        return;
    }
    notes.caution_on(&COLD, &doc::COMMON_PRACTICE, &[]);
    if job.dust.place == Place::Outdoors {
        notes.caution_on(&FROST, &doc::COMMON_PRACTICE, &[]);
    }
}
