//! Bore and seat.

use super::DiscReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::disc::{BORE_MM, BORE_PLAY_MM};
use crate::tables::documents as doc;
use crate::tables::documents::OSA_BORE;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "disc-bore",
    title: "Bore and flange",
    what: "The hole of the disc must fit the seat of the machine, 22.23 mm (7/8 in) on hand machines, \
           and both flanges must be the machine's own, clean and of one size.",
    why: "A disc that sits loose runs out of true, shakes and cracks from its middle. A wrong flange \
          presses on the wrong place.",
    what_to_do: "The right disc for the machine. No bushing, no filing, no shim.",
    sources: &[&doc::GRINDER_WARNINGS, &OSA_BORE],
    phrases: &[MISFIT],
    ..Record::HAZARD
};

const MISFIT: Phrase = Phrase::of_job("disc-bore")
    .harm(Harm::KillsNow)
    .key("disc.bore");

/// A stop when they differ.
pub(super) fn assess(disc: &DiscReport, notes: &mut Notes) {
    let apart = (disc.bore_mm - disc.seat_mm).abs();
    if apart <= BORE_PLAY_MM {
        return;
    }
    let values = [
        ("disc", disc.name.clone().into()),
        ("bore", Value::fine(disc.bore_mm)),
        ("seat", Value::fine(disc.seat_mm)),
        ("usual", Value::fine(BORE_MM)),
        ("play", Value::fine(BORE_PLAY_MM)),
    ];
    notes.used(&OSA_BORE);
    notes.stop_on(&MISFIT, &doc::GRINDER_WARNINGS, values.clone());
}
