//! The way in: does the stone go through every door and round every corner, and in which pose.
//!
//! | file | what it works out |
//! |---|---|
//! | `attempt`, `walk` | the answer as data: a pose at a place, a stone on its way |
//! | `bearer` | each pose at each place: what it needs, what is there |
//! | [`corner`] | a plank round a corner |
//! | [`remedy`] | what must give where nothing goes through |
//! | `finding` | what is told on the first page |
//!
//! A stone is taken as the box of least width around it. That box is exact for a stone with
//! square ends; round ends have a little more room round a corner than is reckoned here.

mod attempt;
mod bearer;
pub mod corner;
pub(crate) mod finding;
pub mod remedy;
mod walk;

pub use attempt::{Attempt, Carried, Fit, Measure, Need};
pub use corner::{Corner, How, Longest, Turning};
pub use remedy::Remedy;
pub use walk::{GetsIn, Passage, Walk, WayIn};

use crate::diag::Findings;
use crate::handle::loads::Load;
use crate::job::{Aid, Job};
use bearer::Bearer;

/// The trolley's wheels stand out beyond the lines they run on by so much, both sides together, mm
/// (judgement: half a tyre on each side).
const TYRES_MM: f64 = 60.0;

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
    pub(crate) fn findings(&self) -> Findings {
        finding::findings(self)
    }
}
