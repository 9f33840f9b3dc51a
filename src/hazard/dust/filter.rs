//! The extractor's filter.

use super::DustReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::dust_control::Control;
use crate::tables::record::Record;
use crate::tables::vacuum::{CLASS_M_PASSES, EN_60335_2_69, OSHA_FILTER_HOLDS};

/// The record.
pub static RECORD: Record = Record {
    id: "extractor-filter",
    title: "The extractor's filter",
    what: "The filter must hold 99 % at least and be cleaned while it runs. Classes: L lets through 1 % at \
           most, M 0.1 %, H 0.005 %.",
    why: "A household cleaner blows the finest dust, the one that reaches the lungs, out at its back.",
    what_to_do: "Class M or H with filter cleaning or a cyclone, a tight hose, emptied without raising \
                 dust. Go slowly at both ends of a cut, where the shroud stands open.",
    sources: &[&doc::OSHA_TABLE_1, &EN_60335_2_69],
    phrases: &[FILTER],
    ..Record::HAZARD
};

const FILTER: Phrase = Phrase {
    id: "extractor-filter",
    title: "the extractor's filter must hold {holds} % and be cleaned while it runs",
    detail: "Airflow {has} m³/h, least {asks} m³/h. It counts with a clean filter of at least {holds} \
             %, a cyclone or filter cleaning, and the shroud on the stone: {vacuum}{borrowed}; class M \
             lets through at most {m} %. Both ends of a cut and plunges leave the shroud open: go \
             slowly there.",
};

/// Said for a shroud that counts.
pub(super) fn assess(job: &Job, report: &DustReport, notes: &mut Notes) {
    if report.control != Control::Extraction {
        return;
    }
    let rule = job.region.record().vacuum;
    let values = [
        ("holds", number(OSHA_FILTER_HOLDS * 100.0, 0)),
        ("has", number(report.airflow_m3h, 0)),
        ("asks", number(report.least_airflow_m3h, 0)),
        ("vacuum", rule.words.to_owned()),
        ("borrowed", rule.standing.words().to_owned()),
        ("m", number(CLASS_M_PASSES * 100.0, 1)),
    ];
    notes.used(&EN_60335_2_69);
    notes.used(rule.source);
    notes.caution_on(&FILTER, &doc::OSHA_TABLE_1, &values);
}
