//! The respirator that is asked for and the one at hand.

use serde::Serialize;

use super::dust::DustReport;
use super::notes::Notes;
use super::stone::california_rule_applies;
use crate::job::{Job, Respirator};
use crate::tables::Source;
use crate::tables::documents as doc;
use crate::tables::dust_control::{Control, TableAnswer};
use crate::tables::region::{RegionCode, Standing};
use crate::tables::respirator::{Assigned, HSE_WORKTOP_APF, MaskClass, MaskScheme, assigned};

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
    /// Highest concentration it may be worn in, mg/m³: factor × limit; 0 without a factor.
    pub max_use_mg_m3: f64,
}

/// Highest concentration a respirator may be worn in: its factor times the limit, in the limit's
/// unit. Source: 29 CFR 1910.134(b).
#[must_use]
pub fn max_use_concentration(apf: u16, limit: f64) -> f64 {
    f64::from(apf) * limit
}

/// The class of a respirator; nothing when there is none.
const fn class(respirator: Respirator) -> Option<MaskClass> {
    Some(match respirator {
        Respirator::None => return None,
        Respirator::Ffp2 => MaskClass::Ffp2,
        Respirator::Ffp3 => MaskClass::Ffp3,
        Respirator::N95 => MaskClass::N95,
        Respirator::P100 => MaskClass::P100,
        Respirator::HalfMaskP3 => MaskClass::HalfMaskP3,
        Respirator::FullFace => MaskClass::FullFace,
        Respirator::PoweredHood => MaskClass::PoweredHood,
        Respirator::PoweredMask => MaskClass::PoweredMask,
    })
}

/// The name that a sheet prints.
const fn name(respirator: Respirator) -> &'static str {
    match respirator {
        Respirator::None => "none",
        Respirator::Ffp2 => "FFP2 filtering half mask",
        Respirator::Ffp3 => "FFP3 filtering half mask",
        Respirator::N95 => "N95 filtering facepiece",
        Respirator::P100 => "P100 filtering facepiece or half mask",
        Respirator::HalfMaskP3 => "half mask with P3 filters",
        Respirator::FullFace => "full face mask with P3 or P100 filters",
        Respirator::PoweredHood => "powered hood or helmet",
        Respirator::PoweredMask => "powered tight mask",
    }
}

/// Whether it seals against the skin.
const fn tight(respirator: Respirator) -> bool {
    !matches!(respirator, Respirator::None | Respirator::PoweredHood)
}

/// Whether a fan feeds it.
pub(super) const fn powered(respirator: Respirator) -> bool {
    matches!(
        respirator,
        Respirator::PoweredHood | Respirator::PoweredMask
    )
}

/// Asked for and at hand, and what is wrong with it.
pub(super) fn assess(job: &Job, dust: &DustReport, notes: &mut Notes) -> RespiratorReport {
    let rule = job.region.record().masks;
    let (required, required_source) = required(job, dust);
    let given = class(job.dust.respirator).map(|class| assigned(rule.scheme, class));
    let least = given.map_or(0, Assigned::least);
    let report = RespiratorReport {
        required,
        required_standing: standing(job, required_source),
        required_source,
        at_hand: name(job.dust.respirator),
        scheme: rule.scheme,
        assigned: given,
        max_use_mg_m3: max_use_concentration(least, job.region.record().silica.limit_mg_m3),
    };
    notes.used(required_source);
    notes.used(rule.source);
    if let Some(source) = given.and_then(Assigned::source) {
        notes.used(source);
    }
    match given {
        None => missing(&report, notes),
        Some(given) => compare(&report, given, notes),
    }
    if tight(job.dust.respirator) && !job.dust.mask_fit_tested {
        not_fit_tested(&report, notes);
    }
    report
}

/// What is asked for, and by whom.
fn required(job: &Job, dust: &DustReport) -> (Required, &'static Source) {
    if dust.control == Control::Nothing {
        return (Required::MustBeAssessed, &doc::OSHA_TABLE_1);
    }
    if california_rule_applies(job) {
        let rule = job.region.record().engineered_stone;
        return (Required::MustBeAssessed, rule.source);
    }
    let table = match dust.table_answer {
        Some(TableAnswer::NoRespirator) => Required::NoneAsked,
        Some(TableAnswer::Apf(apf)) => Required::AtLeast(apf),
        Some(TableAnswer::NotInTable) | None => Required::MustBeAssessed,
    };
    match (job.region.record().masks.scheme, table) {
        (MaskScheme::Us, table) => (table, &doc::OSHA_TABLE_1),
        (MaskScheme::Strictest, Required::AtLeast(apf)) if apf > HSE_WORKTOP_APF => {
            (Required::AtLeast(apf), &doc::OSHA_TABLE_1)
        }
        (MaskScheme::Uk | MaskScheme::Strictest, _) => {
            (Required::AtLeast(HSE_WORKTOP_APF), &doc::HSE_STONEMASONRY)
        }
    }
}

