//! Findings about setting the top down.

use super::BEND_SOURCE;
use crate::diag::{Finding, Findings, Phrase, number};
use crate::handle::lean::Leaning;
use crate::handle::overhang::{LIMIT_SOURCE, Overhang, ReachLimit};
use crate::handle::span::Span;
use crate::handle::support::{Bearing, BearingVerdict, Setting, Standing};
use crate::handle::words::Words;

pub(crate) const TIPS: Phrase = Phrase {
    id: "tips-off-supports",
    title: "The top does not lie still on its supports",
    detail: "The supports do not reach round the balance point. Add or move supports before it is set down.",
};
pub(crate) const OVER: Phrase = Phrase {
    id: "support-over-limit",
    title: "{support} carries more than its limit",
    detail: "It carries {carried}; its limit is {limit}. Add a support or move the others nearer.",
};
pub(crate) const IDLE: Phrase = Phrase {
    id: "support-lifts-off",
    title: "{support} carries nothing",
    detail: "The top does not press on it. Check its place and height; do not pull the top down to it.",
};
pub(crate) const OVER_WITH_PERSON: Phrase = Phrase {
    id: "support-over-limit-with-person",
    title: "{support} is over its limit when somebody leans on the top",
    detail: "It carries {carried} of the stone, and up to {with_person} with a person leaning where it is \
             worst; its limit is {limit}. Add a support, or keep people off.",
};
pub(crate) const OVERHANG: Phrase = Phrase {
    id: "overhang-too-far",
    title: "reaches too far beyond the supports: {edges}",
    detail: "It reaches {reach} beyond them; published as the most for this thickness and width: {limit}. \
             With a person leaning on it it is stressed {stress} MPa, {times} times what is allowed. Put a \
             bracket, leg or wall under it.",
};
pub(crate) const OVERHANG_ALONE: Phrase = Phrase {
    id: "overhang-too-far-alone",
    title: "reaches too far beyond the supports: {edges}",
    detail: "It reaches {reach} beyond them; published as the most for this thickness and width: {limit}. \
             What a person leaning on it does is not reckoned here. Put a bracket, leg or wall under it.",
};
pub(crate) const SPAN: Phrase = Phrase {
    id: "span-too-wide",
    title: "The stone spans too far between supports",
    detail: "The widest stretch without support is {span}. Published as the most for this thickness: \
             {limit}. Put a rail or a cabinet side in between.",
};
pub(crate) const TIPS_LEANT_ON: Phrase = Phrase {
    id: "tips-when-leant-on",
    title: "The top tips when somebody leans on its edge",
    detail: "A person of 1 kN at the worst place tips it off its supports. Add a support farther out; a \
             screw or a bead of glue does not hold it.",
};
pub(crate) const BENDS_LEANT_ON: Phrase = Phrase {
    id: "bends-when-leant-on",
    title: "Somebody leaning on the top may break it",
    detail: "With a person of 1 kN at the worst place it is stressed {stress} MPa, {times} times what is \
             allowed. Put supports closer together, and beside every cutout.",
};

/// Said instead of a limit where the stone is too thin for any that is published.
const NONE_PUBLISHED: &str = "nothing for stone so thin";

pub(super) fn set_down(setting: &Setting, words: Words, found: &mut Findings) {
    match setting.stands {
        Standing::Balanced => {}
        Standing::Tips | Standing::NotSupported => {
            let finding = Finding::of(&TIPS, &[], "statics of a rigid plate");
            found.stops.push(finding);
        }
    }
    found.cautions.extend(overhangs(&setting.overhangs, words));
    let span = setting.span.as_ref().and_then(|s| span(s, words));
    found.cautions.extend(span);
    if let Some(leaning) = &setting.leaning {
        leant_on(leaning, found);
    }
    let bearings = setting.bearings.iter();
    let with_person = bearings.filter_map(|b| over_with_person(b, words));
    found.cautions.extend(with_person);
    for bearing in &setting.bearings {
        by_the_stone(bearing, words, found);
    }
}

