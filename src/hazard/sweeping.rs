//! No dry sweeping, no compressed air.

use super::notes::Notes;
use super::silica::SilicaReport;
use crate::diag::{Phrase, number};
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::record::Record;
use crate::tables::vacuum::EN_60335_2_69;

/// The record.
pub static RECORD: Record = Record {
    id: "no-dry-sweeping",
    title: "No dry sweeping, no compressed air",
    what: "The stone that was sawn away lies about after the cuts, on floor, machine, clothes and hair.",
    why: "Swept dry or blown off it is in the air again, at the very moment when the respirator is off.",
    what_to_do: "Respirator on until the place is clean. Wipe wet or vacuum with class H or HEPA. \
                 Clothes are vacuumed or rinsed, never shaken or blown.",
    sources: &[&doc::OSHA_HOUSEKEEPING, &EN_60335_2_69],
    phrases: &[WET, DRY],
    ..Record::HAZARD
};

const WET: Phrase = Phrase {
    id: "no-dry-sweeping",
    title: "no dry sweeping, no compressed air",
    detail: "{rule}{borrowed} About {stone} g of stone, up to {silica} g of it silica, lie about after \
             the cuts: dry, they rise again. Vacuum: {vacuum}{vacuum_borrowed}.",
};
const DRY: Phrase = Phrase {
    id: "vacuum-before-the-mask-comes-off",
    title: "dust that the shroud missed lies everywhere: vacuum it before the mask comes off",
    detail: "No shroud catches all of {stone} g, least of all at the ends of a cut. Floor, ledges, \
             machine and clothes are vacuumed before any mask comes off: {vacuum}{vacuum_borrowed}.",
};

/// The rule is said for every cut; what a dry cut leaves as well.
pub(super) fn assess(job: &Job, silica: &SilicaReport, notes: &mut Notes) {
    let record = job.region.record();
    let (rule, vacuum) = (record.cleaning, record.vacuum);
    let values = [
        ("rule", rule.words.to_owned()),
        ("borrowed", rule.standing.words().to_owned()),
        ("stone", number(silica.dust_g.likely, 0)),
        ("silica", number(silica.silica_g.high, 0)),
        ("vacuum", vacuum.words.to_owned()),
        ("vacuum_borrowed", vacuum.standing.words().to_owned()),
    ];
    notes.used(vacuum.source);
    if silica.dust_g.high > 0.0 {
        notes.caution_on(&WET, rule.source, &values);
    }
    if silica.dust_g.high > 0.0 && job.dust.method != crate::job::DustMethod::Water {
        notes.caution_on(&DRY, vacuum.source, &values);
    }
}
