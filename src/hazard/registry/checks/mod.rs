//! What the stages of the plan look at and report, explained.

mod cutting;
mod handling;

use crate::tables::Source;
use crate::tables::documents as doc;
use crate::tables::record::Record;

pub(super) use cutting::OF_CUTTING;
pub(super) use handling::OF_HANDLING;

type Sources = &'static [&'static Source];

const JUDGED: Sources = &[&doc::OUR_JUDGEMENT];
const COMPUTED: Sources = &[&doc::COMPUTED];
const fn check(
    [id, title]: [&'static str; 2],
    what: &'static str,
    why: &'static str,
    what_to_do: &'static str,
    sources: Sources,
) -> Record {
    Record {
        id,
        title,
        what,
        why,
        what_to_do,
        sources,
        ..Record::CHECK
    }
}
