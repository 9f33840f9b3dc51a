//! The openings of the top where it lies on the slab.

use crate::geom::{Outline, Pose};
use crate::job::{Cutout, Job, Part, Shape};

use super::Objection;

/// An opening, in the slab's frame.
#[derive(Clone, Debug)]
pub struct SawnCutout {
    /// What it is for.
    pub what: String,
    /// The finished opening.
    pub shape: Shape,
    /// The opening as the saw leaves it: smaller by what is left on each piece.
    pub sawn: Outline,
    /// Stone left on an edge that is sawn, mm.
    pub allowance_mm: f64,
    /// Stone left on each piece of its outline, mm: less than the allowance where a face is on the stone
    /// already.
    pub left_mm: Vec<f64>,
    /// Whether any of its faces is on the stone already.
    pub begun: bool,
}

impl SawnCutout {
    /// An opening carried to its place; nothing when the allowance leaves no opening to saw.
    #[must_use]
    pub fn of(job: &Job, cutout: &Cutout, pose: Pose) -> Option<Self> {
        let shape = cutout.shape.posed(pose);
        let allowance_mm = job.top.allowances.for_finish(cutout.finish);
        let left = |part: &Part| cutout.ready_mm(*part).unwrap_or(allowance_mm);
        let mut left_mm: Vec<f64> = shape.parts().iter().map(left).collect();
        let inwards = |by: &[f64]| {
            let by: Vec<f64> = by.iter().map(|mm| -mm).collect();
            shape.outline().offset_each(&by).ok()
        };
        let sawn = inwards(&left_mm).or_else(|| {
            // Where an arc has less left on it than the sides beside it, the least goes for all.
            let least = left_mm.iter().copied().fold(f64::INFINITY, f64::min);
            left_mm.fill(least);
            inwards(&left_mm)
        })?;
        Some(Self {
            what: cutout.what.clone(),
            shape,
            sawn,
            allowance_mm,
            left_mm,
            begun: !cutout.ready.is_empty(),
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
