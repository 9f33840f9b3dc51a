//! The typed values of a whole document, read from its `Debug` form, which leaves none of them out.

use kerfwright::document::block::Document;
use kerfwright::words::{Quantity, Rounding, Unit};

/// The word behind `name: ` in the `Debug` form of a quantity.
fn field<'a>(text: &'a str, name: &str) -> Option<&'a str> {
    let (_, rest) = text.split_once(name)?;
    rest.split([',', ' ', '}']).next()
}

/// The lengths and masses of a document, each with its rounding and the message it stands in.
pub(crate) fn quantities(document: &Document) -> Vec<(Quantity, String)> {
    let text = format!("{document:?}");
    let mut id = String::new();
    let mut before = "";
    let found = text.split("Quantity { ").filter_map(|rest| {
        if let Some((_, message)) = before.rsplit_once("id: \"") {
            message
                .split('"')
                .next()
                .unwrap_or_default()
                .clone_into(&mut id);
        }
        before = rest;
        let unit = match field(rest, "unit: ")? {
            "Size" => Unit::Size,
            "Tape" => Unit::Tape,
            "Mass" => Unit::Mass,
            _ => return None,
        };
        let rounding = match field(rest, "rounding: ")? {
            "Up" => Rounding::Up,
            "Down" => Rounding::Down,
            "DownToHalf" => Rounding::DownToHalf,
            "UpToHalf" => Rounding::UpToHalf,
            _ => Rounding::Nearest,
        };
        let value = field(rest, "value: ")?.parse().ok()?;
        let mut quantity = Quantity::new(value, unit);
        quantity.rounding = rounding;
        let decimals = rest.split_once("decimals: ")?.1;
        let some = decimals
            .strip_prefix("Some(")
            .and_then(|d| d.split(')').next());
        quantity.decimals = some.and_then(|d| d.parse().ok());
        Some((quantity, id.clone()))
    });
    found.collect()
}
