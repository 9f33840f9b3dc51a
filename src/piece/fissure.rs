//! Fissures, hairlines and mends: the waste they run through and the cuts that cross them.

use crate::diag::{Finding, Harm, Phrase};
use crate::geom::{Outline, Region, Seg, Side};
use crate::job::{Flaw, FlawPlace, Job};
use crate::words::Value;

use super::{Crossing, Piece, Stones};

/// A flaw along less than this of a piece's stone does not part it, mm (judgement).
const LEAST_MM: f64 = 30.0;
/// A line is looked at every so many mm.
const STEP_MM: f64 = 5.0;

pub(crate) const FISSURE: Phrase = Phrase::of_job("fissure-in-waste").harm(Harm::Maims);

fn lines(flaws: &[Flaw]) -> impl Iterator<Item = (usize, Vec<Seg>)> {
    let all = flaws.iter().enumerate();
    all.filter_map(|(i, flaw)| match &flaw.place {
        FlawPlace::Line(points) => {
            let segs = points.windows(2).map(|w| Seg::Line(w[0], w[1]));
            Some((i, segs.collect()))
        }
        FlawPlace::Spot { .. } | FlawPlace::Area(_) => None,
    })
}

/// The flaws that slots cross in the stone that is there.
pub(super) fn crossed(
    flaws: &[Flaw],
    stone: &[Region],
    slots: &[Outline],
    cut: usize,
) -> Vec<Crossing> {
    let in_stone = |p| stone.iter().any(|part| part.side(p) != Side::Outside);
    let met = |segs: &[Seg]| {
        slots.iter().flat_map(Outline::segs).any(|side| {
            let meets = segs.iter().flat_map(|seg| seg.meets(side));
            meets.into_iter().any(in_stone)
        })
    };
    let found = lines(flaws).filter(|(_, segs)| met(segs));
    found.map(|(flaw, _)| Crossing { flaw, cut }).collect()
}

/// The flaws that run through a piece, by their places in the job file.
pub(super) fn through(flaws: &[Flaw], parts: &[Region]) -> Vec<usize> {
    let inside = |seg: &Seg| {
        let length = seg.length();
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        let steps = (length / STEP_MM).ceil().clamp(1.0, 1e4) as u32;
        let points = (0..steps).map(|k| seg.at((f64::from(k) + 0.5) / f64::from(steps)));
        let held = points.filter(|p| parts.iter().any(|part| part.side(*p) == Side::Inside));
        held.map(|_| length / f64::from(steps)).sum::<f64>()
    };
    let found = lines(flaws).filter(|(_, segs)| segs.iter().map(inside).sum::<f64>() >= LEAST_MM);
    found.map(|(flaw, _)| flaw).collect()
}

/// A finding for each flaw along a line that a cut crosses, or that runs through waste too heavy for a hand.
pub(super) fn findings(job: &Job, stones: &Stones) -> Vec<Finding> {
    let heavy = |p: &&Piece| p.mass.high.kg() > job.passes.waste_piece.kg();
    let flaws = job.slab.flaws.iter().enumerate();
    let told = flaws.filter_map(|(i, flaw)| {
        let crossings = stones.crossings.iter().filter(|c| c.flaw == i);
        let cuts: Vec<Value> = crossings.map(|c| Value::count(c.cut)).collect();
        let pieces: Vec<&Piece> = stones
            .pieces
            .iter()
            .filter(|p| p.flaws.contains(&i))
            .collect();
        if pieces.is_empty() || (cuts.is_empty() && !pieces.iter().any(&heavy)) {
            return None;
        }
        let names = pieces.iter().map(|p| Value::name(p.name.clone()));
        let values = [
            ("flaw", Value::name(flaw.what.clone())),
            ("pieces", Value::List(names.collect())),
            (
                "crossed",
                Value::Case(if cuts.is_empty() { "no" } else { "yes" }),
            ),
            ("cuts", Value::List(cuts)),
        ];
        Some(Finding::of(&FISSURE, values, "common practice"))
    });
    told.collect()
}
