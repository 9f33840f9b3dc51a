//! Findings about bending and the trestles.

use super::sources::BEND_SOURCE;
use crate::diag::{Finding, Findings, Harm, Phrase};
use crate::handle::bending::bench::{Bench, Lies};
use crate::handle::bending::judged::Bending;
use crate::handle::bending::poses::Strength;
use crate::handle::handling::Handling;
use crate::handle::piece::HandledPiece;
use crate::job::Job;
use crate::words::{Arg, Unit, Value};

pub(crate) const NOT_FLAT: Phrase = Phrase::of_job("bends-flat-always");
pub(crate) const BENDS_FLAT: Phrase = Phrase::of_job("bends-flat");
pub(crate) const NOT_BY_ITS_ENDS: Phrase = Phrase::of_job("carry-on-edge-not-by-its-ends");
pub(crate) const BRACED_ON_EDGE: Phrase = Phrase::of_job("carry-on-edge-braced");
pub(crate) const FLAWED: Phrase = Phrase::of_job("flaws-and-strength");
pub(crate) const FALLS: Phrase = Phrase::of_job("falls-off-trestles")
    .harm(Harm::Maims)
    .key("lift.trestles");
pub(crate) const BENDS_ON_TRESTLES: Phrase =
    Phrase::of_job("bends-on-trestles").key("lift.trestles");
pub(crate) const MOVED: Phrase = Phrase::of_job("trestles-are-moved");

/// Values of a phrase.
type Said = Vec<Arg>;

/// How far each stone may lie flat and be held on edge: one finding each for the worst, flaws told with it.
pub(super) fn bending(job: &Job, handling: &Handling, found: &mut Findings) {
    let flaws = job.slab.flaws.len();
    let pieces: Vec<&HandledPiece> = handling.pieces().collect();
    let flat = worst(&pieces, |s| &s.best)
        .map(|(piece, bending)| (&NOT_FLAT, piece, bending))
        .or_else(|| {
            let (piece, bending) = worst(&pieces, poorly_held)?;
            Some((&BENDS_FLAT, piece, bending))
        });
    match flat {
        Some((phrase, piece, bending)) => {
            let mut values = stressed(bending, piece);
            values.extend(places(&piece.strength.best));
            values.push(("flaws", Value::count(flaws)));
            let finding = Finding::of(phrase, values, BEND_SOURCE);
            found.warnings.push(finding);
        }
        None => found.warnings.extend(flawed(flaws)),
    }
    let on_edge = worst(&pieces, |s| &s.best_on_edge)
        .map(|(piece, bending)| (&BRACED_ON_EDGE, piece, bending))
        .or_else(|| {
            let (piece, bending) = worst(&pieces, |s| &s.ends_on_edge)?;
            Some((&NOT_BY_ITS_ENDS, piece, bending))
        });
    if let Some((phrase, piece, bending)) = on_edge {
        let mut values = stressed(bending, piece);
        values.extend(places(&piece.strength.best_on_edge));
        let finding = Finding::of(phrase, values, BEND_SOURCE);
        found.warnings.push(finding);
    }
}

/// Flat by its ends, or with one end lifted off: the worse.
fn poorly_held(s: &Strength) -> &Bending {
    if s.ends_only.worst.stress_mpa < s.one_end_lifted.worst.stress_mpa {
        &s.one_end_lifted
    } else {
        &s.ends_only
    }
}

/// The stone that is farthest over what is allowed in one way of lying; nothing when none is over.
fn worst<'a>(
    pieces: &[&'a HandledPiece],
    way: impl Fn(&'a Strength) -> &'a Bending,
) -> Option<(&'a HandledPiece, &'a Bending)> {
    let all = pieces.iter().map(|p| (*p, way(&p.strength)));
    let over = all.filter(|(_, bending)| bending.verdict.is_above());
    let times = |b: &Bending| b.verdict.utilisation();
    over.max_by(|a, b| times(a.1).total_cmp(&times(b.1)))
}

fn stress(mpa: f64) -> Value {
    Value::of(mpa, Unit::Megapascal).decimals(2)
}

fn stressed(bending: &Bending, piece: &HandledPiece) -> Said {
    vec![
        ("stone", Value::term(piece.name.clone())),
        ("how", Value::term(bending.what)),
        ("stress", stress(bending.worst.stress_mpa)),
        ("width", Value::size(bending.worst.width_mm)),
        ("at", Value::size(bending.worst.at_mm)),
        ("allowed", stress(piece.strength.allowed_mpa).down()),
        ("times", Value::number(bending.verdict.utilisation(), 1)),
    ]
}

/// Where the two best supports stand, and the stress on them.
fn places(best: &Bending) -> Said {
    let at = &best.worst.supports_mm;
    let ends = [("first", at.first()), ("second", at.last())];
    let ends = ends.into_iter();
    let mut said: Said = ends
        .filter_map(|(gap, mm)| Some((gap, Value::size(*mm?))))
        .collect();
    said.push(("best", stress(best.worst.stress_mpa)));
    said
}

fn flawed(count: usize) -> Option<Finding> {
    let values = [("count", Value::count(count))];
    (count > 0).then(|| Finding::of(&FLAWED, values, "judgement"))
}

/// Trestles that drop the stone or let it bend too far, and those that are moved between cuts.
pub(super) fn trestles(benches: &[Bench], found: &mut Findings) {
    for bench in benches {
        let [first, second] = bench.at_mm.map(Value::size);
        let mut values = vec![("first", first), ("second", second)];
        match &bench.lies {
            Lies::Falls { state } => {
                values.push(("stone", Value::term(state.clone())));
                let finding = Finding::of(&FALLS, values, "statics");
                found.stops.push(finding);
            }
            Lies::Judged {
                state,
                stress_mpa,
                verdict,
            } if verdict.is_above() => {
                values.push(("stone", Value::term(state.clone())));
                values.push(("stress", stress(*stress_mpa)));
                values.push(("times", Value::number(verdict.utilisation(), 1)));
                let finding = Finding::of(&BENDS_ON_TRESTLES, values, BEND_SOURCE);
                found.warnings.push(finding);
            }
            // That no two trestles are enough is told with the bending.
            Lies::Judged { .. } | Lies::Bedded { .. } => {}
        }
    }
    let moved = benches.iter().filter_map(|b| b.before_cut);
    let moved: Vec<Value> = moved.map(Value::count).collect();
    if !moved.is_empty() {
        let values = [("cuts", Value::List(moved))];
        found.warnings.push(Finding::of(&MOVED, values, "statics"));
    }
}
