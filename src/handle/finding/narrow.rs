//! Findings about narrow stone beside cutouts and at inside corners.

use super::sources::BEND_SOURCE;
use crate::diag::{Finding, Findings, Phrase};
use crate::handle::bending::neck::Neck;
use crate::handle::bending::rail::{OpeningSize, Rail, RailVerdict};
use crate::handle::bending::splint::Splint;
use crate::handle::handling::Handling;
use crate::handle::piece::HandledPiece;
use crate::tables::documents as doc;
use crate::words::{Arg, Unit, Value};

pub(crate) const BRACE_RAIL: Phrase = Phrase::of_job("brace-the-rail");
pub(crate) const BED_RAIL: Phrase = Phrase::of_job("brace-the-rail-on-a-frame");
pub(crate) const BRACE_NECK: Phrase = Phrase::of_job("brace-the-neck");
pub(crate) const BED_NECK: Phrase = Phrase::of_job("brace-the-neck-on-a-frame");
pub(crate) const NARROW: Phrase = Phrase::of_job("narrow-rail");

const BRACE_FIRST: &str = "brace it before the stone is moved";
const TOO_WEAK: &str = "too weak to be moved flat";
/// Said instead of a stress on edge of a rail that then stands upright.
const NOT_RECKONED: &str = "not reckoned";

/// Values of a phrase.
type Said = Vec<Arg>;

/// The narrow rails and necks that want a brace, each told once, where it is stressed most.
pub(super) fn narrow(handling: &Handling, found: &mut Findings) {
    let mut rails: Vec<(&HandledPiece, &Rail)> = Vec::new();
    let mut necks: Vec<(&HandledPiece, &Neck)> = Vec::new();
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
        found.warnings.extend(weak_rail(piece, rail));
        found.warnings.extend(narrow_rail(rail));
    }
    for (piece, neck) in necks {
        found.warnings.push(weak_neck(piece, neck));
    }
}

fn weak_rail(piece: &HandledPiece, rail: &Rail) -> Option<Finding> {
    let verdict = match rail.verdict {
        RailVerdict::Holds { .. } => return None,
        RailVerdict::Brace { .. } => BRACE_FIRST,
        RailVerdict::TooWeak { .. } => TOO_WEAK,
    };
    let on_edge = rail.on_edge_mpa.map(|s| Value::of(s, Unit::Megapascal));
    let mut values = place(rail);
    values.extend([
        ("stone", Value::term(piece.name.clone())),
        ("verdict", Value::term(verdict)),
        ("length", Value::size(rail.length_mm)),
        (
            "together",
            Value::of(rail.together_mpa, Unit::Megapascal).decimals(2),
        ),
        (
            "alone",
            Value::of(rail.alone_mpa, Unit::Megapascal).decimals(2),
        ),
        (
            "on_edge",
            on_edge.unwrap_or_else(|| Value::term(NOT_RECKONED)),
        ),
        (
            "allowed",
            Value::of(piece.strength.allowed_mpa, Unit::Megapascal).decimals(2),
        ),
    ]);
    let phrases = [&BRACE_RAIL, &BED_RAIL];
    Some(braced(phrases, values, rail.splint.as_ref()))
}

fn place(rail: &Rail) -> Said {
    vec![
        ("rail", Value::term(rail.place.kind)),
        ("cutouts", rail.place.cutouts.join(", ").into()),
        ("width", Value::size(rail.width_mm).down()),
    ]
}

/// A finding in the first phrase with its timbers, or in the second when no timber will do.
fn braced(
    [with, without]: [&'static Phrase; 2],
    mut values: Said,
    splint: Option<&Splint>,
) -> Finding {
    let Some(splint) = splint else {
        return Finding::of(without, values, BEND_SOURCE);
    };
    let [width, depth] = splint.timber_mm;
    values.extend([
        ("timber_width", Value::number(width, 0)),
        ("timber_depth", Value::size(depth)),
        ("timbers", Value::count(usize::from(splint.count))),
        ("timber_length", Value::size(splint.length_mm)),
        (
            "braced",
            Value::of(splint.stone_mpa, Unit::Megapascal).decimals(2),
        ),
    ]);
    Finding::of(with, values, BEND_SOURCE)
}

/// A rail beside a tap hole that is narrower than is published. Those of larger cutouts are measured and
/// told where the cutouts are planned, in `cut::rail`, which leaves tap holes out.
fn narrow_rail(rail: &Rail) -> Option<Finding> {
    if rail.place.opening == OpeningSize::Large {
        return None;
    }
    let least = rail.least_mm.filter(|least| rail.width_mm < *least)?;
    let mut values = place(rail);
    values.push(("least", Value::size(least)));
    Some(Finding::of(&NARROW, values, doc::RAIL_WIDTHS.cite()))
}

fn weak_neck(piece: &HandledPiece, neck: &Neck) -> Finding {
    let values = vec![
        ("stone", Value::term(piece.name.clone())),
        ("neck", Value::term(neck.name.clone())),
        ("width", Value::size(neck.width_mm)),
        ("hanging", Value::mass(neck.hanging)),
        (
            "stress",
            Value::of(neck.stress_mpa, Unit::Megapascal).decimals(2),
        ),
        (
            "allowed",
            Value::of(piece.strength.allowed_mpa, Unit::Megapascal).decimals(2),
        ),
    ];
    braced([&BRACE_NECK, &BED_NECK], values, neck.splint.as_ref())
}
