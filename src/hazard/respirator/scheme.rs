//! A respirator that the region's scheme has no row for.

use super::{Required, RespiratorReport};
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::respirator::{Assigned, UK_MEMORY, UK_QUOTED};

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-not-in-scheme",
    title: "A respirator of another scheme",
    what: "American factors (29 CFR 1910.134) are for respirators approved by NIOSH, British ones \
           (HSG53) for European classes.",
    why: "Each scheme tests masks in its own way: the same kind of mask carries 10 in one and 20 in \
          the other. A factor is never taken from one into the other.",
    what_to_do: "Use a respirator that is approved where the work is done.",
    sources: &[&doc::OSHA_MASKS, &doc::UK_MASKS, &UK_QUOTED, &UK_MEMORY],
    phrases: &[FOREIGN, FOREIGN_UNASKED],
    ..Record::HAZARD
};

const FOREIGN: Phrase = Phrase {
    id: "respirator-not-in-scheme",
    title: "{mask} has no factor in this region's scheme",
    detail: "{mask}: factor 0 here, one asked for{borrowed}. Factors of two schemes are never mixed; a \
             mask without a row in this one counts as none. First the open steps of the order of \
             controls; then one that is approved where you are.",
};
const FOREIGN_UNASKED: Phrase = Phrase {
    id: "respirator-unlisted",
    title: "{mask} has no factor in this region's scheme",
    detail: "Factor 0, none asked for by the table{borrowed}. It may well hold dust back, but no rule \
             here counts it: ask for one that is approved where you are.",
};

/// A stop where a factor is asked for.
pub(super) fn assess(report: &RespiratorReport, notes: &mut Notes) {
    if report.assigned != Some(Assigned::NotInScheme) {
        return;
    }
    let values = [
        ("mask", report.at_hand.to_owned()),
        ("borrowed", report.required_standing.words().to_owned()),
    ];
    let source = report.required_source;
    match report.required {
        Required::NoneAsked => notes.caution_on(&FOREIGN_UNASKED, source, &values),
        Required::AtLeast(_) | Required::MustBeAssessed => notes.stop_on(&FOREIGN, source, &values),
    }
}
