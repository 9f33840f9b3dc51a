//! Resin-bonded discs age.

use super::DiscReport;
use crate::diag::{Harm, Phrase};
use crate::hazard::notes::Notes;
use crate::job::Bond;
use crate::tables::disc::RESIN_YEARS;
use crate::tables::documents::EN_12413_EXPIRY;
use crate::tables::record::Record;
use crate::words::Value;

/// The record.
pub static RECORD: Record = Record {
    id: "resin-disc-age",
    title: "Age of a resin-bonded disc",
    what: "A reinforced disc of resin and grain carries its last month (04/2027) or quarter \
           (V04/2027), on the metal ring or the label: three years from making at most.",
    why: "Resin takes up damp and goes soft, unseen. An old disc flies apart at a speed that it bore \
          when new. A diamond disc on steel does not age.",
    what_to_do: "Read the date, enter disc.expires, break an expired disc so that nobody else uses it. \
                 For stone a diamond disc is the better choice anyhow.",
    sources: &[&EN_12413_EXPIRY],
    phrases: &[EXPIRED, UNKNOWN, UNDATED],
    ..Record::HAZARD
};

const EXPIRED: Phrase = Phrase::of_job("resin-disc-expired")
    .harm(Harm::KillsNow)
    .key("disc.expires");
const UNKNOWN: Phrase = Phrase::of_job("resin-disc-age-unknown")
    .harm(Harm::KillsNow)
    .key("disc.expires");
const UNDATED: Phrase = Phrase::of_job("resin-disc-age")
    .harm(Harm::KillsNow)
    .key("disc.expires");

/// A stop when its day has passed or is not known, a reminder otherwise.
pub(super) fn assess(disc: &DiscReport, date: &str, notes: &mut Notes) {
    let Bond::Resin { expires } = &disc.bond else {
        return;
    };
    let values = [
        ("disc", disc.name.clone().into()),
        ("expires", expires.clone().into()),
        ("date", Value::name(date)),
        ("years", Value::number(RESIN_YEARS, 0)),
    ];
    if expires.is_empty() {
        notes.stop_on(&UNKNOWN, &EN_12413_EXPIRY, values.clone());
    } else if date > expires.as_str() {
        // Dates written YYYY-MM-DD stand in the order of their letters.
        notes.stop_on(&EXPIRED, &EN_12413_EXPIRY, values.clone());
    } else {
        notes.warn_on(&UNDATED, &EN_12413_EXPIRY, values.clone());
    }
}
