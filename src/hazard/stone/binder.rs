//! A stone whose binder nobody told.

use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::record::Record;
use crate::tables::regions::au;
use crate::tables::stone::StoneKind;

/// The record.
pub static RECORD: Record = Record {
    id: "stone-kind-unknown",
    title: "What binds the stone is not known",
    what: "Terrazzo and stones of the user's own may be bound with cement or with resin.",
    why: "Bound with resin and with 1 % silica or more it counts as engineered stone, with all its rules.",
    what_to_do: "Ask for the data sheet before cutting.",
    sources: &[&au::BAN],
    phrases: &[BINDER],
    ..Record::HAZARD
};

const BINDER: Phrase = Phrase {
    id: "stone-kind-unknown",
    title: "{stone}: what binds it is not known",
    detail: "Stone bound with resin and holding 1 % silica or more counts as engineered stone. Ask for the \
             data sheet. If it is: {rule}",
};

/// Said for kinds that may be either.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if !matches!(job.stone.kind, StoneKind::Own | StoneKind::Terrazzo) {
        return;
    }
    let law = job.region.record().engineered_stone;
    let values = [
        ("stone", job.stone.name.clone()),
        ("rule", law.words.to_owned()),
    ];
    notes.caution_on(&BINDER, law.source, &values);
}
