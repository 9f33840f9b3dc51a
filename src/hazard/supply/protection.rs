//! A mains supply without protection.

use super::{is_mains, is_protected, is_wet};
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::record::Record;
use crate::tables::supply::{
    CENTRE_TAPPED_TO_EARTH_V, GFCI, GFCI_TRIPS_MA, RCD, RCD_MOST_MA, SUPPLY,
};

/// The record.
pub static RECORD: Record = Record {
    id: "supply-unprotected",
    title: "Mains supply without protection",
    what: "A mains machine with neither an RCD of 30 mA or less, nor a GFCI of class A (trips at 6 mA in \
           about 25 ms), nor a 110 V site supply with its centre earthed (55 V to earth).",
    why: "A damaged lead or water in the machine puts the full voltage through the person who holds it.",
    what_to_do: "Put one of the three in the lead at the socket and press its test button first. With water \
                 about and none of them: no cutting.",
    sources: &[&SUPPLY, &RCD, &GFCI],
    phrases: &[WET, DRY],
    ..Record::HAZARD
};

const WET: Phrase = Phrase {
    id: "supply-unprotected",
    title: "water on a mains supply without RCD, GFCI or 110 V centre-earthed",
    detail: "Protection: none known, asked for: RCD of {rcd} mA or less, GFCI class A ({gfci} mA), or 110 V \
             with the centre earthed ({volts} V to earth). Here: {rule}. With water about, no protection means no \
             cutting.",
};
const DRY: Phrase = Phrase {
    id: "supply-unprotected-dry",
    title: "mains supply without RCD, GFCI or 110 V centre-earthed",
    detail: "Protection: none known, asked for: RCD of {rcd} mA or less, GFCI class A ({gfci} mA), or 110 V \
             with the centre earthed ({volts} V to earth). Here: {rule}. Put one in the lead and press its test \
             button first.",
};

/// A stop when wet, a caution when dry.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if !is_mains(job) || is_protected(job.machine.protected) {
        return;
    }
    let rule = job.region.record().supply;
    let values = [
        ("rcd", number(RCD_MOST_MA, 0)),
        ("gfci", number(GFCI_TRIPS_MA, 0)),
        ("volts", number(CENTRE_TAPPED_TO_EARTH_V, 0)),
        ("rule", format!("{}{}", rule.words, rule.standing.words())),
    ];
    notes.used(rule.source);
    if is_wet(job) {
        notes.stop_on(&WET, &SUPPLY, &values);
    } else {
        notes.caution_on(&DRY, &SUPPLY, &values);
    }
}
