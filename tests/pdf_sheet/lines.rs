//! No line runs through a text: what was drawn before it is covered with white, and nothing is drawn
//! after it.

use kerfwright::geom::{Bounds, Point, Seg};
use kerfwright::layout::item::{Ink, Item, Page, Path, PenStroke, Text, Typeface};
use kerfwright::layout::pen::grown;

use crate::PRINTED;

/// Chords that stand for an arc.
const CHORDS: u32 = 24;
/// A line that only touches the edge of the letters does not count, mm.
const TOUCH_MM: f64 = 0.25;

/// The box of a text, less its very edge.
fn letters(text: &Text) -> Bounds {
    grown(text.bounds(), -TOUCH_MM)
}

fn chords(path: &Path) -> Vec<(Point, Point)> {
    let mut found = Vec::new();
    for seg in path.runs.iter().flatten() {
        let count = match seg {
            Seg::Line(..) => 1,
            Seg::Arc(_) => CHORDS,
        };
        let at = |i: u32| seg.at(f64::from(i) / f64::from(count));
        found.extend((0..count).map(|i| (at(i), at(i + 1))));
    }
    found
}

/// Whether a straight line has a part inside a box (Liang and Barsky's clipping).
fn enters(area: Bounds, (from, to): (Point, Point)) -> bool {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let (mut first, mut last) = (0.0_f64, 1.0_f64);
    for (along, room) in [
        (-dx, from.x - area.min.x),
        (dx, area.max.x - from.x),
        (-dy, from.y - area.min.y),
        (dy, area.max.y - from.y),
    ] {
        if along == 0.0 && room <= 0.0 {
            return false;
        }
        let at = room / along;
        if along < 0.0 {
            first = first.max(at);
        } else if along > 0.0 {
            last = last.min(at);
        }
    }
    first < last
}

fn covers(path: &Path, letters: Bounds) -> bool {
    let bounds = path.runs.iter().flatten().map(Seg::bounds);
    let opaque = path.fill.is_some() && path.fill != Some(Ink::Pale);
    let around = bounds.reduce(Bounds::joined).filter(|_| opaque);
    around.is_some_and(|b| {
        b.min.x <= letters.min.x
            && b.min.y <= letters.min.y
            && b.max.x >= letters.max.x
            && b.max.y >= letters.max.y
    })
}

/// Every text of a page with a line through it.
fn crossed(page: &Page) -> Vec<String> {
    let mut found = Vec::new();
    for (i, item) in page.items.iter().enumerate() {
        let Item::Text(text) = item else { continue };
        let letters = letters(text);
        let mut through = false;
        for (j, other) in page.items.iter().enumerate() {
            let Item::Path(path) = other else { continue };
            if j < i && covers(path, letters) {
                through = false;
            }
            let lines = path.stroke.is_some() || j > i;
            through |= lines && chords(path).into_iter().any(|c| enters(letters, c));
        }
        if through {
            let at = letters.min;
            found.push(format!("{:?} at {:.0}, {:.0} mm", text.content, at.x, at.y));
        }
    }
    found
}

#[test]
fn no_line_runs_through_a_text() {
    let mut found = Vec::new();
    for printed in PRINTED.iter() {
        for (i, page) in printed.sheet.pages.iter().enumerate() {
            let place = format!("{}, page {} {}", printed.name, i + 1, page.name);
            found.extend(crossed(page).iter().map(|c| format!("{place}: {c}")));
        }
    }
    assert!(found.is_empty(), "{}\n{}", found.len(), found.join("\n"));
}

#[test]
fn a_line_through_a_text_is_found() {
    let text: Item = Text::new("2640 mm", Point::new(20.0, 100.0), Typeface::Regular, 10.0).into();
    let line = |y: f64| -> Item {
        let ends = (Point::new(0.0, y), Point::new(90.0, y + 0.2));
        Path::line(ends.0, ends.1, PenStroke::solid(0.2, Ink::Black)).into()
    };
    let Item::Text(letters) = &text else { return };
    let white: Item = Path::frame(grown(letters.bounds(), 0.4), None, Some(Ink::White)).into();
    let count = |items: &[&Item]| {
        let items = items.iter().map(|i| (*i).clone()).collect();
        let name = "p".into();
        crossed(&Page {
            name,
            language: "en",
            items,
        })
        .len()
    };
    let (through, below) = (line(101.0), line(99.0));
    assert_eq!(count(&[&through, &text]), 1);
    assert_eq!(count(&[&text, &through]), 1);
    assert_eq!(count(&[&white, &through, &text]), 1);
    assert_eq!(count(&[&through, &white, &text]), 0);
    assert_eq!(count(&[&line(98.0), &text, &line(103.2)]), 0);
    assert_eq!(count(&[&below, &white, &text]), 0);
}
