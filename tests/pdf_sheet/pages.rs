//! The bench pages: that what is needed stands on them.

use kerfwright::cut::{Cut, SetOut};
use kerfwright::words::{System, Writer};

use crate::{PRINTED, Printed, squeezed};

/// The tea counter: 6 pages, one for two straight cuts, one for its round end.
#[test]
fn a_counter_with_a_round_end_takes_eight_pages() {
    let tea = PRINTED.iter().filter(|p| p.name.starts_with("tea-counter"));
    assert!(tea.map(|p| p.bench).eq([8, 8]));
}

/// The marks that a cut's page or card names, and whether they are located on its opening's page.
fn marks(cut: &Cut) -> Vec<(String, bool)> {
    let taped = |letters: &[&str]| -> Vec<(String, bool)> {
        letters.iter().map(|l| ((*l).to_owned(), false)).collect()
    };
    let letters: Vec<(String, bool)> = match &cut.set_out {
        SetOut::Guide(s) => {
            let stops = s.stops.iter().zip(["s", "t"]);
            let stops = stops.map(|(stop, l)| (l.to_owned(), !stop.offsets.is_empty()));
            taped(&["a", "b", "c", "d"])
                .into_iter()
                .chain(stops)
                .collect()
        }
        SetOut::Pivot(_) => taped(&["p"]),
        SetOut::Ordinates(o) => [("e", &o.from), ("f", &o.to)]
            .map(|(l, end)| (l.to_owned(), !end.offsets.is_empty()))
            .to_vec(),
        SetOut::Centres(holes) => {
            let several = holes.iter().enumerate().filter(|_| holes.len() > 1);
            let named = several.map(|(i, h)| (format!("h{}", i + 1), !h.offsets.is_empty()));
            named.collect()
        }
    };
    let full = letters.into_iter();
    full.map(|(l, own)| (format!("{}{l}", cut.number), own))
        .collect()
}

fn page_named<'p>(printed: &'p Printed, name: &str) -> &'p [crate::reading::Placed] {
    let named = |p: &&(String, Vec<_>)| p.0.split(" · ").any(|part| part == name);
    let page = printed.pages.iter().find(named);
    &page
        .unwrap_or_else(|| panic!("{}: no page {name}", printed.name))
        .1
}

/// Every mark is located: on the mark-out page, or a hole or stop of an opening on that opening's page; in the
/// table with its measures, and in the drawing.
#[test]
fn every_mark_is_located_in_a_table_and_in_its_drawing() {
    let mut lost = Vec::new();
    for printed in PRINTED.iter() {
        let told = |texts: &[crate::reading::Placed], mark: &str| {
            let named = texts.iter().filter(|t| {
                let words = t.words.split([' ', ':', ',', '\u{a0}']);
                words.into_iter().any(|w| w == mark)
            });
            named.count()
        };
        let first = page_named(printed, "Mark out");
        let opening = |p: &&(String, Vec<crate::reading::Placed>)| {
            p.1.iter().any(|t| t.words.starts_with("Opening:"))
        };
        let openings: Vec<_> = printed.pages.iter().filter(opening).collect();
        for (mark, own) in printed.plan.cuts.iter().flat_map(marks) {
            let found = if own {
                openings.iter().map(|p| told(&p.1, &mark)).max()
            } else {
                Some(told(first, &mark))
            };
            // Once in the drawing and once in the table.
            if found.unwrap_or(0) < 2 {
                lost.push(format!("{}: {mark}", printed.name));
            }
        }
    }
    assert!(lost.is_empty(), "{} marks: {lost:#?}", lost.len());
}

/// A stop and an open point may be shortened to its line where page 1 has no room for more.
#[test]
fn every_stop_and_open_point_is_on_page_1_and_every_finding_in_the_annex() {
    for printed in PRINTED.iter() {
        let plan = &printed.plan;
        let writer = Writer::new(System::from(plan.job.units), plan.job.language);
        let first = printed.squeezed(0..1);
        for finding in plan.stops.iter().chain(&plan.open) {
            let words = writer.say(&finding.message);
            assert!(
                first.contains(&squeezed(&words)),
                "{}: {words}",
                printed.name
            );
        }
        let annex = printed.squeezed(printed.bench..printed.pages.len());
        let english = writer.english();
        for finding in plan.stops.iter().chain(&plan.open).chain(&plan.warnings) {
            let wanted = squeezed(&english.detail(&finding.message));
            assert!(annex.contains(&wanted), "{}: {wanted}", printed.name);
        }
    }
}

#[test]
fn the_first_page_names_at_most_eight_warnings() {
    for printed in PRINTED.iter() {
        let plan = &printed.plan;
        let writer = Writer::new(System::from(plan.job.units), plan.job.language);
        let first = printed.squeezed(0..1);
        let told = plan.warnings.iter().filter(|f| {
            let words = squeezed(&writer.say(&f.message));
            first.contains(&words)
        });
        assert!(told.count() <= 8, "{}", printed.name);
    }
}

#[test]
fn every_waste_piece_is_weighed_on_the_page_that_frees_it() {
    for printed in PRINTED.iter() {
        let bench = printed.squeezed(0..printed.bench);
        for piece in &printed.plan.pieces {
            let wanted = format!("{}comesfree:upto", piece.name);
            assert!(bench.contains(&wanted), "{}: {wanted}", printed.name);
        }
    }
}

#[test]
fn pages_of_two_plans_are_told_apart() {
    let mut marks: Vec<String> = Vec::new();
    for printed in PRINTED.iter().filter(|p| p.name.ends_with("A4")) {
        let head = |texts: &[crate::reading::Placed]| {
            let head = texts.iter().find(|t| t.words.starts_with("plan "));
            head.map(|t| t.words.split(' ').nth(1).unwrap_or("").to_owned())
        };
        let each: Vec<Option<String>> = printed.pages.iter().map(|p| head(&p.1)).collect();
        assert!(
            each.iter().all(|m| m.is_some() && *m == each[0]),
            "{}",
            printed.name
        );
        marks.extend(each[0].clone());
    }
    let count = marks.len();
    marks.sort();
    marks.dedup();
    assert_eq!(marks.len(), count);
}
