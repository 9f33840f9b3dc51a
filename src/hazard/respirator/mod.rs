//! The respirator that is asked for and the one at hand: the report, and one file for each hazard.

pub mod filter;
pub mod fit;
pub mod mark;
pub mod missing;
pub mod nuisance;
pub mod scheme;
pub mod weak;

use serde::Serialize;

use super::dust::{DustReport, table};
use super::notes::Notes;
use super::stone::{asks_for_mask, high_exposure};
use crate::job::{Job, Respirator};
use crate::tables::Source;
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, TableAnswer};
use crate::tables::record::{Example, Record};
use crate::tables::region::{RespiratorBasis, Standing};
use crate::tables::respirator::{Assigned, MaskClass, MaskScheme, assigned};
use crate::words::Value;

/// Highest concentration a respirator may be worn in.
pub static MOST: Record = Record {
    id: "maximum-use-concentration",
    title: "Highest concentration a respirator may be worn in",
    what: "The factor assigned to a respirator times the limit of the substance.",
    why: "A measured concentration above it is too much for that respirator, however well it fits.",
    what_to_do: "Compare with a concentration somebody measured. Nothing here predicts one.",
    sources: &[&doc::OSHA_MASKS],
    formula: "MUC, mg/m³ = factor × limit, mg/m³",
    example: Some(example),
    ..Record::FORMULA
};

fn example() -> Example {
    const LIMIT: f64 = 0.05;
    let at = |apf| format!("factor {apf}: {}", max_use_concentration(apf, LIMIT));
    Example {
        given: format!("a limit of {LIMIT} mg/m³"),
        result: format!("{}; {}; {} mg/m³", at(10), at(25), at(50)),
    }
}

/// Least factor on worktops where Table 1 asks for none: a half mask of the American scheme
/// (judgement: the row holds for short jobs that are not regular, and respirable quartz was measured
/// above the recommended limit even wet).
const WORKTOP_APF: u16 = 10;

/// What protection factor is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Required {
    /// The table lists this work without a respirator.
    NoneAsked,
    /// At least this factor.
    AtLeast(u16),
    /// Nothing published settles it: exposure must be assessed.
    MustBeAssessed,
}

/// Whether the respirator at hand is enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Enough {
    /// Its factor reaches what is asked for, and it was fit-tested where it is tight.
    Yes,
    /// It does not.
    No,
    /// Nothing published settles it.
    NotSettled,
}

/// The respirator asked for and the one at hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RespiratorReport {
    /// What is asked for.
    pub required: Required,
    /// Whether that is the region's own rule.
    pub required_standing: Standing,
    /// Where it comes from.
    pub required_source: &'static Source,
    /// The respirator at hand, as printed.
    pub at_hand: &'static str,
    /// Whose factors count.
    pub scheme: MaskScheme,
    /// What the scheme assigns to it; nothing when none is at hand.
    pub assigned: Option<Assigned>,
    /// Whether it is enough.
    pub enough: Enough,
    /// Highest concentration it may be worn in, mg/m³: factor × limit; 0 without a factor.
    pub max_use_mg_m3: f64,
    /// Respirators of the scheme that reach the factor asked for, whatever their mark; none when no
    /// factor is.
    pub suitable: Vec<Suitable>,
    /// What the scheme must not be confused with.
    pub not_to_be_confused: &'static str,
}

/// A respirator that reaches what is asked for.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Suitable {
    /// What it is.
    pub name: &'static str,
    /// Its factor.
    pub apf: u16,
    /// How it must be worn.
    pub worn: Worn,
}

/// How a respirator must be worn for its factor to count.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Worn {
    /// Fit-tested on its wearer and over clean-shaven skin.
    FitTestedAndShaven,
    /// As its maker says; it does not seal against the skin.
    Loose,
}

/// The respirators of a scheme that reach what is asked for.
fn suitable(scheme: MaskScheme, required: Required) -> Vec<Suitable> {
    let Required::AtLeast(asked) = required else {
        return Vec::new();
    };
    let one = |class: MaskClass| {
        let apf = assigned(scheme, class).least();
        (apf >= asked).then_some(Suitable {
            name: class.name(),
            apf,
            worn: if class.is_tight() {
                Worn::FitTestedAndShaven
            } else {
                Worn::Loose
            },
        })
    };
    MaskClass::ALL.into_iter().filter_map(one).collect()
}

/// Highest concentration a respirator may be worn in: its factor times the limit, in the limit's
/// unit. Source: 29 CFR 1910.134(b).
#[must_use]
pub fn max_use_concentration(apf: u16, limit: f64) -> f64 {
    f64::from(apf) * limit
}

/// The class of a respirator; nothing when there is none.
const fn class(respirator: Respirator) -> Option<MaskClass> {
    match respirator {
        Respirator::None | Respirator::Nuisance => None,
        Respirator::Mask(class) => Some(class),
    }
}

/// The name that a sheet prints.
const fn name(respirator: Respirator) -> &'static str {
    match respirator {
        Respirator::None => "none",
        Respirator::Nuisance => "paper or cloth mask without a class",
        Respirator::Mask(class) => class.name(),
    }
}

/// Whether it seals against the skin.
const fn tight(respirator: Respirator) -> bool {
    matches!(class(respirator), Some(class) if class.is_tight())
}

/// Whether a fan feeds it.
pub(super) const fn powered(respirator: Respirator) -> bool {
    matches!(class(respirator), Some(class) if class.is_powered())
}

/// Asked for and at hand, and what is wrong with it.
pub(super) fn assess(job: &Job, dust: &DustReport, notes: &mut Notes) -> RespiratorReport {
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
fn required(job: &Job, dust: &DustReport) -> (Required, Standing, &'static Source) {
    let rule = job.region.record().respirator;
    if dust.control == Control::Nothing {
        return (Required::MustBeAssessed, rule.standing, &doc::OSHA_TABLE_1);
    }
    if let Some(high) = high_exposure(job) {
        return (Required::AtLeast(high.apf), Standing::Own, high.source);
    }
    let settled = |required| (required, rule.standing, rule.source);
    match (rule.by, dust.table_answer) {
        (RespiratorBasis::Least(apf) | RespiratorBasis::LeastWithFinestFilter(apf), _) => {
            settled(Required::AtLeast(apf))
        }
        (RespiratorBasis::Greater(least), answer) => match answer {
            Some(TableAnswer::Apf(apf)) if apf > least => (
                Required::AtLeast(apf),
                Standing::Borrowed,
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
