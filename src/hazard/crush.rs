//! Falling stone, crushed hands and feet, slips.

use super::notes::Notes;
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;

/// Mass of a square metre, kg/m², of a thickness in mm and a density in kg/m³.
///
/// ```
/// assert_eq!(kerfwright::hazard::crush::area_mass_kg_m2(20.0, 2700.0), 54.0);
/// ```
#[must_use]
pub fn area_mass_kg_m2(thickness_mm: f64, density_kg_m3: f64) -> f64 {
    // 1000 mm to a metre.
    thickness_mm / 1000.0 * density_kg_m3
}

/// Cautions about the weight of the stone and the floor.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let heavy = area_mass_kg_m2(job.stone.thickness.most, job.stone.density.high);
    notes.caution(
        "falling-stone",
        &doc::COMMON_PRACTICE,
        format!("every square metre weighs up to {heavy:.0} kg"),
        format!(
            "{heavy:.0} kg/m² at the thickest reading and the heaviest stone of the kind. Waste and \
             kept stone both held before the last pass; nobody's feet or fingers below or between; \
             never stand where a slab on edge can fall, and never try to catch one."
        ),
    );
    if job.dust.method == DustMethod::Water {
        notes.caution(
            "wet-floor",
            &doc::COMMON_PRACTICE,
            "slurry makes the floor slippery",
            "Slip-proof boots, water led away from where people stand and carry, cables hung up out of the \
             wet. Floor rinsed and cleared before any piece is lifted.",
        );
    }
}
