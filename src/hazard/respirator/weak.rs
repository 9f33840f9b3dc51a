//! A respirator that is not strong enough.

use super::{Required, RespiratorReport};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::respirator::Assigned;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-below-required",
    title: "Respirator weaker than asked for",
    what: "The factor of the respirator at hand is below what is asked for the work.",
    why: "What is asked for is the least that somebody with measurements found enough.",
    what_to_do: "First see whether a stronger control lowers what is asked for: the order of controls \
                 says what each open step would change. Then a respirator with a higher factor.",
    sources: &[&doc::OSHA_TABLE_1, &doc::HSE_STONEMASONRY],
    phrases: &[WEAK],
    ..Record::HAZARD
};

const WEAK: Phrase = Phrase::of_job("respirator-below-required")
    .harm(Harm::KillsLater)
    .key("dust.respirator");

/// A stop when even its best mark is too little.
pub(super) fn assess(report: &RespiratorReport, notes: &mut Notes) {
    let (Required::AtLeast(apf), Some(given)) = (report.required, report.assigned) else {
        return;
    };
    if given == Assigned::NotInScheme || given.most() >= apf {
        return;
    }
    let values = [
        ("mask", Value::term(report.at_hand)),
        ("has", given.most().to_string().into()),
        ("apf", apf.to_string().into()),
        ("borrowed", Value::term(report.required_standing.words())),
    ];
    notes.stop_on(&WEAK, report.required_source, values.clone());
}
