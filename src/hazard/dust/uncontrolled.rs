//! Dry cutting with nothing to hold the dust.

use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::measured_dust::{AKBAR_2007, COOPER_2015};
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
    phrases: &[NOTHING],
    ..Record::HAZARD
};

const NOTHING: Phrase = Phrase {
    id: "no-dust-control",
    title: "dry cutting with nothing to hold the dust",
    detail: "Dust control: none, at least one of two is asked for. Use water on a machine rated for it, or a \
             shroud with an extractor strong enough for the disc, or have it cut wet by a shop. Dry and \
             unshrouded is in no row of the table; no respirator makes up for it, and it reaches everybody \
             nearby.",
};

/// Always a stop.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.dust.method == DustMethod::None {
        notes.stop_on(&NOTHING, &doc::OSHA_TABLE_1, &[]);
    }
}
