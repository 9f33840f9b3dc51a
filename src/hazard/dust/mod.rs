//! How the dust is held down: the report, and one file for each hazard.

pub mod filter;
pub mod indoors;
pub mod order;
pub mod shroud;
pub mod table;
pub mod uncontrolled;
pub mod water;

use serde::Serialize;

use super::notes::Notes;
use super::{Work, discs_on};
use crate::job::{Dust, DustMethod, Job, MachineKind, Place};
use crate::tables::dust_control::{Control, Site, TableAnswer, Tool, least_airflow_m3h, lookup};
use crate::tables::region::RespiratorBasis;

pub use shroud::{Airflow, airflow};

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

/// Control and table answer for the job.
pub(super) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> DustReport {
    let report = report(job, work);
    uncontrolled::assess(job, notes);
    water::assess(job, notes);
    shroud::assess(job, &report, notes);
    filter::assess(job, &report, notes);
    indoors::assess(job, notes);
    report
}

fn report(job: &Job, work: &Work) -> DustReport {
    let widest = discs_on(job, work)
        .iter()
        .map(|disc| disc.diameter)
        .fold(0.0, f64::max);
    let asks = least_airflow_m3h(widest);
    let (tool, site) = (tool(job), site(job.dust.place));
    let control = control(&job.dust, airflow(job.dust.airflow_m3h, asks));
    let task_hours = work.dusty_hours(job);
    DustReport {
        tool,
        control,
        site,
        widest_disc_mm: widest,
        airflow_m3h: job.dust.airflow_m3h,
        least_airflow_m3h: asks,
        task_hours,
        table_answer: consults_table(job).then(|| lookup(tool, control, site, task_hours)),
    }
}

/// Whether the region looks at OSHA's table: elsewhere other rules stand without it.
pub(super) fn consults_table(job: &Job) -> bool {
    let by = job.region.record().respirator.by;
    matches!(by, RespiratorBasis::Table1 | RespiratorBasis::Greater(_))
}

/// What the method amounts to: no flow is no water, a shroud without proven airflow is nothing.
fn control(dust: &Dust, flow: Airflow) -> Control {
    match (dust.method, flow) {
        (DustMethod::Water, _) if dust.is_wet() => Control::Water,
        (DustMethod::Shroud, Airflow::Enough) => Control::Extraction,
        _ => Control::Nothing,
    }
}

const fn tool(job: &Job) -> Tool {
    match job.machine.kind {
        MachineKind::AngleGrinder => Tool::Grinder,
        MachineKind::HandSaw => Tool::HandSaw,
    }
}

const fn site(place: Place) -> Site {
    match place {
        Place::Outdoors => Site::Outdoors,
        Place::Indoors => Site::Indoors,
    }
}
