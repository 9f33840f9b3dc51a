//! Combustion engines: carbon monoxide.

use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::{Job, Place, Power};
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

const INDOORS: Phrase = Phrase {
    id: "engine-indoors",
    title: "combustion engine indoors: carbon monoxide",
    detail: "Engines indoors or in a closed yard: none allowed. Exhaust gas kills without warning; cut \
             in the open, or use a battery, air or mains machine.",
};
const OUTDOORS: Phrase = Phrase {
    id: "engine-fumes",
    title: "combustion engine: exhaust and fuel",
    detail: "In the open with air on all sides, never in a pit, a tent or a walled corner. Exhaust away from \
             both faces. Refuel with the engine cold, and start it at another place.",
};

/// A stop indoors, a caution outdoors.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.machine.power != Power::Engine {
        return;
    }
    match job.dust.place {
        Place::Indoors => notes.stop_on(&INDOORS, &doc::COMMON_PRACTICE, &[]),
        Place::Outdoors => notes.caution_on(&OUTDOORS, &doc::COMMON_PRACTICE, &[]),
    }
}
