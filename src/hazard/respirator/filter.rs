//! A filter that is not of the finest class.

use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Job, Respirator};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::region::RespiratorBasis;
use crate::tables::respirator::MaskClass;

/// The record.
pub static RECORD: Record = Record {
    id: "respirator-filter",
    title: "A filter of the 100 series or HEPA",
    what: "Where stone that is presumed to hold silica is sawn, Quebec asks for a respirator of factor 10 or \
           more with a filter of the 100 series or HEPA.",
    why: "An N95 has the factor but lets through up to 5 % of the finest dust.",
    what_to_do: "A half mask with P100 filters or better, and enter dust.respirator.",
    sources: &[&doc::CA_QC_RESPIRATORS],
    phrases: &[COARSE],
    ..Record::HAZARD
};

const COARSE: Phrase = Phrase::of_job("respirator-filter")
    .harm(Harm::KillsLater)
    .key("dust.respirator");

/// A stop for an N95 where the finest filter is asked for.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let rule = job.region.record().respirator;
    let finest = matches!(rule.by, RespiratorBasis::LeastWithFinestFilter(_));
    if finest && job.dust.respirator == Respirator::Mask(MaskClass::N95) {
        notes.stop_on(&COARSE, rule.source, &[]);
    }
}
