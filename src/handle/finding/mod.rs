//! What must be read before anybody lifts.

pub(crate) mod lift;
pub(crate) mod narrow;
pub(crate) mod setting;
pub(crate) mod strength;

use super::words::Words;
use super::{Handling, Load};
use crate::diag::{Finding, Findings, Phrase};
use crate::job::Job;
use crate::tables::{Source, Sure};

/// A vacuum lifter is to be rated for this many times the mass.
const VACUUM_FACTOR: f64 = 2.0;

/// Where the vacuum lifter's factor comes from.
pub(super) const AID_SOURCE: Source = Source {
    what: "vacuum lifter rated for at least twice the mass, on a dry, clean, unbroken face",
    document: "common practice",
    clause: "",
    year: 0,
    sure: Sure::Practice,
};

const LIFT_SOURCE: &str = "HSE L23, paragraphs 119 and 120, 2016";
const BEND_SOURCE: &str = "beam theory, σ = 6M/(b·t²); handling factor 1.2, PCI Journal 2010";

pub(crate) const NOT_A_LIMIT: Phrase = Phrase {
    id: "guideline-is-not-a-limit",
    title: "The lifting guideline is not a safe limit",
    detail: "{each} a person is for fit adults lifting close, at waist height, straight and seldom; it is \
             less for many people, for wet hands, steps and rough ground. It is no promise that a lift \
             below it is safe. The lifting equation is for lifting, not for carrying. Check your current \
             rules.",
};

/// All findings of the handling.
pub(super) fn findings(job: &Job, top: &Load, handling: &Handling) -> Findings {
    let mut found = Findings::default();
    let words = Words(job.units);
    for piece in [&handling.slab, &handling.top] {
        lift::hand_lift(piece, job.lift.aid, words, &mut found);
        strength::bending(piece, words, &mut found);
    }
    found.cautions.extend(strength::on_edge(handling, words));
    strength::between(handling, words, &mut found);
    narrow::narrow(handling, words, &mut found);
    strength::trestles(&handling.bench, words, &mut found);
    let hands = &handling.top.lift;
    found.cautions.extend(lift::off_the_edge(top, hands, words));
    found.cautions.extend(lift::at_cutout(top, hands, words));
    found.cautions.extend(lift::far(job, words));
    if let Some(setting) = &handling.setting {
        setting::set_down(setting, words, &mut found);
    }
    found.cautions.extend(strength::flawed(job));
    found.cautions.push(not_a_limit(handling, words));
    found
}

fn not_a_limit(handling: &Handling, words: Words) -> Finding {
    let rule = &handling.guideline;
    let source = format!("{}, {}", rule.source.document, rule.source.clause);
    let each = [("each", words.mass(rule.each))];
    Finding::of(&NOT_A_LIMIT, &each, source)
}
