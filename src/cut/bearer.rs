//! Where the stone is borne along a cut, on both sides of it.
//!
//! Makers' standard warnings for cutting-off wheels ask for support near the line of cut and near the
//! edge of the piece, on both sides: a side that sags closes the kerf on the disc.

use serde::Serialize;

use crate::geom::{Line, Outline, Point};
use crate::job::Job;

/// Farthest apart two bearers may stand along a cut, mm (judgement).
const APART_MM: f64 = 450.0;
/// Length of a bearer across the line, mm (judgement: short enough that those of two cuts lie beside each other).
pub(crate) const BLOCK_MM: f64 = 100.0;
/// From the end of a cut to its first bearer, mm (judgement).
pub(crate) const FROM_END_MM: f64 = 60.0;
/// From the line to the bearers on each side, mm (judgement: near the cut, clear of the disc that
/// comes through).
const OFF_LINE_MM: f64 = 60.0;

/// Bearers along a cut: blocks across it on the deck, one on each side of the line at every place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bearers {
    /// Places along the cut, mm from where it enters the stone; they lie evenly from either end.
    pub at: Vec<f64>,
    /// From the line to the middle of the bearers under the kept stone, mm.
    pub kept_off: f64,
    /// From the line to the middle of the bearers under the waste, mm: in the middle of a strip too
    /// narrow for more.
    pub waste_off: f64,
}

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

/// Places along a length: near both ends and evenly between, no farther apart than 450 mm; the middle
/// alone when the ends would meet.
#[must_use]
pub fn spread(length: f64) -> Vec<f64> {
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
