//! Enough water, without a break.

use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "water-flow",
    title: "Water onto the disc without a break",
    what: "Wet cutting holds the dust only while water reaches the rim.",
    why: "A few seconds without water raise as much dust as minutes with it. The rule names no litres for a \
          grinder: enough that no dust is seen. For hand-held cut-off saws 0.5 litres a minute is advised.",
    what_to_do: "Water at the rim before the disc touches the stone, until it has left it. Dust or \
                 steam seen: stop, more water. Measure the flow with a bucket and a watch.",
    sources: &[&doc::OSHA_TABLE_1, &doc::NIOSH_WATER],
    phrases: &[FLOW, TOO_LITTLE],
    ..Record::HAZARD
};

/// Least flow that is advised for hand-held cut-off saws, litres a minute.
pub const ADVISED_L_MIN: f64 = 0.5;

const FLOW: Phrase = Phrase {
    id: "water-flow",
    title: "water onto the disc without a break, enough that no dust is seen",
    detail: "{flow} litres a minute reckoned with. The rule names no figure for a grinder; {advised} litres \
             a minute is advised for hand-held cut-off saws. Water at the rim before the disc touches \
             the stone, until it has left it. Dust or steam seen: stop, more water.",
};
const TOO_LITTLE: Phrase = Phrase {
    id: "water-too-little",
    title: "{flow} litres a minute is less than is advised for a hand-held saw",
    detail: "{flow} litres a minute, {advised} advised for hand-held cut-off saws: less holds down \
             less dust. Larger container or nozzle, and no cut while dust is seen.",
};

/// Said for wet cutting.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.dust.method != DustMethod::Water {
        return;
    }
    let values = [
        ("flow", number(job.dust.water_l_min, 1)),
        ("advised", number(ADVISED_L_MIN, 1)),
    ];
    notes.used(&doc::NIOSH_WATER);
    notes.caution_on(&FLOW, &doc::OSHA_TABLE_1, &values);
    if job.dust.water_l_min < ADVISED_L_MIN {
        notes.caution_on(&TOO_LITTLE, &doc::NIOSH_WATER, &values);
    }
}
