//! A person leaning on the top once it is set down.
//!
//! The rigid top's supports share its weight and the person's, none of them pulling: that tells what
//! each carries and whether the top tips. How far the stone bends between them is told by an elastic
//! beam on the same supports, which a rigid one would make far too much of. The person leans in turn
//! at both ends, half-way between neighbouring supports and beside each cutout, at the front and at
//! the back.

use serde::Serialize;

use super::axes::Axes;
use super::bend::{Beam, Orientation, PlateSection, Reaction, Worst};
use super::continuous::{Continuous, FULL_N_PER_MM2, Post};
use super::judged::BendVerdict;
use super::overhang::PERSON_N;
use super::plate::unilateral;
use super::rests::Rests;
use super::strip::BeamProfile;
use crate::geom::{Point, SAME_MM};
use crate::handle::loads::Load;
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
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tips_at: Option<Point>,
}

/// The worst of all places.
#[must_use]
pub fn worst(top: &Load, rests: &Rests, stone: &Stone) -> Option<Leaning> {
    let axes = Axes::of(&top.region);
    let strip = BeamProfile::new(&top.region, axes);
    let slice = PlateSection {
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

/// The supports as posts along the stone. Each support is a row of posts of its own, no farther apart than
/// a part of the stone's length, each at the middle of what it stands for; those level with each other are
/// one.
fn posts(strip: &BeamProfile, rests: &Rests) -> Vec<Post> {
    let apart = strip.length_mm() / POSTS;
    let mut posts: Vec<Post> = (0..rests.count)
        .flat_map(|support| row(strip, rests, support, apart))
        .collect();
    posts.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
    posts.dedup_by(|next, kept| {
        let level = (next.at_mm - kept.at_mm).abs() <= SAME_MM;
        if level {
            kept.stiffness += next.stiffness;
        }
        level
    });
    posts
}

/// One support's springs in equal stretches along the stone.
fn row(strip: &BeamProfile, rests: &Rests, support: usize, apart: f64) -> Vec<Post> {
    let springs = rests.of(support).filter_map(|k| rests.springs.get(k));
    let mut springs: Vec<(f64, f64)> = springs
        .map(|s| (strip.axes().seen(s.at).0, s.stiffness))
        .filter(|s| s.1 > 0.0)
        .collect();
    springs.sort_by(|a, b| a.0.total_cmp(&b.0));
    let (Some(first), Some(last)) = (springs.first(), springs.last()) else {
        return Vec::new();
    };
    let (first, length) = (first.0, last.0 - first.0);
    let stretches = (length / apart).ceil().max(1.0);
    let stretch = (length / stretches).max(SAME_MM);
    let number = |u: f64| ((u - first) / stretch).floor().min(stretches - 1.0);
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

/// Posts of one support are no farther apart than this part of the stone's length.
const POSTS: f64 = 16.0;

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
        let rest = unilateral(&self.rests.springs, total, middle);
        if rest.off_balance_mm > OFF_BALANCE_MM {
            return None;
        }
        let (u, _) = self.beam.strip().axes().seen(at);
        let mut props = self.continuous.unilateral(PERSON_N, u)?;
        props.push(Reaction {
            at_mm: u,
            force_n: -PERSON_N,
        });
        let carried = (0..self.rests.count).map(|i| {
            let forces = self.rests.of(i).filter_map(|k| rest.forces.get(k).copied());
            Mass::from_kg(forces.flatten().sum::<f64>() / GRAVITY)
        });
        Some(Held {
            carried: carried.collect(),
            worst: self.beam.worst_held(Orientation::Flat, &props),
        })
    }
}
