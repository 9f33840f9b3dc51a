//! The whole job, its title block and what was assumed.

use serde::Serialize;

use super::as_cut::AsCut;
use super::day::{ExposurePeriod, Protector};
use super::disc::{CoreBit, Disc};
use super::dust::Dust;
use super::jig::{CircleJig, Guide, Passes};
use super::lift::Lift;
use super::machine::Machine;
use super::place::{PlaceWish, Support};
use super::route::Route;
use super::shape::Shape;
use super::slab::Slab;
use super::stone::Stone;
use super::top::Top;
use crate::tables::region::RegionCode;
use crate::units::LengthUnit;
use crate::words::Language;

/// A complete, checked job.
#[derive(Clone, Debug)]
pub struct Job {
    /// What is printed in the title block.
    pub heading: Heading,
    /// Whose rules apply.
    pub region: RegionCode,
    /// The unit printed first.
    pub units: LengthUnit,
    /// The stone.
    pub stone: Stone,
    /// The slab as bought.
    pub slab: Slab,
    /// The finished worktop.
    pub top: Top,
    /// The outline of what the top will stand on, in the top's frame, when it was given.
    pub base: Option<Shape>,
    /// The supports the top will stand on, in the top's frame.
    pub supports: Vec<Support>,
    /// Where the top should lie on the slab.
    pub place: PlaceWish,
    /// The machine.
    pub machine: Machine,
    /// The discs of the kit, at least one.
    pub discs: Vec<Disc>,
    /// The core bits of the kit, in the order given.
    pub core_bits: Vec<CoreBit>,
    /// The straight guide.
    pub guide: Guide,
    /// The circle jig.
    pub circle_jig: CircleJig,
    /// Passes and rates.
    pub passes: Passes,
    /// Dust control.
    pub dust: Dust,
    /// The hearing protector at hand.
    pub protector: Protector,
    /// Other work of the same day.
    pub today: Vec<ExposurePeriod>,
    /// Lifting.
    pub lift: Lift,
    /// The way in.
    pub route: Route,
    /// What really happened, when the cutting has begun and did not go as planned.
    pub as_cut: Option<AsCut>,
    /// Every value that the job file left open and what was taken for it.
    pub assumed: Vec<Assumption>,
}

impl Job {
    /// Whether the value of a key, such as `machine.rpm`, was taken and not given.
    #[must_use]
    pub fn is_assumed(&self, key: &str) -> bool {
        self.assumed.iter().any(|taken| taken.key == key)
    }
}

/// The title block: free text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Heading {
    /// Name of the job.
    pub title: String,
    /// Language of the helper's and the safety page.
    pub language: Language,
    /// Date as `YYYY-MM-DD`; empty when the job file gives none.
    pub date: String,
    /// For whom.
    pub made_for: String,
    /// By whom.
    pub made_by: String,
    /// A remark.
    pub note: String,
}

/// A value the job file left open.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Assumption {
    /// The key that would set it, such as `passes.rate`.
    pub key: String,
    /// The value taken, with its unit.
    pub value: String,
    /// Why this one: source, judgement or common practice.
    pub why: String,
}
