//! Enough water, without a break.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "water-flow",
    title: "Water onto the disc without a break",
    what: "Wet cutting holds the dust only while water reaches the rim.",
    why: "A few seconds without water raise as much dust as minutes with it. The rule names no litres for a \
          grinder: enough to hold the dust down. For hand-held cut-off saws 0.5 litres a minute is advised.",
    what_to_do: "Water at the rim before the disc touches the stone, until it has left it. Dust or \
                 steam seen: stop, aim the water at the rim, unblock the nozzle; more than half a litre a minute \
                 holds no more dust. Measure the flow with a bucket and a watch.",
    sources: &[&doc::OSHA_TABLE_1, &doc::NIOSH_WATER],
    phrases: &[FLOW, TOO_LITTLE],
    ..Record::HAZARD
};

/// Least flow that is advised for hand-held cut-off saws, litres a minute.
pub const ADVISED_L_MIN: f64 = 0.5;

const FLOW: Phrase = Phrase::of_every_job("water-flow").harm(Harm::KillsLater);
const TOO_LITTLE: Phrase = Phrase::of_job("water-too-little")
    .harm(Harm::KillsLater)
    .key("dust.water");

/// Said for wet cutting.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if !job.dust.is_wet() {
        return;
    }
    let values = [
        ("flow", Value::number(job.dust.water_l_min, 1)),
        ("advised", Value::number(ADVISED_L_MIN, 1)),
    ];
    notes.used(&doc::NIOSH_WATER);
    notes.check(Moment::Cutting, &FLOW, &doc::OSHA_TABLE_1, values.clone());
    if job.dust.water_l_min < ADVISED_L_MIN {
        notes.warn_on(&TOO_LITTLE, &doc::NIOSH_WATER, values.clone());
    }
}
