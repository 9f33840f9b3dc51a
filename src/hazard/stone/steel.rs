//! Steel in the stone: sparks.

use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job, Steel};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "sparks-from-steel",
    title: "Steel in the stone: sparks and fire",
    what: "Rods let into the back, dowels, mesh or screws throw sparks when the disc meets them.",
    why: "Sparks set fire to an extractor's bag, sawdust, solvent and clothes, and smoulder unseen for \
          hours. A steel rod also grabs a stone disc.",
    what_to_do: "Look at the back of the slab and run a magnet along every cut line. Steel that cannot be \
                 taken out is no work for a stone disc behind an extractor: wet, or not at all.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[EXTRACTOR, SPARKS, UNKNOWN],
    ..Record::HAZARD
};

const EXTRACTOR: Phrase = Phrase::of_job("sparks-into-extractor")
    .harm(Harm::KillsNow)
    .key("stone.steel");
const SPARKS: Phrase = Phrase::of_job("sparks-from-steel").harm(Harm::KillsNow);
const UNKNOWN: Phrase = Phrase::of_job("steel-not-known")
    .harm(Harm::KillsNow)
    .key("stone.steel");

/// Nothing that burns lies nearer to the sparks, mm (judgement).
const CLEAR_MM: f64 = 10_000.0;

/// A stop with an extractor, a caution otherwise; what nobody looked for is said.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let source = &doc::COMMON_PRACTICE;
    match (job.stone.steel, job.dust.method) {
        (Steel::None, _) => {}
        (Steel::Unknown, _) => notes.open_on(&UNKNOWN, source, &[]),
        (Steel::Some, DustMethod::Shroud) => notes.stop_on(&EXTRACTOR, source, &[]),
        (Steel::Some, _) => notes.warn_on(&SPARKS, source, &[("clear", Value::way(CLEAR_MM))]),
    }
}
