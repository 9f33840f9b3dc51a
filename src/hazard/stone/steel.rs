//! Steel in the stone: sparks.

use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job, Steel};
use crate::tables::documents as doc;
use crate::tables::record::Record;

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

const EXTRACTOR: Phrase = Phrase {
    id: "sparks-into-extractor",
    title: "steel in the stone: sparks go into the extractor",
    detail: "Steel that may be cut with an extractor running: none. Sparks set fire to its bag. Take \
             the steel out first, keep the cuts clear of it, or cut wet.",
};
const SPARKS: Phrase = Phrase {
    id: "sparks-from-steel",
    title: "steel in the stone throws sparks",
    detail: "Nothing that burns within 10 m (judgement), a full bucket and an extinguisher at hand, a \
             disc that its maker allows for steel, no push. Look again for smoke an hour after the \
             last cut.",
};
const UNKNOWN: Phrase = Phrase {
    id: "steel-not-known",
    title: "nobody has looked for steel in the stone",
    detail: "Rods and mesh are often glued into the back of a slab. Look at the back, run a magnet \
             along every cut line, and enter stone.steel (\"none\" or \"some\").",
};

/// A stop with an extractor, a caution otherwise; what nobody looked for is said.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let source = &doc::COMMON_PRACTICE;
    match (job.stone.steel, job.dust.method) {
        (Steel::None, _) => {}
        (Steel::Unknown, _) => notes.caution_on(&UNKNOWN, source, &[]),
        (Steel::Some, DustMethod::Shroud) => notes.stop_on(&EXTRACTOR, source, &[]),
        (Steel::Some, _) => notes.caution_on(&SPARKS, source, &[]),
    }
}
