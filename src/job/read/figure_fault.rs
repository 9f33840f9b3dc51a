//! Making the figure, or saying why it cannot be made.

use super::figure_said::SaidFigure;
use crate::geom::{OutlineFault, Point};
use crate::job::ledger::{Ledger, TextRange};
use crate::job::shape::{STRAIGHT, ShapeFault, short_edges, turn_at};
use crate::job::words::{listed, short};
use crate::job::{CornerCut, Shape};
use crate::units::{LengthUnit, MM_PER_INCH};

/// The shape of a figure, with every fault noted.
pub(super) fn shape(ledger: &Ledger, figure: &SaidFigure) -> Option<Shape> {
    let mut clean = straight_corners(ledger, figure);
    if clean {
        let faults = short_edges(&figure.corners, &figure.cuts, &figure.bows);
        clean = faults.is_empty() || is_crooked(figure);
        if !clean {
            for (edge, length_mm, needed_mm) in faults {
                too_short(ledger, figure, edge, (length_mm, needed_mm));
            }
        }
    }
    if !clean {
        return None;
    }
    let (corners, cuts) = (figure.corners.clone(), figure.cuts.clone());
    match Shape::bowed(figure.naming, corners, cuts, figure.bows.clone()) {
        Ok(shape) => Some(shape),
        Err(fault) => {
            let (message, hint) = words(ledger, figure, fault);
            let (key, span) = said(figure, fault);
            ledger.fault(key, *span, format!("{key}: {message}"), hint);
            None
        }
    }
}

/// The key and the place that a fault is about.
fn said(figure: &SaidFigure, fault: ShapeFault) -> &(String, TextRange) {
    let own = match fault {
        ShapeFault::BowTooHigh { edge, .. } => figure.bow_said[edge].as_ref(),
        ShapeFault::NoRound { corner, .. } => figure.cut_said[corner].as_ref(),
        _ => None,
    };
    own.unwrap_or(&figure.said)
}

/// Whether the straight-sided figure itself is at fault, which comes before its corners.
fn is_crooked(figure: &SaidFigure) -> bool {
    let sharp = vec![CornerCut::Sharp; figure.corners.len()];
    Shape::new(figure.naming, figure.corners.clone(), sharp).is_err()
}

/// Refuses to round a corner that is none.
fn straight_corners(ledger: &Ledger, figure: &SaidFigure) -> bool {
    let mut clean = true;
    for (corner, said) in figure.cut_said.iter().enumerate() {
        let Some((key, span)) = said else { continue };
        if turn_at(&figure.corners, &figure.bows, corner).abs() < STRAIGHT {
            let name = figure.corner(corner);
            let message = format!("{key}: the edges run straight through corner {name}");
            ledger.fault(
                key,
                *span,
                message,
                "there is nothing to cut off; leave it out",
            );
            clean = false;
        }
    }
    clean
}

/// The treatments of an edge's ends do not fit on it.
fn too_short(ledger: &Ledger, figure: &SaidFigure, edge: usize, (length, needed): (f64, f64)) {
    let next = (edge + 1) % figure.corners.len();
    let treated: Vec<usize> = [edge, next]
        .into_iter()
        .filter(|c| figure.cuts[*c] != CornerCut::Sharp)
        .collect();
    let names: Vec<String> = treated.iter().map(|c| figure.corner(*c)).collect();
    let (word, verb) = if names.len() == 1 {
        ("corner", "needs")
    } else {
        ("corners", "need")
    };
    let edge_name = figure.edge(edge);
    let message = format!(
        "{word} {} {verb} {} of edge {edge_name}, which is {}: {} too much",
        listed(&names),
        ledger.length(needed),
        ledger.length(length),
        ledger.length(needed - length),
    );
    let most: Vec<String> = treated
        .iter()
        .map(|c| round_down(ledger, size(figure.cuts[*c]) * length / needed))
        .collect();
    let hint = match &most[..] {
        [one] => format!("take {one} or less at corner {}", names[0]),
        [a, b] if a == b => format!("take {a} or less each"),
        _ => format!(
            "take {} or less at corners {}",
            listed(&most),
            listed(&names)
        ),
    };
    let at = treated.iter().find_map(|c| figure.cut_said[*c].clone());
    let (key, span) = at.unwrap_or_else(|| figure.said.clone());
    ledger.fault(key, span, message, hint);
}

