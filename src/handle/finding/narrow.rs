//! Findings about narrow stone beside cutouts and at inside corners.

use super::BEND_SOURCE;
use crate::diag::{Finding, Findings, Phrase, number};
use crate::handle::neck::Neck;
use crate::handle::rail::{Opening, Rail, RailVerdict, WIDTH_SOURCE};
use crate::handle::splint::Splint;
use crate::handle::words::Words;
use crate::handle::{Handling, Piece};

/// How a rail is stressed, whatever braces it.
macro_rules! rail_stress {
    () => {
        "{stone}: {width} wide, {length} long. Lying flat or in people's hands it is stressed {together} MPa \
         with the other stone's help and {alone} MPa when it must take the bending alone, as when that side \
         is lifted first; on edge on two supports: {on_edge}; allowed {allowed} MPa. "
    };
}
/// How a neck is stressed, whatever braces it.
macro_rules! neck_stress {
    () => {
        "It is {width} wide; {hanging} hanging on it lying flat stresses it {stress} MPa, allowed {allowed} \
         MPa. Hold the stone up on both sides of it whenever it lies flat. "
    };
}
/// The timber that braces narrow stone.
macro_rules! timber {
    () => {
        "Before it is lifted clamp along it, on edge and touching all the way, straight timber of \
         {timber_width} × {timber_depth} mm (pieces side by side: {timbers}), at least {timber_length} long, \
         with padded clamps on whole stone at both ends: that leaves {braced} MPa."
    };
}
macro_rules! no_timber {
    () => {
        "No timber is stiff enough: bed the whole stone on a frame or board."
    };
}
macro_rules! never_there {
    () => {
        " Carry it on edge; never hold or clamp it there."
    };
}

pub(crate) const BRACE_RAIL: Phrase = Phrase {
    id: "brace-the-rail",
    title: "{rail} ({cutouts}): {verdict}",
    detail: concat!(rail_stress!(), timber!(), never_there!()),
};
pub(crate) const BED_RAIL: Phrase = Phrase {
    id: "brace-the-rail-on-a-frame",
    title: "{rail} ({cutouts}): {verdict}",
    detail: concat!(rail_stress!(), no_timber!(), never_there!()),
};
pub(crate) const BRACE_NECK: Phrase = Phrase {
    id: "brace-the-neck",
    title: "{stone}, {neck}: it must not carry the stone beyond it",
    detail: concat!(neck_stress!(), timber!()),
};
pub(crate) const BED_NECK: Phrase = Phrase {
    id: "brace-the-neck-on-a-frame",
    title: "{stone}, {neck}: it must not carry the stone beyond it",
    detail: concat!(neck_stress!(), no_timber!()),
};
pub(crate) const NARROW: Phrase = Phrase {
    id: "narrow-rail",
    title: "{rail} ({cutouts}): narrower than the trade leaves it",
    detail: "It lies beside a tap hole and is {width} wide; {least} is published as the least beside a \
             cutout, and nothing less for a tap hole. Move the hole or make it smaller, or ask whether the \
             stone can be stiffened from below for good.",
};

const BRACE_FIRST: &str = "brace it before the stone is moved";
const TOO_WEAK: &str = "too weak to be moved flat";
/// Said instead of a stress on edge of a rail that then stands upright.
const NOT_RECKONED: &str = "not reckoned";

