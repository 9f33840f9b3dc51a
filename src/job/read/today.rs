//! `[[today]]`: other work of the same day, which counts with the cutting: `what`, `minutes`, `a`,
//! `k`, `noise`, `dusty`.

use crate::job::quantity::{Limits, MINUTES, NOISE, VIBRATION, from_to};
use crate::job::reader::Reader;
use crate::job::{Dusty, Machine, Spell, Vibration};
use crate::tables::tool::VIBRATION_UNCERTAINTY;

/// The most pieces of other work of one day (judgement).
const MOST_SPELLS: usize = 16;
/// A day, minutes.
const DAY: Limits = from_to(0.0, 1440.0);

/// Reads the other work; what is left open is taken from the machine of the job.
pub(super) fn read(root: &mut Reader<'_>, machine: &Machine) -> Vec<Spell> {
    root.each("today", MOST_SPELLS, |r| one(r, machine))
}

fn one(r: &mut Reader<'_>, machine: &Machine) -> Option<Spell> {
    let what = r.text("what");
    let minutes = r.need("minutes", "how long that work takes on the day");
    let as_machine = "not said; as the machine of this job. Give 0 for none";
    let range = from_to(0.0, 50.0);
    let a = r.quantity_or("a", &VIBRATION, range, machine.vibration.a, as_machine);
    let why = "HSE OC 246/31: 40 % of the magnitude when the maker states no uncertainty";
    let k = r.quantity_or("k", &VIBRATION, range, a * VIBRATION_UNCERTAINTY.value, why);
    let levels = from_to(0.0, 140.0);
    let noise_db = r.quantity_or("noise", &NOISE, levels, machine.noise_db, as_machine);
    let dusty = r.flag_or("dusty", true, "not said; counted as stone dust");
    Some(Spell {
        what: if what.is_empty() {
            "other work".into()
        } else {
            what
        },
        minutes: minutes?.quantity(&MINUTES, DAY)?,
        vibration: Vibration { a, k },
        noise_db,
        dusty: if dusty { Dusty::Dusty } else { Dusty::Clean },
    })
}
