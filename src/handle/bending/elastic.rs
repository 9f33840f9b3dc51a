//! A top bent over the supports under it, and the most that each of them carries.
//!
//! How stiff the real supports are beside the stone nobody knows, and an inner support carries the more the
//! stiffer they are. So a support's load is the greatest of several ways of sharing: a rigid top, and a top
//! that bends along or across its length over supports that give much or little. Each shares the whole
//! weight; the greatest of them together are more than that.

use super::axes::Axes;
use super::bend::{Beam, PlateSection, Reaction};
use super::continuous::{Continuous, Post};
use super::plate::unilateral;
use super::rests::Rests;
use super::strip::BeamProfile;
use crate::geom::{Point, SAME_MM};
use crate::handle::loads::Load;
use crate::job::Stone;
use crate::units::GRAVITY;

/// Stiffness of a full support, N/mm for each mm of its length: an 18 mm board of 2500 `MPa`
/// standing 750 mm high (judgement).
const BOARD_N_PER_MM2: f64 = 60.0;
/// The same of a wall: 100 mm of masonry of 4500 `MPa`, 750 mm high (judgement).
const WALL_N_PER_MM2: f64 = 600.0;
/// Posts of one support are no farther apart than this part of the stone's length.
const POSTS: f64 = 16.0;
/// What spreads across the beam by less than this part of that is taken as one post.
const NARROW: f64 = 0.25;
/// Off balance by more than this, mm, the top tips (judgement: rounding of a tape).
pub(super) const OFF_BALANCE_MM: f64 = 1.0;

/// A force that presses on the top.
#[derive(Clone, Copy, Debug)]
pub(super) struct Press {
    /// N.
    pub(super) force_n: f64,
    /// Where, slab frame.
    pub(super) at: Point,
}

/// What a support pushes up with.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Push {
    /// Newton.
    pub(super) force_n: f64,
    /// Length of the support that is pressed on, mm.
    pub(super) pressed_mm: f64,
}

impl Push {
    fn greater(self, other: Self) -> Self {
        Self {
            force_n: self.force_n.max(other.force_n),
            pressed_mm: self.pressed_mm.max(other.pressed_mm),
        }
    }
}

/// The top as a beam along its length, and as one across it.
pub(super) struct Strips {
    strips: [BeamProfile; 2],
    slice: PlateSection,
}

impl Strips {
    pub(super) fn of(top: &Load, stone: &Stone) -> Self {
        let along = Axes::of(&top.region);
        let axes = [along, along.across(&top.region)];
        Self {
            strips: axes.map(|axes| BeamProfile::new(&top.region, axes)),
            slice: PlateSection {
                weight_n_per_mm2: GRAVITY * top.mass.high.kg() / top.region.area(),
                thickness_mm: stone.thickness.least,
            },
        }
    }

    /// Along, then across.
    pub(super) fn beams(&self) -> [Beam<'_>; 2] {
        self.strips
            .each_ref()
            .map(|strip| Beam::new(strip, self.slice))
    }
}

/// All the ways in which the top may lie on its supports.
pub(super) struct Ways<'a> {
    rests: &'a Rests,
    balance: Point,
    weight_n: f64,
    /// Bent along over boards; nothing when the supports stand at fewer than two places along the top.
    pub(super) along: Option<Bent<'a>>,
    others: Vec<Bent<'a>>,
}

impl<'a> Ways<'a> {
    pub(super) fn new(beams: &'a [Beam<'a>; 2], rests: &'a Rests, balance: Point) -> Self {
        let [along, across] = beams;
        let apart = along.strip().length_mm() / POSTS;
        let bent = |beam, stiff| Bent::new(beam, rests, stiff, apart, balance);
        let others = [
            bent(along, WALL_N_PER_MM2),
            bent(across, BOARD_N_PER_MM2),
            bent(across, WALL_N_PER_MM2),
        ];
        Self {
            rests,
            balance,
            weight_n: along.weight_n(),
            along: bent(along, BOARD_N_PER_MM2),
            others: others.into_iter().flatten().collect(),
        }
    }

    /// How the top lies with a force on it.
    pub(super) fn pressed(&self, press: Press) -> Lying {
        let total = self.weight_n + press.force_n;
        let middle = self.balance + (press.at - self.balance) * (press.force_n / total);
        let rest = unilateral(&self.rests.springs, total, middle);
        let mut most = vec![Push::default(); self.rests.count];
        for (support, push) in most.iter_mut().enumerate() {
            for k in self.rests.of(support) {
                let force = rest.forces.get(k).copied().flatten();
                if let (Some(force), Some(length)) = (force, self.rests.lengths.get(k)) {
                    push.force_n += force;
                    push.pressed_mm += length;
                }
            }
        }
        for bent in self.along.iter().chain(&self.others) {
            let held = bent.held(press).unwrap_or_default();
            for (push, here) in most.iter_mut().zip(bent.pushes(&held, self.rests.count)) {
                *push = push.greater(here);
            }
        }
        Lying {
            most,
            off_balance_mm: rest.off_balance_mm,
        }
    }
}

