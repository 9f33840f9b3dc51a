//! Changes to the sample job, and the findings they lead to.

use crate::diag::{Finding, Findings};
use crate::hazard::sample::{job, set_stone, work};
use crate::hazard::{Work, assess};
use crate::job::{DustMethod, Job, Power, Protection, Respirator, Workplace};
use crate::tables::region::RegionCode;
use crate::tables::respirator::MaskClass;
use crate::tables::stone::StoneKind;

/// A change to the sample job and its work.
pub(super) type Change = fn(&mut Job, &mut Work);

/// A finding, a job that raises it and one that does not.
pub(super) struct Pair {
    pub(super) id: &'static str,
    pub(super) raises: Change,
    pub(super) does_not: Change,
}

/// A pair from its parts.
pub(super) const fn pair(id: &'static str, raises: Change, does_not: Change) -> Pair {
    Pair {
        id,
        raises,
        does_not,
    }
}

/// What a change leads to: findings, and among the warnings the lines of the checklist.
pub(super) fn findings_of(change: Change) -> Findings {
    let (mut job, mut work) = (job(), work());
    change(&mut job, &mut work);
    let (hazards, mut found) = assess(&job, &work);
    let lines = hazards.checklist.into_iter().map(|line| line.finding);
    found.warnings.extend(lines);
    found
}

/// The ids of stops or cautions.
pub(super) fn ids(findings: &[Finding]) -> Vec<&'static str> {
    findings.iter().map(Finding::id).collect()
}

/// All ids, stops first.
pub(super) fn all_ids(findings: &Findings) -> Vec<&'static str> {
    let Findings {
        stops,
        open,
        warnings,
    } = findings;
    [ids(stops), ids(open), ids(warnings)].concat()
}

pub(super) fn no_change(_: &mut Job, _: &mut Work) {}

pub(super) fn shrouded(job: &mut Job, airflow_m3h: f64) {
    job.dust.method = DustMethod::Shroud;
    job.dust.airflow_m3h = airflow_m3h;
}

pub(super) fn granite_shroud(job: &mut Job) {
    shrouded(job, 300.0);
}

pub(super) fn on_mains(job: &mut Job, wet_rated: bool, protected: Protection) {
    job.machine.power = Power::Mains;
    job.machine.wet_rated = wet_rated;
    job.machine.protected = protected;
}

pub(super) fn engineered(job: &mut Job, region: RegionCode) {
    job.region = region;
    set_stone(job, StoneKind::EngineeredStone);
}

pub(super) fn californian(job: &mut Job, kind: StoneKind) {
    job.region = RegionCode::UsCa;
    job.dust.respirator = Respirator::Mask(MaskClass::N95);
    set_stone(job, kind);
}

pub(super) fn american(job: &mut Job, place: Workplace) {
    job.region = RegionCode::Us;
    job.dust.respirator = Respirator::Mask(MaskClass::N95);
    job.dust.place = place;
}

pub(super) fn fan(job: &mut Job, respirator: Respirator) {
    job.dust.respirator = respirator;
    job.dust.mask_fit_tested = false;
}
