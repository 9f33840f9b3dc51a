//! Australia: material with 1 % silica or more is cut under control only.

use super::percent;
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::record::Record;
use crate::tables::regions::au;

/// The record.
pub static RECORD: Record = Record {
    id: "controlled-processing",
    title: "Stone with 1 % silica or more in Australia",
    what: "Since 1 September 2024 any material with 1 % crystalline silica or more is cut, ground and \
           polished there with a control only.",
    why: "Nearly every stone holds more than that.",
    what_to_do: "Water on the disc, on-tool extraction or local exhaust, for every cut and for the \
                 polishing.",
    sources: &[&au::CONTROLLED_PROCESSING],
    phrases: &[CONTROLLED],
    ..Record::HAZARD
};

const CONTROLLED: Phrase = Phrase {
    id: "controlled-processing",
    title: "material with 1 % silica or more: cut under control only",
    detail: "Silica up to {share} %, threshold {threshold} %: since 1 September 2024 it is cut, ground and \
             polished only with a control such as water, on-tool extraction or local exhaust.",
};

/// Said where there is such a rule, for all but the poorest stone.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let Some(from) = job.region.record().controlled_from else {
        return;
    };
    if job.stone.silica.high < from.value {
        return;
    }
    let values = [
        ("share", percent(job.stone.silica.high)),
        ("threshold", percent(from.value)),
    ];
    notes.caution_on(&CONTROLLED, from.source, &values);
}
