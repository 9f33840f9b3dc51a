//! The way in: does the stone go through every door and round every corner, and in which pose.
//!
//! | file | what it works out |
//! |---|---|
//! | [`mod@self`] | how a stone fares on its way: the answer as data |
//! | `bearer` | each pose at each place: what it needs, what is there |
//! | [`corner`] | a plank round a corner |
//! | [`remedy`] | what must give where nothing goes through |
//! | `finding` | what is told on the first page |
//!
//! A stone is taken as the box of least width around it. That box is exact for a stone with
//! square ends; round ends have a little more room round a corner than is reckoned here.

mod bearer;
pub mod corner;
pub(crate) mod finding;
pub mod remedy;

pub use corner::{Corner, How, Longest, Turning};
pub use remedy::Remedy;

use serde::Serialize;

use super::Load;
use crate::diag::Findings;
use crate::job::{Aid, Job, Obstacle};
use bearer::Bearer;

/// The trolley's wheels stand out beyond the lines they run on by so much, both sides together, mm
/// (judgement: half a tyre on each side).
const TYRES_MM: f64 = 60.0;

/// How a stone is carried.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Carried {
    /// Standing on a long side.
    OnEdge,
    /// Standing on a short side.
    Upright,
    /// Lying flat: the last resort, and not advised.
    Flat,
}

impl Carried {
    /// Every pose, the best first.
    pub const ALL: [Self; 3] = [Self::OnEdge, Self::Upright, Self::Flat];

    /// The pose in words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::OnEdge => "on edge",
            Self::Upright => "upright",
            Self::Flat => "flat",
        }
    }
}

/// What is measured at a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Measure {
    /// Clear width.
    Width,
    /// Clear height.
    Height,
    /// Length that turns in the corner.
    Turn,
}

/// One measure of a pose at a place.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Need {
    /// What is measured.
    pub measure: Measure,
    /// What the stone needs, mm.
    pub needs_mm: f64,
    /// What is there, mm.
    pub has_mm: f64,
}

impl Need {
    const fn new(measure: Measure, needs_mm: f64, has_mm: f64) -> Self {
        Self {
            measure,
            needs_mm,
            has_mm,
        }
    }

    /// To spare, mm; negative when it is short.
    #[must_use]
    pub fn spare_mm(&self) -> f64 {
        self.has_mm - self.needs_mm
    }
}

/// Whether a pose goes through.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Fit {
    /// With this much to spare, mm.
    Clears(f64),
    /// With this much to spare, mm: less than what counts as enough.
    Tight(f64),
    /// Short by this much, mm.
    Short(f64),
}

impl Fit {
    /// To spare, mm; negative when it is short.
    #[must_use]
    pub const fn spare_mm(self) -> f64 {
        match self {
            Self::Clears(mm) | Self::Tight(mm) => mm,
            Self::Short(mm) => -mm,
        }
    }

    /// Whether the stone goes through at all.
    #[must_use]
    pub const fn passes(self) -> bool {
        matches!(self, Self::Clears(_) | Self::Tight(_))
    }
}

/// One pose at one place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Attempt {
    /// The pose.
    pub carried: Carried,
    /// The longer side seen from above, mm.
    pub length_mm: f64,
    /// Every measure.
    pub needs: Vec<Need>,
    /// The measure with the least to spare.
    pub binds: Need,
    /// Whether it goes through.
    pub fit: Fit,
}

/// One stone at one place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Passage {
    /// The place.
    pub at: Obstacle,
    /// On edge, upright, flat.
    pub attempts: [Attempt; 3],
    /// The best pose that goes through; nothing when none does.
    pub best: Option<Carried>,
    /// What must give so that a better pose goes through; empty when it goes through on edge.
    pub remedies: Vec<Remedy>,
    /// The plank on edge in this corner; nothing at a door.
    pub plank: Option<Corner>,
}

impl Passage {
    /// The best attempt that goes through.
    #[must_use]
    pub fn best_attempt(&self) -> Option<&Attempt> {
        self.attempts.iter().find(|a| Some(a.carried) == self.best)
    }

    /// The attempts in better poses than this one; none of them goes through when this is the best.
    #[must_use]
    pub fn better_than(&self, carried: Carried) -> Vec<&Attempt> {
        let before = self.attempts.iter().take_while(|a| a.carried != carried);
        before.collect()
    }

    /// The attempt on edge.
    #[must_use]
    pub const fn on_edge(&self) -> &Attempt {
        let [on_edge, _, _] = &self.attempts;
        on_edge
    }

    /// The attempt upright.
    #[must_use]
    pub const fn upright(&self) -> &Attempt {
        let [_, upright, _] = &self.attempts;
        upright
    }
}

/// How far one stone gets.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum GetsIn {
    /// On edge all the way.
    OnEdge,
    /// On edge, upright at some places.
    Upright,
    /// Only by lying flat at some places.
    Flat,
    /// Nothing goes through at some places.
    No,
}

/// One stone on its way in.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Walk {
    /// Name of the stone.
    pub name: String,
    /// Length of the box around it, mm.
    pub length_mm: f64,
    /// Width of the box around it, mm.
    pub width_mm: f64,
    /// Thickest reading, mm.
    pub thickness_mm: f64,
    /// Height that it needs while it is stood up on its short side, mm: its diagonal.
    pub stand_up_mm: f64,
    /// Each place, in the order of the job file.
    pub passages: Vec<Passage>,
    /// How far it gets.
    pub gets_in: GetsIn,
}

/// The way in for the slab as delivered and for the finished top.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WayIn {
    /// Room beside the stone's faces, both sides together, mm.
    pub room_mm: f64,
    /// Height of the stone's lower edge over the floor, mm.
    pub raise_mm: f64,
    /// Width of the trolley over its wheels, mm; nothing without a trolley.
    pub trolley_mm: Option<f64>,
    /// Less to spare than this is tight, mm; never less than two tape errors.
    pub enough_mm: f64,
    /// The slab as delivered.
    pub slab: Walk,
    /// The finished top.
    pub top: Walk,
}

/// Works out the way in; nothing when the job file names no place on it.
#[must_use]
pub fn way_in(job: &Job, slab: &Load, top: &Load) -> Option<WayIn> {
    if job.route.obstacles.is_empty() {
        return None;
    }
    let trolley_mm = match job.lift.aid {
        Aid::Trolley => Some(job.lift.trolley.track_mm + TYRES_MM),
        Aid::None | Aid::VacuumLifter | Aid::Gantry => None,
    };
    let bearer = Bearer {
        route: &job.route,
        trolley_mm: trolley_mm.unwrap_or(0.0),
        enough_mm: job.route.spare_mm.max(2.0 * job.slab.tape_error_mm),
    };
    let walk = |load: &Load| bearer.walk(load, job.stone.thickness.most);
    Some(WayIn {
        room_mm: job.route.room_mm,
        raise_mm: job.route.raise_mm,
        trolley_mm,
        enough_mm: bearer.enough_mm,
        slab: walk(slab),
        top: walk(top),
    })
}

impl WayIn {
    /// What must be read before anything is bought or carried.
    pub(super) fn findings(&self, words: super::words::Words) -> Findings {
        finding::findings(self, words)
    }
}
