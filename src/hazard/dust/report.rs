//! How the dust is caught, and what the tables of dust controls say of it.

use serde::Serialize;

use crate::job::Job;
use crate::tables::dust_control::{Control, Site, TableAnswer, Tool};
use crate::tables::region::RespiratorBasis;

/// How the dust is held down, and what the regulator's table says of it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DustReport {
    /// The tool, as the table names it.
    pub tool: Tool,
    /// What the control amounts to; a shroud without proven airflow is nothing.
    pub control: Control,
    /// Where the work is done, as the table names it.
    pub site: Site,
    /// Largest disc used, mm.
    pub widest_disc_mm: f64,
    /// Airflow of the extractor, m³/h; 0 when not known.
    pub airflow_m3h: f64,
    /// Airflow that the largest disc used asks for, m³/h.
    pub least_airflow_m3h: f64,
    /// Hours of the task in the day, this job and the other work.
    pub task_hours: f64,
    /// What OSHA's Table 1 answers, in regions that use American respirator factors.
    pub table_answer: Option<TableAnswer>,
}

/// Whether the region looks at OSHA's table: elsewhere other rules stand without it.
pub(in crate::hazard) fn consults_table(job: &Job) -> bool {
    let by = job.region.record().respirator.by;
    matches!(by, RespiratorBasis::Table1 | RespiratorBasis::Greater(_))
}
