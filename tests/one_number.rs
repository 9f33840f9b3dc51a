//! One quantity is printed one way: a length that page 1 gives as 251 mm is not 252 mm overleaf.

mod job_texts;
mod quantities;

use std::collections::BTreeMap;

use kerfwright::document::{Annex, block::Document, document};
use kerfwright::job;
use kerfwright::plan::Plan;
use kerfwright::words::{Language, System, Unit, Writer};

use job_texts::jobs;
use quantities::quantities;

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