fn size(cut: CornerCut) -> f64 {
    match cut {
        CornerCut::Sharp => 0.0,
        CornerCut::Round(mm) | CornerCut::Clip(mm) | CornerCut::Scoop(mm) => mm,
    }
}

/// A length that may still be taken: never rounded up.
fn round_down(ledger: &Ledger, mm: f64) -> String {
    match ledger.length_unit() {
        LengthUnit::Millimetre => format!("{} mm", short((mm * 10.0 + 1e-6).floor() / 10.0)),
        LengthUnit::Inch => {
            format!(
                "{} in",
                short((mm / MM_PER_INCH * 100.0 + 1e-6).floor() / 100.0)
            )
        }
    }
}

/// Message and hint for a figure that is not an outline.
fn words(ledger: &Ledger, figure: &SaidFigure, fault: ShapeFault) -> (String, String) {
    match fault {
        ShapeFault::Clockwise => (
            "the corners run clockwise".to_owned(),
            format!(
                "list them counter-clockwise, seen from above with the finished face up: {}",
                turned_round(ledger, &figure.corners)
            ),
        ),
        ShapeFault::Figure(fault) => straight_words(ledger, figure, fault),
        ShapeFault::EdgeTooShort { edge, .. } => (
            format!("edge {} is too short for its corners", figure.edge(edge)),
            "take less off its corners".to_owned(),
        ),
        ShapeFault::BowTooHigh { edge, half_mm } => (
            format!(
                "edge {} rises {}; an arc rises less than half its chord, {}",
                figure.edge(edge),
                ledger.length(figure.bows[edge].abs()),
                ledger.length(half_mm)
            ),
            format!("take less than {}", ledger.length(half_mm)),
        ),
        ShapeFault::NoRound { corner, most_mm } => no_round(ledger, figure, corner, most_mm),
        ShapeFault::Finished(fault) => (
            match fault {
                OutlineFault::Crossing { at, .. } => format!(
                    "with its corners cut, the outline touches or crosses itself {}",
                    near(ledger, at)
                ),
                _ => "with its corners cut, nothing is left of the figure".to_owned(),
            },
            "take less off its corners".to_owned(),
        ),
    }
}

fn no_round(ledger: &Ledger, figure: &SaidFigure, corner: usize, most_mm: f64) -> (String, String) {
    let asked = size(figure.cuts[corner]);
    let name = figure.corner(corner);
    (
        format!(
            "no arc of radius {} touches both edges of corner {name}: {} too much",
            ledger.length(asked),
            ledger.length(asked - most_mm)
        ),
        format!(
            "take {} or less at corner {name}",
            round_down(ledger, most_mm)
        ),
    )
}

fn straight_words(ledger: &Ledger, figure: &SaidFigure, fault: OutlineFault) -> (String, String) {
    let count = figure.corners.len();
    match fault {
        OutlineFault::Crossing { first, second, at } => (
            format!(
                "edges {} and {} touch or cross {}",
                figure.edge(first),
                figure.edge(second),
                near(ledger, at)
            ),
            "list the corners in order round the figure, and check them against the tape"
                .to_owned(),
        ),
        OutlineFault::NoLength { piece } => (
            format!(
                "corners {} and {} are the same point",
                figure.corner(piece),
                figure.corner((piece + 1) % count)
            ),
            "leave one of them out".to_owned(),
        ),
        OutlineFault::Empty | OutlineFault::Gap { .. } | OutlineFault::NotFinite { .. } => (
            "the corners enclose no area".to_owned(),
            "check them against the tape".to_owned(),
        ),
    }
}

fn near(ledger: &Ledger, at: Point) -> String {
    format!("near ({}, {})", ledger.length(at.x), ledger.length(at.y))
}

/// The same corners the other way round, the first kept, ready to be copied.
fn turned_round(ledger: &Ledger, corners: &[Point]) -> String {
    let unit = ledger.length_unit().in_mm();
    let pair = |p: &Point| format!("[{}, {}]", short(p.x / unit), short(p.y / unit));
    let first = corners.first().map(pair);
    let rest = corners.iter().skip(1).rev().map(pair);
    let all: Vec<String> = first.into_iter().chain(rest).collect();
    format!("corners = [{}]", all.join(", "))
}