/// Whose rule it is: OSHA's in the United States, HSE's in Britain, borrowed everywhere else.
fn standing(job: &Job, source: &'static Source) -> Standing {
    let own = match job.region {
        RegionCode::Us | RegionCode::UsCa => source != &doc::HSE_STONEMASONRY,
        RegionCode::Uk => source == &doc::HSE_STONEMASONRY,
        _ => false,
    };
    if own {
        Standing::Own
    } else {
        Standing::Borrowed
    }
}

/// What is asked for, in words, and whether it is borrowed.
fn asked(report: &RespiratorReport) -> String {
    let borrowed = match report.required_standing {
        Standing::Own => "",
        Standing::Borrowed => " (borrowed: no rule of this region on file)",
    };
    match report.required {
        Required::NoneAsked => format!("none asked for by the table{borrowed}"),
        Required::AtLeast(apf) => format!("factor {apf} or more asked for{borrowed}"),
        Required::MustBeAssessed => {
            "factor not settled by anything published: exposure must be assessed".into()
        }
    }
}

fn missing(report: &RespiratorReport, notes: &mut Notes) {
    let source = report.required_source;
    let detail = format!("Respirator: none, {}.", asked(report));
    if report.required == Required::NoneAsked {
        notes.caution(
            "respirator-missing",
            source,
            "no respirator at hand; the table asks for none here",
            format!(
                "{detail} The table holds only while its control works without a fault: have one \
                 ready, and wear it whenever dust is seen and for cleaning up."
            ),
        );
    } else {
        notes.stop(
            "respirator-missing",
            source,
            "no respirator at hand",
            format!("{detail} Get one that fits its wearer, and enter dust.respirator."),
        );
    }
}

fn compare(report: &RespiratorReport, given: Assigned, notes: &mut Notes) {
    let needs = match report.required {
        Required::AtLeast(apf) => apf,
        // Anything that the scheme knows; whether it is enough is for the assessment.
        Required::MustBeAssessed => 1,
        Required::NoneAsked => 0,
    };
    let (least, most) = (given.least(), given.most());
    if most < needs {
        notes.stop(
            "respirator-below-required",
            report.required_source,
            format!("{} counts as factor {most} here", report.at_hand),
            format!(
                "{}: factor {most}, {}. Factors of two schemes are never mixed; a mask without a \
                 row in this one counts as none. Use a respirator whose factor is listed here.",
                report.at_hand,
                asked(report)
            ),
        );
    } else if given == Assigned::NotInScheme {
        notes.caution(
            "respirator-not-in-scheme",
            report.required_source,
            format!("{} has no factor in this region's scheme", report.at_hand),
            format!(
                "Factor 0, {}. It may well hold dust back, but no rule here counts it: ask for one \
                 that is approved where you are.",
                asked(report)
            ),
        );
    } else if least < needs
        && let Assigned::ByMark { marks, source, .. } = given
    {
        notes.caution(
            "respirator-class",
            source,
            format!("read the class marked on the {}", report.at_hand),
            format!(
                "Its factor is {least} to {most} by class ({marks}), {}. It counts as {least} until \
                 the mark is read: use one marked for {needs} or more.",
                asked(report)
            ),
        );
    }
}

fn not_fit_tested(report: &RespiratorReport, notes: &mut Notes) {
    let source = match report.scheme {
        MaskScheme::Us => &doc::OSHA_MASKS,
        MaskScheme::Uk | MaskScheme::Strictest => &doc::UK_MASKS,
    };
    notes.caution(
        "respirator-not-fit-tested",
        source,
        "the mask was not fit-tested on its wearer",
        format!(
            "{}: its factor counts only after a fit test and on clean-shaven skin; until then it \
             cannot be counted on. Have it tested, or use a powered hood.",
            report.at_hand
        ),
    );
}
