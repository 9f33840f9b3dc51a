//! What the kind of stone brings with it: one file for each hazard.

pub mod asbestos;
pub mod binder;
pub mod controlled;
pub mod engineered;
pub mod rich;
pub mod steel;
pub mod unknown;
pub mod veins;

use super::notes::Notes;
use crate::job::Job;
use crate::tables::stone::{Figure, RICH_IN_SILICA};

/// Whether the stone is bound with resin, as far as the table knows.
pub(super) fn is_engineered(job: &Job) -> bool {
    job.stone.kind.record().is_some_and(|r| r.engineered)
}

/// Whether the stone may hold more silica than the Californian threshold for natural stone.
pub(super) fn is_rich(job: &Job) -> bool {
    job.stone.silica.high > RICH_IN_SILICA.value
}

/// Whether the region asks for wet cutting because of the silica in the stone.
pub(super) fn wet_rule_applies(job: &Job) -> bool {
    let record = job.region.record();
    let above = |figure: Figure| is_engineered(job) || job.stone.silica.high > figure.value;
    record.wet_above.is_some_and(above)
}

/// A share in whole per cent.
fn percent(share: f64) -> String {
    format!("{:.0}", share * 100.0)
}

/// Stops and cautions about the stone itself.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    engineered::assess(job, notes);
    controlled::assess(job, notes);
    rich::assess(job, notes);
    unknown::assess(job, notes);
    asbestos::assess(job, notes);
    veins::assess(job, notes);
    binder::assess(job, notes);
    steel::assess(job, notes);
}
