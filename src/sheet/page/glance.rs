//! Page 1: the job at a glance. Every stop is here.

use crate::diag::Finding;
use crate::geom::{Bounds, Point};
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::figure::{Figures, face, time};
use crate::sheet::flow::{Block, Column, Grade, Mark, Scale};
use crate::sheet::scene;

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 86.0;
/// Space between the two columns of key numbers, mm.
const GUTTER_MM: f64 = 8.0;

/// Room for the paragraph at the foot of the page, mm.
const LAST_WORDS_MM: f64 = 14.0;

const CAUTIONS: &str = "Cautions, told in full on the safety pages";

/// Adds the page.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    title(&mut column, plan);
    let area = column.reserve(scene::height_for(plan, column.width, DRAWING_MM));
    let drawing = scene::overview(plan, area);
    let scale = format!(
        "Drawn about 1 : {:.0}. Plain: the top. Hatched: waste. Black: kerf, wider than to scale.",
        drawing.reduction()
    );
    column.items.extend(drawing.finish());
    column.place(&Block::Note(scale));
    key_numbers(&mut column, plan, book.figures);
    if plan.stops.is_empty() {
        caution_titles(&mut column, plan);
    }
    let mut desk = book.column(Scale::DESK);
    desk.y = column.y;
    desk.items = column.items;
    book.fill("At a glance", desk, &findings(plan));
}

fn title(column: &mut Column, plan: &Plan) {
    column.place(&Block::Heading(plan.job.title.clone()));
    let named = [
        ("for", &plan.job.made_for),
        ("by", &plan.job.made_by),
        ("date", &plan.job.date),
        ("rules", &plan.job.region_name),
    ];
    let words: Vec<String> = named
        .iter()
        .filter(|(_, value)| !value.is_empty())
        .map(|(name, value)| format!("{name}: {value}"))
        .collect();
    column.place(&Block::Note(words.join("   ·   ")));
    if !plan.job.note.is_empty() {
        column.place(&Block::Note(plan.job.note.clone()));
    }
    if !plan.stops.is_empty() {
        let count = plan.stops.len();
        let (stops, stand) = if count == 1 {
            ("stop", "stands")
        } else {
            ("stops", "stand")
        };
        let words = format!("{count} {stops} {stand} against this job. Do not start.");
        let more = plan.stops.iter().map(|s| sentence(&s.title)).collect();
        column.place(&Block::Notice(Grade::Stop, words, more));
    }
}

fn row(name: &str, value: String) -> (String, String) {
    (name.to_owned(), value)
}

/// Fills two halves of the column side by side.
fn side_by_side(column: &mut Column, scale: Scale, halves: [&Block; 2]) {
    let half = (column.width - GUTTER_MM) / 2.0;
    let rest = column.rest();
    let mut lowest = column.y;
    for (i, block) in halves.into_iter().enumerate() {
        let x = rest.min.x + if i == 0 { 0.0 } else { half + GUTTER_MM };
        let area = Bounds {
            min: Point::new(x, rest.min.y),
            max: Point::new(x + half, rest.max.y),
        };
        let mut part = Column::new(area, scale);
        part.place(block);
        lowest = lowest.min(part.y);
        column.items.append(&mut part.items);
    }
    column.y = lowest;
}

fn key_numbers(column: &mut Column, plan: &Plan, figures: Figures) {
    let halves = [
        Block::Rows(weights(plan, figures)),
        Block::Rows(efforts(plan)),
    ];
    side_by_side(column, column.scale, [&halves[0], &halves[1]]);
}

/// The titles of the cautions, as many as leave room for the last words of the page; the rest are
/// counted.
fn caution_titles(column: &mut Column, plan: &Plan) {
    if plan.cautions.is_empty() {
        return;
    }
    let titles: Vec<String> = plan.cautions.iter().map(|c| sentence(&c.title)).collect();
    column.place(&Block::Subheading(CAUTIONS.into()));
    for shown in (0..=titles.len()).rev() {
        let mut trial = column.clone();
        first_titles(&mut trial, &titles, shown);
        if trial.left() >= LAST_WORDS_MM || shown == 0 {
            *column = trial;
            return;
        }
    }
}

/// The first titles in two columns, and how many more there are.
fn first_titles(column: &mut Column, titles: &[String], shown: usize) {
    let mut first = titles[..shown].to_vec();
    let more = titles.len() - shown;
    if more > 0 {
        first.push(format!("And {more} more"));
    }
    let (left, right) = first.split_at(first.len().div_ceil(2));
    let list = |titles: &[String]| Block::List(Mark::Dot, titles.to_vec());
    let small = Scale {
        body: Scale::DESK.small,
        ..Scale::DESK
    };
    side_by_side(column, small, [&list(left), &list(right)]);
}

fn weights(plan: &Plan, figures: Figures) -> Vec<(String, String)> {
    let heaviest = plan
        .pieces
        .iter()
        .max_by(|a, b| a.mass.high.kg().total_cmp(&b.mass.high.kg()));
    let mut rows = vec![
        row("Finished top", figures.mass_range(&plan.top.mass)),
        row("Slab", figures.mass_range(&plan.slab.mass)),
    ];
    if let Some(piece) = heaviest {
        let words = format!("{} {}", piece.name, figures.mass(piece.mass.high));
        rows.push(row("Heaviest waste", words));
    }
    rows.push(row("Stone", plan.stone.name.clone()));
    rows.push(row("Thickness", figures.small(plan.slab.thickness.mean)));
    rows
}

fn efforts(plan: &Plan) -> Vec<(String, String)> {
    let totals = &plan.totals;
    let guess = if plan.kit.rate_is_guess {
        " (guess)"
    } else {
        ""
    };
    let mut rows = vec![
        row("Straight cuts", totals.straight_cuts.to_string()),
        row("Curves", totals.curves.to_string()),
    ];
    if totals.relief_cuts > 0 {
        rows.push(row("Relief cuts", totals.relief_cuts.to_string()));
    }
    if totals.core_holes > 0 {
        rows.push(row("Core holes", totals.core_holes.to_string()));
    }
    rows.extend([
        row("Sawn face", face(totals.face_mm2)),
        row(
            "Disc in stone",
            format!("{}{guess}", time(totals.sawing_minutes)),
        ),
        row(
            "Setting up",
            format!("{} (guess)", time(totals.set_up_minutes)),
        ),
    ]);
    rows
}

/// Every stop in full, then the titles of the cautions; or that none was found.
fn findings(plan: &Plan) -> Vec<Part> {
    if plan.stops.is_empty() {
        let words = "The planner found no stop. That is no permission: it sees only the job file, \
                     not the stone, the machine or the people.";
        return vec![Block::Paragraph(words.into()).into()];
    }
    let notice = |f: &Finding| {
        let lines = vec![f.detail.clone(), format!("Source: {}", f.source)];
        Block::Notice(Grade::Stop, sentence(&f.title), lines).into()
    };
    let mut parts: Vec<Part> = plan.stops.iter().map(notice).collect();
    let titles = plan.cautions.iter().map(|c| sentence(&c.title)).collect();
    parts.push(Block::Subheading(CAUTIONS.into()).into());
    parts.push(Block::List(Mark::Dot, titles).into());
    parts
}

/// A title with a capital at its beginning.
#[must_use]
pub fn sentence(title: &str) -> String {
    let mut letters = title.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}
