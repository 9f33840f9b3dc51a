//! An extractor strong enough for its shroud.

use serde::Serialize;

use super::DustReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::dust_control::{CFM_PER_INCH, least_airflow_m3h};
use crate::tables::record::{Example, Record};

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

const UNKNOWN: Phrase = Phrase {
    id: "shroud-airflow-unknown",
    title: "airflow of the extractor is not known",
    detail: "Airflow not known, a {disc} mm disc asks for at least {asks} m³/h. Without it the \
             shroud's control is not proven: read the extractor's plate and enter dust.airflow, or cut \
             wet.",
};
const TOO_SMALL: Phrase = Phrase {
    id: "shroud-airflow-too-small",
    title: "extractor moves {has} m³/h, the disc asks for {asks}",
    detail: "Airflow {has} m³/h, least {asks} m³/h for a {disc} mm disc. Use a stronger extractor, a smaller \
             disc, or cut wet.",
};

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
        ("has", number(report.airflow_m3h, 0)),
        ("asks", number(report.least_airflow_m3h, 0)),
        ("disc", number(report.widest_disc_mm, 0)),
    ];
    match airflow(report.airflow_m3h, report.least_airflow_m3h) {
        Airflow::Unknown => notes.stop_on(&UNKNOWN, &doc::OSHA_AIRFLOW, &values),
        Airflow::TooSmall => notes.stop_on(&TOO_SMALL, &doc::OSHA_AIRFLOW, &values),
        Airflow::Enough => {}
    }
}
