//! Who stands where, what each carries, and whether it is a lift by hand at all.

use serde::Serialize;

use super::axes::Axes;
use super::guideline::{Guideline, LARGEST_TEAM, team_factor};
use super::niosh::{LiftOff, off_trestles};
use super::plate::{Spring, settled};
use super::{Load, stand};
use crate::geom::Point;
use crate::job;
use crate::units::Mass;

/// Off balance by more than this, mm, nobody's hands hold it level (judgement: half a hand).
const OFF_BALANCE_MM: f64 = 50.0;
/// Off balance by less than this, mm, is rounding of a tape.
const LEVEL_MM: f64 = 1.0;
/// A given place farther from the outline than this, mm, is no place to grip (judgement).
pub(super) const OFF_EDGE_MM: f64 = 100.0;

/// What one support or person carries.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Share {
    /// This much, kg.
    Carries(Mass),
    /// Nothing: the stone tilts away from it.
    LiftsOff,
}

impl Share {
    /// The mass carried; zero when it lifts off.
    #[must_use]
    pub fn mass(self) -> Mass {
        match self {
            Self::Carries(mass) => mass,
            Self::LiftsOff => Mass::default(),
        }
    }
}

/// Where a lifter's place comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Stand {
    /// From the job file.
    Given,
    /// Worked out.
    Proposed,
}

/// One person.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Lifter {
    /// Counted from 1.
    pub number: usize,
    /// Where the hands are, slab frame, mm.
    pub point: Point,
    /// The same as a distance from the end of the stone along its length, mm.
    pub from_end_mm: f64,
    /// The same as a distance from the stone's right-hand long side, looking along it, mm.
    pub from_side_mm: f64,
    /// Given or proposed.
    pub stand: Stand,
    /// Part of the high mass, in kg.
    pub share: Share,
    /// What this person may count on in this team: own figure × team factor, kg. Nothing when the
    /// team is too large for a factor.
    pub limit: Option<Mass>,
}

/// How many people the guideline asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PeopleNeeded {
    /// At least so many, up to [`LARGEST_TEAM`].
    AtLeast(usize),
    /// More than can lift as a team.
    MoreThanATeam,
}

/// What stands for or against a lift by hand.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Verdict {
    /// Every share within its guideline figure. A guideline is not a safe limit.
    Within {
        /// Greatest share over limit.
        utilisation: f64,
    },
    /// Somebody carries more than the guideline figure.
    Over {
        /// The lifter's number.
        lifter: usize,
        /// What that person carries.
        carried: Mass,
        /// What that person may count on.
        limit: Mass,
    },
    /// The stone tips: the places leave the balance point to one side.
    Tips {
        /// By how much, mm.
        off_balance_mm: f64,
    },
    /// More people than are likely to lift as a team.
    TooManyHands {
        /// How many.
        people: usize,
    },
    /// Heavier than a team may lift.
    NotAHandLift {
        /// What a team of [`LARGEST_TEAM`] may count on.
        team_limit: Mass,
    },
}

/// Lifting by hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Lift {
    /// Mass it is worked out with: the high one.
    pub mass: Mass,
    /// The people in order.
    pub lifters: Vec<Lifter>,
    /// Team factor; nothing when there is none for so many people.
    pub team_factor: Option<f64>,
    /// How far the middle of the lift lies from the balance point, mm.
    pub off_balance_mm: f64,
    /// How many people the guideline asks for.
    pub people_needed: PeopleNeeded,
    /// What stands for or against it.
    pub verdict: Verdict,
    /// The lifting equation for the lifter who carries most, off the trestles, not carrying.
    pub off_trestles: LiftOff,
}

impl Lift {
    /// Whether the places hold it level: the middle of the lift is the balance point, to rounding.
    #[must_use]
    pub fn holds(&self) -> bool {
        self.off_balance_mm <= LEVEL_MM
    }
}

