//! How far the top stands over its base.

use serde::Serialize;

use crate::geom::{Line, Point};
use crate::job::Job;

use super::smaller::Smaller;

/// How far an edge stands over the base.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct OverhangNow {
    /// The edge.
    pub edge: String,
    /// As wanted, mm; negative when the base stands out.
    #[serde(rename = "wanted_mm")]
    pub wanted: f64,
    /// As it can be had, mm.
    #[serde(rename = "now_mm")]
    pub now: f64,
}

/// A piece of the base faces the way of an edge when their directions differ by less than 60° (judgement).
const FACES_ALIKE: f64 = 0.5;

/// How far each edge stands over the base, square to it along its own length.
pub(super) fn of(job: &Job, smaller: &Smaller) -> Vec<OverhangNow> {
    let (Some(base), top) = (&job.base, &job.top.shape) else {
        return Vec::new();
    };
    let ring = base.outline().flattened();
    (0..top.count())
        .map(|edge| {
            let line = top.edge_line(edge);
            let bow = top.bows()[edge].max(0.0);
            let (from, to) = (top.corners()[edge], top.corners()[(edge + 1) % top.count()]);
            let wanted = over(&line, (line.foot(from), line.foot(to)), &ring) + bow;
            OverhangNow {
                edge: top.edge_name(edge),
                wanted,
                now: wanted - smaller.settled[edge].moved_mm,
            }
        })
        .collect()
}

/// From the pieces of a ring that face the way of a line, beside a stretch of it, the least distance to
/// its left, mm; from every corner of the ring where none does.
fn over(line: &Line, (from, to): (f64, f64), ring: &[Point]) -> f64 {
    let next = ring.iter().cycle().skip(1);
    let beside = ring.iter().zip(next).filter_map(|(a, b)| {
        let along = (*b - *a).unit().dot(line.along);
        let feet = [line.foot(*a), line.foot(*b)];
        let (low, high) = (feet[0].max(from), feet[1].min(to));
        if along <= FACES_ALIKE || low >= high {
            return None;
        }
        let at = |foot: f64| {
            let share = (foot - feet[0]) / (feet[1] - feet[0]);
            line.left_of(*a + (*b - *a) * share)
        };
        Some(at(low).min(at(high)))
    });
    let least = beside.fold(f64::INFINITY, f64::min);
    if least.is_finite() {
        return least;
    }
    let corners = ring.iter().map(|p| line.left_of(*p));
    corners.fold(f64::INFINITY, f64::min)
}
