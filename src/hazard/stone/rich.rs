//! Natural stone rich in silica: granite, sandstone, quartzite, slate.

use super::{is_engineered, is_rich, percent, wet_rule_applies};
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::record::Record;
use crate::tables::regions::us_ca;
use crate::tables::stone::RICH_IN_SILICA;
use crate::tables::stones::sources;

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
        &us_ca::WET_METHODS,
        &sources::HSG201,
        &sources::SWA_SILICA,
        &sources::PORCELAIN_SILICA,
    ],
    phrases: &[RICH, CALIFORNIA, CALIFORNIA_DRY],
    ..Record::HAZARD
};

const RICH: Phrase = Phrase {
    id: "high-silica-stone",
    title: "{stone} may be up to {high} % silica",
    detail: "Silica {low} to {high} % of the stone, above {threshold} % counts as rich (California's \
             figure, used everywhere here). Its dust scars the lungs for good: control and respirator \
             from the first touch to the last of the cleaning up, and nobody near without one.",
};
const CALIFORNIA: Phrase = Phrase {
    id: "california-silica-rule",
    title: "stone above 10 % silica: California asks for wet methods",
    detail: "Silica up to {high} %, threshold {threshold} %. {rule}",
};
const CALIFORNIA_DRY: Phrase = Phrase {
    id: "silica-rich-stone-dry",
    title: "stone above 10 % silica without water: California asks for wet methods",
    detail: "Silica up to {high} %, threshold {threshold} %. {rule}",
};

/// Said above the threshold; in California a dry cut is a stop.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let rule = job.region.record().engineered_stone;
    let silica = job.stone.silica;
    let values = [
        ("stone", job.stone.name.clone()),
        ("low", percent(silica.low)),
        ("high", percent(silica.high)),
        ("threshold", percent(RICH_IN_SILICA.value)),
        ("rule", rule.words.to_owned()),
    ];
    if wet_rule_applies(job) && !is_engineered(job) {
        if job.dust.method == DustMethod::Water {
            notes.caution_on(&CALIFORNIA, rule.source, &values);
        } else {
            notes.stop_on(&CALIFORNIA_DRY, rule.source, &values);
        }
    }
    if is_rich(job) {
        notes.caution_on(&RICH, RICH_IN_SILICA.source, &values);
    }
}
