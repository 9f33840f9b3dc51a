//! Natural stone rich in silica: granite, sandstone, quartzite, slate.

use super::{Engineered, high_exposure, is_engineered, is_rich, percent};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::stone::{RICH_IN_SILICA, StoneKind};
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "high-silica-stone",
    title: "Stone rich in silica",
    what: "Stone that may hold more than 10 % crystalline silica: sandstone and quartzite above 70 %, \
           granite 20 to 60 %, slate 20 to 40 %, porcelain 14 to 26 %.",
    why: "What is breathed in stays in the lungs and scars them for good. The share says how much of the \
          dust is silica; it does not say how much is in the air.",
    what_to_do: "Control and respirator from the first touch to the last of the cleaning up. In California \
                 wet methods only.",
    sources: &[
        &doc::US_CA_HIGH_EXPOSURE,
        &doc::HSG201,
        &doc::SWA_SILICA,
        &doc::PORCELAIN_SILICA,
    ],
    phrases: &[RICH, CALIFORNIA, CALIFORNIA_DRY],
    ..Record::HAZARD
};

const RICH: Phrase = Phrase::of_job("high-silica-stone").harm(Harm::KillsLater);
const CALIFORNIA: Phrase = Phrase::of_job("california-silica-rule").harm(Harm::KillsLater);
const CALIFORNIA_DRY: Phrase = Phrase::of_job("silica-rich-stone-dry")
    .harm(Harm::KillsLater)
    .key("dust.method");

/// Said above the threshold; in California a dry cut is a stop.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let rule = job.region.record().engineered_stone;
    let silica = job.stone.silica;
    let values = [
        ("stone", job.stone.name.clone().into()),
        ("low", percent(silica.low).into()),
        ("high", percent(silica.high).into()),
        ("threshold", percent(RICH_IN_SILICA.value).into()),
        ("rule", Value::term(rule.words)),
    ];
    if let Some(rule) = high_exposure(job)
        && is_engineered(job) == Engineered::No
    {
        if job.dust.is_wet() {
            notes.warn_on(&CALIFORNIA, rule.source, &values);
        } else {
            notes.stop_on(&CALIFORNIA_DRY, rule.source, values.clone());
        }
    }
    // Marble has an entry of its own.
    if is_rich(job) && job.stone.kind != StoneKind::Marble {
        notes.warn_on(&RICH, RICH_IN_SILICA.source, values.clone());
    }
}