/// Values of a phrase.
type Said = Vec<(&'static str, String)>;

/// The narrow rails and necks that want a brace, each told once, where it is stressed most.
pub(super) fn narrow(handling: &Handling, words: Words, found: &mut Findings) {
    let mut rails: Vec<(&Piece, &Rail)> = Vec::new();
    let mut necks: Vec<(&Piece, &Neck)> = Vec::new();
    for piece in handling.states.iter().chain([&handling.top]) {
        for rail in &piece.rails {
            match rails.iter_mut().find(|r| r.1.name == rail.name) {
                Some(same) if same.1.alone_mpa > rail.alone_mpa => {}
                Some(same) => *same = (piece, rail),
                None => rails.push((piece, rail)),
            }
        }
        for neck in piece.necks.iter().filter(|n| n.verdict.is_above()) {
            match necks.iter_mut().find(|n| n.1.name == neck.name) {
                Some(same) if same.1.stress_mpa > neck.stress_mpa => {}
                Some(same) => *same = (piece, neck),
                None => necks.push((piece, neck)),
            }
        }
    }
    for (piece, rail) in rails {
        found.cautions.extend(weak_rail(piece, rail, words));
        found.cautions.extend(narrow_rail(rail, words));
    }
    for (piece, neck) in necks {
        found.cautions.push(weak_neck(piece, neck, words));
    }
}

fn weak_rail(piece: &Piece, rail: &Rail, words: Words) -> Option<Finding> {
    let verdict = match rail.verdict {
        RailVerdict::Holds { .. } => return None,
        RailVerdict::Brace { .. } => BRACE_FIRST,
        RailVerdict::TooWeak { .. } => TOO_WEAK,
    };
    let on_edge = rail.on_edge_mpa.map(|s| format!("{s:.2} MPa"));
    let mut values = place(rail, words);
    values.extend([
        ("stone", piece.name.clone()),
        ("verdict", verdict.to_owned()),
        ("length", words.length(rail.length_mm)),
        ("together", number(rail.together_mpa, 2)),
        ("alone", number(rail.alone_mpa, 2)),
        (
            "on_edge",
            on_edge.unwrap_or_else(|| NOT_RECKONED.to_owned()),
        ),
        ("allowed", number(piece.strength.allowed_mpa, 2)),
    ]);
    let phrases = [&BRACE_RAIL, &BED_RAIL];
    Some(braced(phrases, values, rail.splint.as_ref(), words))
}

fn place(rail: &Rail, words: Words) -> Said {
    vec![
        ("rail", rail.place.kind.to_owned()),
        ("cutouts", rail.place.cutouts.join(", ")),
        ("width", words.length(rail.width_mm)),
    ]
}

/// A finding in the first phrase with its timbers, or in the second when no timber will do.
fn braced(
    [with, without]: [&'static Phrase; 2],
    mut values: Said,
    splint: Option<&Splint>,
    words: Words,
) -> Finding {
    let Some(splint) = splint else {
        return Finding::of(without, &values, BEND_SOURCE);
    };
    let [width, depth] = splint.timber_mm;
    values.extend([
        ("timber_width", number(width, 0)),
        ("timber_depth", number(depth, 0)),
        ("timbers", splint.count.to_string()),
        ("timber_length", words.length(splint.length_mm)),
        ("braced", number(splint.stone_mpa, 2)),
    ]);
    Finding::of(with, &values, BEND_SOURCE)
}

/// A rail beside a tap hole that is narrower than is published. Those of larger cutouts are measured and
/// told where the cutouts are planned, in `cut::rail`, which leaves tap holes out.
fn narrow_rail(rail: &Rail, words: Words) -> Option<Finding> {
    if rail.place.opening == Opening::Large {
        return None;
    }
    let least = rail.least_mm.filter(|least| rail.width_mm < *least)?;
    let mut values = place(rail, words);
    values.push(("least", words.length(least)));
    Some(Finding::of(&NARROW, &values, WIDTH_SOURCE.cite()))
}

fn weak_neck(piece: &Piece, neck: &Neck, words: Words) -> Finding {
    let values = vec![
        ("stone", piece.name.clone()),
        ("neck", neck.name.clone()),
        ("width", words.length(neck.width_mm)),
        ("hanging", words.mass(neck.hanging)),
        ("stress", number(neck.stress_mpa, 2)),
        ("allowed", number(piece.strength.allowed_mpa, 2)),
    ];
    braced(
        [&BRACE_NECK, &BED_NECK],
        values,
        neck.splint.as_ref(),
        words,
    )
}
