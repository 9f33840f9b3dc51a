//! A nuisance mask is no respirator.

use super::RespiratorReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Job, Respirator};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "nuisance-mask",
    title: "A nuisance mask is no respirator",
    what: "A paper, cloth or surgical mask, or one with a single strap, that carries no class such as \
           FFP3, N95 or P100.",
    why: "It keeps splashes and coarse dust off. The dust that scars the lungs goes through it and round it.",
    what_to_do: "First the open steps of the order of controls. Then a respirator with a class that \
                 counts where you are, fit-tested on its wearer.",
    sources: &[&doc::OSHA_MASKS, &doc::UK_MASKS],
    phrases: &[NUISANCE],
    ..Record::HAZARD
};

const NUISANCE: Phrase = Phrase::of_job("nuisance-mask")
    .harm(Harm::KillsLater)
    .key("dust.respirator");

/// A stop, whatever the table asks for: whoever wears one believes to be protected.
pub(super) fn assess(job: &Job, report: &RespiratorReport, notes: &mut Notes) {
    if job.dust.respirator == Respirator::Nuisance {
        notes.stop_on(&NUISANCE, report.required_source, &[]);
    }
}
