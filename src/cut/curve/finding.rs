//! What curves give cause to say: an arm that the jig cannot be set to, a curve too slight to saw.

use crate::cut::kept::Whose;
use crate::cut::{Cut, Reach, SetOut};
use crate::diag::{Finding, Findings, Phrase};
use crate::job::Job;
use crate::words::{Arg, Value};

pub(crate) const WITHOUT_ARM: Phrase = Phrase::of_job("curve-without-arm");
pub(crate) const NO_ARM: Phrase = Phrase::of_job("arm-out-of-reach");
pub(crate) const GROUND: Phrase = Phrase::of_job("corner-ground-by-hand");

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
        ("part", whose.part(&cut.edge)),
        ("arm", Value::fine(curve.arm)),
        ("shortest", Value::size(shortest)),
        ("longest", Value::size(longest)),
        ("by", Value::fine(by)),
        ("which", Value::term(which)),
    ];
    if matches!(cut.set_out, SetOut::Ordinates(_)) {
        findings
            .warnings
            .push(of_arm(&WITHOUT_ARM, values.to_vec()));
    } else {
        findings.stops.push(of_arm(&NO_ARM, values.to_vec()));
    }
    findings
}

fn of_arm(phrase: &'static Phrase, values: Vec<Arg>) -> Finding {
    let source = "geometry: sawn radius + circle_jig.offset, against circle_jig.reach";
    Finding::of(phrase, values, source)
}

/// The caution for a curve so slight that the trims beside it leave nothing to saw.
#[must_use]
pub fn ground_only(whose: Whose, edge: &str) -> Finding {
    let source = "geometry: the sawn faces of the two edges, against the sawn arc";
    Finding::of(&GROUND, [("part", whose.part(edge))], source)
}
