//! A look at the disc before each mounting.

use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::tables::disc::{HAND_RIM_SPEED_M_S, WIDEST_RIM_GAP_MM};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::{Unit, Value};

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

const LOOK: Phrase = Phrase::of_every_job("disc-before-use").harm(Harm::KillsNow);

/// Said whenever a disc cuts.
pub(super) fn assess(notes: &mut Notes) {
    let values = [
        ("gap", Value::size(WIDEST_RIM_GAP_MM)),
        (
            "speed",
            Value::of(HAND_RIM_SPEED_M_S, Unit::MetrePerSecond).decimals(0),
        ),
    ];
    notes.check(
        Moment::Before,
        &LOOK,
        &doc::GRINDER_WARNINGS,
        values.clone(),
    );
}
