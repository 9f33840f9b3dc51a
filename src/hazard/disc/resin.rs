//! Resin-bonded discs age.

use super::DiscReport;
use crate::diag::{Phrase, number};
use crate::hazard::notes::Notes;
use crate::job::Bond;
use crate::tables::disc::{EN_12413_EXPIRY, RESIN_YEARS};
use crate::tables::record::Record;

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

const EXPIRED: Phrase = Phrase {
    id: "resin-disc-expired",
    title: "{disc}: its last day was {expires}",
    detail: "Job dated {date}, last day of the disc {expires}. Resin discs last {years} years from \
             making at most: break it, and take a new one or a diamond disc.",
};
const UNKNOWN: Phrase = Phrase {
    id: "resin-disc-age-unknown",
    title: "{disc}: resin-bonded, last day not known",
    detail: "Resin discs last {years} years from making at most, and damp shortens that. Read the \
             month or quarter on ring or label and enter disc.expires; a resin disc without a date is \
             not used.",
};
const UNDATED: Phrase = Phrase {
    id: "resin-disc-age",
    title: "{disc}: not after {expires}",
    detail: "Last day of the disc {expires}: compare it with the day of the work. Kept dry and lying \
             flat until then; one that was damp or dropped is broken and thrown away.",
};

/// A stop when its day has passed or is not known, a reminder otherwise.
pub(super) fn assess(disc: &DiscReport, date: &str, notes: &mut Notes) {
    let Bond::Resin { expires } = &disc.bond else {
        return;
    };
    let values = [
        ("disc", disc.name.clone()),
        ("expires", expires.clone()),
        ("date", date.to_owned()),
        ("years", number(RESIN_YEARS, 0)),
    ];
    if expires.is_empty() {
        notes.stop_on(&UNKNOWN, &EN_12413_EXPIRY, &values);
    } else if date > expires.as_str() {
        // Dates written YYYY-MM-DD stand in the order of their letters.
        notes.stop_on(&EXPIRED, &EN_12413_EXPIRY, &values);
    } else {
        notes.caution_on(&UNDATED, &EN_12413_EXPIRY, &values);
    }
}
