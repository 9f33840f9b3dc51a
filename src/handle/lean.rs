//! A person leaning on the top once it is set down.
//!
//! The rigid top's supports share its weight and the person's, none of them pulling: that tells what
//! each carries and whether the top tips. How far the stone bends between them is told by an elastic
//! beam on the same supports, which a rigid one would make far too much of. The person leans in turn
//! at both ends, half-way between neighbouring supports and beside each cutout, at the front and at
//! the back.

use serde::Serialize;

use super::Load;
use super::axes::Axes;
use super::bend::{Beam, Lie, Prop, Slice, Worst};
use super::continuous::{Continuous, FULL_N_PER_MM2, Post};
use super::judged::BendVerdict;
use super::overhang::PERSON_N;
use super::plate::{Spring, settled};
use super::strip::Strip;
use super::support::Rests;
use crate::geom::{Point, SAME_MM};
use crate::job::Stone;
use crate::units::{GRAVITY, Mass};

/// Off balance by more than this, mm, the top tips (judgement: rounding of a tape).
const OFF_BALANCE_MM: f64 = 1.0;

/// The top with a person leaning on it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Leaning {
    /// Where the person leans when the stone is stressed most, slab frame.
    pub at: Point,
    /// Greatest stress along the stone, `MPa`.
    pub stress_mpa: f64,
    /// The cross-section it is in, slab frame.
    pub worst_line: [Point; 2],
    /// How that stands to what is allowed.
    pub verdict: BendVerdict,
    /// The most each support carries, whatever place the person leans at; in the job file's order.
    pub carried: Vec<Mass>,
    /// A place where the person tips the top.
    pub tips_at: Option<Point>,
}

/// The worst of all places.
#[must_use]
pub fn worst(top: &Load, rests: &Rests, stone: &Stone) -> Option<Leaning> {
    let axes = Axes::of(&top.region);
    let strip = Strip::new(&top.region, axes);
    let slice = Slice {
        weight_n_per_mm2: GRAVITY * top.mass.high.kg() / top.region.area(),
        thickness_mm: stone.thickness.least,
    };
    let beam = Beam::new(&strip, slice);
    let places = places(&strip, rests, top);
    let posts = posts(&strip, rests);
    let continuous = Continuous::new(&beam, &posts)?;
    let set = Set {
        beam: &beam,
        continuous: &continuous,
        rests,
        balance: top.region.centroid(),
    };
    let allowed = stone.strength_mpa / stone.safety_factor;
    let mut carried = vec![Mass::default(); rests.count];
    let (mut tips_at, mut found) = (None, None::<(Point, Worst)>);
    for at in places {
        let Some(held) = set.leant_on(at) else {
            tips_at = tips_at.or(Some(at));
            continue;
        };
        for (most, here) in carried.iter_mut().zip(&held.carried) {
            *most = if here > most { *here } else { *most };
        }
        let above = |f: &(Point, Worst)| held.worst.stress_mpa > f.1.stress_mpa;
        if found.as_ref().is_none_or(above) {
            found = Some((at, held.worst));
        }
    }
    found.map(|(at, worst)| Leaning {
        at,
        stress_mpa: worst.stress_mpa,
        worst_line: strip.chord_at(worst.at_mm),
        verdict: BendVerdict::of(worst.stress_mpa, allowed),
        carried,
        tips_at,
    })
}

/// Where the person leans: at the edges of these cross-sections.
fn places(strip: &Strip, rests: &Rests, top: &Load) -> Vec<Point> {
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
    lines.into_iter().flat_map(|u| strip.chord_at(u)).collect()
}

/// The supports as posts along the stone; those closer together than a few centimetres are one.
fn posts(strip: &Strip, rests: &Rests) -> Vec<Post> {
    let near = strip.length_mm() / POSTS;
    let place = |spring: &Spring| (strip.axes().seen(spring.at).0, spring.stiffness);
    let mut springs: Vec<(f64, f64)> = rests.springs.iter().map(place).collect();
    springs.sort_by(|a, b| a.0.total_cmp(&b.0));
    // Counted from the middle, so that a mirrored top has mirrored posts.
    let number = |u: f64| ((u - strip.length_mm() / 2.0) / near).round();
    let groups = springs.chunk_by(|a, b| number(a.0) == number(b.0));
    groups
        .map(|group| {
            let stiff: f64 = group.iter().map(|s| s.1).sum();
            let middle: f64 = group.iter().map(|s| s.0 * s.1).sum();
            Post {
                at_mm: middle / stiff,
                stiffness: stiff * FULL_N_PER_MM2,
            }
        })
        .collect()
}

/// Most posts along the stone.
const POSTS: f64 = 24.0;

struct Set<'a> {
    beam: &'a Beam<'a>,
    continuous: &'a Continuous<'a>,
    rests: &'a Rests,
    balance: Point,
}

/// The top held with the person at one place.
struct Held {
    worst: Worst,
    carried: Vec<Mass>,
}

impl Set<'_> {
    /// Nothing when it tips.
    fn leant_on(&self, at: Point) -> Option<Held> {
        let weight = self.beam.weight_n();
        let total = weight + PERSON_N;
        let middle = self.balance + (at - self.balance) * (PERSON_N / total);
        let rest = settled(&self.rests.springs, total, middle);
        if rest.off_balance_mm > OFF_BALANCE_MM {
            return None;
        }
        let (u, _) = self.beam.strip().axes().seen(at);
        let mut props = self.continuous.settled(PERSON_N, u)?;
        props.push(Prop {
            at_mm: u,
            force_n: -PERSON_N,
        });
        let carried = (0..self.rests.count).map(|i| {
            let forces = self.rests.of(i).filter_map(|k| rest.forces.get(k).copied());
            Mass::from_kg(forces.flatten().sum::<f64>() / GRAVITY)
        });
        Some(Held {
            carried: carried.collect(),
            worst: self.beam.worst_held(Lie::Flat, &props),
        })
    }
}
