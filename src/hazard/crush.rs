//! Falling stone, crushed hands and feet, slips.

use super::notes::Notes;
use crate::diag::{Phrase, number};
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record of what falls.
pub static FALLING: Record = Record {
    id: "falling-stone",
    title: "Falling stone",
    what: "Every square metre of slab weighs tens of kilograms.",
    why: "Waste drops from the last pass, slabs on edge fall over: feet, fingers, legs.",
    what_to_do: "Both sides held before the last pass, nothing of anybody below, never catch a falling slab.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[HEAVY],
    ..Record::HAZARD
};

/// The record of the floor.
pub static FLOOR: Record = Record {
    id: "wet-floor",
    title: "Slurry makes the floor slippery",
    what: "Water and stone flour on a smooth floor.",
    why: "Somebody slips with a running disc or a hundredweight of stone in the hands.",
    what_to_do: "Slip-proof boots, water led away, floor rinsed and cleared before anything is lifted.",
    sources: &[&doc::COMMON_PRACTICE],
    phrases: &[SLIPPERY],
    ..Record::HAZARD
};

const HEAVY: Phrase = Phrase {
    id: "falling-stone",
    title: "every square metre weighs up to {mass} kg",
    detail: "{mass} kg/m² at the thickest reading and the heaviest stone of the kind. Waste and kept \
             stone both held before the last pass; nobody's feet or fingers below or between; never \
             stand where a slab on edge can fall, and never try to catch one.",
};
const SLIPPERY: Phrase = Phrase {
    id: "wet-floor",
    title: "slurry makes the floor slippery",
    detail: "Slip-proof boots, water led away from where people stand and carry, cables hung up out of \
             the wet. Floor rinsed and cleared before any piece is lifted.",
};

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

/// Said on every sheet; the floor where it gets wet.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let heavy = area_mass_kg_m2(job.stone.thickness.most, job.stone.density.high);
    let mass = [("mass", number(heavy, 0))];
    notes.caution_on(&HEAVY, &doc::COMMON_PRACTICE, &mass);
    if job.dust.method == DustMethod::Water {
        notes.caution_on(&SLIPPERY, &doc::COMMON_PRACTICE, &[]);
    }
}
