//! What drives the machine, and water near it.

use super::notes::Notes;
use crate::job::{DustMethod, Job, Place, Power, Protection};
use crate::tables::documents as doc;
use crate::tables::supply::{GFCI_TRIPS_MA, RCD_MOST_MA, SUPPLY};

/// Stops and cautions about water and the supply.
pub(super) fn assess(job: &Job, notes: &mut Notes) {
    let wet = job.dust.method == DustMethod::Water;
    if wet && !job.machine.wet_rated {
        unrated(job.machine.power, notes);
    }
    if job.machine.power == Power::Mains && !protected(job.machine.protected) {
        unprotected(wet, notes);
    }
    if job.machine.power == Power::Engine && job.dust.place == Place::Indoors {
        engine_indoors(notes);
    }
}

/// Whether a mains supply has a protection that counts; "battery" is none for a mains machine.
const fn protected(protection: Protection) -> bool {
    matches!(
        protection,
        Protection::Rcd | Protection::Gfci | Protection::CentreTapped110V
    )
}

fn unrated(power: Power, notes: &mut Notes) {
    let source = &doc::GRINDER_WARNINGS;
    if power == Power::Mains {
        notes.stop(
            "water-on-mains-unrated",
            source,
            "water on a mains machine that is not made for it: electric shock",
            "Wet rating: none, asked for: by the maker, for wet cutting. The standard warnings \
             forbid water on an ordinary mains grinder; an RCD or GFCI does not make it a wet \
             machine. Use a machine rated for wet cutting, or a shroud and an extractor.",
        );
    } else {
        notes.stop(
            "water-not-rated",
            source,
            "water on a machine that is not made for it",
            "Wet rating: none, asked for: by the maker, for wet cutting. Use a machine whose maker \
             allows water, or a shroud and an extractor.",
        );
    }
}

fn unprotected(wet: bool, notes: &mut Notes) {
    let title = "mains supply without RCD, GFCI or 110 V centre-earthed";
    let what = format!(
        "Protection: none known, asked for: RCD of {RCD_MOST_MA:.0} mA or less, GFCI class A \
         ({GFCI_TRIPS_MA:.0} mA), or 110 V with the centre earthed."
    );
    if wet {
        notes.stop(
            "supply-unprotected",
            &SUPPLY,
            title,
            format!("{what} With water about, no protection means no cutting."),
        );
    } else {
        notes.caution(
            "supply-unprotected",
            &SUPPLY,
            title,
            format!("{what} Put one in the lead at the socket and press its test button first."),
        );
    }
}

fn engine_indoors(notes: &mut Notes) {
    notes.stop(
        "engine-indoors",
        &doc::COMMON_PRACTICE,
        "combustion engine indoors: carbon monoxide",
        "Engines indoors or in a closed yard: none allowed. Exhaust gas kills without warning; cut \
         in the open, or use a battery, air or mains machine.",
    );
}
