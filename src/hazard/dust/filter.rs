//! The extractor's filter.

use super::DustReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::documents::EN_60335_2_69;
use crate::tables::dust_control::Control;
use crate::tables::record::Record;
use crate::tables::vacuum::{CLASS_M_PASSES, OSHA_FILTER_HOLDS};
use crate::words::{Unit, Value};

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

const FILTER: Phrase = Phrase::of_every_job("extractor-filter").harm(Harm::KillsLater);

/// Said for a shroud that counts.
pub(super) fn assess(job: &Job, report: &DustReport, notes: &mut Notes) {
    if report.control != Control::Extraction {
        return;
    }
    let rule = job.region.record().vacuum;
    let values = [
        (
            "holds",
            Value::of(OSHA_FILTER_HOLDS * 100.0, Unit::Percent).decimals(0),
        ),
        (
            "has",
            Value::of(report.airflow_m3h, Unit::Airflow).decimals(0),
        ),
        (
            "asks",
            Value::of(report.least_airflow_m3h, Unit::Airflow).decimals(0),
        ),
        ("vacuum", Value::term(rule.words)),
        ("borrowed", Value::term(rule.standing.words())),
        (
            "m",
            Value::of(CLASS_M_PASSES * 100.0, Unit::Percent).decimals(1),
        ),
    ];
    notes.used(&EN_60335_2_69);
    notes.used(rule.source);
    notes.check(Moment::Before, &FILTER, &doc::OSHA_TABLE_1, values.clone());
}
