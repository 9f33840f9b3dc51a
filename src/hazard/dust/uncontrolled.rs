//! Dry cutting with nothing to hold the dust.

use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::documents::{AKBAR_2007, COOPER_2015};
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "no-dust-control",
    title: "Dry cutting with nothing to hold the dust",
    what: "The disc cuts dry and neither water nor a shroud with an extractor holds the dust.",
    why: "Studies measured hundreds of times the limit beside dry discs. It is in no row of the regulator's \
          table, no respirator makes up for it, and it reaches everybody nearby.",
    what_to_do: "Have it cut wet by a shop, or use water on a machine rated for it, or a shroud with an \
                 extractor strong enough for the disc.",
    sources: &[&doc::OSHA_TABLE_1, &COOPER_2015, &AKBAR_2007],
    phrases: &[NOTHING, NO_FLOW],
    ..Record::HAZARD
};

const NOTHING: Phrase = Phrase::of_job("no-dust-control")
    .harm(Harm::KillsLater)
    .key("dust.method");

const NO_FLOW: Phrase = Phrase::of_job("no-water-flow")
    .harm(Harm::KillsLater)
    .key("dust.water");

/// Always a stop; water without a flow is dry cutting.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let dust = &job.dust;
    if dust.method == DustMethod::Water && !dust.is_wet() {
        notes.stop_on(&NO_FLOW, &doc::OSHA_TABLE_1, &[]);
    } else if dust.method == DustMethod::None {
        notes.stop_on(&NOTHING, &doc::OSHA_TABLE_1, &[]);
    }
}
