//! The openings of the top where it lies on the slab.

use super::Objection;
use crate::geom::{Outline, Pose};
use crate::job::{Cutout, Job, Shape};

/// An opening, in the slab's frame.
#[derive(Clone, Debug)]
pub struct SawnCutout {
    /// What it is for.
    pub what: String,
    /// The finished opening.
    pub shape: Shape,
    /// The opening as the saw leaves it: smaller by the allowance all round.
    pub sawn: Outline,
    /// Stone left on its edge, mm.
    pub allowance_mm: f64,
}

impl SawnCutout {
    /// An opening carried to its place; nothing when the allowance leaves no opening to saw.
    #[must_use]
    pub fn of(job: &Job, cutout: &Cutout, pose: Pose) -> Option<Self> {
        let shape = cutout.shape.posed(pose);
        let allowance_mm = job.top.allowances.for_finish(cutout.finish);
        let by = vec![-allowance_mm; shape.outline().segs().len()];
        let sawn = shape.outline().offset_each(&by).ok()?;
        Some(Self {
            what: cutout.what.clone(),
            shape,
            sawn,
            allowance_mm,
        })
    }
}

/// Every opening at a pose of the top; one that cannot be sawn is an objection.
pub(super) fn all(job: &Job, pose: Pose, objections: &mut Vec<Objection>) -> Vec<SawnCutout> {
    let mut openings = Vec::new();
    for (cutout, given) in job.top.cutouts.iter().enumerate() {
        match SawnCutout::of(job, given, pose) {
            Some(opening) => openings.push(opening),
            None => objections.push(Objection::NoSawnCutout { cutout }),
        }
    }
    openings
}
