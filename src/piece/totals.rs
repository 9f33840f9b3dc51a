//! Sums over all cuts.

use serde::Serialize;

use crate::cut::{Cut, CutKind};
use crate::job::Job;

/// Sums over all cuts.
#[derive(Clone, Copy, Debug, Serialize)]
pub struct Totals {
    /// Straight trims.
    pub straight_cuts: usize,
    /// Curves.
    pub curves: usize,
    /// Relief cuts in the waste of curves.
    pub relief_cuts: usize,
    /// Core holes.
    pub core_holes: usize,
    /// Length sawn.
    pub length_mm: f64,
    /// Sawn face.
    pub face_mm2: f64,
    /// Stone turned to dust or slurry, mm³.
    pub kerf_volume_mm3: f64,
    /// Time with the disc in the stone.
    pub sawing_minutes: f64,
    /// Setting-up time.
    pub set_up_minutes: f64,
}

impl Totals {
    /// The sums; `kerf_mm2` is what all cuts take out of the face.
    #[must_use]
    pub fn of(job: &Job, cuts: &[Cut], kerf_mm2: f64) -> Self {
        let count = |kind: CutKind| cuts.iter().filter(|c| c.kind == kind).count();
        #[allow(clippy::cast_precision_loss)]
        let set_ups = cuts.len() as f64;
        Self {
            straight_cuts: count(CutKind::Straight),
            curves: count(CutKind::Curve),
            relief_cuts: count(CutKind::Relief),
            core_holes: cuts.iter().map(|c| c.holes.len()).sum(),
            length_mm: cuts.iter().map(|c| c.length).sum(),
            face_mm2: cuts.iter().map(|c| c.face_mm2).sum(),
            kerf_volume_mm3: kerf_mm2 * job.stone.thickness.mean,
            sawing_minutes: cuts.iter().map(|c| c.minutes).sum(),
            set_up_minutes: job.passes.set_up_min * set_ups,
        }
    }
}
