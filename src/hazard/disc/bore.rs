//! Bore and seat.

use super::DiscReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::disc::{BORE_MM, BORE_PLAY_MM, OSA_BORE};
use crate::tables::documents as doc;
use crate::tables::record::Record;

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

const MISFIT: Phrase = Phrase {
    id: "disc-bore",
    title: "{disc}: bore {bore} mm on a seat of {seat} mm",
    detail: "Bore {bore} mm, seat {seat} mm, usual {usual} mm, at most {play} mm apart. A loose disc \
             runs out of true and breaks, a tight one does not go on. The right disc for the machine: \
             no bushing, no filing, no shim.",
};

/// A stop when they differ.
pub(super) fn assess(disc: &DiscReport, notes: &mut Notes) {
    let apart = (disc.bore_mm - disc.seat_mm).abs();
    if apart <= BORE_PLAY_MM {
        return;
    }
    let values = [
        ("disc", disc.name.clone()),
        ("bore", number(disc.bore_mm, 2)),
        ("seat", number(disc.seat_mm, 2)),
        ("usual", number(BORE_MM, 2)),
        ("play", number(BORE_PLAY_MM, 2)),
    ];
    notes.used(&OSA_BORE);
    notes.stop_on(&MISFIT, &doc::GRINDER_WARNINGS, &values);
}