/// Works out the lift of one piece. `given` are places in the slab's frame; empty: proposed.
#[must_use]
pub fn plan(load: &Load, axes: &Axes, crew: &job::Lift, given: &[Point], rule: &Guideline) -> Lift {
    let (stand, points) = if given.is_empty() {
        (
            Stand::Proposed,
            stand::propose(&load.region, axes, crew.people),
        )
    } else {
        (Stand::Given, given.to_vec())
    };
    let mass = load.mass.high;
    let each = rule.at_height(crew.hands_mm);
    let springs: Vec<Spring> = points.iter().map(|at| spring(*at)).collect();
    let rest = settled(&springs, mass.kg(), load.region.centroid());
    let factor = team_factor(points.len());
    let strengths: Vec<Mass> = if crew.each_is_guideline {
        vec![each; crew.each.len()]
    } else {
        crew.each.clone()
    };
    let own = |i: usize| strengths.get(i).copied().unwrap_or(each);
    let lifters: Vec<Lifter> = points
        .iter()
        .zip(&rest.forces)
        .enumerate()
        .map(|(i, (point, force))| {
            let (from_end_mm, from_side_mm) = axes.seen(*point);
            Lifter {
                number: i + 1,
                point: *point,
                from_end_mm,
                from_side_mm,
                stand,
                share: force.map_or(Share::LiftsOff, |kg| Share::Carries(Mass::from_kg(kg))),
                limit: factor.map(|f| Mass::from_kg(own(i).kg() * f)),
            }
        })
        .collect();
    let most = lifters.iter().map(|l| l.share.mass().kg());
    let most = Mass::from_kg(most.fold(0.0, f64::max));
    let off_trestles = off_trestles(most, crew.hands_mm);
    let mut lift = Lift {
        mass,
        lifters,
        team_factor: factor,
        off_balance_mm: rest.off_balance_mm,
        people_needed: people_needed(mass, &strengths, each),
        verdict: Verdict::TooManyHands {
            people: points.len(),
        },
        off_trestles,
    };
    lift.verdict = verdict(&lift, team_limit(&strengths, each, LARGEST_TEAM));
    lift
}

/// The fewest people, the strongest named first and then people at the guideline, whose sum times
/// the team factor is not below the mass.
#[must_use]
pub fn people_needed(mass: Mass, each: &[Mass], guideline: Mass) -> PeopleNeeded {
    (1..=LARGEST_TEAM)
        .find(|n| team_limit(each, guideline, *n) >= mass)
        .map_or(PeopleNeeded::MoreThanATeam, PeopleNeeded::AtLeast)
}

/// What a team of `people` may count on: their sum times the team factor; nothing beyond
/// [`LARGEST_TEAM`]. People not named are taken at the guideline.
#[must_use]
pub fn team_limit(each: &[Mass], guideline: Mass, people: usize) -> Mass {
    let mut own: Vec<f64> = each.iter().map(|m| m.kg()).collect();
    own.sort_by(|a, b| b.total_cmp(a));
    own.resize(own.len().max(people), guideline.kg());
    let sum: f64 = own.iter().take(people).sum();
    Mass::from_kg(sum * team_factor(people).unwrap_or(0.0))
}

fn spring(at: Point) -> Spring {
    Spring { at, stiffness: 1.0 }
}

fn verdict(lift: &Lift, team_limit: Mass) -> Verdict {
    if lift.people_needed == PeopleNeeded::MoreThanATeam || lift.lifters.is_empty() {
        return Verdict::NotAHandLift { team_limit };
    }
    if lift.team_factor.is_none() {
        return Verdict::TooManyHands {
            people: lift.lifters.len(),
        };
    }
    if lift.off_balance_mm > OFF_BALANCE_MM {
        return Verdict::Tips {
            off_balance_mm: lift.off_balance_mm,
        };
    }
    let worst = lift
        .lifters
        .iter()
        .filter_map(|l| l.limit.map(|limit| (l.number, l.share.mass(), limit)))
        .max_by(|a, b| ratio(a).total_cmp(&ratio(b)));
    match worst {
        Some((lifter, carried, limit)) if carried > limit => Verdict::Over {
            lifter,
            carried,
            limit,
        },
        Some(worst) => Verdict::Within {
            utilisation: ratio(&worst),
        },
        None => Verdict::NotAHandLift { team_limit },
    }
}

fn ratio((_, carried, limit): &(usize, Mass, Mass)) -> f64 {
    carried.kg() / limit.kg()
}

/// Tilting the stone up about one of its long sides.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Tilt {
    /// The line it turns about, slab frame.
    pub pivot: [Point; 2],
    /// Height of the balance point above that line once on edge, mm.
    pub balance_height_mm: f64,
    /// Full height once on edge, mm.
    pub height_mm: f64,
    /// Part of the weight to be lifted at the far side at the start.
    pub share: f64,
    /// The same as a mass.
    pub lifted: Mass,
}

/// Tilting up about the right-hand long side, looking along the stone, and about the left-hand one.
#[must_use]
pub fn tilts(load: &Load, axes: &Axes) -> [Tilt; 2] {
    let (_, balance) = axes.seen(load.region.centroid());
    let height_mm = axes.width_mm();
    let about = |v: f64| {
        let balance_height_mm = (balance - v).abs();
        let share = balance_height_mm / height_mm;
        Tilt {
            pivot: [axes.point(0.0, v), axes.point(axes.length_mm(), v)],
            balance_height_mm,
            height_mm,
            share,
            lifted: Mass::from_kg(load.mass.high.kg() * share),
        }
    };
    [about(0.0), about(height_mm)]
}
