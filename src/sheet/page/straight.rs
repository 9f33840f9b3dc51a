//! A card for each straight cut.

use crate::cut::{Cut, CutKind, GuideSide, Pass, RunEnd, SetOut, StraightSetOut};
use crate::geom::Bounds;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::{Figures, time};
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Item, Stroke};
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 64.0;

/// Adds a card for each straight cut.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    for cut in &plan.cuts {
        if let SetOut::Guide(set_out) = &cut.set_out {
            card(book, cut, set_out);
        }
    }
}

fn card(book: &mut Book<'_>, cut: &Cut, set_out: &StraightSetOut) {
    let name = format!("Cut {}: straight", cut.number);
    let mut column = book.column(Scale::BENCH);
    let heading = format!("Cut {}: straight, {} of the top", cut.number, made(cut));
    column.place(&Block::Heading(heading));
    if !book.plan.stops.is_empty() {
        let words = "A stop stands against this job: see page 1. Do not cut.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
    let area = column.reserve(scene::height_for(book.plan, column.width, DRAWING_MM));
    column.items.extend(draw(book, cut, set_out, area));
    let mut parts: Vec<Part> = vec![
        Block::Rows(rows(book.figures, cut, set_out)).into(),
        Block::Subheading("Passes: tick each one".into()).into(),
    ];
    parts.extend(pass_tables(cut));
    parts.push(Block::Subheading("How".into()).into());
    parts.push(Block::List(Mark::From(1), steps(book, cut, set_out)).into());
    book.fill(&name, column, &parts);
}

fn draw(book: &Book<'_>, cut: &Cut, set_out: &StraightSetOut, area: Bounds) -> Vec<Item> {
    let plan = book.plan;
    let mut drawing = Drawing::fit(scene::slab_bounds(plan), area, scene::DIMENSIONED_MM);
    scene::stage(&mut drawing, plan, cut.number);
    scene::kerf(&mut drawing, cut);
    let guide = Stroke::solid(0.35, Ink::Accent).dashed(Dash::Dashed);
    drawing.line_apart(set_out.guide.start.at, set_out.guide.end.at, guide);
    // The number on the kept side: the waste's own name needs the other.
    let at = scene::middle(cut);
    let inwards = (plan.top.balance - at).unit() * 6.0;
    drawing.badge_off(at, inwards, &cut.number.to_string());
    let marks = [
        (&set_out.face.start, "a"),
        (&set_out.face.end, "b"),
        (&set_out.guide.start, "c"),
        (&set_out.guide.end, "d"),
    ];
    for (mark, letter) in marks {
        drawing.dot(mark.at);
        drawing.name(mark.at, &format!("{}{letter}", cut.number));
    }
    scene::slab_names(&mut drawing, plan);
    let (from, to) = (set_out.guide.start.at, set_out.guide.end.at);
    // A third of the way along: the middle belongs to the cut's number.
    drawing.word(from + (to - from) * (1.0 / 3.0), "guide");
    drawing.word(plan.top.balance, "keep");
    for piece in plan.pieces.iter().filter(|p| p.after_cut == cut.number) {
        let text = format!("{}  {}", piece.name, book.figures.mass(piece.mass.high));
        scene::name_piece(&mut drawing, piece, &text);
    }
    drawing.finish()
}

fn rows(figures: Figures, cut: &Cut, set_out: &StraightSetOut) -> Vec<(String, String)> {
    let row = |name: &str, value: String| (name.to_owned(), value);
    let side = match set_out.guide_side {
        GuideSide::Kept => "on the kept stone",
        GuideSide::Waste => "on the waste",
    };
    let mut rows = vec![
        row(
            "Disc",
            format!(
                "{}, kerf {}",
                cut.tool.name(),
                figures.small(cut.tool.width_mm())
            ),
        ),
        row("Length of cut", figures.size(cut.length)),
        row(
            "Guide",
            format!(
                "{side}, {} from the line to keep",
                figures.small(set_out.guide_to_face)
            ),
        ),
        row("Left on the edge", figures.small(cut.allowance)),
        row("Last depth", figures.small(cut.full_depth)),
        row("Disc in stone", time(cut.minutes)),
    ];
    if set_out.set_ups.len() > 1 {
        let spans: Vec<String> = set_out
            .set_ups
            .iter()
            .map(|s| format!("{} to {}", figures.tape_bare(s.from), figures.tape(s.to)))
            .collect();
        let from = match set_out.set_ups_from {
            RunEnd::Start => format!("mark {}a", cut.number),
            RunEnd::End => format!("mark {}b", cut.number),
            RunEnd::StoneAtStart => format!("the end of the stone on the side of {}a", cut.number),
        };
        rows.push(row(
            "Guide set at",
            format!("{} from {from}", spans.join("; ")),
        ));
    }
    rows
}

/// The depths side by side, each with a line to tick, at most eight to a table.
pub(super) fn pass_tables(cut: &Cut) -> Vec<Part> {
    const ACROSS: usize = 8;
    let table = |group: &[Pass]| {
        let mut headings = vec![Heading::words("Pass", Width::Mm(28.0))];
        let number = |p: &Pass| Heading::numbers(p.number.to_string(), Width::Part(1.0));
        headings.extend(group.iter().map(number));
        let mut depths = vec!["Depth, mm".to_owned()];
        depths.extend(group.iter().map(|p| format!("{:.1}", p.depth)));
        let mut done = vec!["Done".to_owned()];
        done.extend(group.iter().map(|_| "____".to_owned()));
        Table {
            headings,
            rows: vec![depths, done],
            style: Scale::BENCH.strong,
        }
    };
    cut.passes.chunks(ACROSS).map(|g| table(g).into()).collect()
}

/// What the cut makes of the top, in words.
fn made(cut: &Cut) -> String {
    if cut.kind == CutKind::Relief {
        format!("relief in the waste of curve {}", cut.edge)
    } else if cut.edge.contains('-') {
        format!("edge {}", cut.edge)
    } else {
        format!("flat at corner {}", cut.edge)
    }
}

/// The marks that are no longer on the stone when the cut is made, as the beginning of a sentence.
fn gone_marks(cut: &Cut, set_out: &StraightSetOut) -> String {
    let marks = [
        (&set_out.face.start, 'a'),
        (&set_out.face.end, 'b'),
        (&set_out.guide.start, 'c'),
        (&set_out.guide.end, 'd'),
    ];
    let gone: Vec<String> = marks
        .iter()
        .filter(|(mark, _)| !mark.still_there)
        .map(|(_, letter)| format!("{}{letter}", cut.number))
        .collect();
    match gone.split_last() {
        None => String::new(),
        Some((only, [])) => format!("Mark {only} was"),
        Some((last, rest)) => format!("Marks {} and {last} were", rest.join(", ")),
    }
}

fn steps(book: &Book<'_>, cut: &Cut, set_out: &StraightSetOut) -> Vec<String> {
    let figures = book.figures;
    let number = cut.number;
    let mut steps = Vec::new();
    let gone = gone_marks(cut, set_out);
    if !gone.is_empty() {
        steps.push(format!(
            "{gone} on stone that an earlier cut has taken. Go by the lines struck across the whole slab \
             before the first cut: they still show on the stone that is left."
        ));
    }
    steps.extend([
        format!(
            "Clamp the guide with its edge on marks {number}c and {number}d. The disc's near face must \
             fall on the line {number}a–{number}b, the kerf wholly in the waste."
        ),
        "Bear the stone level on both sides of the cut, near the cut, along its whole length."
            .into(),
    ]);
    if set_out.far_end > 0.0 {
        steps.push(format!(
            "At every depth first saw the last {} at mark {number}b from outside inwards, then the run \
             from mark {number}a up to it, so that the corner does not break off.",
            figures.tape(set_out.far_end)
        ));
    }
    steps.push(
        "Score first. Let the disc work; never twist it or push it sideways. After a pinch switch \
         off, free it, and go in again only at full speed."
            .into(),
    );
    let freed: Vec<String> = book
        .plan
        .pieces
        .iter()
        .filter(|p| p.after_cut == number)
        .map(|p| format!("{} (up to {})", p.name, figures.mass(p.mass.high)))
        .collect();
    if !freed.is_empty() {
        steps.push(format!(
            "Before the last pass: {} comes free. It must rest on its own bearers; nobody holds it up \
             by hand, no foot under it.",
            freed.join(", ")
        ));
    }
    steps
}
