//! No dry sweeping, no compressed air.

use super::moment::Moment;
use super::notes::Notes;
use super::silica::SilicaReport;
use crate::diag::{Harm, Phrase};
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::documents::EN_60335_2_69;
use crate::tables::record::Record;
use crate::words::{Unit, Value};

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

const WET: Phrase = Phrase::of_every_job("no-dry-sweeping").harm(Harm::KillsLater);
const DRY: Phrase = Phrase::of_every_job("vacuum-before-the-mask-comes-off").harm(Harm::KillsLater);

/// The rule is said for every cut; what a dry cut leaves as well.
pub(super) fn assess(job: &Job, silica: &SilicaReport, notes: &mut Notes) {
    let record = job.region.record();
    let (rule, vacuum) = (record.cleaning, record.vacuum);
    let values = [
        ("rule", Value::term(rule.words)),
        ("borrowed", Value::term(rule.standing.words())),
        (
            "stone",
            Value::of(silica.dust_g.likely, Unit::Gram).decimals(0),
        ),
        (
            "silica",
            Value::of(silica.silica_g.high, Unit::Gram).decimals(0),
        ),
        ("vacuum", Value::term(vacuum.words)),
        ("vacuum_borrowed", Value::term(vacuum.standing.words())),
    ];
    notes.used(vacuum.source);
    if silica.dust_g.high > 0.0 {
        notes.check(Moment::After, &WET, rule.source, values.clone());
    }
    if silica.dust_g.high > 0.0 && job.dust.method != crate::job::DustMethod::Water {
        notes.check(Moment::After, &DRY, vacuum.source, values.clone());
    }
}
