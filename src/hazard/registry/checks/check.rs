//! A rule of the stages before, as a record.

use crate::tables::record::Record;
use crate::tables::{Source, documents as doc};

pub(super) type Sources = &'static [&'static Source];

pub(super) const JUDGED: Sources = &[&doc::OUR_JUDGEMENT];

pub(super) const COMPUTED: Sources = &[&doc::COMPUTED];

pub(super) const fn check(
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
