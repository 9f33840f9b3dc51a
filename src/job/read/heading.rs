//! `[job]`: the title block, the unit and the region.

use crate::job::Heading;
use crate::job::given::Given;
use crate::job::ledger::Units;
use crate::job::reader::Reader;
use crate::tables::region::RegionCode;
use crate::units::LengthUnit;

/// Reads the title block and the region, and sets the unit of bare numbers.
pub(super) fn read(r: &mut Reader<'_>) -> (Heading, RegionCode) {
    units(r);
    let region = r.word("region", RegionCode::Other);
    let heading = Heading {
        title: r.text("title"),
        // English when nothing is said, which is no assumption about the job.
        language: r.get("language").and_then(|l| l.word()).unwrap_or_default(),
        date: r.get("date").and_then(|d| d.date()).unwrap_or_default(),
        made_for: r.text("made_for"),
        made_by: r.text("made_by"),
        note: r.text("note"),
    };
    (heading, region)
}

fn units(r: &mut Reader<'_>) {
    let units = match r.get("units").map(|given| unit(&given)) {
        Some(Some(unit)) => Units::Known(unit),
        Some(None) => Units::Unclear,
        None => {
            r.assume("units", "mm");
            Units::default()
        }
    };
    r.ledger.set_units(units);
}

/// The unit by its word or by a common name; any other unit of length is answered with what to do.
fn unit(given: &Given<'_>) -> Option<LengthUnit> {
    let text = given.text()?.trim().to_lowercase();
    let (name, example) = match text.as_str() {
        "inch" | "inches" | "\"" | "″" | "zoll" => return Some(LengthUnit::Inch),
        "millimetre" | "millimetres" | "millimeter" | "millimeters" => {
            return Some(LengthUnit::Millimetre);
        }
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => {
            ("centimetres", "64 cm")
        }
        "m" | "metre" | "metres" | "meter" | "meters" => ("metres", "2.2 m"),
        "ft" | "foot" | "feet" | "'" => ("feet", "7 ft 2 1/2 in"),
        _ => return given.word(),
    };
    let unit = if name == "feet" { "in" } else { "mm" };
    given.fault(
        &format!("is {name}; bare numbers are in mm or in inches"),
        format!(
            "write units = \"{unit}\", and each length that is in {name} as a text with its unit, such as \"{example}\""
        ),
    )
}
