//! Cuts of a job that goes on after a repair: faces and core holes that are there already.

use crate::geom::{Line, Point, Seg};
use crate::job::Drilled;

use super::Hole;
use super::course::Course;
use super::inside::{Place, Way};
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
    pub(super) fn drilled_before(&self, ring: &Ring, place: &mut Place) {
        let Way::Bored(bored) = &mut place.way else {
            return;
        };
        let [hole] = bored.holes[..] else { return };
        let off = |d: &Drilled| d.at.distance(hole.at);
        let drilled = self.job.slab.begun.drilled.iter();
        let near = drilled.filter(|d| off(d) <= SERVES_MM);
        let Some(old) = near.min_by(|a, b| off(a).total_cmp(&off(b))) else {
            return;
        };
        bored.holes = vec![Hole {
            at: old.at,
            diameter: old.diameter,
        }];
        let pieces = [place.sides.before, place.sides.after].map(|p| &ring.pieces[p].seg);
        let ends = [pieces[0].end(), pieces[1].start()];
        for (stop, (seg, end)) in bored.stops.iter_mut().zip(pieces.into_iter().zip(ends)) {
            *stop = stop_at(seg, old).unwrap_or(end);
        }
    }
}

/// Where a hole beside a straight face ends the cut along it.
fn stop_at(face: &Seg, hole: &Drilled) -> Option<Point> {
    let Seg::Line(a, b) = face else { return None };
    let line = Line::through(*a, *b);
    let off = -line.left_of(hole.at) - hole.diameter / 2.0;
    (off.abs() <= TOUCHES_MM).then(|| line.at(line.foot(hole.at)))
}
