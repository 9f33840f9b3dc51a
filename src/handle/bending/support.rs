//! What each support under the finished top carries.

use serde::Serialize;

use crate::geom::{Line, Point, Pose};
use crate::handle::lifting::record::Share;
use crate::handle::loads::{Load, Marks};
use crate::job::{Job, Support};
use crate::units::{GRAVITY, Mass};

use super::elastic::{Lying, OFF_BALANCE_MM, Press, Push, Strips, Ways};
use super::lean::{self, Leaning};
use super::overhang::{self, Overhang};
use super::plate::{Spring, bilateral};
use super::rests::{Rests, ends};
use super::span::{self, Span};

/// One support.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bearing {
    /// What it is, in the user's words.
    pub what: String,
    /// Its ends, or its centre twice for a pad, slab frame, mm.
    pub place: [Point; 2],
    /// Length that counts for its stiffness: the line's, or the pad's diameter, mm.
    pub length_mm: f64,
    /// How stiff it is for its length against a full support, 0 to 1.
    pub stiffness: f64,
    /// Part of that length that lies under the stone and is pressed on, 0 to 1.
    pub pressed: f64,
    /// The most it carries of the high mass, kg: of a rigid top and of one that bends over its supports the
    /// greatest, so that all supports together may be told more than the top weighs.
    pub share: Share,
    /// The most it carries with a person leaning on the top's worst places as well, kg.
    #[serde(rename = "with_person_kg")]
    pub with_person: Mass,
    /// What it would carry of a rigid top if it could also pull, kg; negative where the top lifts off.
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
        #[serde(rename = "limit_kg")]
        limit: Mass,
    },
    /// Above the limit given.
    Over {
        /// The limit.
        #[serde(rename = "limit_kg")]
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
    /// How far the middle of the support lies from the balance point, mm; nothing when nothing lies under it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub off_balance_mm: Option<f64>,
    /// Whether it lies still.
    pub stands: Standing,
    /// The edges that reach beyond the supports.
    pub overhangs: Vec<Overhang>,
    /// The widest stretch between supports; nothing when they are too few to span anything.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub span: Option<Span>,
    /// A person leaning on the top where it is worst; nothing when it does not stand.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub leaning: Option<Leaning>,
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
/// The stiffness of supports goes with their length under the stone and what the job file says of it; each
/// carries the most of a rigid top and of one that bends. `pose` carries the top's frame, in which the supports
/// are given, into the slab's.
#[must_use]
pub fn setting(top: &Load, job: &Job, marks: &Marks, pose: Pose) -> Option<Setting> {
    if job.supports.is_empty() {
        return None;
    }
    let rests = Rests::new(top, &job.supports, pose);
    let balance = top.region.centroid();
    let mass = top.mass.high.kg();
    let tied = bilateral(&rests.springs, mass, balance);
    let strips = Strips::of(top, &job.stone);
    let beams = strips.beams();
    let ways = Ways::new(&beams, &rests, balance);
    let lying = ways.pressed(Press {
        force_n: 0.0,
        at: balance,
    });
    let stands = standing(&rests.springs, &balance, &lying);
    let leaning = match stands {
        Standing::Balanced => {
            let set = lean::Set {
                top,
                rests: &rests,
                marks,
                pose,
            };
            lean::worst(&set, &beams[0], &ways, &job.stone)
        }
        Standing::Tips | Standing::NotSupported => None,
    };
    let supports = job.supports.iter().zip(&lying.most).enumerate();
    let bearings = supports.map(|(i, (support, push))| {
        let tied_kg = rests.of(i).filter_map(|k| tied.get(k)).sum();
        let person = leaning.as_ref().and_then(|l| l.carried.get(i).copied());
        bearing(support, pose, *push, tied_kg, person)
    });
    Some(Setting {
        bearings: bearings.collect(),
        off_balance_mm: Some(lying.off_balance_mm).filter(|mm| mm.is_finite()),
        stands,
        overhangs: overhang::overhangs(top, &rests, &job.stone, marks),
        span: span::widest(top, &rests, job.stone.thickness.least),
        leaning,
    })
}

fn bearing(
    support: &Support,
    pose: Pose,
    push: Push,
    if_tied_down_kg: f64,
    person: Option<Mass>,
) -> Bearing {
    let (place, length_mm) = ends(&support.place, pose);
    let carried = Mass::from_kg(push.force_n / GRAVITY);
    let share = if push.pressed_mm > 0.0 {
        Share::Carries(carried)
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
        stiffness: support.stiffness,
        pressed: (push.pressed_mm / length_mm).min(1.0),
        share,
        with_person: person.filter(|most| *most > carried).unwrap_or(carried),
        if_tied_down_kg,
        verdict,
    }
}

/// Balanced only when a small push anywhere does not tip it: the forces must reach round the
/// balance point, not merely through it.
fn standing(springs: &[Spring], balance: &Point, lying: &Lying) -> Standing {
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
    if one_line || lying.tips() {
        Standing::Tips
    } else {
        Standing::Balanced
    }
}
