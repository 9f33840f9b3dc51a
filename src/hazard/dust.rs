//! How the dust is held down.

use serde::Serialize;

use super::notes::Notes;
use super::{Work, discs_on};
use crate::job::{Dust, DustMethod, Job, MachineKind, Place};
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, Site, TableAnswer, Tool, least_airflow_m3h, lookup};
use crate::tables::respirator::MaskScheme;
use crate::tables::vacuum::{CLASS_M_PASSES, EN_60335_2_69, OSHA_FILTER_HOLDS};

/// How the dust is held down, and what the regulator's table says of it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DustReport {
    /// What the control amounts to; a shroud without proven airflow is nothing.
    pub control: Control,
    /// Airflow that the largest disc used asks for, m³/h.
    pub least_airflow_m3h: f64,
    /// Hours of the task in the day, this job and the other work.
    pub task_hours: f64,
    /// What OSHA's Table 1 answers, in regions that use American respirator factors.
    pub table_answer: Option<TableAnswer>,
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

/// Control and table answer for the job.
pub(super) fn assess(job: &Job, work: &Work, notes: &mut Notes) -> DustReport {
    let widest = discs_on(job, work)
        .iter()
        .map(|disc| disc.diameter)
        .fold(0.0, f64::max);
    let asks = least_airflow_m3h(widest);
    let flow = airflow(job.dust.airflow_m3h, asks);
    let control = control(&job.dust, flow);
    let task_hours = work.day_hours(job);
    let table_answer = (job.region.record().masks.scheme != MaskScheme::Uk)
        .then(|| lookup(tool(job), control, site(job.dust.place), task_hours));
    match job.dust.method {
        DustMethod::Water => water(notes),
        DustMethod::Shroud => shroud(&job.dust, flow, asks, widest, notes),
        DustMethod::None => nothing(notes),
    }
    if table_answer == Some(TableAnswer::NotInTable) {
        not_in_table(job, notes);
    }
    if job.dust.place == Place::Indoors {
        indoors(notes);
    }
    DustReport {
        control,
        least_airflow_m3h: asks,
        task_hours,
        table_answer,
    }
}

const fn control(dust: &Dust, flow: Airflow) -> Control {
    match (dust.method, flow) {
        (DustMethod::Water, _) => Control::Water,
        (DustMethod::Shroud, Airflow::Enough) => Control::Extraction,
        (DustMethod::Shroud | DustMethod::None, _) => Control::Nothing,
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

fn nothing(notes: &mut Notes) {
    notes.stop(
        "no-dust-control",
        &doc::OSHA_TABLE_1,
        "dry cutting with nothing to hold the dust",
        "Dust control: none, at least one of two is asked for. Use water on a machine rated for \
         it, or a shroud with an extractor strong enough for the disc. Dry and unshrouded is in no \
         row of the table; no respirator makes up for it, and it reaches everybody nearby.",
    );
}

fn water(notes: &mut Notes) {
    notes.caution(
        "water-flow",
        &doc::OSHA_TABLE_1,
        "water onto the disc without a break, enough that no dust is seen",
        "No figure in litres a minute is published. Water at the rim before the disc touches the \
         stone, until it has left it. Dust or steam seen: stop, more water.",
    );
}

fn shroud(dust: &Dust, flow: Airflow, asks: f64, widest: f64, notes: &mut Notes) {
    let has = dust.airflow_m3h;
    match flow {
        Airflow::Unknown => notes.stop(
            "shroud-airflow-unknown",
            &doc::OSHA_AIRFLOW,
            "airflow of the extractor is not known",
            format!(
                "Airflow not known, a {widest:.0} mm disc asks for at least {asks:.0} m³/h. Without \
                 it the shroud's control is not proven: read the extractor's plate and enter \
                 dust.airflow, or cut wet."
            ),
        ),
        Airflow::TooSmall => notes.stop(
            "shroud-airflow-too-small",
            &doc::OSHA_AIRFLOW,
            format!("extractor moves {has:.0} m³/h, the disc asks for {asks:.0}"),
            format!(
                "Airflow {has:.0} m³/h, least {asks:.0} m³/h for a {widest:.0} mm disc. Use a \
                 stronger extractor, a smaller disc, or cut wet."
            ),
        ),
        Airflow::Enough => filter(has, asks, notes),
    }
}

fn filter(has: f64, asks: f64, notes: &mut Notes) {
    let holds = OSHA_FILTER_HOLDS * 100.0;
    notes.used(&EN_60335_2_69);
    notes.caution(
        "extractor-filter",
        &doc::OSHA_TABLE_1,
        format!("the extractor's filter must hold {holds:.0} % and be cleaned while it runs"),
        format!(
            "Airflow {has:.0} m³/h, least {asks:.0} m³/h. It counts with a clean filter of at least \
             {holds:.0} %, a cyclone or filter cleaning, and the shroud on the stone: class M (lets \
             through at most {:.1} %) or H, emptied without raising dust. Both ends of a cut and \
             plunges leave the shroud open: go slowly there.",
            CLASS_M_PASSES * 100.0
        ),
    );
}

fn not_in_table(job: &Job, notes: &mut Notes) {
    let where_ = match job.dust.place {
        Place::Outdoors => "outdoors",
        Place::Indoors => "indoors",
    };
    notes.caution(
        "not-in-table",
        &doc::OSHA_TABLE_1,
        "not in the regulator's table: exposure must be assessed",
        format!(
            "This machine, this control, {where_}: no row. Nobody has published which respirator \
             is enough. Have the exposure measured or assessed by a competent person, or change \
             control or place to one that the table lists."
        ),
    );
}

fn indoors(notes: &mut Notes) {
    notes.caution(
        "indoors-exhaust",
        &doc::OSHA_TABLE_1,
        "indoors: air must be drawn out as well",
        "Place: indoors. Cut outdoors if it can be done. Otherwise exhaust the visible dust to the \
         open, close off the room, and let nobody in without a respirator.",
    );
}
