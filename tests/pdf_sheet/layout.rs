//! Nothing lies over another thing, nothing leaves the page, every letter can be read.

use kerfwright::geom::{Bounds, Point, Seg};
use kerfwright::layout::item::{Ink, Item, Page, Text, Typeface};
use kerfwright::layout::typeface::width_mm;

use crate::PRINTED;
use crate::reading::Turn;

/// Smallest text of a sheet, points.
const SMALLEST_PT: f64 = 9.0;
/// Rounding in the file and in the sums, mm.
const SLACK_MM: f64 = 0.01;

#[test]
fn every_letter_comes_back_and_stands_on_the_page() {
    for printed in PRINTED.iter() {
        let (width, height) = printed.sheet.paper.size_mm();
        for (name, texts) in &printed.pages {
            for text in texts {
                let words = &text.words;
                assert!(!words.contains('\u{FFFD}'), "{name}: {words}");
                assert!(!words.trim().is_empty(), "{name}: an empty text");
                let face = match text.font.as_str() {
                    "Bold" => Typeface::Bold,
                    _ => Typeface::Regular,
                };
                let length = width_mm(words, face, text.size_pt);
                let (right, upper) = match text.turn {
                    Turn::Level => (text.x + length, text.y),
                    Turn::Upwards => (text.x, text.y + length),
                };
                let inside = text.x > 0.0 && text.y > 0.0 && right < width && upper < height;
                assert!(inside, "{}, {name}: {text:?}", printed.name);
            }
        }
    }
}

/// The texts in the file are those of the sheet, at their places.
#[test]
fn the_file_holds_the_sheets_texts_and_no_others() {
    for printed in PRINTED.iter() {
        for (page, (name, read)) in printed.sheet.pages.iter().zip(&printed.pages) {
            let texts = texts(page);
            assert_eq!(texts.len(), read.len(), "{name}");
            for (text, read) in texts.iter().zip(read) {
                assert_eq!(text.content, read.words, "{name}");
                let start = text.start();
                let off = (start.x - read.x).hypot(start.y - read.y);
                assert!(off < SLACK_MM, "{name}: {text:?} is {off} mm off");
            }
        }
    }
}

fn texts(page: &Page) -> Vec<&Text> {
    let texts = page.items.iter().filter_map(|item| match item {
        Item::Text(text) => Some(text),
        _ => None,
    });
    texts.collect()
}

/// The box of an item, its line included.
fn reach(item: &Item) -> Option<Bounds> {
    match item {
        Item::Text(text) => Some(text.bounds()),
        Item::Path(path) => {
            let half = path.stroke.map_or(0.0, |s| s.width_mm / 2.0);
            let bounds = path.runs.iter().flatten().map(Seg::bounds);
            let around = bounds.reduce(Bounds::joined)?;
            Some(kerfwright::layout::pen::grown(around, half))
        }
        Item::Begin(_) | Item::End | Item::Part(..) => None,
    }
}

#[test]
fn nothing_leaves_the_page() {
    let mut found = Vec::new();
    for printed in PRINTED.iter() {
        let (width, height) = printed.sheet.paper.size_mm();
        // Office printers leave at least this much white at the edge (judgement).
        let edge = 5.0;
        for page in &printed.sheet.pages {
            for item in &page.items {
                let Some(b) = reach(item) else { continue };
                let inside = b.min.x >= edge
                    && b.min.y >= edge
                    && b.max.x <= width - edge
                    && b.max.y <= height - edge;
                if !inside {
                    found.push(format!("{}, {}: {item:?}", printed.name, page.name));
                }
            }
        }
    }
    assert!(found.is_empty(), "{}\n{}", found.len(), found.join("\n"));
}

fn over_each_other(a: Bounds, b: Bounds) -> bool {
    a.min.x + SLACK_MM < b.max.x
        && b.min.x + SLACK_MM < a.max.x
        && a.min.y + SLACK_MM < b.max.y
        && b.min.y + SLACK_MM < a.max.y
}

/// A text drawn twice: dark over its own white.
fn same_twice(a: &Text, b: &Text) -> bool {
    let near = (a.at.x - b.at.x).hypot(a.at.y - b.at.y) < 1.0;
    a.content == b.content && near && (a.ink == Ink::White || a.at == b.at)
}

/// Every pair of texts on a page that lie over each other.
fn overlaps(page: &Page) -> Vec<String> {
    let texts = texts(page);
    let mut found = Vec::new();
    for (i, a) in texts.iter().enumerate() {
        for b in &texts[i + 1..] {
            if over_each_other(a.bounds(), b.bounds()) && !same_twice(a, b) {
                let place = a.bounds().min;
                found.push(format!(
                    "{:?} and {:?} at {:.0}, {:.0} mm",
                    a.content, b.content, place.x, place.y
                ));
            }
        }
    }
    found
}

#[test]
fn no_text_lies_over_another() {
    let mut found = Vec::new();
    for printed in PRINTED.iter() {
        for (i, page) in printed.sheet.pages.iter().enumerate() {
            let place = format!("{}, page {} {}", printed.name, i + 1, page.name);
            found.extend(overlaps(page).iter().map(|o| format!("{place}: {o}")));
        }
    }
    assert!(found.is_empty(), "{}\n{}", found.len(), found.join("\n"));
}

#[test]
fn texts_over_each_other_are_found() {
    let text =
        |words: &str, x: f64, y: f64| Text::new(words, Point::new(x, y), Typeface::Regular, 10.0);
    let page = |texts: Vec<Text>| Page {
        name: "p".into(),
        language: "en",
        items: texts.into_iter().map(Item::from).collect(),
    };
    let line = text("2640 mm", 20.0, 100.0);
    let over = [
        text("W2", 25.0, 101.0),
        text("W2", 20.0, 97.5),
        text("W2", 22.0, 98.0).upwards(),
        text("2640 mm", 21.5, 100.0),
        text("2640 mm", 20.2, 100.0),
    ];
    for other in over {
        let found = overlaps(&page(vec![line.clone(), other.clone()]));
        assert_eq!(found.len(), 1, "{other:?}");
    }
    let clear = [
        text("W2", 20.0 + line.width_mm(), 100.0),
        text("W2", 20.0, 94.0),
        text("W2", 19.0, 98.0).upwards(),
        line.clone(),
        line.clone().inked(Ink::White),
    ];
    for other in clear {
        let found = overlaps(&page(vec![line.clone(), other]));
        assert_eq!(found, Vec::<String>::new());
    }
}

#[test]
fn no_text_is_too_small_to_read() {
    for printed in PRINTED.iter() {
        for page in &printed.sheet.pages {
            let least = match page.name.as_str() {
                // Read aloud, at arm's length; its head and foot are those of every page.
                "Helper briefing" | "Unterweisung" => 14.0,
                _ => SMALLEST_PT,
            };
            let frame = |t: &Text| t.at.y < 24.0 || t.at.y > printed.sheet.paper.size_mm().1 - 27.0;
            for text in texts(page) {
                let least = if frame(text) { SMALLEST_PT } else { least };
                assert!(
                    text.size_pt >= least,
                    "{}, {}: {:?} in {} pt",
                    printed.name,
                    page.name,
                    text.content,
                    text.size_pt
                );
            }
        }
    }
}
