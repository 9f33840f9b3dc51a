//! Engineered stone: banned here, wet and with a powered respirator there.

use super::{Engineered, is_engineered};
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::hazard::respirator::powered;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::region::EngineeredStoneLaw;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "engineered-stone",
    title: "Engineered stone",
    what: "Slabs of ground stone bound with resin, up to 97 % crystalline silica in the older ones.",
    why: "Its dust is finer and far richer in silica than that of natural stone. People who cut it dry \
          have fallen ill within a few years; there is no cure.",
    what_to_do: "Where it is banned, do not cut it. Elsewhere leave it to a licensed shop; if it must be \
                 cut, under water and behind a powered respirator only, as the region asks.",
    sources: &[&doc::AU_BAN, &doc::UK_ENGINEERED, &doc::US_CA_HIGH_EXPOSURE],
    phrases: &[BANNED, DRY, UNPOWERED, STRICTER],
    ..Record::HAZARD
};

const BANNED: Phrase = Phrase::of_job("engineered-stone-banned")
    .harm(Harm::KillsLater)
    .key("stone.kind");
const DRY: Phrase = Phrase::of_job("engineered-stone-dry")
    .harm(Harm::KillsLater)
    .key("dust.method");
const UNPOWERED: Phrase = Phrase::of_job("engineered-stone-powered-respirator")
    .harm(Harm::KillsLater)
    .key("dust.respirator");
const STRICTER: Phrase = Phrase::of_job("engineered-stone").harm(Harm::KillsLater);

/// Stops where a condition of the region is not met, otherwise a caution.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if is_engineered(job) != Engineered::Yes {
        return;
    }
    let rule = job.region.record().engineered_stone;
    let values = [("rule", Value::term(rule.words))];
    let broken = broken(job);
    let phrases = [
        (&BANNED, broken.banned),
        (&DRY, broken.dry),
        (&UNPOWERED, broken.unpowered),
    ];
    for (phrase, _) in phrases.iter().filter(|(_, broken)| *broken) {
        notes.stop_on(phrase, rule.source, &values);
    }
    if !broken.any() {
        notes.warn_on(&STRICTER, rule.source, &values);
    }
}

/// Which conditions of the region's rule the job does not meet.
#[derive(Clone, Copy, Debug)]
pub(super) struct Broken {
    banned: bool,
    dry: bool,
    unpowered: bool,
}

impl Broken {
    /// Whether any is not met.
    pub(super) const fn any(self) -> bool {
        self.banned || self.dry || self.unpowered
    }
}

/// The conditions for engineered stone that the job does not meet.
pub(super) fn broken(job: &Job) -> Broken {
    let banned = job.region.record().engineered_stone.law == EngineeredStoneLaw::Banned;
    Broken {
        banned,
        dry: !banned && !job.dust.is_wet(),
        unpowered: !banned && !powered(job.dust.respirator),
    }
}
