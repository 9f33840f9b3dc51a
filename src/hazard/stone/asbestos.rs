//! Soapstone and the asbestos question.

use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::record::Record;
use crate::tables::stones::sources;

/// The record.
pub static RECORD: Record = Record {
    id: "soapstone-asbestos",
    title: "Soapstone may hold asbestos minerals",
    what: "Some soapstone has fibres of asbestos minerals in it, unseen.",
    why: "There is no amount of asbestos that may be cut. Fibres cause cancer decades later, also in those \
          who only stood by or washed the clothes.",
    what_to_do: "Have a laboratory test a chip of this very slab, or get the quarry's own test. Without a \
                 clear result it is work for licensed people.",
    sources: &[&sources::SOAPSTONE_SILICA],
    phrases: &[ASBESTOS],
    ..Record::HAZARD
};

const ASBESTOS: Phrase = Phrase {
    id: "soapstone-asbestos",
    title: "soapstone may hold asbestos minerals",
    detail: "Asbestos that may be cut: none. Before the first cut have a laboratory test a chip of this \
             slab, or get the quarry's own test. Without a clear result it is work for licensed people.",
};

/// Said for the kinds that raise the question.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.stone.kind.record().is_some_and(|r| r.asbestos_question) {
        notes.caution_on(&ASBESTOS, &sources::SOAPSTONE_SILICA, &[]);
    }
}
