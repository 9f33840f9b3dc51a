//! Marble's veins.

use super::percent;
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::record::Record;
use crate::tables::stone::StoneKind;
use crate::tables::stones::sources;

/// The record.
pub static RECORD: Record = Record {
    id: "marble-veins",
    title: "Veins in marble",
    what: "Marble as a whole holds little silica, 5 to 7 % at most; its veins can be far richer.",
    why: "A cut along a vein raises the dust of the vein, not that of the marble.",
    what_to_do: "Treat a cut along or through a vein as a cut in stone rich in silica.",
    sources: &[&sources::HSG201, &sources::SWA_SILICA],
    phrases: &[VEINS],
    ..Record::HAZARD
};

const VEINS: Phrase = Phrase {
    id: "marble-veins",
    title: "veins in marble can hold far more silica than the stone",
    detail: "Marble as a whole is at most {share} % silica; its veins can be far more. Treat a cut along \
             or through a vein as a cut in stone rich in silica.",
};

/// Said for marble.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.stone.kind == StoneKind::Marble {
        let values = [("share", percent(job.stone.silica.high))];
        notes.caution_on(&VEINS, &sources::HSG201, &values);
    }
}
