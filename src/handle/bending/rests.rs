//! The supports under the top as springs, and how near and how far they reach.

use crate::geom::{Point, Pose, SAME_MM, Seg, Side, Vector};
use crate::handle::bending::plate::Spring;
use crate::handle::loads::Load;
use crate::job::{Support, SupportPlace};

/// Parts a line is cut into so that it can lift off along some of its length.
const PARTS: u8 = 24;
/// Springs on the rim of a pad.
const ROUND: u8 = 12;

/// The supports as springs under the stone.
#[derive(Clone, Debug)]
pub struct Rests {
    /// The springs.
    pub springs: Vec<Spring>,
    /// Length of support each stands for, mm.
    pub lengths: Vec<f64>,
    /// Which support each belongs to.
    owners: Vec<usize>,
    /// The parts of the supports that lie under the stone.
    pub places: Vec<Footing>,
    /// How many supports there are.
    pub count: usize,
}

impl Rests {
    /// Every support cut up, what does not lie under the stone left out.
    #[must_use]
    pub fn new(top: &Load, supports: &[Support], pose: Pose) -> Self {
        let mut rests = Self {
            springs: Vec::new(),
            lengths: Vec::new(),
            owners: Vec::new(),
            places: Vec::new(),
            count: supports.len(),
        };
        for (owner, support) in supports.iter().enumerate() {
            let under: Vec<Spring> = cut_up(&support.place, pose)
                .into_iter()
                .filter(|s| top.region.side(s.at) != Side::Outside)
                .collect();
            if let (Some(first), Some(last)) = (under.first(), under.last()) {
                let ([a, b], _) = ends(&support.place, pose);
                let end = |end: Point, inner: Point| match top.region.side(end) {
                    Side::Outside => inner,
                    Side::Inside | Side::On => end,
                };
                rests.places.push(Footing {
                    support: owner,
                    ends: [end(a, first.at), end(b, last.at)],
                    radius_mm: match support.place {
                        SupportPlace::Line(..) => 0.0,
                        SupportPlace::Pad(_, across) => across / 2.0,
                    },
                });
            }
            for spring in under {
                rests.lengths.push(spring.stiffness);
                rests.owners.push(owner);
                rests.springs.push(Spring {
                    stiffness: spring.stiffness * support.stiffness,
                    ..spring
                });
            }
        }
        rests
    }

    /// The numbers of a support's springs.
    pub fn of(&self, support: usize) -> impl Iterator<Item = usize> {
        let all = self.owners.iter().enumerate();
        all.filter(move |o| *o.1 == support).map(|o| o.0)
    }

    /// Distance of a point from the nearest support, mm; infinite when there is none.
    #[must_use]
    pub fn distance(&self, point: Point) -> f64 {
        let each = self.places.iter().map(|p| p.distance(point));
        each.fold(f64::INFINITY, f64::min)
    }

    /// How far the supports reach in a direction of length 1, mm from the origin.
    #[must_use]
    pub fn reach(&self, direction: Vector) -> f64 {
        let each = self.places.iter().map(|p| p.reach(direction));
        each.fold(f64::NEG_INFINITY, f64::max)
    }
}

/// The part of a support that lies under the stone.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Footing {
    /// Which support it is a part of.
    pub support: usize,
    /// Its ends, or its middle twice, slab frame.
    pub ends: [Point; 2],
    /// Half its width when it is round, mm.
    pub radius_mm: f64,
}

impl Footing {
    pub(super) fn distance(&self, point: Point) -> f64 {
        let [a, b] = self.ends;
        let to_middle = if a.distance(b) <= SAME_MM {
            a.distance(point)
        } else {
            Seg::Line(a, b).distance(point)
        };
        (to_middle - self.radius_mm).max(0.0)
    }

    fn reach(&self, direction: Vector) -> f64 {
        let [a, b] = self.ends.map(|e| e.to_vector().dot(direction));
        a.max(b) + self.radius_mm
    }
}

/// A support's ends in the slab's frame, a pad's middle twice, and the length that counts.
pub(crate) fn ends(place: &SupportPlace, pose: Pose) -> ([Point; 2], f64) {
    match place {
        SupportPlace::Line(a, b) => ([pose.apply(*a), pose.apply(*b)], a.distance(*b)),
        SupportPlace::Pad(at, across) => ([pose.apply(*at); 2], *across),
    }
}

/// A support as springs. Two springs in each part of a line, at ±1/(2√3) of the part from its
/// middle (Gauss), have the same force and moments as the line itself. Half a pad's stiffness in its
/// middle and half on its rim have the force and moments of its area (a disc's second moment is half
/// that of its rim), and the plate tips over the pad's rim.
fn cut_up(place: &SupportPlace, pose: Pose) -> Vec<Spring> {
    let ([a, b], length) = ends(place, pose);
    if let SupportPlace::Pad(..) = place {
        let rim = (0..ROUND).map(|k| {
            let turn = f64::from(k) * std::f64::consts::TAU / f64::from(ROUND);
            Spring {
                at: a + Vector::at_angle(turn) * (length / 2.0),
                stiffness: 0.5 * length / f64::from(ROUND),
            }
        });
        let middle = Spring {
            at: a,
            stiffness: 0.5 * length,
        };
        return std::iter::once(middle).chain(rim).collect();
    }
    let part = 1.0 / f64::from(PARTS);
    let gauss = 0.5 * part / 3.0_f64.sqrt();
    (0..PARTS)
        .flat_map(|k| {
            let middle = (f64::from(k) + 0.5) * part;
            [middle - gauss, middle + gauss]
        })
        .map(|share| Spring {
            at: Seg::Line(a, b).at(share),
            stiffness: 0.5 * part * length,
        })
        .collect()
}
