//! What is told of the way in: stops and cautions, one for each place.

use super::attempt::{Attempt, Carried, Fit, Measure};
use super::remedy::Remedy;
use super::walk::{Passage, Walk, WayIn};
use crate::diag::{Finding, Findings, Phrase};
use crate::words::{Arg, Value};

const SOURCE: &str = "geometry of a plank round a corner: L ≤ a/cos θ + b/sin θ − t/(sin θ·cos θ); sizes from \
     the job file; room for hands: judgement";

pub(crate) const BLOCKED: Phrase = Phrase::of_job("way-in-blocked");
pub(crate) const UPRIGHT: Phrase = Phrase::of_job("way-in-upright");
pub(crate) const FLAT: Phrase = Phrase::of_job("way-in-flat-only");
pub(crate) const TIGHT: Phrase = Phrase::of_job("way-in-tight");
pub(crate) const SLAB: Phrase = Phrase::of_job("way-in-slab");
pub(crate) const SLAB_FLAT: Phrase = Phrase::of_job("way-in-slab-flat");

/// Said where nothing that is reckoned here helps.
const ANOTHER_WAY: &str = "another way in";

/// Values of a phrase.
type Said = Vec<Arg>;

pub(super) fn findings(way: &WayIn) -> Findings {
    let mut found = Findings::default();
    found.stops.extend(blocked(&way.top));
    found.warnings.extend(only(&way.top, Carried::Flat));
    found.warnings.extend(only(&way.top, Carried::Upright));
    found.warnings.extend(tight(&way.top));
    if found.stops.is_empty() {
        found.warnings.extend(slab(&way.slab));
    }
    found
}

fn blocked(top: &Walk) -> Vec<Finding> {
    let at = top.passages.iter().filter(|p| p.best.is_none());
    at.map(|p| finding(&BLOCKED, against(p))).collect()
}

/// Places that are passed in a pose that is not on edge.
fn only(top: &Walk, pose: Carried) -> Vec<Finding> {
    let phrase = match pose {
        Carried::Upright | Carried::OnEdge => &UPRIGHT,
        Carried::Flat => &FLAT,
    };
    let at = top.passages.iter().filter(|p| p.best == Some(pose));
    let told = at.map(|p| {
        let mut values = against(p);
        values.push(("stand_up", Value::size(top.stand_up_mm).up()));
        finding(phrase, values)
    });
    told.collect()
}

fn tight(top: &Walk) -> Vec<Finding> {
    let at = top.passages.iter();
    let best = at.filter_map(|p| Some((p, p.best_attempt()?)));
    let tight = best.filter(|(_, a)| matches!(a.fit, Fit::Tight(_)));
    let told = tight.map(|(p, a)| {
        let values = [
            ("place", Value::name(p.at.what.clone())),
            ("pose", Value::term(a.carried.words())),
            ("spare", Value::size(a.fit.spare_mm()).down()),
        ];
        finding(&TIGHT, values.to_vec())
    });
    told.collect()
}

/// The slab where the top goes through.
fn slab(slab: &Walk) -> Vec<Finding> {
    let told = slab.passages.iter().filter_map(|p| {
        let phrase = match p.best {
            None => &SLAB,
            Some(Carried::Flat) => &SLAB_FLAT,
            Some(Carried::OnEdge | Carried::Upright) => return None,
        };
        Some(finding(phrase, against(p)))
    });
    told.collect()
}

/// What a place takes off the poses that do not go through, what the best leaves to spare, and
/// what must give.
fn against(passage: &Passage) -> Said {
    let mut said = vec![("place", Value::name(passage.at.what.clone()))];
    let on_edge = ["edge_short", "edge_measure", "edge_needs", "edge_has"];
    let upright = [
        "upright_short",
        "upright_measure",
        "upright_needs",
        "upright_has",
    ];
    said.extend(short(on_edge, passage.on_edge()));
    said.extend(short(upright, passage.upright()));
    let best = passage.best_attempt();
    said.extend(best.map(|a| ("spare", Value::size(a.fit.spare_mm()).down())));
    let remedies = passage.remedies.iter().map(remedy);
    let mut remedies: Vec<Value> = remedies.collect();
    if remedies.is_empty() {
        remedies.push(Value::term(ANOTHER_WAY));
    }
    said.push(("remedies", Value::List(remedies)));
    said
}

/// By how much a pose is short, of what, what it needs and what is there; nothing when it passes.
fn short(gaps: [&'static str; 4], attempt: &Attempt) -> Said {
    let need = attempt.binds;
    let Fit::Short(short_mm) = attempt.fit else {
        return Vec::new();
    };
    let measure = match need.measure {
        Measure::Width => "clear width",
        Measure::Height => "clear height",
        Measure::Turn => "length that turns in the corner",
    };
    let values = [
        Value::size(short_mm).up(),
        Value::term(measure),
        Value::size(need.needs_mm).up(),
        Value::size(need.has_mm).down(),
    ];
    gaps.into_iter().zip(values).collect()
}

fn remedy(remedy: &Remedy) -> Value {
    let (id, n) = match *remedy {
        Remedy::TakeUpright { needs_mm, .. } => ("remedy-upright", Value::size(needs_mm).up()),
        Remedy::CutTo(mm) => ("remedy-cut-to", Value::size(mm).down()),
        Remedy::WidenFrom(mm) => ("remedy-widen-before", Value::size(mm).up()),
        Remedy::WidenTo(mm) => ("remedy-widen-after", Value::size(mm).up()),
        Remedy::Widen(mm) => ("remedy-widen", Value::size(mm).up()),
        Remedy::Raise { carried, needs_mm } => {
            let how = Value::term(carried.words());
            return Value::message(
                "remedy-raise",
                [("n", Value::size(needs_mm).up()), ("how", how)],
            );
        }
    };
    Value::message(id, [("n", n)])
}

fn finding(phrase: &'static Phrase, values: Vec<Arg>) -> Finding {
    Finding::of(phrase, values, SOURCE)
}
