//! Stones that may hold asbestos minerals.

use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Asbestos, Job};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::stone::AsbestosQuestion;

/// The record.
pub static RECORD: Record = Record {
    id: "asbestos-minerals",
    title: "Stone that may hold asbestos minerals",
    what: "Soapstone, serpentine (sold as green marble) and talc rocks often have fibres of asbestos minerals in \
           them, unseen; gabbro, norite, diabase, basalt and amphibolite can have.",
    why: "There is no amount of asbestos that may be cut. Fibres cause cancer decades later, also in those \
          who only stood by or washed the clothes.",
    what_to_do: "Have a laboratory test a chip of this very slab, or get the quarry's own declaration, and enter \
                 stone.asbestos = \"tested free\" with stone.report and stone.date. Without a clear result a \
                 usual carrier is work for licensed people.",
    sources: &[&doc::TRGS_517, &doc::SOAPSTONE_SILICA],
    phrases: &[TEST, ASK],
    ..Record::HAZARD
};

const TEST: Phrase = Phrase::of_job("asbestos-not-tested")
    .harm(Harm::KillsLater)
    .key("stone.asbestos");
const ASK: Phrase = Phrase::of_job("asbestos-declaration")
    .harm(Harm::KillsLater)
    .key("stone.asbestos");

/// A stop for a usual carrier, an open point for a possible one, until it was tested.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if let Asbestos::TestedFree { report, date } = &job.stone.asbestos {
        let values = [
            ("report", report.clone().into()),
            ("date", date.clone().into()),
        ];
        notes.settle("settled-asbestos", &doc::TRGS_517, values);
        return;
    }
    let values = [("stone", job.stone.name.clone().into())];
    match question(job) {
        AsbestosQuestion::No => {}
        AsbestosQuestion::Ask => notes.open_on(&ASK, &doc::TRGS_517, &values),
        AsbestosQuestion::Test => notes.stop_on(&TEST, &doc::TRGS_517, &values),
    }
}

/// What the kind asks, or the name of a stone of the user's own.
fn question(job: &Job) -> AsbestosQuestion {
    match job.stone.kind.record() {
        Some(record) => record.asbestos,
        None => AsbestosQuestion::of_name(&job.stone.name),
    }
}
