//! Pieces end to end: one closed run.

use super::bit::Bit;
use super::content::DrawnPath;
use crate::geom::{Arc, Point, Seg};

/// Ends that lie nearer than this are the same, mm: far below what a tape can tell.
const SAME_MM: f64 = 0.05;

/// The one closed run that pieces make.
///
/// # Errors
/// Why they make none, or more than one.
pub(super) fn one(pieces: &[DrawnPath]) -> Result<Vec<Bit>, String> {
    let mut closed: Vec<(&str, Vec<Bit>)> = Vec::new();
    let mut open: Vec<(&str, Vec<Bit>)> = Vec::new();
    for piece in pieces {
        let bits = piece.bits.clone();
        let whole = piece.closed || meets(&bits);
        let to = if whole { &mut closed } else { &mut open };
        to.push((&piece.name, bits));
    }
    while let Some((name, mut run)) = open.pop() {
        while !meets(&run) {
            let Some(at) = run.last().map(Bit::end) else {
                break;
            };
            let Some(next) = following(&mut open, at) else {
                return Err(left_open(name, &run, &open));
            };
            run.extend(next);
        }
        closed.push((name, run));
    }
    match &mut closed[..] {
        [(_, run)] => Ok(snapped(std::mem::take(run))),
        [] => Err("it has no lines in it".to_owned()),
        several => {
            let names: Vec<&str> = several.iter().take(6).map(|(name, _)| *name).collect();
            Err(format!(
                "it holds {} closed outlines: {}; choose one by its name behind a #",
                several.len(),
                names.join(", ")
            ))
        }
    }
}

/// Whether a run ends where it begins.
fn meets(run: &[Bit]) -> bool {
    match (run.first(), run.last()) {
        (Some(first), Some(last)) => last.end().distance(first.start()) <= SAME_MM,
        _ => true,
    }
}

/// Takes the open run that goes on from a place, turned round where it must be.
fn following(open: &mut Vec<(&str, Vec<Bit>)>, at: Point) -> Option<Vec<Bit>> {
    let starts = |run: &[Bit]| {
        run.first()
            .is_some_and(|b| b.start().distance(at) <= SAME_MM)
    };
    let ends = |run: &[Bit]| run.last().is_some_and(|b| b.end().distance(at) <= SAME_MM);
    let found = open.iter().position(|(_, run)| starts(run) || ends(run))?;
    let (_, run) = open.swap_remove(found);
    if starts(&run) {
        return Some(run);
    }
    Some(run.iter().rev().map(Bit::reversed).collect())
}

fn left_open(name: &str, run: &[Bit], rest: &[(&str, Vec<Bit>)]) -> String {
    let at = run.last().map_or(Point::ORIGIN, Bit::end);
    let first = run.first().map_or(Point::ORIGIN, Bit::start);
    let ends = rest.iter().flat_map(|(_, run)| {
        let ends = [run.first().map(Bit::start), run.last().map(Bit::end)];
        ends.into_iter().flatten()
    });
    let gap = ends
        .map(|end| end.distance(at))
        .fold(first.distance(at), f64::min);
    format!(
        "{name}: the outline is open at ({:.2}, {:.2}) mm of the drawing; the nearest end is {gap:.2} mm away",
        at.x, at.y
    )
}

/// The run with each bit ending exactly where the next begins.
fn snapped(mut run: Vec<Bit>) -> Vec<Bit> {
    let starts: Vec<Point> = run.iter().map(Bit::start).collect();
    let next = starts.iter().cycle().skip(1);
    for (bit, to) in run.iter_mut().zip(next) {
        *bit = match *bit {
            Bit::Seg(Seg::Line(a, _)) => Bit::line(a, *to),
            Bit::Seg(Seg::Arc(arc)) => Bit::Seg(ending_at(&arc, *to)),
            Bit::Cubic([a, b, c, _]) => Bit::Cubic([a, b, c, *to]),
        };
    }
    run.retain(|b| b.start().distance(b.end()) > crate::geom::SAME_MM);
    run
}

/// The arc of the same sweep from the same start to another end.
fn ending_at(arc: &Arc, to: Point) -> Seg {
    let from = arc.at_angle(arc.start);
    let half = (to - from) * 0.5;
    let quarter = (arc.sweep / 4.0).tan();
    let centre = from + half + half.left() * ((1.0 - quarter * quarter) / (2.0 * quarter));
    if from.distance(to) <= crate::geom::SAME_MM || !centre.is_finite() {
        return Seg::Arc(*arc);
    }
    Seg::Arc(Arc {
        centre,
        radius: centre.distance(from),
        start: (from - centre).angle(),
        sweep: arc.sweep,
    })
}
