//! A card for each straight cut.

use crate::cut::{Because, Cut, CutKind, GuideSide, Pass, Removal, RunEnd, SetUp, StraightSetOut};
use crate::geom::Bounds;
use crate::piece::Freed;
use crate::plan::Plan;
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::{Figures, time};
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Item, Stroke};
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 64.0;
/// The same where more has to be told beside it, mm.
const STOPPED_DRAWING_MM: f64 = 52.0;

/// Adds the card of a straight cut.
pub(super) fn card(book: &mut Book<'_>, cut: &Cut, set_out: &StraightSetOut) {
    let name = format!("Cut {}: straight", cut.number);
    let mut column = book.column(Scale::BENCH);
    let stopped = if cut.run_off {
        ""
    } else {
        ", stops inside the stone"
    };
    let heading = format!(
        "Cut {}: straight, {} of the top{stopped}",
        cut.number,
        made(cut)
    );
    column.place(&Block::Heading(heading));
    if !book.plan.stops.is_empty() {
        let words = "A stop stands against this job: see page 1. Do not cut.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
    // A stopped cut has more to be told, and so has a job with a stop.
    let most = if cut.run_off && book.plan.stops.is_empty() {
        DRAWING_MM
    } else {
        STOPPED_DRAWING_MM
    };
    let area = column.reserve(scene::height_for(book.plan, column.width, most));
    column.items.extend(draw(book, cut, set_out, area));
    let mut parts: Vec<Part> = vec![
        Block::Rows(rows(book, cut, set_out)).into(),
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

fn rows(book: &Book<'_>, cut: &Cut, set_out: &StraightSetOut) -> Vec<(String, String)> {
    let (plan, figures) = (book.plan, book.figures);
    let row = |name: &str, value: String| (name.to_owned(), value);
    let side = match set_out.guide_side {
        GuideSide::Kept => "on the kept stone",
        GuideSide::Waste => "on the waste",
    };
    let mut rows = vec![
        row("Disc", tool_words(plan, cut, figures, Kerf::Told)),
        row("Length of cut", figures.size(cut.length)),
        row(
            "Guide",
            format!(
                "{side}, {} from the line to keep",
                figures.small(set_out.guide_to_face)
            ),
        ),
        row(left_words(cut), figures.small(cut.allowance)),
        row("Last depth", figures.small(cut.full_depth)),
        row("Disc in stone", time(cut.minutes)),
    ];
    rows.extend(why(plan, cut, figures).map(|words| row("Why now", words)));
    if cut.tail > 0.0 {
        rows.push(row("Tail at the underside", tail_words(cut, figures)));
    }
    rows.extend(guide_set_at(cut, set_out, figures).map(|words| row("Guide set at", words)));
    rows
}

/// The settings of a guide that is shorter than the cut, and where they are taped from.
pub(super) fn guide_set_at(
    cut: &Cut,
    set_out: &StraightSetOut,
    figures: Figures,
) -> Option<String> {
    if set_out.set_ups.len() < 2 {
        return None;
    }
    let span = |s: &SetUp| format!("{} to {}", figures.tape_bare(s.from), figures.tape(s.to));
    let spans: Vec<String> = set_out.set_ups.iter().map(span).collect();
    let n = cut.number;
    let from = match set_out.set_ups_from {
        RunEnd::Start => format!("mark {n}a"),
        RunEnd::End => format!("mark {n}b"),
        RunEnd::StoneAtStart => format!("the end of the stone on the side of {n}a"),
        RunEnd::StoneAtEnd => format!("the end of the stone on the side of {n}b"),
        RunEnd::StopAtStart => format!("where the cut stops on the side of {n}a"),
    };
    Some(format!("{} from {from}", spans.join("; ")))
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

/// What stands between the cut and the line to keep.
fn left_words(cut: &Cut) -> &'static str {
    match cut.kind {
        CutKind::Relief => "Clear of the curve",
        _ => "Left on the edge",
    }
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
    steps.extend([format!(
        "Clamp the guide with its edge on marks {number}c and {number}d. The disc's near face must \
             fall on the line {number}a–{number}b, the kerf wholly in the waste."
    )]);
    steps.extend(bearing(cut, figures));
    steps.extend(stop_steps(cut, set_out, figures));
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
    steps.extend(freed_steps(book, cut, "pass"));
    steps
}

/// Whether the kerf is told with a disc's name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kerf {
    Told,
    Untold,
}

/// The disc, and whether it has to be put on now.
pub(super) fn tool_words(plan: &Plan, cut: &Cut, figures: Figures, kerf: Kerf) -> String {
    let of_a_kind = |c: &&Cut| c.tool.disc().is_some() == cut.tool.disc().is_some();
    let mut earlier = plan.cuts.iter().filter(|c| c.number < cut.number);
    let change = match earlier.rfind(of_a_kind) {
        Some(before) if before.tool != cut.tool => "change to it now: ",
        _ => "",
    };
    let name = cut.tool.name();
    match kerf {
        Kerf::Told => {
            let kerf = figures.small(cut.tool.width_mm());
            format!("{change}{name}, kerf {kerf}")
        }
        Kerf::Untold => format!("{change}{name}"),
    }
}

/// Why the cut comes where it does.
pub(super) fn why(plan: &Plan, cut: &Cut, figures: Figures) -> Option<String> {
    let words = match &cut.because {
        Because::Shortens { cuts, by_mm } => {
            let first = if plan.cuts.iter().any(|c| c.number < cut.number && c.run_off) {
                "it"
            } else {
                "first because it"
            };
            let numbers = listed(cuts);
            let plural = if cuts.len() > 1 { "cuts" } else { "cut" };
            format!(
                "{first} shortens {plural} {numbers} by {}",
                figures.size(*by_mm)
            )
        }
        Because::SlabWhole => "drilled while the slab is whole".into(),
        Because::AfterRunOff => "stopped cuts after those that run off".into(),
        Because::WasteInHand => "the curve's waste would drop in too heavy a piece".into(),
        Because::OpeningLast => "an opening weakens the top".into(),
        Because::NothingShorter | Because::AfterTrims | Because::WithinOpening => return None,
    };
    Some(words)
}

/// Numbers in a row: `2`, `2 and 3`, `2, 3 and 5`.
pub(super) fn listed(numbers: &[usize]) -> String {
    let words: Vec<String> = numbers.iter().map(ToString::to_string).collect();
    match words.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => format!("{} and {last}", rest.join(", ")),
    }
}

/// The tail as the disc leaves it, and what core holes leave of it.
fn tail_words(cut: &Cut, figures: Figures) -> String {
    let tails = cut.left_to_remove.iter().filter(|l| l.heading.is_some());
    let left = tails.map(|l| l.left).fold(0.0, f64::max);
    if left < cut.tail {
        format!(
            "{}, {} beyond the core hole",
            figures.small(cut.tail),
            figures.small(left)
        )
    } else {
        figures.small(cut.tail)
    }
}

/// Where bearers stand along a cut, both sides.
pub(super) fn bearing(cut: &Cut, figures: Figures) -> Option<String> {
    let bearers = cut.bearers.as_ref()?;
    let places: Vec<String> = bearers.at.iter().map(|d| figures.size_bare(*d)).collect();
    let (kept, waste) = (
        figures.size_label(bearers.kept_off),
        figures.size_label(bearers.waste_off),
    );
    let off = if kept == waste {
        format!("{kept} off the line on both sides")
    } else {
        format!("{kept} off the line under the stone to keep, {waste} under the waste")
    };
    Some(format!(
        "Bear the stone level at {} {} from its end on the side of {}a, {off}.",
        places.join(", "),
        figures.unit(),
        cut.number
    ))
}

/// Where the cut stops, and how the machine is stopped there.
pub(super) fn stop_steps(cut: &Cut, set_out: &StraightSetOut, figures: Figures) -> Vec<String> {
    let each = set_out.stops.iter().enumerate();
    each.map(|(i, stop)| {
        let short = figures.tape(stop.centre_short);
        if stop.into_hole {
            format!(
                "The cut ends in the core hole, where the line touches it: stop with the disc's centre {short} \
                 short of that point, at every depth. Clamp a stop to the guide for it."
            )
        } else {
            format!(
                "The cut in the face ends at mark {}s{}: stop with the disc's centre {short} short of it, at \
                 every depth. Clamp a stop to the guide for it.",
                cut.number,
                i + 1
            )
        }
    })
    .collect()
}

/// What comes free, by the saw and by the hand that takes out the tails.
pub(super) fn freed_steps(book: &Book<'_>, cut: &Cut, pass: &str) -> Vec<String> {
    let freed = |by: Freed| -> Vec<String> {
        let pieces = book.plan.pieces.iter();
        pieces
            .filter(|p| p.after_cut == cut.number && p.freed == by)
            .map(|p| format!("{} (up to {})", p.name, book.figures.mass(p.mass.high)))
            .collect()
    };
    let mut steps = Vec::new();
    let by_saw = freed(Freed::Saw);
    if !by_saw.is_empty() {
        steps.push(format!(
            "Before the last {pass}: {} comes free. It must rest on its own bearers; nobody holds it up \
             by hand, no foot under it.",
            by_saw.join(", ")
        ));
    }
    if !cut.tails_out.is_empty() {
        let from_hole = book.plan.cuts.iter().any(|c| {
            let mut left = c.left_to_remove.iter();
            cut.tails_out.contains(&c.number) && left.any(|l| l.by == Removal::FromCoreHole)
        });
        let how = if from_hole {
            "from the core holes with a diamond wire or rod, or from below"
        } else {
            "from below, or with a diamond wire or rod"
        };
        let held = freed(Freed::Hand);
        let held = if held.is_empty() {
            String::new()
        } else {
            format!(
                " {} hangs on them alone: bear it level, on its own bearers, before you begin.",
                held.join(", ")
            )
        };
        let (cuts, those) = (
            listed(&cut.tails_out),
            if cut.tails_out.len() > 1 {
                "cuts"
            } else {
                "cut"
            },
        );
        steps.push(format!(
            "Then take out the tails of {those} {cuts} by hand, {how}.{held}"
        ));
    }
    steps
}
