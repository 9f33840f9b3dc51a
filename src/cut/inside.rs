//! What each inside corner and each hollow arc of a boundary is made with: a core hole, plunges, or a chain
//! of core holes.

mod finding;
mod near;
mod place;

pub use place::{InsidePlace, Way};

pub(crate) use finding::{MUCH, NEAREST, NO_BIT, NO_DISC, RADIUS};
pub(super) use finding::{no_bit, told};

use std::f64::consts::TAU;

use crate::geom::Arc;
use crate::job::Job;

use super::ConcaveArc;
use super::corner::{self, GROUND_MM, Sides};
use super::disc::{self, Sunk, Task};
use super::kept::{Joint, Kept, Ring};

/// More than this beside the middle of a slot is much to grind off: then a chain of core holes is
/// better, mm (judgement).
pub(super) const MUCH_TO_GRIND_MM: f64 = 10.0;

/// Every inside corner and hollow arc of a boundary, in order.
#[must_use]
pub fn places(job: &Job, kept: &Kept, ring: &Ring) -> Vec<InsidePlace> {
    let mut places = Vec::new();
    for piece in 0..ring.pieces.len() {
        let sides = Sides {
            before: ring.before(piece),
            after: ring.after(piece),
        };
        if let Some(arc) = ring.pieces[piece].hollow() {
            let smooth = [sides.before, piece].map(|p| ring.joint_after(p) == Joint::Smooth);
            let way = way_of_arc(job, kept, ring, sides, arc, smooth == [true; 2]);
            places.push(InsidePlace {
                sides,
                arc: Some(piece),
                way,
            });
        }
        if ring.joint_after(piece) == Joint::Inside {
            let sides = Sides {
                before: piece,
                after: sides.after,
            };
            let bored = corner::one_hole(&job.core_bits, kept, ring, sides, 0.0, GROUND_MM);
            places.push(InsidePlace {
                sides,
                arc: None,
                way: bored.map_or(Way::Unable, Way::Bored),
            });
        }
    }
    near::joined(kept, ring, places)
}

/// A hollow arc: the core hole that is its own; else, between smooth neighbours, one hole that leaves little
/// in the corner; else plunges that leave little to grind; else a chain of holes; else plunges; else one
/// hole that leaves more.
fn way_of_arc(job: &Job, kept: &Kept, ring: &Ring, sides: Sides, arc: &Arc, smooth: bool) -> Way {
    let bits = &job.core_bits;
    let chain = corner::chain(bits, kept, arc);
    if let Some(bored) = &chain
        && bored.holes.len() == 1
    {
        return Way::Bored(bored.clone());
    }
    let whole = arc.sweep.abs() >= TAU - 1e-9;
    if smooth
        && !whole
        && let Some(bored) = corner::one_hole(bits, kept, ring, sides, arc.radius, GROUND_MM)
    {
        return Way::Bored(bored);
    }
    let radius_mm = arc.radius;
    let choice = disc::choose(job, Task::Inside { radius_mm });
    let plunged = ConcaveArc::of(radius_mm, Sunk::of(job, choice.disc));
    match (plunged, chain) {
        (Some(hollow), _) if hollow.sagitta <= MUCH_TO_GRIND_MM => Way::Plunged,
        (_, Some(bored)) => Way::Bored(bored),
        (Some(_), None) => Way::Plunged,
        // A corner rounder than asked for is better than none.
        (None, None) if smooth && !whole => {
            corner::one_hole(bits, kept, ring, sides, arc.radius, f64::INFINITY)
                .map_or(Way::Unable, Way::Bored)
        }
        (None, None) => Way::Unable,
    }
}

/// The name of the corner between two edges: the number they share, or both names.
#[must_use]
pub fn corner_between(ring: &Ring, sides: Sides) -> String {
    let [a, b] = [sides.before, sides.after].map(|p| ring.pieces[p].name.as_str());
    let shared = a.split('-').find(|n| b.split('-').any(|m| m == *n));
    shared.map_or_else(|| format!("{a}/{b}"), ToOwned::to_owned)
}
