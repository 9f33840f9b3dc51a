//! What core holes leave of the run-outs of stopped cuts and of plunges.

use crate::geom::{Point, Vector};
use crate::job::Drilled;

use super::{Cut, Hole, Remains, Removal};

impl Cut {
    /// The most stone it leaves on the face that it makes, run-outs apart, mm.
    #[must_use]
    pub fn stands_out_mm(&self) -> f64 {
        let left = self.left_to_remove.iter();
        left.filter(|l| l.why != Remains::RunOut)
            .fold(0.0, |most, l| most.max(l.length))
    }
}

/// Says of every run-out of the cuts `numbers` how much of it the holes drilled so far have left, mm; `before`
/// are those that were there before the first cut.
///
/// A run-out runs under the cut in the face, from where that ends back along its heading.
pub(super) fn settle(cuts: &mut [Cut], numbers: &[usize], before: &[Drilled]) {
    let there = before.iter().map(|d| Hole {
        at: d.at,
        diameter: d.diameter,
    });
    let new = cuts.iter().flat_map(|c| c.holes.clone());
    let holes: Vec<Hole> = there.chain(new).collect();
    let asked = cuts.iter_mut().filter(|c| numbers.contains(&c.number));
    for left in asked.flat_map(|c| &mut c.left_to_remove) {
        let (Remains::RunOut, Some(heading)) = (&left.why, left.heading) else {
            continue;
        };
        let heading = Vector::at_angle(heading.to_radians());
        left.left = left_of(left.at, heading, left.length, &holes);
        if left.left < left.length {
            left.by = Removal::FromCoreHole;
        }
    }
}

/// The length of a run-out that lies in no hole, mm: `end` is where the cut in the face ends.
fn left_of(end: Point, heading: Vector, length: f64, holes: &[Hole]) -> f64 {
    let from = end - heading * length;
    let mut taken: Vec<(f64, f64)> = holes
        .iter()
        .filter_map(|hole| stretch(hole, from, heading))
        .map(|(a, b)| (a.max(0.0), b.min(length)))
        .filter(|(a, b)| a < b)
        .collect();
    taken.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (mut left, mut reached) = (0.0, 0.0_f64);
    for (a, b) in taken {
        left += (a - reached).max(0.0);
        reached = reached.max(b);
    }
    left + (length - reached).max(0.0)
}

/// The stretch of a line that a hole takes, mm from `from`; nothing when the line misses it.
fn stretch(hole: &Hole, from: Point, heading: Vector) -> Option<(f64, f64)> {
    let to = hole.at - from;
    let (ahead, aside) = (to.dot(heading), to.cross(heading));
    let half = (hole.diameter / 2.0).powi(2) - aside * aside;
    (half > 0.0).then(|| (ahead - half.sqrt(), ahead + half.sqrt()))
}
