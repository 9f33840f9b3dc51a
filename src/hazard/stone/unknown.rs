//! A stone whose silica nobody told.

use super::percent;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::stone::RICH_IN_SILICA;

/// The record.
pub static RECORD: Record = Record {
    id: "silica-unknown",
    title: "Silica share not known",
    what: "The job file gives no silica, or none at all.",
    why: "Hardly any stone is free of silica; a share that is not known is not a share of nothing.",
    what_to_do: "Ask for the data sheet and enter stone.silica. Until then treat the stone as rich in \
                 silica.",
    sources: &[&doc::OUR_JUDGEMENT],
    phrases: &[UNKNOWN],
    ..Record::HAZARD
};

const UNKNOWN: Phrase = Phrase::of_job("silica-unknown")
    .harm(Harm::KillsLater)
    .key("stone.silica");

/// Said when the share is nothing.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.stone.silica.high > 0.0 {
        return;
    }
    let values = [
        ("stone", job.stone.name.clone().into()),
        ("share", percent(job.stone.silica.high).into()),
        ("threshold", percent(RICH_IN_SILICA.value).into()),
    ];
    notes.open_on(&UNKNOWN, &doc::OUR_JUDGEMENT, &values);
}