/// How the top lies with a force on it.
pub(super) struct Lying {
    /// The most that each support pushes up with, in the job file's order.
    pub(super) most: Vec<Push>,
    /// How far the middle of a rigid top's forces lies from the load, mm; see [`super::plate::Resting`].
    pub(super) off_balance_mm: f64,
}

impl Lying {
    /// Whether no forces of the supports balance it.
    pub(super) fn tips(&self) -> bool {
        self.off_balance_mm > OFF_BALANCE_MM
    }
}

/// A stretch of a support as a post.
struct Foot {
    post: Post,
    support: usize,
    length_mm: f64,
}

/// The top bent in one direction over its supports.
pub(super) struct Bent<'a> {
    continuous: Continuous<'a>,
    axes: Axes,
    feet: Vec<Foot>,
}

impl<'a> Bent<'a> {
    fn new(
        beam: &'a Beam<'a>,
        rests: &Rests,
        full_n_per_mm2: f64,
        apart_mm: f64,
        balance: Point,
    ) -> Option<Self> {
        let axes = *beam.strip().axes();
        let mut feet: Vec<Foot> = (0..rests.count)
            .flat_map(|support| row(&axes, rests, support, full_n_per_mm2, apart_mm))
            .collect();
        feet.sort_by(|a, b| a.post.at_mm.total_cmp(&b.post.at_mm));
        let posts: Vec<Post> = feet.iter().map(|f| f.post).collect();
        Some(Self {
            continuous: Continuous::new(beam, &posts, axes.seen(balance).1)?,
            axes,
            feet,
        })
    }

    /// What pushes up, in order along the beam; nothing when it tips.
    pub(super) fn held(&self, press: Press) -> Option<Vec<Reaction>> {
        self.continuous
            .unilateral(press.force_n, self.axes.seen(press.at))
    }

    fn pushes(&self, held: &[Reaction], count: usize) -> Vec<Push> {
        let mut pushes = vec![Push::default(); count];
        for (foot, reaction) in self.feet.iter().zip(held) {
            if let (Some(push), true) = (pushes.get_mut(foot.support), reaction.force_n > 0.0) {
                push.force_n += reaction.force_n;
                push.pressed_mm += foot.length_mm;
            }
        }
        pushes
    }
}

/// One support as posts: equal stretches along the beam, each a pair of posts that have its stiffness, its
/// middle and its second moment across the beam.
fn row(axes: &Axes, rests: &Rests, support: usize, full: f64, apart_mm: f64) -> Vec<Foot> {
    let mut springs: Vec<Part> = rests
        .of(support)
        .filter_map(|k| rests.springs.get(k).zip(rests.lengths.get(k)))
        .filter(|(spring, _)| spring.stiffness > 0.0)
        .map(|(spring, length_mm)| {
            let (u, v) = axes.seen(spring.at);
            Part {
                u,
                v,
                stiff: spring.stiffness,
                length_mm: *length_mm,
            }
        })
        .collect();
    springs.sort_by(|a, b| a.u.total_cmp(&b.u));
    let (Some(first), Some(last)) = (springs.first(), springs.last()) else {
        return Vec::new();
    };
    let (first, length) = (first.u, last.u - first.u);
    let stretches = (length / apart_mm).ceil().max(1.0);
    let stretch = (length / stretches).max(SAME_MM);
    let number = |part: &Part| ((part.u - first) / stretch).floor().min(stretches - 1.0);
    let groups = springs.chunk_by(|a, b| number(a) == number(b));
    groups
        .flat_map(|group| pair(group, support, full, apart_mm * NARROW))
        .collect()
}

/// A spring as the beam sees it.
struct Part {
    u: f64,
    v: f64,
    stiff: f64,
    length_mm: f64,
}

/// One stretch: a pair of posts, or one where it spreads no more than `narrow_mm` across the beam.
fn pair(group: &[Part], support: usize, full: f64, narrow_mm: f64) -> Vec<Foot> {
    let sum = |of: &dyn Fn(&Part) -> f64| group.iter().map(of).sum::<f64>();
    let stiff = sum(&|p| p.stiff);
    let (u, v) = (
        sum(&|p| p.stiff * p.u) / stiff,
        sum(&|p| p.stiff * p.v) / stiff,
    );
    let spread = (sum(&|p| p.stiff * (p.v - v).powi(2)) / stiff).sqrt();
    let (sides, share): (&[f64], f64) = if spread > narrow_mm {
        (&[-1.0, 1.0], 0.5)
    } else {
        (&[0.0], 1.0)
    };
    let foot = |side: &f64| Foot {
        post: Post {
            at_mm: u,
            across_mm: v + side * spread,
            stiffness: share * stiff * full,
        },
        support,
        length_mm: share * sum(&|p| p.length_mm),
    };
    sides.iter().map(foot).collect()
}
