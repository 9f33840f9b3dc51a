//! A tight mask that was not fit-tested.

use super::{RespiratorReport, tight};
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::respirator::MaskScheme;

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

const UNTESTED: Phrase = Phrase {
    id: "respirator-not-fit-tested",
    title: "the mask was not fit-tested on its wearer",
    detail: "{mask}: its factor counts only after a fit test and on clean-shaven skin; until then it \
             cannot be counted on. Have it tested, or use a powered hood.",
};
const SHAVEN: Phrase = Phrase {
    id: "respirator-clean-shaven",
    title: "clean-shaven on the day, seal checked each time",
    detail: "{mask}: fit-tested, and that holds on clean-shaven skin only, stubble counts as a beard. \
             Check the seal each time it is put on; a new size or make, or another face, needs a new \
             test.",
};

/// Said for every tight mask.
pub(super) fn assess(job: &Job, report: &RespiratorReport, notes: &mut Notes) {
    if !tight(job.dust.respirator) {
        return;
    }
    let source = match report.scheme {
        MaskScheme::Us => &doc::OSHA_MASKS,
        MaskScheme::Uk | MaskScheme::Strictest => &doc::UK_MASKS,
    };
    let phrase = if job.dust.mask_fit_tested {
        &SHAVEN
    } else {
        &UNTESTED
    };
    notes.caution_on(phrase, source, &[("mask", report.at_hand.to_owned())]);
}
