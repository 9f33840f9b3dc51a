//! Marble's veins.

use super::percent;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::stone::StoneKind;

/// The record.
pub static RECORD: Record = Record {
    id: "marble-veins",
    title: "Veins in marble",
    what: "Marble as a whole holds little silica, 5 to 7 % at most; its veins can be far richer.",
    why: "A cut along a vein raises the dust of the vein, not that of the marble.",
    what_to_do: "Treat a cut along or through a vein as a cut in stone rich in silica.",
    sources: &[&doc::HSG201, &doc::SWA_SILICA],
    phrases: &[VEINS],
    ..Record::HAZARD
};

const VEINS: Phrase = Phrase::of_job("marble-veins").harm(Harm::KillsLater);

/// Said for marble.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.stone.kind == StoneKind::Marble {
        let values = [("share", percent(job.stone.silica.high).into())];
        notes.warn_on(&VEINS, &doc::HSG201, values.clone());
    }
}