/// What the stone alone does to a support.
fn by_the_stone(bearing: &Bearing, words: Words, found: &mut Findings) {
    let support = ("support", bearing.what.clone());
    match bearing.verdict {
        BearingVerdict::Over { limit } => {
            let values = [
                support,
                ("carried", words.mass(bearing.share.mass())),
                ("limit", words.mass(limit)),
            ];
            let source = "rigid plate on supports, stiffness by length; limit from the job file";
            found.stops.push(Finding::of(&OVER, &values, source));
        }
        BearingVerdict::Idle => {
            let source = "rigid plate on supports, stiffness by length";
            found.cautions.push(Finding::of(&IDLE, &[support], source));
        }
        BearingVerdict::NoLimitGiven | BearingVerdict::Within { .. } => {}
    }
}

/// A support that only a person takes over its limit.
fn over_with_person(bearing: &Bearing, words: Words) -> Option<Finding> {
    let BearingVerdict::Within { limit } = bearing.verdict else {
        return None;
    };
    let values = [
        ("support", bearing.what.clone()),
        ("carried", words.mass(bearing.share.mass())),
        ("with_person", words.mass(bearing.with_person)),
        ("limit", words.mass(limit)),
    ];
    let source = "rigid plate on supports; a person of 1 kN, judgement";
    (bearing.with_person > limit).then(|| Finding::of(&OVER_WITH_PERSON, &values, source))
}

/// The edges that reach too far, farthest first; those that reach as far and may as far in one finding,
/// with the worst stress of them.
fn overhangs(all: &[Overhang], words: Words) -> Vec<Finding> {
    let mut alike: Vec<Vec<&Overhang>> = Vec::new();
    for overhang in all.iter().filter(|o| o.is_over()) {
        let told = |o: &Overhang| (reach(o, words), limit(o.limit, words), o.verdict.is_some());
        let same = |group: &&mut Vec<&Overhang>| {
            let first = group.first();
            first.is_some_and(|first| told(first) == told(overhang))
        };
        match alike.iter_mut().find(same) {
            Some(group) => group.push(overhang),
            None => alike.push(vec![overhang]),
        }
    }
    alike.iter().filter_map(|g| overhang(g, words)).collect()
}

fn reach(overhang: &Overhang, words: Words) -> String {
    words.length(overhang.overhang_mm)
}

fn overhang(alike: &[&Overhang], words: Words) -> Option<Finding> {
    let first = alike.first()?;
    let edges: Vec<&str> = alike.iter().map(|o| o.edge.as_str()).collect();
    let mut values = vec![
        ("edges", edges.join(", ")),
        ("reach", reach(first, words)),
        ("limit", limit(first.limit, words)),
    ];
    let stresses = alike.iter().filter_map(|o| o.person_mpa.zip(o.verdict));
    let worst = stresses.max_by(|a, b| a.0.total_cmp(&b.0));
    let source = format!("{}; {BEND_SOURCE}", LIMIT_SOURCE.cite());
    let phrase = match worst {
        Some((stress, verdict)) => {
            values.push(("stress", number(stress, 2)));
            values.push(("times", number(verdict.utilisation(), 2)));
            &OVERHANG
        }
        None => &OVERHANG_ALONE,
    };
    Some(Finding::of(phrase, &values, source))
}

fn limit(limit: ReachLimit, words: Words) -> String {
    match limit {
        ReachLimit::UpTo { limit_mm } => words.length(limit_mm),
        ReachLimit::NonePublished => NONE_PUBLISHED.to_owned(),
    }
}

fn span(span: &Span, words: Words) -> Option<Finding> {
    let values = [
        ("span", words.length(span.span_mm)),
        ("limit", limit(span.limit, words)),
    ];
    span.is_over()
        .then(|| Finding::of(&SPAN, &values, LIMIT_SOURCE.cite()))
}

fn leant_on(leaning: &Leaning, found: &mut Findings) {
    if leaning.tips_at.is_some() {
        let source = "statics of a rigid plate; a person of 1 kN, judgement";
        found.stops.push(Finding::of(&TIPS_LEANT_ON, &[], source));
    }
    if leaning.verdict.is_above() {
        let values = [
            ("stress", number(leaning.stress_mpa, 2)),
            ("times", number(leaning.verdict.utilisation(), 2)),
        ];
        let finding = Finding::of(&BENDS_LEANT_ON, &values, BEND_SOURCE);
        found.cautions.push(finding);
    }
}
