//! An extractor strong enough for its shroud.

use serde::Serialize;

use super::DustReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::dust_control::{CFM_PER_INCH, least_airflow_m3h};
use crate::tables::record::{Example, Record};
use crate::words::{Unit, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "shroud-airflow",
    title: "Airflow of the extractor",
    what: "A shroud holds the dust only while the extractor moves enough air for the disc.",
    why: "Too little air, a hose too long or a clogged filter, and the dust leaves the shroud at the rim.",
    what_to_do: "Read the airflow on the extractor's plate and enter dust.airflow. Too little: stronger \
                 extractor, smaller disc, or cut wet.",
    sources: &[&doc::OSHA_AIRFLOW],
    formula: "airflow, m³/h = 25 × disc in inches × 1.699; the inch size a disc is sold as",
    example: Some(example),
    phrases: &[UNKNOWN, TOO_SMALL],
    ..Record::HAZARD
};

const UNKNOWN: Phrase = Phrase::of_job("shroud-airflow-unknown")
    .harm(Harm::KillsLater)
    .key("dust.airflow");
const TOO_SMALL: Phrase = Phrase::of_job("shroud-airflow-too-small")
    .harm(Harm::KillsLater)
    .key("dust.airflow");

fn example() -> Example {
    const DISC_MM: f64 = 125.0;
    Example {
        given: format!(
            "a {DISC_MM:.0} mm disc, sold as 5 in; {CFM_PER_INCH:.0} cubic feet a minute for each inch"
        ),
        result: format!("{:.0} m³/h at least", least_airflow_m3h(DISC_MM)),
    }
}

/// Whether an extractor is strong enough for its shroud.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Airflow {
    /// Not known: control is not proven.
    Unknown,
    /// Known and too small.
    TooSmall,
    /// Enough, in whole m³/h.
    Enough,
}

/// Compares an airflow with what a disc asks for, both m³/h and in whole ones, as plates print them.
#[must_use]
pub fn airflow(has_m3h: f64, asks_m3h: f64) -> Airflow {
    if !(has_m3h.is_finite() && has_m3h > 0.0) {
        Airflow::Unknown
    } else if has_m3h.round() < asks_m3h.round() {
        Airflow::TooSmall
    } else {
        Airflow::Enough
    }
}

/// A stop while the airflow is not proven.
pub(super) fn assess(job: &Job, report: &DustReport, notes: &mut Notes) {
    if job.dust.method != DustMethod::Shroud {
        return;
    }
    let values = [
        (
            "has",
            Value::of(report.airflow_m3h, Unit::Airflow).decimals(0),
        ),
        ("asks", Value::number(report.least_airflow_m3h, 0)),
        ("disc", Value::size(report.widest_disc_mm)),
    ];
    match airflow(report.airflow_m3h, report.least_airflow_m3h) {
        Airflow::Unknown => notes.stop_on(&UNKNOWN, &doc::OSHA_AIRFLOW, values.clone()),
        Airflow::TooSmall => notes.stop_on(&TOO_SMALL, &doc::OSHA_AIRFLOW, values.clone()),
        Airflow::Enough => {}
    }
}
