//! Falling stone, crushed hands and feet, slips.

use super::moment::Moment;
use super::notes::Notes;
use crate::diag::{Harm, Phrase};
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record of what falls.
pub static FALLING: Record = Record {
    id: "falling-stone",
    title: "Falling stone",
    what: "Every square metre of slab weighs tens of kilograms.",
    why: "Waste drops from the last pass, slabs on edge fall over: feet, fingers, legs.",
    what_to_do: "Both sides borne before the first pass, nothing of anybody below, never catch a falling slab.",
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

const HEAVY: Phrase = Phrase::of_every_job("falling-stone").harm(Harm::KillsNow);
const SLIPPERY: Phrase = Phrase::of_every_job("wet-floor").harm(Harm::Maims);

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
    let mass = [("mass", Value::number(heavy, 0))];
    notes.check(Moment::Moving, &HEAVY, &doc::COMMON_PRACTICE, &mass);
    if job.dust.is_wet() {
        let power = [("power", Value::Case(job.machine.power.case()))];
        notes.check(Moment::Cutting, &SLIPPERY, &doc::COMMON_PRACTICE, power);
    }
}
