//! Every rule on respirators, in its order.

use crate::hazard::dust::{DustReport, table};
use crate::hazard::notes::Notes;
use crate::hazard::respirator::report::{WORKTOP_APF, class, name, suitable};
use crate::hazard::stone::{asks_for_mask, high_exposure};
use crate::job::Job;
use crate::tables::dust_control::{Control, TableAnswer};
use crate::tables::region::{RespiratorBasis, RuleOrigin};
use crate::tables::respirator::{Assigned, assigned};
use crate::tables::{Source, documents as doc};
use crate::words::Value;

use super::{
    Enough, Required, RespiratorReport, filter, fit, mark, max_use_concentration, missing,
    nuisance, scheme, tight, weak,
};

/// Asked for and at hand, and what is wrong with it.
pub(in crate::hazard) fn assess(
    job: &Job,
    dust: &DustReport,
    notes: &mut Notes,
) -> RespiratorReport {
    let report = report(job, dust);
    notes.used(report.required_source);
    notes.used(job.region.record().masks.source);
    if let Some(source) = report.assigned.and_then(Assigned::source) {
        notes.used(source);
    }
    table::assess(dust, report.required, notes);
    filter::assess(job, notes);
    nuisance::assess(job, &report, notes);
    missing::assess(job, &report, notes);
    scheme::assess(&report, notes);
    weak::assess(&report, notes);
    mark::assess(&report, notes);
    fit::assess(job, &report, notes);
    if let (Enough::Yes, Required::AtLeast(apf)) = (report.enough, report.required) {
        let has = report.assigned.map_or(0, Assigned::least);
        let values = [
            ("mask", Value::term(report.at_hand)),
            ("has", Value::number(has.into(), 0)),
            ("apf", Value::number(apf.into(), 0)),
        ];
        notes.settle("settled-mask", report.required_source, values);
    }
    report
}

fn report(job: &Job, dust: &DustReport) -> RespiratorReport {
    let rule = job.region.record().masks;
    let (required, required_standing, required_source) = required(job, dust);
    let given = class(job.dust.respirator).map(|class| assigned(rule.scheme, class));
    let least = given.map_or(0, Assigned::least);
    let fits = !tight(job.dust.respirator) || job.dust.mask_fit_tested;
    RespiratorReport {
        required,
        required_standing,
        required_source,
        at_hand: name(job.dust.respirator),
        scheme: rule.scheme,
        assigned: given,
        enough: match required {
            Required::NoneAsked => Enough::Yes,
            Required::MustBeAssessed => Enough::NotSettled,
            Required::AtLeast(apf) if least >= apf && fits => Enough::Yes,
            Required::AtLeast(_) => Enough::No,
        },
        max_use_mg_m3: max_use_concentration(least, job.region.record().silica.limit_mg_m3),
        suitable: suitable(rule.scheme, required),
        not_to_be_confused: rule.scheme.not_to_be_confused(),
    }
}

/// What is asked for, whether it is the region's own rule, and its source.
fn required(job: &Job, dust: &DustReport) -> (Required, RuleOrigin, &'static Source) {
    let rule = job.region.record().respirator;
    if dust.control == Control::Nothing {
        return (Required::MustBeAssessed, rule.standing, &doc::OSHA_TABLE_1);
    }
    if let Some(high) = high_exposure(job) {
        return (Required::AtLeast(high.apf), RuleOrigin::Own, high.source);
    }
    let settled = |required| (required, rule.standing, rule.source);
    match (rule.by, dust.table_answer) {
        (RespiratorBasis::Least(apf) | RespiratorBasis::LeastWithFinestFilter(apf), _) => {
            settled(Required::AtLeast(apf))
        }
        (RespiratorBasis::Greater(least), answer) => match answer {
            Some(TableAnswer::Apf(apf)) if apf > least => (
                Required::AtLeast(apf),
                RuleOrigin::Borrowed,
                &doc::OSHA_TABLE_1,
            ),
            _ => settled(Required::AtLeast(least)),
        },
        (RespiratorBasis::Table1, Some(TableAnswer::Apf(apf))) => settled(Required::AtLeast(apf)),
        (RespiratorBasis::Table1, Some(TableAnswer::NoRespirator)) if asks_for_mask(job) => (
            Required::AtLeast(WORKTOP_APF),
            rule.standing,
            &doc::OSHA_WORKTOPS,
        ),
        (RespiratorBasis::Table1, Some(TableAnswer::NoRespirator)) => settled(Required::NoneAsked),
        (RespiratorBasis::Table1, Some(TableAnswer::NotInTable) | None) => {
            settled(Required::MustBeAssessed)
        }
    }
}
