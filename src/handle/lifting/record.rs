//! What is known of a lift once it is planned.

use serde::Serialize;

use crate::geom::Point;
use crate::handle::bending::bend::Orientation;
use crate::handle::lifting::niosh::LiftOff;
use crate::units::Mass;

/// What one support or person carries.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Share {
    /// This much, kg.
    #[serde(rename = "carries-kg")]
    Carries(Mass),
    /// Nothing: the stone tilts away from it.
    LiftsOff,
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
    #[serde(rename = "limit_kg", skip_serializing_if = "Option::is_none")]
    pub limit: Option<Mass>,
}

/// How many people the guideline asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PeopleNeeded {
    /// At least so many, up to [`LARGEST_TEAM`](crate::handle::guideline::LARGEST_TEAM).
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
        #[serde(rename = "carried_kg")]
        carried: Mass,
        /// What that person may count on.
        #[serde(rename = "limit_kg")]
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
    /// Beyond about twice what the team may count on.
    NotAHandLift {
        /// What the team may count on; no more than [`LARGEST_TEAM`](crate::handle::guideline::LARGEST_TEAM) count.
        #[serde(rename = "team_limit_kg")]
        team_limit: Mass,
    },
    /// Neither flat nor on edge may the stone hang in their hands: it would be bent too far.
    Breaks,
}

/// How a load stands to a guideline figure: the figure is a filter for a closer look, no limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Effort {
    /// Not above the figure.
    Within,
    /// Above it, up to about twice: to be looked at before it is lifted.
    Above,
    /// Beyond: the risk is serious even for fit, trained people.
    Beyond,
}

/// Lifting by hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Lift {
    /// Mass it is worked out with: the high one.
    #[serde(rename = "mass_kg")]
    pub mass: Mass,
    /// How the stone lies in their hands.
    pub orientation: Orientation,
    /// The people in order; nobody when it is no lift by hand.
    pub lifters: Vec<Lifter>,
    /// What this team may count on; no more than [`LARGEST_TEAM`](crate::handle::guideline::LARGEST_TEAM) count.
    #[serde(rename = "team_limit_kg")]
    pub team_limit: Mass,
    /// What two of it may count on.
    #[serde(rename = "pair_limit_kg")]
    pub pair_limit: Mass,
    /// Tilting it up on edge.
    pub tilting: Tilting,
    /// Team factor; nothing when there is none for so many people.
    #[serde(skip_serializing_if = "Option::is_none")]
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

/// Tilting the stone up on edge with the whole team at the far side.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Tilting {
    /// What is lifted at the start, about the side that takes less.
    #[serde(rename = "lifted_kg")]
    pub lifted: Mass,
    /// The same over what the team may count on.
    pub utilisation: f64,
    /// How that stands to the figure.
    pub effort: Effort,
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
    #[serde(rename = "lifted_kg")]
    pub lifted: Mass,
}
