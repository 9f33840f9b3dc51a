//! What curves give cause to say: an arm that the jig cannot be set to, a curve too slight to saw.

use crate::cut::kept::Whose;
use crate::cut::{Cut, Reach, SetOut};
use crate::diag::{Finding, Findings, Phrase, Values, number};
use crate::job::Job;

pub(crate) const WITHOUT_ARM: Phrase = Phrase {
    id: "curve-without-arm",
    title: "The curve at {edge} is set out from its chord, without the circle jig",
    detail: "The arm would be {arm} mm; the jig goes from {shortest} to {longest} mm: {by} mm {which}. Strike the \
             chord and lay the straight guide on the two marks of each station; or make an arm that fits.",
};
pub(crate) const WITHOUT_ARM_IN_OPENING: Phrase = Phrase {
    id: "curve-without-arm-opening",
    title: "The curve at {edge} of cutout {cutout} is set out from its chord, without the circle jig",
    ..WITHOUT_ARM
};
pub(crate) const NO_ARM: Phrase = Phrase {
    id: "arm-out-of-reach",
    title: "The circle jig cannot be set for a whole circle (cutout {cutout})",
    detail: "The arm would be {arm} mm; the jig goes from {shortest} to {longest} mm: {by} mm {which}. A whole \
             circle has no chord to set it out from. Make an arm that fits, or choose another radius.",
};
pub(crate) const GROUND: Phrase = Phrase {
    id: "corner-ground-by-hand",
    title: "The curve at {edge} is ground by hand",
    detail: "The trims beside it and their kerfs leave no stone for a plunge. Mark the curve on the stone and \
             grind it by hand after the last cut.",
};
pub(crate) const GROUND_IN_OPENING: Phrase = Phrase {
    id: "corner-ground-by-hand-opening",
    title: "The curve at {edge} of cutout {cutout} is ground by hand",
    ..GROUND
};

/// What to say of an arm that the jig cannot be set to: the curve is set out from its chord; a whole circle
/// has none and cannot be made.
#[must_use]
pub fn against_jig(job: &Job, whose: Whose, cut: &Cut) -> Findings {
    let mut findings = Findings::default();
    let Some(curve) = cut.set_out.curve() else {
        return findings;
    };
    let (by, which) = match curve.reach {
        Reach::Within => return findings,
        Reach::TooShortBy(by) => (by, "too short for it"),
        Reach::TooLongBy(by) => (by, "too long for it"),
    };
    let (shortest, longest) = job.circle_jig.reach_mm;
    let values = [
        ("edge", cut.edge.clone()),
        whose.in_gap(),
        ("arm", number(curve.arm, 1)),
        ("shortest", number(shortest, 0)),
        ("longest", number(longest, 0)),
        ("by", number(by, 1)),
        ("which", which.to_owned()),
    ];
    if matches!(cut.set_out, SetOut::Ordinates(_)) {
        let phrase = whose.says([&WITHOUT_ARM, &WITHOUT_ARM_IN_OPENING]);
        findings.cautions.push(of_arm(phrase, &values));
    } else {
        findings.stops.push(of_arm(&NO_ARM, &values));
    }
    findings
}

fn of_arm(phrase: &'static Phrase, values: &Values) -> Finding {
    let source = "geometry: sawn radius + circle_jig.offset, against circle_jig.reach";
    Finding::of(phrase, values, source)
}

/// The caution for a curve so slight that the trims beside it leave nothing to saw.
#[must_use]
pub fn ground_only(whose: Whose, edge: &str) -> Finding {
    let values = [("edge", edge.to_owned()), whose.in_gap()];
    let source = "geometry: the sawn faces of the two edges, against the sawn arc";
    Finding::of(whose.says([&GROUND, &GROUND_IN_OPENING]), &values, source)
}
