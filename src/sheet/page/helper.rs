//! The helper's briefing: one page, large type, short sentences, boxes to tick, a line to sign.

use crate::geom::Point;
use crate::job::DustMethod;
use crate::plan::Plan;
use crate::sheet::book::Book;
use crate::sheet::figure::Figures;
use crate::sheet::flow::{Block, Column, Grade, Mark, Scale};
use crate::sheet::item::{Anchor, Ink, Path, Stroke};
use crate::sheet::pen::MIDDLE_MM;
use crate::sheet::wrap::Style;

/// Adds the page.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let mut column = book.column(Scale::HELPER);
    if plan.stops.is_empty() {
        column.place(&Block::Heading(
            "For the helper: read this aloud, together".into(),
        ));
    } else {
        let words = "Not today. A stop stands on page 1.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
    column.place(&Block::List(Mark::Square, sentences(plan, book.figures)));
    write_in(&mut column, &["Power off at", "Water off at"]);
    write_in(&mut column, &["Emergency number", "First aid kit"]);
    write_in(&mut column, &["Read and understood", "Date"]);
    book.add("Helper briefing", column.items);
}

fn sentences(plan: &Plan, figures: Figures) -> Vec<String> {
    let heaviest = plan
        .pieces
        .iter()
        .max_by(|a, b| a.mass.high.kg().total_cmp(&b.mass.high.kg()));
    let mut lines = vec![format!(
        "The top weighs up to {}. The slab weighs up to {}.",
        figures.mass(plan.top.mass.high),
        figures.mass(plan.slab.mass.high)
    )];
    if let Some(piece) = heaviest {
        lines.push(format!(
            "The heaviest waste, {}, weighs up to {}. It rests on bearers. I never hold it up.",
            piece.name,
            figures.mass(piece.mass.high)
        ));
    }
    lines.extend([
        "I stand to the side, never in line with the disc.".into(),
        "I stop everything when I shout or raise a hand. Nobody asks why.".into(),
        dust_sentence(plan).into(),
        format!("I wear: {}.", wear(plan)),
        "My feet are never under stone. Nobody stands where stone can fall.".into(),
        "We carry it on edge, never flat. It is tied whenever it stands.".into(),
        "I never sweep dry and never blow dust away.".into(),
        "I know where the power and the water are cut off.".into(),
    ]);
    lines
}

fn dust_sentence(plan: &Plan) -> &'static str {
    match plan.kit.dust_method {
        DustMethod::Water => "No water, no cutting. If the water stops, we stop.",
        DustMethod::Shroud => "No extractor, no cutting. If it stops or clogs, we stop.",
        DustMethod::None => "There is no dust control. We do not cut.",
    }
}

/// What to wear in a few words.
fn wear(plan: &Plan) -> String {
    let short: Vec<String> = plan
        .hazards
        .protective
        .iter()
        .map(|p| {
            p.what
                .split([',', ':', ';', '('])
                .next()
                .unwrap_or("")
                .trim()
                .to_lowercase()
        })
        .collect();
    short.join(", ")
}

/// Two labels with a line to write on behind each.
fn write_in(column: &mut Column, labels: &[&str]) {
    const GAP_MM: f64 = 6.0;
    let style: Style = column.scale.small;
    let height = 11.0;
    let area = column.reserve(height);
    #[allow(clippy::cast_precision_loss)]
    let each = area.width() / labels.len() as f64;
    let base = area.min.y + 1.5;
    for (i, label) in labels.iter().enumerate() {
        #[allow(clippy::cast_precision_loss)]
        let x = area.min.x + each * i as f64;
        let text = style.text((*label).to_owned(), Point::new(x, base), Anchor::Start);
        column.items.push(text.into());
        let from = Point::new(x + style.width_mm(label) + 2.0, base - 0.6);
        let to = Point::new(x + each - GAP_MM, base - 0.6);
        let line = Stroke::solid(MIDDLE_MM, Ink::Black);
        column.items.push(Path::line(from, to, line).into());
    }
}
