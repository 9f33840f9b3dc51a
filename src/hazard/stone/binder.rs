//! A stone whose binder nobody told.

use super::engineered::broken;
use super::{Engineered, is_engineered};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::{Binder, Job};
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::region::EngineeredStoneLaw;
use crate::tables::stone::StoneKind;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "stone-kind-unknown",
    title: "What binds the stone is not known",
    what: "Terrazzo and stones of the user's own may be bound with cement or with resin; porcelain and \
           sintered slabs are fired, but some hold resin.",
    why: "Bound with resin and with 1 % silica or more it counts as engineered stone, with all its rules.",
    what_to_do: "Ask for the data sheet before cutting and enter stone.binder: none (natural stone), cement, \
                 resin or fired.",
    sources: &[&doc::AU_BAN],
    phrases: &[COUNTS, BINDER, FIRED],
    ..Record::HAZARD
};

const COUNTS: Phrase = Phrase::of_job("binder-unknown")
    .harm(Harm::KillsLater)
    .key("stone.binder");
const BINDER: Phrase = Phrase::of_job("stone-kind-unknown")
    .harm(Harm::KillsLater)
    .key("stone.binder");
const FIRED: Phrase = Phrase::of_job("resin-in-fired-slab")
    .harm(Harm::KillsLater)
    .key("stone.binder");

/// A stop for a stone of the user's own that breaks a rule for engineered stone; otherwise an open point.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let law = job.region.record().engineered_stone;
    let values = [
        ("stone", job.stone.name.clone().into()),
        ("rule", Value::term(law.words)),
    ];
    if is_engineered(job) == Engineered::UntilSaidOtherwise {
        if broken(job).any() {
            notes.stop_on(&COUNTS, law.source, &values);
        } else {
            notes.open_on(&BINDER, law.source, &values);
        }
    } else if job.stone.binder == Binder::Unknown {
        match job.stone.kind {
            StoneKind::Porcelain | StoneKind::SinteredStone => {
                if law.law == EngineeredStoneLaw::Banned {
                    notes.open_on(&FIRED, law.source, &values);
                }
            }
            _ => notes.open_on(&BINDER, law.source, &values),
        }
    }
}
