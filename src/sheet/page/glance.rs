//! Page 1: the job at a glance. Every stop is here.

use crate::diag::Finding;
use crate::geom::Bounds;
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::figure::{Figures, face, time};
use crate::sheet::flow::{Block, Column, Grade, Mark, Scale};
use crate::sheet::scene;

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 92.0;
/// Space between the two columns of key numbers, mm.
const GUTTER_MM: f64 = 8.0;

/// Adds the page.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::BENCH);
    title(&mut column, plan);
    let area = column.reserve(DRAWING_MM);
    let drawing = scene::overview(plan, area);
    let scale = format!(
        "Drawn about 1 : {:.0}. Plain: the top. Hatched: waste. Black: kerf, wider than to scale.",
        drawing.reduction()
    );
    column.items.extend(drawing.finish());
    column.place(&Block::Note(scale));
    key_numbers(&mut column, plan, book.figures);
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
        let more = vec!["Each is told below. Clear every one of them, then plan again.".to_owned()];
        column.place(&Block::Notice(Grade::Stop, words, more));
    }
}

fn row(name: &str, value: String) -> (String, String) {
    (name.to_owned(), value)
}

fn key_numbers(column: &mut Column, plan: &Plan, figures: Figures) {
    let half = (column.width - GUTTER_MM) / 2.0;
    let part = |offset: f64| {
        let rest = column.rest();
        let min = crate::geom::Point::new(rest.min.x + offset, rest.min.y);
        let max = crate::geom::Point::new(min.x + half, rest.max.y);
        Column::new(Bounds { min, max }, column.scale)
    };
    let (mut left, mut right) = (part(0.0), part(half + GUTTER_MM));
    left.place(&Block::Rows(weights(plan, figures)));
    right.place(&Block::Rows(efforts(plan)));
    column.y = left.y.min(right.y);
    column.items.append(&mut left.items);
    column.items.append(&mut right.items);
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
    vec![
        row("Straight cuts", totals.straight_cuts.to_string()),
        row("Curves", totals.curves.to_string()),
        row("Sawn face", face(totals.face_mm2)),
        row(
            "Disc in stone",
            format!("{}{guess}", time(totals.sawing_minutes)),
        ),
        row(
            "Setting up",
            format!("{} (guess)", time(totals.set_up_minutes)),
        ),
    ]
}

fn findings(plan: &Plan) -> Vec<Part> {
    let mut parts: Vec<Part> = Vec::new();
    let notice = |f: &Finding| {
        let lines = vec![f.detail.clone(), format!("Source: {}", f.source)];
        Block::Notice(Grade::Stop, sentence(&f.title), lines).into()
    };
    parts.extend(plan.stops.iter().map(notice));
    if plan.stops.is_empty() {
        let words = "The planner found no stop. That is no permission: it sees only the job file, \
                     not the stone, the machine or the people.";
        parts.push(Block::Paragraph(words.into()).into());
    }
    if !plan.cautions.is_empty() {
        parts.push(Block::Subheading("Cautions, told in full on the safety pages".into()).into());
        let titles = plan.cautions.iter().map(|c| sentence(&c.title)).collect();
        parts.push(Block::List(Mark::Dot, titles).into());
    }
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
