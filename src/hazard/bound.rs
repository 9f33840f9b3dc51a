//! Whom a regulator's table serves: building site, shop, private person.

use super::dust::consults_table;
use super::moment::Moment;
use super::notes::Notes;
use crate::diag::{Harm, Phrase};
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;

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

const BOUND: Phrase = Phrase::of_every_job("who-is-bound").harm(Harm::KillsLater);

/// Said where the table is consulted.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if consults_table(job) {
        notes.check(Moment::Before, &BOUND, &doc::OSHA_TWO_RULES, &[]);
    }
}
