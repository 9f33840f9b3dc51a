//! Lifting, carrying and bending.

use crate::diag::Findings;
use crate::geom::{Pose, Region};
use crate::job::Job;
use crate::units::MassRange;

/// One piece of stone at one moment of the job.
#[derive(Clone, Debug)]
pub struct Load {
    /// Name as printed: "slab as delivered", "finished top".
    pub name: String,
    /// Its outline, in the slab's frame.
    pub region: Region,
    /// Its mass.
    pub mass: MassRange,
}

/// Lifting, carrying and bending of the slab and the top.
#[derive(Clone, Debug, serde::Serialize)]
pub struct Handling {
    /// Sources used.
    pub sources: Vec<crate::tables::Source>,
}

/// Works out the handling of the slab as delivered and of the finished top.
///
/// `pose` carries the top's frame into the slab's.
#[must_use]
pub fn assess(_job: &Job, _slab: &Load, _top: &Load, _pose: Pose) -> (Handling, Findings) {
    (Handling { sources: vec![] }, Findings::default())
}
