//! Waste pieces are lifted too.

use serde::Serialize;

use crate::handle::bending::axes::Axes;
use crate::handle::bending::bend::{Beam, Orientation};
use crate::handle::bending::poses::section;
use crate::handle::bending::strip::BeamProfile;
use crate::handle::lifting::record::{Effort, PeopleNeeded};
use crate::handle::loads::{Free, Load};
use crate::job::{self, Aid, Job};
use crate::units::{Mass, MassRange};

use super::guideline::{Guideline, LARGEST_TEAM};
use super::hold::Holder;
use super::lift::{MOST_TIMES, people_needed};

/// A piece heavier than this nobody carries alone, kg, whatever the guideline (judgement: stone is long, has no
/// handles and breaks).
const ALONE_KG: f64 = 20.0;
/// On the floor it lies on two battens, this part of its length in from its ends (judgement, next to 0.2071,
/// where an even strip is bent least).
const BATTENS: f64 = 0.2;

/// A waste piece that people lift away, judged as every other stone.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Waste {
    /// Its name: `W1`.
    pub name: String,
    /// The cut that frees it.
    pub after_cut: usize,
    /// Its mass, kg.
    pub mass: MassRange,
    /// Its mass over what the team may count on.
    pub utilisation: f64,
    /// How that stands to the guideline figure.
    pub effort: Effort,
    /// How it leaves the bench; nothing for what one person carries off.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub leaves: Option<Leaves>,
    /// So many people turn it up on its long side, by half its weight; no more than the largest team.
    pub turned_by: usize,
    /// What they lift then: half its weight.
    #[serde(rename = "turned_kg")]
    pub turned: Mass,
}

/// How a piece that is too heavy for one person leaves the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Leaves {
    /// In the hands of so many people.
    InHands {
        /// How many.
        people: usize,
        /// How it lies in their hands, and on its battens then.
        orientation: Orientation,
    },
    /// The same, with more people than the job has.
    WantsMore {
        /// How many.
        people: usize,
        /// How it lies in their hands.
        orientation: Orientation,
    },
    /// With the job's aid.
    WithAid(Aid),
    /// Sawn across first: no team lifts it, or it would break in any hands.
    SawnAcross,
}

impl Leaves {
    fn of(free: &Free, job: &Job, rule: &Guideline) -> Option<Self> {
        let crew = &job.lift;
        let each = rule.at_height(crew.hands_mm);
        let mass = free.mass.high;
        let alone = mass.kg() <= ALONE_KG && mass.kg() <= strongest(crew, each).kg();
        if alone {
            return None;
        }
        let least = carriers(mass, crew, each);
        let held = (least..=LARGEST_TEAM).find_map(|n| Some((n, lie(free, job, n)?)));
        Some(match (held, crew.aid) {
            (Some((people, orientation)), _) if people <= crew.people => Self::InHands {
                people,
                orientation,
            },
            (_, Aid::Trolley | Aid::VacuumLifter | Aid::Gantry) => Self::WithAid(crew.aid),
            (Some((people, orientation)), Aid::None) => Self::WantsMore {
                people,
                orientation,
            },
            (None, Aid::None) => Self::SawnAcross,
        })
    }
}

/// The fewest people, two at least, who may count on a mass; one more than the largest team where no team may.
fn carriers(mass: Mass, crew: &job::Lift, each: Mass) -> usize {
    let own: &[Mass] = if crew.each_is_guideline {
        &[]
    } else {
        &crew.each
    };
    match people_needed(mass, own, each) {
        PeopleNeeded::AtLeast(people) => people.max(2),
        PeopleNeeded::MoreThanATeam => LARGEST_TEAM + 1,
    }
}

/// What the strongest of a crew lifts.
fn strongest(crew: &job::Lift, each: Mass) -> Mass {
    if crew.each_is_guideline {
        return each;
    }
    let own = crew.each.iter().copied();
    own.fold(Mass::default(), |a, b| if b > a { b } else { a })
}

/// How a piece lies in the hands of so many people: flat where it may hang flat from them and lie flat on two
/// battens then, and no fissure runs through it, else on edge; nothing when it would break either way.
fn lie(free: &Free, job: &Job, people: usize) -> Option<Orientation> {
    let load = Load::new(free.name.as_str(), free.region.clone()?, free.mass);
    let strip = BeamProfile::new(&load.region, Axes::of(&load.region));
    let beam = Beam::new(&strip, section(&load, &job.stone));
    let allowed_mpa = job.stone.strength_mpa / job.stone.safety_factor;
    let holder = Holder {
        beam: &beam,
        region: &load.region,
        allowed_mpa,
    };
    let [from, to] = strip.reach();
    let inset = BATTENS * (to - from);
    let battens = [from + inset, to - inset];
    let lies = !free.flawed
        && battens[0] < strip.middle()
        && strip.middle() < battens[1]
        && beam.worst(Orientation::Flat, battens).stress_mpa <= allowed_mpa;
    let hold = holder.propose(people)?;
    let held = if hold.orientation == Orientation::Flat && !lies {
        holder.on_edge(people)?
    } else {
        hold
    };
    Some(held.orientation)
}

impl Waste {
    /// A free piece against what the team may count on.
    pub(crate) fn of(free: &Free, team_limit: Mass, job: &Job, rule: &Guideline) -> Self {
        let utilisation = if team_limit.kg() > 0.0 {
            free.mass.high.kg() / team_limit.kg()
        } else {
            2.0 * MOST_TIMES
        };
        let half = Mass::from_kg(free.mass.high.kg() / 2.0);
        let each = rule.at_height(job.lift.hands_mm);
        Self {
            turned: half,
            turned_by: carriers(half, &job.lift, each).min(LARGEST_TEAM),
            name: free.name.clone(),
            after_cut: free.after_cut,
            mass: free.mass,
            utilisation,
            effort: Effort::of(utilisation),
            leaves: Leaves::of(free, job, rule),
        }
    }
}
