//! What each support under the finished top carries.

use serde::Serialize;

use super::Load;
use super::lift::Share;
use super::plate::{Spring, linear, settled};
use crate::geom::{Line, Point, Pose, Seg, Side};
use crate::job::{Support, SupportPlace};
use crate::units::Mass;

/// Parts a line is cut into so that it can lift off along some of its length.
const PARTS: u8 = 24;
/// Off balance by more than this, mm, the top does not lie still (judgement: rounding of a tape).
const OFF_BALANCE_MM: f64 = 1.0;

/// One support.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bearing {
    /// What it is, in the user's words.
    pub what: String,
    /// Its ends, or its centre twice for a pad, slab frame, mm.
    pub place: [Point; 2],
    /// Length that counts for its stiffness: the line's, or the pad's diameter, mm.
    pub length_mm: f64,
    /// Part of that length that lies under the stone and is pressed on, 0 to 1.
    pub pressed: f64,
    /// What it carries of the high mass, kg.
    pub share: Share,
    /// What it would carry if it could also pull, kg; negative where the top lifts off.
    pub if_tied_down_kg: f64,
    /// How that stands to its limit.
    pub verdict: BearingVerdict,
}

/// How a support's load stands to its limit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BearingVerdict {
    /// The job file gives no limit: ask whoever made it.
    NoLimitGiven,
    /// Not above the limit given.
    Within {
        /// The limit.
        limit: Mass,
    },
    /// Above the limit given.
    Over {
        /// The limit.
        limit: Mass,
    },
    /// Carries nothing.
    Idle,
}

/// How the top lies on its supports.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Setting {
    /// Each support, in the job file's order.
    pub bearings: Vec<Bearing>,
    /// How far the middle of the support lies from the balance point, mm.
    pub off_balance_mm: f64,
    /// Whether it lies still.
    pub stands: Standing,
}

/// Whether the top lies still on its supports.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Standing {
    /// The supports balance it.
    Balanced,
    /// It tips over the outermost support, or lies on a single line or point.
    Tips,
    /// No support lies under it.
    NotSupported,
}

/// Shares the top's high mass among its supports; nothing when the job file names none.
///
/// A rigid top on supports whose stiffness goes with their length under the stone. `pose` carries
/// the top's frame, in which the supports are given, into the slab's.
#[must_use]
pub fn setting(top: &Load, supports: &[Support], pose: Pose) -> Option<Setting> {
    if supports.is_empty() {
        return None;
    }
    let mut springs: Vec<(usize, Spring)> = Vec::new();
    for (i, support) in supports.iter().enumerate() {
        let under = |s: &Spring| top.region.side(s.at) != Side::Outside;
        let found = cut_up(&support.place, pose).into_iter().filter(under);
        springs.extend(found.map(|s| (i, s)));
    }
    let bare: Vec<Spring> = springs.iter().map(|s| s.1).collect();
    let balance = top.region.centroid();
    let mass = top.mass.high.kg();
    let tied = linear(&bare, mass, balance);
    let rest = settled(&bare, mass, balance);
    let bearings = supports.iter().enumerate().map(|(i, support)| {
        let own = springs.iter().enumerate().filter(|(_, s)| s.0 == i);
        let mut sum = Sum::default();
        for (k, (_, spring)) in own {
            sum.tied += tied[k];
            if let Some(force) = rest.forces[k] {
                sum.force += force;
                sum.pressed += spring.stiffness;
            }
        }
        bearing(support, pose, &sum)
    });
    Some(Setting {
        bearings: bearings.collect(),
        off_balance_mm: rest.off_balance_mm,
        stands: standing(&bare, &top.region.centroid(), rest.off_balance_mm),
    })
}

#[derive(Default)]
struct Sum {
    force: f64,
    tied: f64,
    pressed: f64,
}

fn bearing(support: &Support, pose: Pose, sum: &Sum) -> Bearing {
    let (place, length_mm) = ends(&support.place, pose);
    let share = if sum.pressed > 0.0 {
        Share::Carries(Mass::from_kg(sum.force))
    } else {
        Share::LiftsOff
    };
    let verdict = match (share, support.limit) {
        (Share::LiftsOff, _) => BearingVerdict::Idle,
        (_, None) => BearingVerdict::NoLimitGiven,
        (Share::Carries(mass), Some(limit)) if mass > limit => BearingVerdict::Over { limit },
        (_, Some(limit)) => BearingVerdict::Within { limit },
    };
    Bearing {
        what: support.what.clone(),
        place,
        length_mm,
        pressed: (sum.pressed / length_mm).min(1.0),
        share,
        if_tied_down_kg: sum.tied,
        verdict,
    }
}

/// Balanced only when a small push anywhere does not tip it: the forces must reach round the
/// balance point, not merely through it.
fn standing(springs: &[Spring], balance: &Point, off_balance_mm: f64) -> Standing {
    if springs.is_empty() {
        return Standing::NotSupported;
    }
    let away = springs
        .iter()
        .max_by(|a, b| a.at.distance(*balance).total_cmp(&b.at.distance(*balance)));
    let one_line = away.is_none_or(|far| {
        let reach = far.at.distance(*balance);
        reach <= OFF_BALANCE_MM || {
            let line = Line::through(*balance, far.at);
            springs
                .iter()
                .all(|s| line.left_of(s.at).abs() <= OFF_BALANCE_MM)
        }
    });
    if one_line || off_balance_mm > OFF_BALANCE_MM {
        Standing::Tips
    } else {
        Standing::Balanced
    }
}

fn ends(place: &SupportPlace, pose: Pose) -> ([Point; 2], f64) {
    match place {
        SupportPlace::Line(a, b) => ([pose.apply(*a), pose.apply(*b)], a.distance(*b)),
        SupportPlace::Pad(at, across) => ([pose.apply(*at); 2], *across),
    }
}

/// A support as springs. Two springs in each part of a line, at ±1/(2√3) of the part from its
/// middle (Gauss), have the same force and moments as the line itself.
fn cut_up(place: &SupportPlace, pose: Pose) -> Vec<Spring> {
    let ([a, b], length) = ends(place, pose);
    if let SupportPlace::Pad(..) = place {
        return vec![Spring {
            at: a,
            stiffness: length,
        }];
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
