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
use super::rests::{Footing, Rests};
use super::strip::BeamProfile;
use crate::geom::{Point, SAME_MM, Vector};
use crate::handle::loads::Load;
use crate::job::Stone;
use crate::units::GRAVITY;

/// Stiffness of a full support, N/mm for each mm of its length: an 18 mm board of 2500 `MPa`
/// standing 750 mm high (judgement).
const BOARD_N_PER_MM2: f64 = 60.0;
/// The same of a wall: 100 mm of masonry of 4500 `MPa`, 750 mm high (judgement).
const WALL_N_PER_MM2: f64 = 600.0;
/// A support is taken in stretches no longer than this part of the stone's length.
const STRETCHES: f64 = 8.0;
/// A stretch longer by so small a part of it is not parted for that.
const ROUNDING: f64 = 1e-6;
/// Posts of neighbouring stretches that are no farther apart, mm, are one.
const SAME_POST_MM: f64 = 1.0;
/// Diameters of a pad that have a post at either end.
const RIM: u8 = 6;
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
        let apart = along.strip().length_mm() / STRETCHES;
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
        let mut share = |bent: &Bent<'_>, held: &[Reaction]| {
            for (push, here) in most.iter_mut().zip(bent.pushes(held, self.rests.count)) {
                *push = push.greater(here);
            }
        };
        let along = self.along.as_ref().and_then(|bent| {
            let held = bent.held(press)?;
            share(bent, &held);
            Some(held)
        });
        for bent in &self.others {
            share(bent, &bent.held(press).unwrap_or_default());
        }
        Lying {
            most,
            along,
            off_balance_mm: rest.off_balance_mm,
        }
    }
}

/// How the top lies with a force on it.
pub(super) struct Lying {
    /// The most that each support pushes up with, in the job file's order.
    pub(super) most: Vec<Push>,
    /// What pushes up on the top bent along over boards; nothing when it tips or is held at fewer than two places.
    pub(super) along: Option<Vec<Reaction>>,
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
        let footings = rests.places.iter();
        let mut feet: Vec<Foot> = footings
            .flat_map(|footing| row(&axes, rests, footing, full_n_per_mm2, apart_mm))
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

/// One support as posts. A line is cut into equal stretches, each with posts at its ends and its middle that have its
/// stiffness and its moments (Simpson's weights); a pad has half of it in its middle and half on its rim. So the posts reach as
/// far as the support does.
fn row(axes: &Axes, rests: &Rests, footing: &Footing, full: f64, apart_mm: f64) -> Vec<Foot> {
    let springs = rests.of(footing.support);
    let springs = springs.filter_map(|k| rests.springs.get(k).zip(rests.lengths.get(k)));
    let parts: Vec<ElasticPart> = springs
        .filter(|(spring, _)| spring.stiffness > 0.0)
        .map(|(spring, length_mm)| ElasticPart {
            at: spring.at,
            stiff: spring.stiffness,
            length_mm: *length_mm,
        })
        .collect();
    let foot = |part: &ElasticPart| {
        let (at_mm, across_mm) = axes.seen(part.at);
        Foot {
            post: Post {
                at_mm,
                across_mm,
                stiffness: part.stiff * full,
            },
            support: footing.support,
            length_mm: part.length_mm,
        }
    };
    let [from, to] = footing.ends;
    if footing.radius_mm > 0.0 {
        let ways = (0..RIM).map(|k| f64::from(k) * std::f64::consts::PI / f64::from(RIM));
        let shares = [0.25, 0.5, 0.25].map(|share| share / f64::from(RIM));
        let rim = ways.flat_map(|turn| spread(&parts, Vector::at_angle(turn), 2.0, shares));
        return rim.map(|part| foot(&part)).collect();
    }
    let along = (to - from).unit();
    let length = from.distance(to);
    let stretch = (length / (length / apart_mm - ROUNDING).ceil().max(1.0)).max(SAME_MM);
    let number = |part: &ElasticPart| ((part.at - from).dot(along) / stretch).floor();
    let stretches = parts.chunk_by(|a, b| number(a) == number(b));
    let posts = stretches.flat_map(|parts| {
        spread(
            parts,
            along,
            3.0_f64.sqrt(),
            [1.0, 4.0, 1.0].map(|w| w / 6.0),
        )
    });
    let mut feet: Vec<Foot> = posts.map(|part| foot(&part)).collect();
    feet.dedup_by(|next, kept| {
        let (a, b) = (next.post, kept.post);
        let same = (a.at_mm - b.at_mm).hypot(a.across_mm - b.across_mm) <= SAME_POST_MM;
        if same {
            kept.post.stiffness += a.stiffness;
            kept.length_mm += next.length_mm;
        }
        same
    });
    feet
}

/// A part of a support.
struct ElasticPart {
    at: Point,
    stiff: f64,
    length_mm: f64,
}

/// Three parts in place of many: at their middle and `reach` times their spread on either side of it.
fn spread(parts: &[ElasticPart], along: Vector, reach: f64, shares: [f64; 3]) -> [ElasticPart; 3] {
    let sum = |of: &dyn Fn(&ElasticPart) -> f64| parts.iter().map(of).sum::<f64>();
    let stiff = sum(&|p| p.stiff).max(f64::MIN_POSITIVE);
    let first = parts.first().map_or(Point::ORIGIN, |p| p.at);
    let mean = parts.iter().fold(Vector::default(), |sum, p| {
        sum + (p.at - first) * (p.stiff / stiff)
    });
    let middle = first + mean;
    let away = sum(&|p| p.stiff * (p.at - middle).dot(along).powi(2)) / stiff;
    let out = along * (reach * away.sqrt());
    let length = sum(&|p| p.length_mm);
    let part = |side: f64, share: f64| ElasticPart {
        at: middle + out * side,
        stiff: stiff * share,
        length_mm: length * share,
    };
    let [low, mid, high] = shares;
    [part(-1.0, low), part(0.0, mid), part(1.0, high)]
}
