//! A mains supply without protection.

use super::{is_mains, is_protected, is_wet};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Job, Workplace};
use crate::tables::documents::{GFCI, RCD, SUPPLY_PROTECTION};
use crate::tables::record::Record;
use crate::tables::supply::{CENTRE_TAPPED_TO_EARTH_V, GFCI_TRIPS_MA, RCD_MOST_MA};
use crate::words::{Unit, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "supply-unprotected",
    title: "Mains supply without protection",
    what: "A mains machine with neither an RCD of 30 mA or less, nor a GFCI of class A (trips at 6 mA in \
           about 25 ms), nor a 110 V site supply with its centre earthed (55 V to earth).",
    why: "A damaged lead or water in the machine puts the full voltage through the person who holds it.",
    what_to_do: "Put one of the three in the lead at the socket and press its test button first. With water \
                 about or outdoors and none of them: no cutting.",
    sources: &[&SUPPLY_PROTECTION, &RCD, &GFCI],
    phrases: &[WET, OUTDOORS, DRY],
    ..Record::HAZARD
};

const WET: Phrase = Phrase::of_job("supply-unprotected")
    .harm(Harm::KillsNow)
    .key("machine.protected");
const OUTDOORS: Phrase = Phrase::of_job("supply-unprotected-outdoors")
    .harm(Harm::KillsNow)
    .key("machine.protected");
const DRY: Phrase = Phrase::of_job("supply-unprotected-dry")
    .harm(Harm::KillsNow)
    .key("machine.protected");

/// A stop when wet or outdoors, an open point when dry and indoors.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if !is_mains(job) {
        return;
    }
    if is_protected(job.machine.protected) {
        notes.settle("settled-supply", &SUPPLY_PROTECTION, []);
        return;
    }
    let rule = job.region.record().supply;
    let values = [
        ("rcd", Value::of(RCD_MOST_MA, Unit::Milliampere).decimals(0)),
        (
            "gfci",
            Value::of(GFCI_TRIPS_MA, Unit::Milliampere).decimals(0),
        ),
        (
            "volts",
            Value::of(CENTRE_TAPPED_TO_EARTH_V, Unit::Volt).decimals(0),
        ),
        ("rule", Value::term(rule.words)),
        ("borrowed", Value::term(rule.standing.words())),
    ];
    notes.used(rule.source);
    if is_wet(job) {
        notes.stop_on(&WET, &SUPPLY_PROTECTION, &values);
    } else if job.dust.place == Workplace::Outdoors {
        notes.stop_on(&OUTDOORS, &SUPPLY_PROTECTION, &values);
    } else {
        notes.open_on(&DRY, &SUPPLY_PROTECTION, &values);
    }
}
