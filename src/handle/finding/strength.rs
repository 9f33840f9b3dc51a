//! Findings about bending and the trestles.

use super::BEND_SOURCE;
use crate::diag::{Finding, Findings, Phrase, number};
use crate::handle::bench::{Bench, Lies, Places};
use crate::handle::judged::Bending;
use crate::handle::words::Words;
use crate::handle::{Handling, Piece, Strength};
use crate::job::Job;

pub(crate) const NOT_FLAT: Phrase = Phrase {
    id: "bends-flat-always",
    title: "{stone}: must not lie flat on two supports",
    detail: "Lying {how}: {stress} MPa where it is {width} wide, {at} from the end; allowed {allowed} MPa \
             (strength ÷ safety factor), {times} times. Even on the best two supports. Keep it on edge, \
             or bed it on a full flat board.",
};
pub(crate) const BENDS_FLAT: Phrase = Phrase {
    id: "bends-flat",
    title: "{stone}: lying flat it can snap",
    detail: "Lying {how}: {stress} MPa where it is {width} wide, {at} from the end; allowed {allowed} MPa \
             (strength ÷ safety factor), {times} times. Never lift one end of it while it lies flat. \
             Flat it may lie only on supports {first} and {second} from the left end (lower end when \
             upright), where it is {best} MPa.",
};
pub(crate) const ON_EDGE: Phrase = Phrase {
    id: "carry-on-edge",
    title: "{stone}: carry it on edge, never flat",
    detail: "Held at the two ends it is stressed {flat} MPa flat and {edge} MPa on edge; allowed is \
             {allowed} MPa. Sound stone is assumed.",
};
pub(crate) const NOT_BY_ITS_ENDS: Phrase = Phrase {
    id: "carry-on-edge-not-by-its-ends",
    title: "{stone}: carry it on edge, never flat, and not by its ends",
    detail: "Held at the two ends it is stressed {flat} MPa flat and {edge} MPa on edge; allowed is \
             {allowed} MPa, so not even on edge may it hang from its ends: hold or stand it {first} and \
             {second} from the end, where it is {best} MPa. Sound stone is assumed.",
};
pub(crate) const BRACED_ON_EDGE: Phrase = Phrase {
    id: "carry-on-edge-braced",
    title: "{stone}: not even on edge before it is braced",
    detail: "Held at the two ends it is stressed {flat} MPa flat and {edge} MPa on edge, on the best two \
             supports on edge {best} MPa; allowed is {allowed} MPa. Brace its narrow parts first, or carry \
             it bedded on a frame. Sound stone is assumed.",
};
pub(crate) const FLAWED: Phrase = Phrase {
    id: "flaws-and-strength",
    title: "The slab has flaws: the strength figures do not hold across them",
    detail: "Flaws noted: {count}. Every stress here assumes sound stone; at a fissure or a mend it may \
             break far below them. Keep it on edge, on a full board or frame.",
};
pub(crate) const FALLS: Phrase = Phrase {
    id: "falls-off-trestles",
    title: "{stone}: it does not lie on the trestles",
    detail: "With trestles {first} and {second} from the slab's end its balance point is not between them, \
             or it does not reach them. Move them before that cut, or leave lift.trestles out.",
};
pub(crate) const BENDS_ON_TRESTLES: Phrase = Phrase {
    id: "bends-on-trestles",
    title: "{stone}: two trestles are not enough",
    detail: "On trestles {first} and {second} from the slab's end it is stressed {stress} MPa, {times} \
             times what is allowed. Bed it on a full flat board instead.",
};

