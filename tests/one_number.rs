//! One quantity is printed one way: a length that page 1 gives as 251 mm is not 252 mm overleaf.
//!
//! The typed values of a whole document are read from its `Debug` form, which leaves none of them out.

mod job_texts;

use std::collections::BTreeMap;

use kerfwright::document::{Annex, block::Document, document};
use kerfwright::job;
use kerfwright::plan::Plan;
use kerfwright::words::{Language, Quantity, Rounding, System, Unit, Writer};

use job_texts::jobs;

/// The word behind `name: ` in the `Debug` form of a quantity.
fn field<'a>(text: &'a str, name: &str) -> Option<&'a str> {
    let (_, rest) = text.split_once(name)?;
    rest.split([',', ' ', '}']).next()
}

/// The lengths and masses of a document, each with its rounding and the message it stands in.
fn quantities(document: &Document) -> Vec<(Quantity, String)> {
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

/// Each quantity that is printed in two ways: the ways.
fn printed_twice(document: &Document) -> Vec<String> {
    let system = System::Metric;
    let writer = Writer {
        system,
        language: Language::English,
    };
    let mut ways: BTreeMap<(String, bool), Vec<(String, String)>> = BTreeMap::new();
    for (quantity, id) in quantities(document) {
        let mass = quantity.unit == Unit::Mass;
        let printed = (writer.figure(&quantity), id);
        let seen = ways
            .entry((format!("{:.7}", quantity.value), mass))
            .or_default();
        if seen
            .iter()
            .all(|(figure, _)| figure.parse::<f64>() != printed.0.parse())
        {
            seen.push(printed);
        }
    }
    let twice = ways.into_iter().filter(|(_, ways)| ways.len() > 1);
    twice
        .map(|((value, _), ways)| format!("{value}: {ways:?}"))
        .collect()
}

#[test]
fn one_quantity_is_printed_one_way() {
    let mut found = Vec::new();
    for (name, text) in [jobs("examples"), jobs("tests/golden")].concat() {
        let Ok((job, _)) = job::read(&text) else {
            continue;
        };
        let Ok(plan) = Plan::of(&job) else { continue };
        let document = document(&plan, Annex::With);
        let of_job = printed_twice(&document);
        found.extend(of_job.into_iter().map(|f| format!("{name}: {f}")));
    }
    assert!(found.is_empty(), "{}\n{}", found.len(), found.join("\n"));
}

/// Whole minutes at the end of a line, or in one of its cells.
fn minutes(cell: &str) -> Option<u32> {
    cell.trim().strip_suffix("\u{a0}min")?.parse().ok()
}

#[test]
fn the_minutes_of_the_day_add_up_to_those_of_page_1() {
    let mut seen = 0;
    for entry in std::fs::read_dir("tests/golden").unwrap().flatten() {
        let Ok(text) = std::fs::read_to_string(entry.path().join("sheet.txt")) else {
            continue;
        };
        let cells = |line: &str| -> Vec<u32> { line.split('|').filter_map(minutes).collect() };
        let tiles = text.lines().map(cells).find(|found| found.len() == 2);
        let rows = text.lines().filter(|line| line.starts_with("Cut"));
        let rows: Vec<u32> = rows.filter_map(|line| cells(line).pop()).collect();
        let Some(tiles) = tiles.filter(|_| !rows.is_empty()) else {
            continue;
        };
        let name = entry.path();
        assert_eq!(
            rows.iter().sum::<u32>(),
            tiles.iter().sum::<u32>(),
            "{name:?}"
        );
        seen += 1;
    }
    assert!(seen > 10, "{seen}");
}
