//! Time with the tools in the stone, and what is used up.

use serde::Serialize;

use crate::job::Job;
use crate::units::Mass;

use super::{Cut, CutKind};

/// Lines covered with masking tape for each straight cut: the line to keep and the guide's edge.
const TAPED_LINES: f64 = 2.0;

/// What the cuts take.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Consumables {
    /// Time with a disc in the stone, minutes.
    pub sawing_minutes: f64,
    /// Time with a core bit in the stone, minutes: so many a hole, by judgement.
    pub drilling_minutes: f64,
    /// Stone turned to slurry or dust; a core hole counts whole.
    #[serde(rename = "slurry_kg")]
    pub slurry: Mass,
    /// Water, litres; 0 where none is fed.
    pub water_l: f64,
    /// Water for each minute, litres.
    pub water_l_per_min: f64,
    /// Masking tape, mm.
    pub tape_mm: f64,
}

impl Consumables {
    /// Of all cuts; `kerf_mm2` is the area they take out of the face.
    #[must_use]
    pub fn of(job: &Job, cuts: &[Cut], kerf_mm2: f64) -> Self {
        let minutes = |core: bool| -> f64 {
            let own = cuts.iter().filter(|c| (c.kind == CutKind::Core) == core);
            own.map(|c| c.minutes).sum()
        };
        let length = |kind: CutKind| -> f64 {
            let own = cuts.iter().filter(|c| c.kind == kind);
            own.map(|c| c.length).sum()
        };
        let (sawing_minutes, drilling_minutes) = (minutes(false), minutes(true));
        let volume = kerf_mm2 * job.stone.thickness.mean;
        Self {
            sawing_minutes,
            drilling_minutes,
            slurry: Mass::from_kg(volume * job.stone.density.likely * 1e-9),
            water_l: (sawing_minutes + drilling_minutes) * job.dust.water_l_min,
            water_l_per_min: job.dust.water_l_min,
            tape_mm: TAPED_LINES * length(CutKind::Straight) + length(CutKind::Curve),
        }
    }
}
