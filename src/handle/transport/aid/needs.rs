//! What each aid needs for one stone, against what is marked on the one at hand.

use serde::Serialize;

use crate::handle::bending::axes::Axes;
use crate::handle::bending::bend::Beam;
use crate::handle::bending::poses;
use crate::handle::bending::strip::BeamProfile;
use crate::handle::lifting::hold::Holder;
use crate::handle::loads::Load;
use crate::job::{Aid, Flaw, Job};
use crate::units::Mass;

use super::sling::Slings;
use super::trolley::OnTrolley;
use super::vacuum::Vacuum;

/// What each aid needs for one stone.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Aids {
    /// Name of the stone.
    pub name: String,
    /// Mass it is worked out with: the high one.
    #[serde(rename = "mass_kg")]
    pub mass: Mass,
    /// On a trolley.
    pub trolley: OnTrolley,
    /// Under a vacuum lifter.
    pub vacuum: Vacuum,
    /// On edge in two slings; nothing when the stone is bent too far wherever they pass.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub slings: Option<Slings>,
    /// What is marked on the aid at hand against what it needs.
    pub rating: Rating,
}

/// The load marked on an aid against the load it needs.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Rating {
    /// No aid, or its mark is not in the job file.
    NotGiven,
    /// The mark is not less than what is needed.
    Enough {
        /// Marked.
        #[serde(rename = "rated_kg")]
        rated: Mass,
        /// Needed.
        #[serde(rename = "needs_kg")]
        needs: Mass,
    },
    /// The mark is less than what is needed.
    TooWeak {
        /// Marked.
        #[serde(rename = "rated_kg")]
        rated: Mass,
        /// Needed.
        #[serde(rename = "needs_kg")]
        needs: Mass,
    },
}

impl Aids {
    /// What each aid needs for a stone with these flaws, in its own frame.
    #[must_use]
    pub fn of(job: &Job, load: &Load, flaws: &[Flaw]) -> Self {
        let axes = Axes::of(&load.region);
        let mass = load.mass.high;
        let profile = BeamProfile::new(&load.region, axes);
        let beam = Beam::new(&profile, poses::section(load, &job.stone));
        let holder = Holder {
            beam: &beam,
            region: &load.region,
            allowed_mpa: job.stone.strength_mpa / job.stone.safety_factor,
        };
        let mut aids = Self {
            name: load.name.clone(),
            mass,
            trolley: OnTrolley::of(load, &axes, job.lift.trolley),
            vacuum: Vacuum::of(load, &axes, flaws, &holder),
            slings: Slings::of(load, &axes, &holder),
            rating: Rating::NotGiven,
        };
        if let (Some(rated), Some(needs)) = (job.lift.rated, aids.needs_rating(job.lift.aid)) {
            aids.rating = if rated < needs {
                Rating::TooWeak { rated, needs }
            } else {
                Rating::Enough { rated, needs }
            };
        }
        aids
    }

    /// The load that must be marked on an aid for this stone; nothing for hands.
    #[must_use]
    pub const fn needs_rating(&self, aid: Aid) -> Option<Mass> {
        match aid {
            Aid::None => None,
            Aid::Trolley | Aid::Gantry => Some(self.mass),
            Aid::VacuumLifter => Some(self.vacuum.rated),
        }
    }
}
