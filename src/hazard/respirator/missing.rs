//! No respirator at hand.

use super::{Required, RespiratorReport};
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::{Job, Respirator};
use crate::tables::documents as doc;
use crate::tables::record::Record;

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-missing",
    title: "No respirator at hand",
    what: "The job file names none, though one is asked for or nothing says that none is.",
    why: "Water and extraction hold back most of the dust, not all of it.",
    what_to_do: "First the open steps of the order of controls; then one that fits its wearer.",
    sources: &[&doc::OSHA_TABLE_1, &doc::HSE_STONEMASONRY],
    phrases: &[MISSING, UNSETTLED, NONE_ASKED],
    ..Record::HAZARD
};

const MISSING: Phrase = Phrase {
    id: "respirator-missing",
    title: "no respirator at hand",
    detail: "Respirator: none, factor {apf} or more asked for{borrowed}. First the open steps of the \
             order of controls; then get one that fits its wearer, and enter dust.respirator.",
};
const UNSETTLED: Phrase = Phrase {
    id: "respirator-missing-unassessed",
    title: "no respirator at hand, and nothing settles which is enough",
    detail: "Respirator: none; factor not settled by anything published: exposure must be assessed. \
             First the open steps of the order of controls; then have it assessed, get the respirator \
             that follows, and enter dust.respirator.",
};
const NONE_ASKED: Phrase = Phrase {
    id: "respirator-none-asked",
    title: "no respirator at hand; the table asks for none here",
    detail: "Respirator: none, none asked for by the table{borrowed}. The table holds only while its \
             control works without a fault: have one ready, and wear it whenever dust is seen and for \
             cleaning up.",
};

/// A stop, unless the table asks for none.
pub(super) fn assess(job: &Job, report: &RespiratorReport, notes: &mut Notes) {
    if job.dust.respirator != Respirator::None {
        return;
    }
    let borrowed = ("borrowed", report.required_standing.words().to_owned());
    let source = report.required_source;
    match report.required {
        Required::NoneAsked => notes.caution_on(&NONE_ASKED, source, &[borrowed]),
        Required::MustBeAssessed => notes.stop_on(&UNSETTLED, source, &[borrowed]),
        Required::AtLeast(apf) => {
            notes.stop_on(&MISSING, source, &[borrowed, ("apf", apf.to_string())]);
        }
    }
}
