//! Findings about setting the top down.

use super::BEND_SOURCE;
use super::words::{Words, finding};
use crate::diag::{Finding, Findings};
use crate::handle::lean::Leaning;
use crate::handle::overhang::{LIMIT_SOURCE, Overhang, ReachLimit};
use crate::handle::span::Span;
use crate::handle::support::{BearingVerdict, Setting, Standing};

pub(super) fn set_down(setting: &Setting, words: Words, found: &mut Findings) {
    match setting.stands {
        Standing::Balanced => {}
        Standing::Tips | Standing::NotSupported => found.stops.push(finding(
            "tips-off-supports",
            "The top does not lie still on its supports".to_owned(),
            "The supports do not reach round the balance point. Add or move supports before it is \
             set down."
                .to_owned(),
            "statics of a rigid plate",
        )),
    }
    found.cautions.extend(overhangs(&setting.overhangs, words));
    found
        .cautions
        .extend(setting.span.as_ref().and_then(|s| span(s, words)));
    if let Some(leaning) = &setting.leaning {
        leant_on(leaning, found);
    }
    found.cautions.extend(with_person(setting, words));
    for bearing in &setting.bearings {
        let carried = bearing.share.mass();
        match bearing.verdict {
            BearingVerdict::Over { limit } => found.stops.push(finding(
                "support-over-limit",
                format!("{} carries more than its limit", bearing.what),
                format!(
                    "It carries {}; its limit is {}. Add a support or move the others nearer.",
                    words.mass(carried),
                    words.mass(limit)
                ),
                "rigid plate on supports, stiffness by length; limit from the job file",
            )),
            BearingVerdict::Idle => found.cautions.push(finding(
                "support-lifts-off",
                format!("{} carries nothing", bearing.what),
                "The top does not press on it. Check its place and height; do not pull the top \
                 down to it."
                    .to_owned(),
                "rigid plate on supports, stiffness by length",
            )),
            BearingVerdict::NoLimitGiven | BearingVerdict::Within { .. } => {}
        }
    }
}

/// One finding for all supports that only a person takes over their limits.
fn with_person(setting: &Setting, words: Words) -> Option<Finding> {
    let over = setting
        .bearings
        .iter()
        .filter(|b| matches!(b.verdict, BearingVerdict::Within { limit } if b.with_person > limit));
    let each: Vec<String> = over
        .map(|b| {
            format!(
                "{}: {} of the stone, up to {} with a person",
                b.what,
                words.mass(b.share.mass()),
                words.mass(b.with_person)
            )
        })
        .collect();
    (!each.is_empty()).then(|| {
        finding(
            "support-over-limit-with-person",
            "Supports over their limits when somebody leans on the top".to_owned(),
            format!(
                "{}, leaning where it is worst. Add a support, or keep people off.",
                each.join("; ")
            ),
            "rigid plate on supports; a person of 1 kN, judgement",
        )
    })
}

/// One finding for all edges that reach too far, farthest first.
fn overhangs(all: &[Overhang], words: Words) -> Option<Finding> {
    let over: Vec<&Overhang> = all.iter().filter(|o| o.is_over()).collect();
    let edges: Vec<&str> = over.iter().map(|o| o.edge.as_str()).collect();
    let (last, first) = edges.split_last()?;
    let title = if first.is_empty() {
        format!("{} reaches too far beyond the supports", capital(last))
    } else {
        format!(
            "{} and {last} reach too far beyond the supports",
            capital(&first.join(", "))
        )
    };
    let each: Vec<String> = over.iter().map(|o| overhang(o, words)).collect();
    Some(finding(
        "overhang-too-far",
        title,
        format!("{} Put a bracket, leg or wall under it.", each.join(" ")),
        &format!("{}; {BEND_SOURCE}", LIMIT_SOURCE.cite()),
    ))
}

fn overhang(overhang: &Overhang, words: Words) -> String {
    let limit = match overhang.limit {
        ReachLimit::UpTo { limit_mm } => format!(
            "published for this thickness and width up to {}",
            words.length(limit_mm)
        ),
        ReachLimit::NonePublished => "nothing is published for stone so thin".to_owned(),
    };
    let person = overhang.person_mpa.zip(overhang.verdict);
    let person = person.map_or_else(String::new, |(stress, verdict)| {
        format!(
            "; with a person leaning on it {stress:.2} MPa, {:.2} times what is allowed",
            verdict.utilisation()
        )
    });
    format!(
        "{} reaches {} beyond them, {limit}{person}.",
        capital(&overhang.edge),
        words.length(overhang.overhang_mm)
    )
}

fn span(span: &Span, words: Words) -> Option<Finding> {
    if !span.is_over() {
        return None;
    }
    let limit = match span.limit {
        ReachLimit::UpTo { limit_mm } => {
            format!(
                "Published for this thickness: up to {}.",
                words.length(limit_mm)
            )
        }
        ReachLimit::NonePublished => "No free span is published for stone so thin.".to_owned(),
    };
    Some(finding(
        "span-too-wide",
        "The stone spans too far between supports".to_owned(),
        format!(
            "The widest stretch without support is {}. {limit} Put a rail or a cabinet side in between.",
            words.length(span.span_mm)
        ),
        &LIMIT_SOURCE.cite(),
    ))
}

fn leant_on(leaning: &Leaning, found: &mut Findings) {
    if leaning.tips_at.is_some() {
        found.stops.push(finding(
            "tips-when-leant-on",
            "The top tips when somebody leans on its edge".to_owned(),
            "A person of 1 kN at the worst place tips it off its supports. Add a support farther out; a \
             screw or a bead of glue does not hold it."
                .to_owned(),
            "statics of a rigid plate; a person of 1 kN, judgement",
        ));
    }
    if leaning.verdict.is_above() {
        found.cautions.push(finding(
            "bends-when-leant-on",
            "Somebody leaning on the top may break it".to_owned(),
            format!(
                "With a person of 1 kN at the worst place it is stressed {:.2} MPa, {:.2} \
                 times what is allowed. Put supports closer together, and beside every cutout.",
                leaning.stress_mpa,
                leaning.verdict.utilisation()
            ),
            BEND_SOURCE,
        ));
    }
}

fn capital(words: &str) -> String {
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
