//! Core holes that would lie almost on one another, made one: a bit cannot begin beside the middle of
//! a hole.

use super::{InsidePlace, Way};
use crate::cut::Hole;
use crate::cut::corner::{Bored, GROUND_MM, NEAR_MM, ONE_LEAVES_MM};
use crate::cut::kept::{Kept, Ring};

/// The places with one hole where two would lie nearer than [`NEAR_MM`].
pub(super) fn joined(kept: &Kept, ring: &Ring, mut places: Vec<InsidePlace>) -> Vec<InsidePlace> {
    for i in (0..places.len()).rev() {
        if let Some((by, left)) = made_by_arc(ring, &places, i)
            && let Way::Bored(bored) = &mut places[by].way
        {
            bored.ground_mm = bored.ground_mm.max(left);
            places.remove(i);
        }
    }
    for i in 0..places.len() {
        for j in 0..places.len() {
            if places[i].sides.after == places[j].sides.before && i != j {
                let pair = bored(&places[i]).zip(bored(&places[j]));
                let one = pair.and_then(|(a, b)| of_two(kept, a, b));
                if let Some((a, b)) = one {
                    (places[i].way, places[j].way) = (Way::Bored(a), Way::Bored(b));
                }
            }
        }
    }
    places
}

const fn bored(place: &InsidePlace) -> Option<&Bored> {
    match &place.way {
        Way::Bored(bored) => Some(bored),
        Way::Plunged | Way::Unable => None,
    }
}

/// The hollow arc beside a sharp corner whose hole makes that corner too, and what it leaves there, mm.
///
/// Edges beside an arc that keep different allowances meet it at a slight angle, which is no corner of
/// its own.
fn made_by_arc(ring: &Ring, places: &[InsidePlace], corner: usize) -> Option<(usize, f64)> {
    let place = &places[corner];
    let own = bored(place)
        .filter(|_| place.arc.is_none())?
        .holes
        .first()?;
    let at = ring.pieces[place.sides.before].seg.end();
    let beside = [place.sides.before, place.sides.after].map(Some);
    places.iter().enumerate().find_map(|(i, other)| {
        let arc = bored(other).filter(|_| other.arc.is_some() && beside.contains(&other.arc))?;
        let left = |hole: &Hole| (hole.at.distance(at) - hole.diameter / 2.0).max(0.0);
        let near = |hole: &&Hole| are_near(hole, own) && left(hole) <= ONE_LEAVES_MM;
        arc.holes.iter().find(near).map(|hole| (i, left(hole)))
    })
}

fn are_near(a: &Hole, b: &Hole) -> bool {
    a.diameter == b.diameter && a.at.distance(b.at) <= NEAR_MM
}

/// Two corners at the ends of a short piece whose nearest holes become one in the middle between them;
/// nothing when they are not near, or when more would be left than a hand takes off.
fn of_two(kept: &Kept, before: &Bored, after: &Bored) -> Option<(Bored, Bored)> {
    let (a, b) = (before.holes.last()?, after.holes.first()?);
    let hole = Hole {
        at: a.at.midpoint(b.at),
        diameter: a.diameter,
    };
    let clear = kept.is_clear_of_circle(hole.at, hole.diameter / 2.0);
    // Nothing stands out farther than before by more than the hole was moved.
    let moved = hole.at.distance(a.at);
    let most = before.ground_mm.max(after.ground_mm) + moved;
    if !are_near(a, b) || !clear || most > GROUND_MM {
        return None;
    }
    let stop = before.stops[1].midpoint(after.stops[0]);
    let (mut one, mut other) = (before.clone(), after.clone());
    one.holes.pop();
    one.holes.push(hole);
    other.holes.remove(0);
    (one.stops[1], other.stops[0]) = (stop, stop);
    one.ground_mm += moved;
    other.ground_mm += moved;
    Some((one, other))
}
