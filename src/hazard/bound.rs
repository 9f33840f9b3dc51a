//! Whom a regulator's table serves: building site, shop, private person.

use super::notes::Notes;
use crate::diag::Phrase;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::respirator::MaskScheme;

/// The record.
pub static RECORD: Record = Record {
    id: "who-is-bound",
    title: "Table 1 is for building sites; a shop measures; a private person is not bound",
    what: "OSHA's Table 1 lists controls and respirators for construction work. General industry, \
           such as a shop that makes worktops, has no such table.",
    why: "Following a row of the table is enough on a site. In a shop it is not: there the \
          employer must measure or otherwise assess what people breathe.",
    what_to_do: "Know which of the three you are. On a site follow the row to the letter. In a shop \
                 have exposure assessed. On your own work take the row as the best published guide.",
    sources: &[&doc::OSHA_TWO_RULES],
    phrases: &[BOUND],
    ..Record::HAZARD
};

const BOUND: Phrase = Phrase {
    id: "who-is-bound",
    title: "building site, shop or your own work: which rule holds",
    detail: "On a building site (29 CFR 1926.1153) a row of Table 1, followed to the letter, is enough. \
             A shop that makes worktops is general industry (29 CFR 1910.1053): no table there, \
             exposure is assessed. A private person is bound by neither; the table is the best \
             published guide, and the dust does the same harm.",
};

/// Said where the table is consulted.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if job.region.record().masks.scheme != MaskScheme::Uk {
        notes.caution_on(&BOUND, &doc::OSHA_TWO_RULES, &[]);
    }
}
