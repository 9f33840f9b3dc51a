//! `[[today]]`: other work of the same day, which counts with the cutting: `what`, `minutes`, `a`,
//! `k`, `noise`, `dusty`.

use crate::job::reader::Reader;
use crate::job::{Dusty, ExposurePeriod, Machine, Vibration};
use crate::tables::tool::VIBRATION_UNCERTAINTY;

/// Reads the other work; what is left open is taken from the machine of the job.
pub(super) fn read(root: &mut Reader<'_>, machine: &Machine) -> Vec<ExposurePeriod> {
    root.each("today", |r| one(r, machine))
}

fn one(r: &mut Reader<'_>, machine: &Machine) -> Option<ExposurePeriod> {
    let what = r.text("what");
    let minutes = r.need("minutes");
    let a = r.quantity_else("a", machine.vibration.a);
    let k = r.quantity_else("k", a * VIBRATION_UNCERTAINTY.value);
    let noise_db = r.quantity_else("noise", machine.noise_db);
    let dusty = r.flag("dusty");
    Some(ExposurePeriod {
        what: if what.is_empty() {
            "other work".into()
        } else {
            what
        },
        minutes: minutes?.quantity()?,
        vibration: Vibration { a, k },
        noise_db,
        dusty: if dusty { Dusty::Dusty } else { Dusty::Clean },
    })
}
