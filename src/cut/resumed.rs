//! Cuts of a job that goes on after a repair: faces and core holes that are there already.

use crate::geom::{Line, Point, Seg};
use crate::job::Drilled;

use super::Hole;
use super::course::Course;
use super::inside::{InsidePlace, Way};
use super::kept::Ring;

/// A hole lies where another was drilled when their middles are no farther apart than this, mm
/// (judgement: a tape cannot tell).
const SAME_HOLE_MM: f64 = 0.5;
/// A hole serves for another that would lie no farther off, mm (judgement: what is left beside it is
/// ground off, and a bit has no hold so near another hole).
pub const SERVES_MM: f64 = 5.0;
/// So far off a face a hole still ends the cut along it, mm: half the narrowest kerf of a hand disc
/// (judgement).
const TOUCHES_MM: f64 = 0.5;

impl Course<'_> {
    /// Whether a hole has been drilled already.
    pub(super) fn is_drilled(&self, hole: &Hole) -> bool {
        let mut drilled = self.job.slab.begun.drilled.iter();
        drilled.any(|d| {
            let same = (d.diameter - hole.diameter).abs() <= SAME_HOLE_MM;
            same && d.at.distance(hole.at) <= SAME_HOLE_MM
        })
    }

    /// A corner whose hole would lie almost on one that is there: the old hole serves, and what it leaves is
    /// ground off.
    pub(super) fn drilled_before(&self, ring: &Ring, place: &mut InsidePlace) {
        let Some(hole) = single(place) else { return };
        let off = |d: &Drilled| d.at.distance(hole.at);
        let drilled = self.job.slab.begun.drilled.iter();
        let near = drilled.filter(|d| off(d) <= SERVES_MM);
        if let Some(old) = near.min_by(|a, b| off(a).total_cmp(&off(b))) {
            let (at, diameter) = (old.at, old.diameter);
            served_by(ring, place, Hole { at, diameter });
        }
    }
}

/// Two corners of a boundary whose holes of one bit would lie almost on each other, as at the end of a slot hardly wider
/// than the bit: the first hole serves for both.
pub(super) fn one_for_two(ring: &Ring, places: &mut [InsidePlace]) {
    for i in 1..places.len() {
        let (before, after) = places.split_at_mut(i);
        let Some(hole) = single(&after[0]) else {
            continue;
        };
        let same = |old: &Hole| {
            let off = old.at.distance(hole.at);
            off > 0.0 && off <= SAME_HOLE_MM && old.diameter == hole.diameter
        };
        if let Some(old) = before.iter().filter_map(single).find(same) {
            served_by(ring, &mut after[0], old);
        }
    }
}

/// The hole of a place that has one.
fn single(place: &InsidePlace) -> Option<Hole> {
    match &place.way {
        Way::Bored(bored) => match bored.holes[..] {
            [hole] => Some(hole),
            _ => None,
        },
        _ => None,
    }
}

/// Another hole makes a corner: the cuts beside it end there.
fn served_by(ring: &Ring, place: &mut InsidePlace, hole: Hole) {
    let Way::Bored(bored) = &mut place.way else {
        return;
    };
    bored.holes = vec![hole];
    let pieces = [place.sides.before, place.sides.after].map(|p| &ring.pieces[p].seg);
    let ends = [pieces[0].end(), pieces[1].start()];
    for (stop, (seg, end)) in bored.stops.iter_mut().zip(pieces.into_iter().zip(ends)) {
        *stop = stop_at(seg, hole).unwrap_or(end);
    }
}

/// Where a hole beside a straight face ends the cut along it.
fn stop_at(face: &Seg, hole: Hole) -> Option<Point> {
    let Seg::Line(a, b) = face else { return None };
    let line = Line::through(*a, *b);
    let off = -line.left_of(hole.at) - hole.diameter / 2.0;
    (off.abs() <= TOUCHES_MM).then(|| line.at(line.foot(hole.at)))
}
