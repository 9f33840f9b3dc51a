//! A tight mask that was not fit-tested.

use super::{RespiratorReport, tight};
use crate::diag::{Harm, Phrase};
use crate::hazard::moment::Moment;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-not-fit-tested",
    title: "Fit test and clean-shaven skin",
    what: "A mask that seals against the skin must be tried on its wearer with a fit test.",
    why: "Its factor counts only then, and only over clean-shaven skin: a day's stubble lets dust in.",
    what_to_do: "Have it tested, shave on the day, press the edge and check the seal each time it is \
                 put on. Or use a powered hood, which does not seal.",
    sources: &[&doc::OSHA_MASKS, &doc::UK_MASKS],
    phrases: &[UNTESTED, SHAVEN],
    ..Record::HAZARD
};

const UNTESTED: Phrase = Phrase::of_job("respirator-not-fit-tested")
    .harm(Harm::KillsLater)
    .key("dust.mask_fit_tested");
const SHAVEN: Phrase = Phrase::of_every_job("respirator-clean-shaven").harm(Harm::KillsLater);

/// Said for every tight mask.
pub(super) fn assess(job: &Job, report: &RespiratorReport, notes: &mut Notes) {
    if !tight(job.dust.respirator) {
        return;
    }
    let source = job.region.record().masks.source;
    let values = [("mask", Value::term(report.at_hand))];
    if job.dust.mask_fit_tested {
        notes.check(Moment::Before, &SHAVEN, source, &values);
    } else {
        notes.open_on(&UNTESTED, source, &values);
    }
}
