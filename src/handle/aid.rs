//! What carries the stone when hands must not: the numbers each aid needs.
//!
//! | file | the aid |
//! |---|---|
//! | [`trolley`] | a trolley that carries the stone on edge |
//! | [`vacuum`] | a vacuum lifter, and where its cups go |
//! | [`sling`] | a gantry or hoist with two slings |
//! | `finding` | what is told of the one that is used |
//!
//! Makers' instructions and competent people come before all of these: the numbers only say what
//! to ask for.

pub(crate) mod finding;
pub mod sling;
pub mod trolley;
pub mod vacuum;

use serde::Serialize;

use super::Load;
use super::axes::Axes;
use super::words::Words;
use crate::diag::Findings;
use crate::job::{Aid, Flaw, Job};
use crate::tables::{Source, Sure};
use crate::units::Mass;
use sling::Slings;
use trolley::OnTrolley;
use vacuum::Vacuum;

/// Where the ways of using lifting aids come from.
pub const AID_PRACTICE: Source = Source {
    what: "trolley, vacuum lifter, slings: rated load, second securing, competent person",
    document: "common practice",
    clause: "",
    year: 0,
    sure: Sure::Practice,
};

/// What each aid needs for one stone.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Aids {
    /// Name of the stone.
    pub name: String,
    /// Mass it is worked out with: the high one.
    pub mass: Mass,
    /// On a trolley.
    pub trolley: OnTrolley,
    /// Under a vacuum lifter.
    pub vacuum: Vacuum,
    /// In two slings.
    pub slings: Slings,
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
        rated: Mass,
        /// Needed.
        needs: Mass,
    },
    /// The mark is less than what is needed.
    TooWeak {
        /// Marked.
        rated: Mass,
        /// Needed.
        needs: Mass,
    },
}

impl Aids {
    /// What each aid needs for a stone with these flaws, in its own frame.
    #[must_use]
    pub fn of(job: &Job, load: &Load, flaws: &[Flaw]) -> Self {
        let axes = Axes::of(&load.region);
        let mass = load.mass.high;
        let mut aids = Self {
            name: load.name.clone(),
            mass,
            trolley: OnTrolley::of(load, &axes, job.lift.trolley),
            vacuum: Vacuum::of(load, &axes, flaws),
            slings: Slings::of(load, &axes),
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

/// What must be read before the aid of this job is used.
pub(super) fn findings(job: &Job, stones: &[Aids; 2], words: Words) -> Findings {
    finding::findings(job, stones, words)
}
