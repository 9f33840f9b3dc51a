//! Australia: material with 1 % silica or more is cut under control only.

use crate::hazard::dust::DustReport;
use crate::hazard::notes::Notes;
use crate::job::Job;
use crate::tables::documents as doc;
use crate::tables::dust_control::Control;
use crate::tables::record::Record;
use crate::words::{Unit, Value};

/// The record.
pub static RECORD: Record = Record {
    id: "controlled-processing",
    title: "Stone with 1 % silica or more in Australia",
    what: "Since 1 September 2024 any material with 1 % crystalline silica or more is cut, ground and \
           polished there with a control only.",
    why: "Nearly every stone holds more than that.",
    what_to_do: "Water on the disc, on-tool extraction or local exhaust, for every cut and for the \
                 polishing.",
    sources: &[&doc::AU_CONTROLLED_PROCESSING],
    ..Record::HAZARD
};

/// Settled where there is such a rule and a control works; without one the job stops for that.
pub(in crate::hazard) fn assess(job: &Job, dust: &DustReport, notes: &mut Notes) {
    let Some(from) = job.region.record().controlled_from else {
        return;
    };
    if job.stone.silica.high >= from.value && dust.control != Control::Nothing {
        let share = Value::of(job.stone.silica.high * 100.0, Unit::Percent).decimals(0);
        notes.settle("settled-controlled", from.source, [("share", share)]);
    }
}
