//! Where the stone is borne along a cut, on both sides of it.
//!
//! Makers' standard warnings for cutting-off wheels ask for support near the line of cut and near the
//! edge of the piece, on both sides: a side that sags closes the kerf on the disc.

use crate::geom::{Line, Outline, Point, Vector};
use crate::job::{Job, Part};
use crate::place::{EdgeUse, Placement};

use super::{Bearers, Cut, SetOut};

/// Farthest apart two bearers may stand along a cut, mm (judgement).
const APART_MM: f64 = 450.0;
/// Length of a bearer across the line, mm (judgement: short enough that those of two cuts lie beside each other).
pub(crate) const BLOCK_MM: f64 = 100.0;
/// From the end of a cut to its first bearer, mm (judgement).
const FROM_END_MM: f64 = 60.0;
/// From the line, or an edge that no cut makes, to the middle of the bearers, mm (judgement: near it, clear of the
/// disc that comes through).
const OFF_LINE_MM: f64 = 60.0;

/// Places the bearers of a cut along `face` between two points of it through `stone`.
#[must_use]
pub fn along(job: &Job, stone: &Outline, face: &Line, sawn: &[Point; 2]) -> Bearers {
    let middle = sawn[0].midpoint(sawn[1]);
    let across = Line {
        point: middle,
        along: face.along.right(),
    };
    let edges = stone.segs().iter().flat_map(|s| s.line_crossings(&across));
    // The face itself may be an edge of the stone already; a slab's edge lies a strip away.
    let near = job.place.least_strip_mm.min(1.0);
    let width = |side: f64| {
        let off = edges.clone().map(|m| m * side).filter(|m| *m > near);
        off.fold(f64::INFINITY, f64::min)
    };
    Bearers {
        at: spread(sawn[0].distance(sawn[1])),
        kept_off: OFF_LINE_MM.min(width(-1.0) / 2.0),
        waste_off: OFF_LINE_MM.min(width(1.0) / 2.0),
    }
}

/// The bearers of a cut: the two ends of each, slab frame.
pub(crate) fn blocks(cut: &Cut) -> Vec<[Point; 2]> {
    let (SetOut::Guide(set_out), Some(bearers)) = (&cut.set_out, &cut.bearers) else {
        return Vec::new();
    };
    let [from, to] = set_out.sawn;
    let along = (to - from).unit();
    let each = bearers.at.iter().flat_map(|mm| {
        let on = from + along * *mm;
        let sides = [bearers.waste_off, -bearers.kept_off];
        sides.map(|off| block(on + along.right() * off, along.right()))
    });
    each.collect()
}

/// Bearers under the straight edges of the top that no cut makes, so that nobody who leans there tips it: the two
/// ends of each, slab frame. Where another lies already there is none.
#[must_use]
pub fn under_edges(placement: &Placement, cuts: &[Cut]) -> Vec<[Point; 2]> {
    let middle = |[a, b]: [Point; 2]| a.midpoint(b);
    let mut taken: Vec<Point> = cuts.iter().flat_map(blocks).map(middle).collect();
    let mut found = Vec::new();
    for (seg, part) in placement.sawn.segs().iter().zip(&placement.sawn_parts) {
        let Part::Edge(edge) = part else { continue };
        if !matches!(placement.uses[*edge], EdgeUse::Flush { .. }) {
            continue;
        }
        let along = (seg.end() - seg.start()).unit();
        for mm in spread(seg.length()) {
            let at = seg.start() + along * mm + along.left() * OFF_LINE_MM;
            if taken.iter().all(|t| t.distance(at) >= BLOCK_MM) {
                taken.push(at);
                found.push(block(at, along.left()));
            }
        }
    }
    found
}

fn block(middle: Point, across: Vector) -> [Point; 2] {
    let half = across * (BLOCK_MM / 2.0);
    [middle - half, middle + half]
}

/// Places along a length: near both ends and evenly between, no farther apart than 450 mm; the middle
/// alone when the ends would meet.
fn spread(length: f64) -> Vec<f64> {
    let between = length - 2.0 * FROM_END_MM;
    if between <= FROM_END_MM {
        return vec![length / 2.0];
    }
    let gaps = (between / APART_MM).ceil().clamp(1.0, 200.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let count = gaps as usize;
    #[allow(clippy::cast_precision_loss)]
    let place = |i: usize| FROM_END_MM + between * i as f64 / gaps;
    (0..=count).map(place).collect()
}
