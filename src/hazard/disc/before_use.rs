//! A look at the disc before each mounting.

use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::tables::disc::{HAND_RIM_SPEED_M_S, WIDEST_RIM_GAP_MM};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "disc-before-use",
    title: "Look at the disc before each mounting",
    what: "Cracks, missing segments, blue spots from heat, a worn bore, a mark that cannot be read.",
    why: "At 80 m/s a piece of the rim flies as fast as a car on a race track, through goggles and skin.",
    what_to_do: "Look, tap a steel disc and listen for a clear ring, turn it by hand on the spindle. A \
                 worn disc from a bigger machine is not used.",
    sources: &[&doc::GRINDER_WARNINGS],
    phrases: &[LOOK],
    ..Record::HAZARD
};

const LOOK: Phrase = Phrase {
    id: "disc-before-use",
    title: "look at the disc before each mounting",
    detail: "No cracks, bore to fit, both flanges the machine's own and clean, arrow the right way, \
             guard of the disc's own size, gaps in the rim at most {gap} mm, never a worn disc from a \
             bigger machine. At {speed} m/s every loose piece is a shot.",
};

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    let values = [
        ("gap", number(WIDEST_RIM_GAP_MM, 0)),
        ("speed", number(HAND_RIM_SPEED_M_S, 0)),
    ];
    notes.caution_on(&LOOK, &doc::GRINDER_WARNINGS, &values);
}
