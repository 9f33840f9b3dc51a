//! `[job]`: the title block, the unit and the region.

use crate::job::Heading;
use crate::job::ledger::Units;
use crate::job::reader::Reader;
use crate::tables::region::RegionCode;
use crate::units::LengthUnit;
use crate::words::Language;

const UNITS: [(&str, LengthUnit); 2] = [("mm", LengthUnit::Millimetre), ("in", LengthUnit::Inch)];

/// Reads the title block and the region, and sets the unit of bare numbers.
pub(super) fn read(r: &mut Reader<'_>) -> (Heading, RegionCode) {
    units(r);
    let region = region(r);
    let heading = Heading {
        title: r.text("title"),
        language: language(r),
        date: r.get("date").and_then(|d| d.date()).unwrap_or_default(),
        made_for: r.text("made_for"),
        made_by: r.text("made_by"),
        note: r.text("note"),
    };
    (heading, region)
}

fn units(r: &mut Reader<'_>) {
    let units = match r.get("units").map(|given| given.choice(&UNITS)) {
        Some(Some(unit)) => Units::Known(unit),
        Some(None) => Units::Unclear,
        None => {
            r.ledger
                .assume(r.key("units"), "mm", "the format's own unit");
            Units::default()
        }
    };
    r.ledger.set_units(units);
}

/// English when nothing is said, which is no assumption about the job.
fn language(r: &mut Reader<'_>) -> Language {
    let codes = Language::ALL.map(|language| (language.code(), language));
    let given = r.get("language").and_then(|given| given.choice(&codes));
    given.unwrap_or_default()
}

fn region(r: &mut Reader<'_>) -> RegionCode {
    let words = RegionCode::ALL.map(|region| (region.code(), region));
    let why =
        "no region was given, so the strictest published values; ask for your own current rules";
    r.choice_or("region", &words, RegionCode::Other, why)
}