/// Values of a phrase.
type Said = Vec<(&'static str, String)>;

pub(super) fn bending(piece: &Piece, words: Words, found: &mut Findings) {
    let s = &piece.strength;
    let name = ("stone", piece.name.clone());
    if s.best.verdict.is_above() {
        let mut values = stressed(&s.best, s.allowed_mpa, words);
        values.push(name);
        let finding = Finding::of(&NOT_FLAT, &values, BEND_SOURCE);
        found.cautions.push(finding);
        return;
    }
    let bad = [&s.ends_only, &s.one_end_lifted];
    let worst = bad
        .into_iter()
        .max_by(|a, b| a.worst.stress_mpa.total_cmp(&b.worst.stress_mpa));
    if let Some(worst) = worst.filter(|b| b.verdict.is_above()) {
        let mut values = stressed(worst, s.allowed_mpa, words);
        values.extend(best_places(&s.best, words));
        values.push(name);
        let finding = Finding::of(&BENDS_FLAT, &values, BEND_SOURCE);
        found.cautions.push(finding);
    }
}

/// The worst state between slab and top, when it may not lie flat though both of them may.
pub(super) fn between(handling: &Handling, words: Words, found: &mut Findings) {
    let above = |piece: &Piece| piece.strength.best.verdict.is_above();
    if above(&handling.slab) || above(&handling.top) {
        return;
    }
    let stress = |piece: &Piece| piece.strength.best.worst.stress_mpa;
    let states = handling.states.iter().filter(|s| above(s));
    if let Some(worst) = states.max_by(|a, b| stress(a).total_cmp(&stress(b))) {
        bending(worst, words, found);
    }
}

fn stressed(bending: &Bending, allowed_mpa: f64, words: Words) -> Said {
    vec![
        ("how", bending.what.to_owned()),
        ("stress", number(bending.worst.stress_mpa, 2)),
        ("width", words.length(bending.worst.width_mm)),
        ("at", words.length(bending.worst.at_mm)),
        ("allowed", number(allowed_mpa, 2)),
        ("times", number(bending.verdict.utilisation(), 2)),
    ]
}

/// Where the two best supports stand, and the stress on them.
fn best_places(best: &Bending, words: Words) -> Said {
    let at = &best.worst.supports_mm;
    let ends = [("first", at.first()), ("second", at.last())];
    let ends = ends.into_iter();
    let mut said: Said = ends
        .filter_map(|(gap, mm)| Some((gap, words.length(*mm?))))
        .collect();
    said.push(("best", number(best.worst.stress_mpa, 2)));
    said
}

/// Slab and top on edge against flat.
pub(super) fn on_edge(handling: &Handling, words: Words) -> impl Iterator<Item = Finding> {
    let pieces = [&handling.slab, &handling.top];
    pieces.into_iter().map(move |p| edge_against_flat(p, words))
}

fn edge_against_flat(piece: &Piece, words: Words) -> Finding {
    let s = &piece.strength;
    let mut values = vec![
        ("stone", piece.name.clone()),
        ("flat", number(s.ends_only.worst.stress_mpa, 2)),
        ("edge", number(s.ends_on_edge.worst.stress_mpa, 3)),
        ("allowed", number(s.allowed_mpa, 2)),
    ];
    values.extend(best_places(&s.best_on_edge, words));
    Finding::of(how_on_edge(s), &values, BEND_SOURCE)
}

/// How far being on edge is enough.
fn how_on_edge(s: &Strength) -> &'static Phrase {
    if s.best_on_edge.verdict.is_above() {
        &BRACED_ON_EDGE
    } else if s.ends_on_edge.verdict.is_above() {
        &NOT_BY_ITS_ENDS
    } else {
        &ON_EDGE
    }
}

pub(super) fn flawed(job: &Job) -> Option<Finding> {
    let count = job.slab.flaws.len();
    let values = [("count", count.to_string())];
    (count > 0).then(|| Finding::of(&FLAWED, &values, "judgement"))
}

/// Trestles that drop the stone or let it bend too far.
pub(super) fn trestles(benches: &[Bench], words: Words, found: &mut Findings) {
    for bench in benches {
        let [first, second] = bench.at_mm.map(|mm| words.length(mm));
        let mut values = vec![("first", first), ("second", second)];
        match &bench.lies {
            Lies::Falls { state } => {
                values.push(("stone", state.clone()));
                let finding = Finding::of(&FALLS, &values, "statics");
                found.stops.push(finding);
            }
            Lies::Judged {
                state,
                stress_mpa,
                verdict,
            } if verdict.is_above() && bench.places == Places::Given => {
                values.push(("stone", state.clone()));
                values.push(("stress", number(*stress_mpa, 2)));
                values.push(("times", number(verdict.utilisation(), 2)));
                let finding = Finding::of(&BENDS_ON_TRESTLES, &values, BEND_SOURCE);
                found.cautions.push(finding);
            }
            Lies::Judged { .. } => {}
        }
    }
}
