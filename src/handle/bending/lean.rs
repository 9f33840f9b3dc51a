//! A person leaning on the top once it is set down.
//!
//! Whether the top tips is told by a rigid one whose supports share its weight and the person's, none of
//! them pulling; what each carries is the most of all ways of sharing (`elastic`); how far the stone
//! bends is told by an elastic beam along it on the same supports. The person leans in turn at both ends,
//! half-way between neighbouring supports and beside each cutout, at the front and at the back.

mod spot;

use serde::Serialize;
use spot::Map;

use crate::geom::{Point, SAME_MM};
use crate::handle::loads::Load;
use crate::job::Stone;
use crate::units::{GRAVITY, Mass};

use super::bend::{Beam, Orientation, Reaction, Worst};
use super::elastic::{Press, Ways};
use super::judged::BendVerdict;
use super::overhang::PERSON_N;
use super::rests::Rests;
use super::strip::BeamProfile;

pub(super) use spot::Set;
pub use spot::Spot;

/// The top with a person leaning on it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Leaning {
    /// Where the person leans when the stone is stressed most, slab frame.
    pub at: Point,
    /// What that place is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spot: Option<Spot>,
    /// Greatest stress along the stone, `MPa`.
    pub stress_mpa: f64,
    /// The cross-section it is in, slab frame.
    pub worst_line: [Point; 2],
    /// What that cross-section is called, on the person's side.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub worst_spot: Option<Spot>,
    /// How that stands to what is allowed.
    pub verdict: BendVerdict,
    /// The most each support carries, whatever place the person leans at; in the job file's order.
    #[serde(rename = "carried_kg")]
    pub carried: Vec<Mass>,
    /// A place where the person tips the top.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tips_at: Option<Point>,
    /// What that place is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tips_spot: Option<Spot>,
}

/// Stresses that differ by so small a part of them are the same: the first place is told.
const NOISE: f64 = 1e-9;

/// The worst of all places; `beam` is the top along its length.
#[must_use]
pub(super) fn worst(set: &Set, beam: &Beam, ways: &Ways, stone: &Stone) -> Option<Leaning> {
    let Set { top, rests, .. } = *set;
    let strip = beam.strip();
    ways.along.as_ref()?;
    let allowed = stone.strength_mpa / stone.safety_factor;
    let mut carried = vec![Mass::default(); rests.count];
    let (mut tips_at, mut found) = (None, None::<(Point, Worst)>);
    for at in places(strip, rests, top) {
        let Some(held) = leant_on(beam, ways, at) else {
            tips_at = tips_at.or(Some(at));
            continue;
        };
        for (most, here) in carried.iter_mut().zip(&held.carried) {
            *most = if here > most { *here } else { *most };
        }
        let above = |f: &(Point, Worst)| held.worst.stress_mpa > f.1.stress_mpa * (1.0 + NOISE);
        if found.as_ref().is_none_or(above) {
            found = Some((at, held.worst));
        }
    }
    let map = Map::new(set, strip);
    found.map(|(at, worst)| {
        let worst_line = strip.chord_at(worst.at_mm);
        // The side of the cross-section that the person leans at.
        let near = worst_line
            .into_iter()
            .min_by(|a, b| a.distance(at).total_cmp(&b.distance(at)));
        Leaning {
            at,
            spot: map.spot(at),
            stress_mpa: worst.stress_mpa,
            worst_line,
            worst_spot: near.and_then(|near| map.spot(near)),
            verdict: BendVerdict::of(worst.stress_mpa, allowed),
            carried,
            tips_at,
            tips_spot: tips_at.and_then(|at| map.spot(at)),
        }
    })
}

/// Where the person leans: at the edges of these cross-sections, and over the balance point, where no top that
/// lies still tips.
fn places(strip: &BeamProfile, rests: &Rests, top: &Load) -> Vec<Point> {
    let axes = strip.axes();
    let [from, to] = strip.reach();
    let mut lines = vec![from, to];
    let mut held: Vec<f64> = rests
        .places
        .iter()
        .flat_map(|p| p.ends)
        .map(|p| axes.seen(p).0)
        .collect();
    held.sort_by(f64::total_cmp);
    held.dedup_by(|a, b| (*a - *b).abs() <= SAME_MM);
    lines.extend(held.windows(2).map(|w| f64::midpoint(w[0], w[1])));
    let holes = top.region.holes.iter().map(|h| axes.seen(h.centroid()).0);
    lines.extend(holes);
    let edges = lines.into_iter().flat_map(|u| strip.chord_at(u));
    edges.chain([top.region.centroid()]).collect()
}

/// The top held with the person at one place.
struct Held {
    worst: Worst,
    carried: Vec<Mass>,
}

/// Nothing when it tips.
fn leant_on(beam: &Beam, ways: &Ways, at: Point) -> Option<Held> {
    let press = Press {
        force_n: PERSON_N,
        at,
    };
    let lying = ways.pressed(press);
    if lying.tips() {
        return None;
    }
    let carried = lying
        .most
        .iter()
        .map(|push| Mass::from_kg(push.force_n / GRAVITY))
        .collect();
    let mut props = lying.along?;
    props.push(Reaction {
        at_mm: beam.strip().axes().seen(at).0,
        force_n: -PERSON_N,
    });
    Some(Held {
        carried,
        worst: beam.worst_held(Orientation::Flat, &props),
    })
}
