//! Which respirator is asked for, which is there, and whether it is enough.

use serde::Serialize;

use crate::job::Respirator;
use crate::tables::record::{Example, Record};
use crate::tables::region::RuleOrigin;
use crate::tables::respirator::{Assigned, MaskClass, MaskScheme, assigned};
use crate::tables::{Source, documents as doc};

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
pub(super) const WORKTOP_APF: u16 = 10;

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
    pub required_standing: RuleOrigin,
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
pub(super) fn suitable(scheme: MaskScheme, required: Required) -> Vec<Suitable> {
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
pub(super) const fn class(respirator: Respirator) -> Option<MaskClass> {
    match respirator {
        Respirator::None | Respirator::Nuisance => None,
        Respirator::Mask(class) => Some(class),
    }
}

/// The name that a sheet prints.
pub(super) const fn name(respirator: Respirator) -> &'static str {
    match respirator {
        Respirator::None => "none",
        Respirator::Nuisance => "paper or cloth mask without a class",
        Respirator::Mask(class) => class.name(),
    }
}

/// Whether it seals against the skin.
pub(super) const fn tight(respirator: Respirator) -> bool {
    matches!(class(respirator), Some(class) if class.is_tight())
}

/// Whether a fan feeds it.
pub(in crate::hazard) const fn powered(respirator: Respirator) -> bool {
    matches!(class(respirator), Some(class) if class.is_powered())
}
