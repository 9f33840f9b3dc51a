//! Engineered stone: banned here, wet and with a powered respirator there.

use super::is_engineered;
use crate::diag::Phrase;
use crate::hazard::notes::Notes;
use crate::hazard::respirator::powered;
use crate::job::{DustMethod, Job};
use crate::tables::record::Record;
use crate::tables::region::EngineeredStoneLaw;
use crate::tables::regions::{au, uk, us_ca};

/// The record.
pub static RECORD: Record = Record {
    id: "engineered-stone",
    title: "Engineered stone",
    what: "Slabs of ground stone bound with resin, up to 97 % crystalline silica in the older ones.",
    why: "Its dust is finer and far richer in silica than that of natural stone. People who cut it dry \
          have fallen ill within a few years; there is no cure.",
    what_to_do: "Where it is banned, do not cut it. Elsewhere leave it to a licensed shop; if it must be \
                 cut, under water and behind a powered respirator only, as the region asks.",
    sources: &[&au::BAN, &uk::ENGINEERED, &us_ca::WET_METHODS],
    phrases: &[BANNED, DRY, UNPOWERED, STRICTER],
    ..Record::HAZARD
};

const BANNED: Phrase = Phrase {
    id: "engineered-stone-banned",
    title: "engineered stone may not be cut here",
    detail: "{rule}",
};
const DRY: Phrase = Phrase {
    id: "engineered-stone-dry",
    title: "engineered stone without water",
    detail: "Wet methods: none, asked for. {rule}",
};
const UNPOWERED: Phrase = Phrase {
    id: "engineered-stone-powered-respirator",
    title: "engineered stone without a powered respirator",
    detail: "Powered respirator: none at hand, asked for. {rule}",
};
const STRICTER: Phrase = Phrase {
    id: "engineered-stone",
    title: "engineered stone: stricter rules come first",
    detail: "{rule} Leaving it to a licensed shop is the safe choice.",
};

/// Stops where the rule is not met, otherwise a caution.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    if !is_engineered(job) {
        return;
    }
    let rule = job.region.record().engineered_stone;
    let wet = job.dust.method == DustMethod::Water;
    let asks_powered = rule.law == EngineeredStoneLaw::WetAndPoweredRespirator;
    let asks_wet = asks_powered || rule.law == EngineeredStoneLaw::WetOnly;
    let values = [("rule", rule.words.to_owned())];
    let against = [
        (&BANNED, rule.law == EngineeredStoneLaw::Banned),
        (&DRY, asks_wet && !wet),
        (&UNPOWERED, asks_powered && !powered(job.dust.respirator)),
    ];
    for (phrase, broken) in against {
        if broken {
            notes.stop_on(phrase, rule.source, &values);
        }
    }
    if !against.iter().any(|(_, broken)| *broken) {
        notes.caution_on(&STRICTER, rule.source, &values);
    }
}
