//! One quantity is printed one way: a length that page 1 gives as 251 mm is not 252 mm overleaf.

mod job_texts;
mod quantities;

use std::collections::BTreeMap;

use kerfwright::document::{Annex, block::Document, document};
use kerfwright::geom::Point;
use kerfwright::job;
use kerfwright::plan::Plan;
use kerfwright::words::{Language, Rounding, System, Unit, Writer};

use job_texts::jobs;
use quantities::quantities;

/// Each quantity that is printed in two ways: the ways. What is taped beside kept stone goes to half a mark where a
/// size goes to the nearest whole one, and is compared with its like only; `tests/set_out` holds it to its mark.
fn printed_twice(document: &Document) -> Vec<String> {
    let system = System::Metric;
    let writer = Writer {
        system,
        language: Language::English,
    };
    let mut ways: BTreeMap<(String, bool, bool), Vec<(String, String)>> = BTreeMap::new();
    for (quantity, id) in quantities(document) {
        let mass = quantity.unit == Unit::Mass;
        let to_half = matches!(quantity.rounding, Rounding::DownToHalf | Rounding::UpToHalf);
        let printed = (writer.figure(&quantity), id);
        let seen = ways
            .entry((format!("{:.7}", quantity.value), mass, to_half))
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
        .map(|((value, ..), ways)| format!("{value}: {ways:?}"))
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

/// The middle of a support in the frame of whoever wrote the job.
fn middle(support: &job::Support) -> Point {
    match support.place {
        job::SupportPlace::Line(a, b) => a.midpoint(b),
        job::SupportPlace::Pad(at, _) => at,
    }
}

/// However the top is turned on the slab, its left is the job's: supports are as far apart on the sheet as in the
/// job, and the same way round.
#[test]
fn supports_are_told_as_the_job_has_them() {
    let mut turned = 0;
    for (name, text) in [jobs("examples"), jobs("tests/golden")].concat() {
        let Ok((job, _)) = job::read(&text) else {
            continue;
        };
        let Ok(plan) = Plan::of(&job) else { continue };
        let told = quantities(&document(&plan, Annex::Without));
        let told = told.iter().filter(|(_, id)| id == "bench-support");
        let lengths: Vec<f64> = told
            .filter(|(q, _)| q.unit == Unit::Size)
            .map(|(q, _)| q.value)
            .collect();
        let places: Vec<&[f64]> = lengths.chunks_exact(2).collect();
        if places.len() != job.supports.len() || plan.repair.is_some() {
            continue;
        }
        turned += usize::from(!places.is_empty() && plan.placement.turn.abs() > 1.0);
        for (place, support) in places.iter().zip(&job.supports) {
            let off = middle(support) - middle(&job.supports[0]);
            let near = |told: f64, first: f64, off: f64| (told - first - off).abs() < 1e-6;
            assert!(
                near(place[0], places[0][0], off.x) && near(place[1], places[0][1], off.y),
                "{name}: {} is told at {place:?}",
                support.what
            );
        }
    }
    assert!(turned > 0, "no turned top has supports");
}
