//! Every rule on dust, in its order.

use crate::hazard::notes::Notes;
use crate::hazard::{Work, discs_on};
use crate::job::{Dust, DustMethod, Job, MachineKind, Workplace};
use crate::tables::dust_control::{Control, Site, Tool, least_airflow_m3h, lookup};

use super::{
    Airflow, DustReport, airflow, consults_table, filter, indoors, shroud, uncontrolled, water,
};

/// Control and table answer for the job.
pub(in crate::hazard) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> DustReport {
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

const fn site(place: Workplace) -> Site {
    match place {
        Workplace::Outdoors => Site::Outdoors,
        Workplace::Indoors => Site::Indoors,
    }
}
