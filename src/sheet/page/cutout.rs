//! The pages of an opening, and the card of core holes drilled for the top's own corners.

use super::set_out::{hole_name, line_rows, marks_table, point_row, points_table};
use super::straight::{
    Kerf, bearing, freed_steps, guide_set_at, listed, stop_steps, tool_words, why,
};
use crate::cut::{Cut, CutKind, GuideSide, Pass, SetOut, StraightSetOut};
use crate::geom::{Bounds, Point, Vector};
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::{Figures, time};
use crate::sheet::flow::{Block, Column, Grade, Mark, Scale};
use crate::sheet::item::Item;
use crate::sheet::pen::grown;
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Height of the drawing, mm.
const DRAWING_MM: f64 = 88.0;
/// Stone shown round an opening, mm of the slab.
const ROUND_IT_MM: f64 = 70.0;

/// Adds the pages of an opening, counted from 1.
pub(super) fn pages(book: &mut Book<'_>, number: usize) {
    let plan = book.plan;
    let own: Vec<&Cut> = plan
        .cuts
        .iter()
        .filter(|c| c.cutout == Some(number))
        .collect();
    let Some(opening) = plan.top.openings.get(number - 1) else {
        return;
    };
    let name = format!("Cutout {number}");
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading(heading(number, &opening.what, &own)));
    stop_notice(book, &mut column);
    let area = column.reserve(DRAWING_MM);
    let bounds = opening.outline.bounds();
    column
        .items
        .extend(draw(book, &own, grown(bounds, ROUND_IT_MM), area));
    let mut parts: Vec<Part> = vec![Block::Rows(rows(book, &own, bounds)).into()];
    parts.extend(points(book.figures, &own));
    parts.push(Block::Subheading("How".into()).into());
    parts.push(Block::List(Mark::From(1), steps(book, &own)).into());
    parts.extend(straights(book, &own));
    book.fill(&name, column, &parts);
    for cut in own {
        super::curve::add(book, cut);
    }
}

fn heading(number: usize, what: &str, own: &[&Cut]) -> String {
    let numbers: Vec<usize> = own.iter().map(|c| c.number).collect();
    let cuts = match numbers.as_slice() {
        [only] => format!("cut {only}"),
        [first, .., last] => format!("cuts {first} to {last}"),
        [] => String::new(),
    };
    let default = format!("cutout {number}");
    if what == default {
        format!("Cutout {number}: {cuts}")
    } else {
        format!("Cutout {number}, {what}: {cuts}")
    }
}

/// Adds the card of core holes for the top's own corners.
pub(super) fn core_card(book: &mut Book<'_>, cut: &Cut) {
    let mut column = book.column(Scale::BENCH);
    let plural = if cut.holes.len() > 1 { "holes" } else { "hole" };
    let heading = format!(
        "Cut {}: core {plural} at corner {} of the top",
        cut.number, cut.edge
    );
    column.place(&Block::Heading(heading));
    stop_notice(book, &mut column);
    let area = column.reserve(scene::height_for(book.plan, column.width, DRAWING_MM));
    column.items.extend(draw_on_slab(book, cut, area));
    let mut rows = vec![("Tool".into(), cut.tool.name())];
    rows.extend(why(book.plan, cut, book.figures).map(|words| ("Why now".into(), words)));
    rows.push(("Through the stone and".into(), through(book)));
    rows.push(("Drilling".into(), drilling(cut)));
    let mut parts: Vec<Part> = vec![Block::Rows(rows).into()];
    parts.extend(points(book.figures, &[cut]));
    parts.push(Block::Subheading("How".into()).into());
    parts.push(Block::List(Mark::From(1), vec![drill(cut), water()]).into());
    book.fill(
        &format!("Cut {}: core {plural}", cut.number),
        column,
        &parts,
    );
}

fn stop_notice(book: &Book<'_>, column: &mut Column) {
    if !book.plan.stops.is_empty() {
        let words = "A stop stands against this job: see page 1. Do not cut.".to_owned();
        column.place(&Block::Notice(Grade::Stop, words, Vec::new()));
    }
}

fn through(book: &Book<'_>) -> String {
    format!("{} beyond", book.figures.small(book.plan.kit.through))
}

fn drilling(cut: &Cut) -> String {
    #[allow(clippy::cast_precision_loss)]
    let each = cut.minutes / cut.holes.len().max(1) as f64;
    format!("{} (judgement: {each:.0} min a hole)", time(cut.minutes))
}

fn draw(book: &Book<'_>, own: &[&Cut], subject: Bounds, area: Bounds) -> Vec<Item> {
    let plan = book.plan;
    let first = own.first().map_or(1, |c| c.number);
    let mut drawing = Drawing::window(subject, area);
    scene::stage(&mut drawing, plan, first);
    for cut in own {
        scene::kerf(&mut drawing, cut);
    }
    for cut in own {
        if let SetOut::Centres(marks) = &cut.set_out {
            mark_holes(&mut drawing, cut, marks.iter().map(|m| m.at));
        } else {
            drawing.badge_off(
                scene::middle(cut),
                Vector::default(),
                &cut.number.to_string(),
            );
        }
    }
    for piece in plan
        .pieces
        .iter()
        .filter(|p| own.iter().any(|c| c.number == p.after_cut))
    {
        let text = format!("{}  {}", piece.name, book.figures.mass(piece.mass.high));
        scene::name_piece(&mut drawing, piece, &text);
    }
    drawing.finish()
}

/// The holes on the whole slab.
fn draw_on_slab(book: &Book<'_>, cut: &Cut, area: Bounds) -> Vec<Item> {
    let plan = book.plan;
    let mut drawing = Drawing::fit(scene::slab_bounds(plan), area, scene::DIMENSIONED_MM);
    scene::stage(&mut drawing, plan, cut.number);
    scene::kerf(&mut drawing, cut);
    scene::slab_names(&mut drawing, plan);
    scene::top_names(&mut drawing, plan);
    mark_holes(&mut drawing, cut, cut.holes.iter().map(|h| h.at));
    drawing.finish()
}

/// More holes than this in a row are not named one by one in the drawing.
const NAMED_HOLES: usize = 8;

fn mark_holes(drawing: &mut Drawing, cut: &Cut, middles: impl Iterator<Item = Point>) {
    for (i, at) in middles.enumerate() {
        drawing.cross(at);
        if cut.holes.len() <= NAMED_HOLES {
            drawing.name(at, &hole_name(cut, i));
        }
    }
}

fn rows(book: &Book<'_>, own: &[&Cut], bounds: Bounds) -> Vec<(String, String)> {
    let figures = book.figures;
    let mut rows = vec![(
        "Finished size".to_owned(),
        format!(
            "{} × {}",
            figures.size_bare(bounds.width()),
            figures.size_label(bounds.height())
        ),
    )];
    if let Some(cut) = own.first() {
        rows.push(("Left on its edge".into(), figures.small(cut.allowance)));
        rows.extend(why(book.plan, cut, figures).map(|words| ("Why last".into(), words)));
    }
    for cut in own.iter().filter(|c| c.kind == CutKind::Core) {
        rows.push((format!("Cut {}: bit", cut.number), cut.tool.name()));
        rows.push((format!("Cut {}: drilling", cut.number), drilling(cut)));
    }
    for (cut, set_out) in guided(own) {
        let set_at = guide_set_at(cut, set_out, figures);
        rows.extend(set_at.map(|words| (format!("Cut {}: guide", cut.number), words)));
    }
    let tail = own.iter().map(|c| c.tail).fold(0.0, f64::max);
    if tail > 0.0 {
        rows.push(("Tails at the underside".into(), figures.small(tail)));
    }
    let minutes: f64 = own.iter().map(|c| c.minutes).sum();
    rows.push(("Tool in stone".into(), time(minutes)));
    rows
}

/// The marks of core holes and stops.
fn points(figures: Figures, own: &[&Cut]) -> Vec<Part> {
    let mut rows = Vec::new();
    for cut in own {
        rows.extend(point_rows(figures, cut));
    }
    if rows.is_empty() {
        return Vec::new();
    }
    let words =
        "Middles of holes and ends of cuts, by tapes from the slab's corners, before the first cut";
    vec![
        Block::Subheading(words.into()).into(),
        points_table(figures, rows).into(),
    ]
}

/// The rows of a cut's holes and stops.
pub(super) fn point_rows(figures: Figures, cut: &Cut) -> Vec<Vec<String>> {
    match &cut.set_out {
        SetOut::Centres(marks) => {
            let each = marks.iter().enumerate();
            each.map(|(i, mark)| point_row(figures, hole_name(cut, i), mark.at, &mark.ties))
                .collect()
        }
        SetOut::Guide(set_out) => {
            // A stop in a core hole needs no mark: the hole is there.
            let each = set_out.stops.iter().enumerate();
            each.filter(|(_, stop)| !stop.into_hole)
                .map(|(i, stop)| {
                    let name = format!("{}s{}", cut.number, i + 1);
                    point_row(figures, name, stop.at, &stop.ties)
                })
                .collect()
        }
        SetOut::Pivot(_) | SetOut::Ordinates(_) => Vec::new(),
    }
}

fn drill(cut: &Cut) -> String {
    let holes: Vec<String> = (0..cut.holes.len()).map(|i| hole_name(cut, i)).collect();
    let names = match holes.as_slice() {
        [] => String::new(),
        [only] => only.clone(),
        [first, .., last] => format!("{first} to {last}"),
    };
    format!(
        "Drill {names} with the {}. Start it tilted, or in a guide board held by suction, so that it \
         does not wander; then hold it upright. Ease off before it breaks through: bear the stone close \
         round the hole.",
        cut.tool.name()
    )
}

fn water() -> String {
    "Water into the hole without a break; lift the bit often to clear it. No more water than the machine is \
     rated for."
        .into()
}

fn steps(book: &Book<'_>, own: &[&Cut]) -> Vec<String> {
    let mut steps = Vec::new();
    let drilled: Vec<&&Cut> = own.iter().filter(|c| c.kind == CutKind::Core).collect();
    steps.extend(drilled.iter().map(|c| drill(c)));
    if !drilled.is_empty() {
        steps.push(water());
    }
    let sawn: Vec<usize> = own
        .iter()
        .filter(|c| c.kind == CutKind::Straight)
        .map(|c| c.number)
        .collect();
    if !sawn.is_empty() {
        steps.push(format!(
            "Saw cuts {} in this order, the long ones first, every one stopped at both ends. Lower the \
             running disc into the line, never from the side.",
            listed(&sawn)
        ));
    }
    if !sawn.is_empty() {
        steps.extend(stops(book.figures, own));
    }
    if let Some(last) = own.last() {
        steps.extend(freed_steps(book, last, "pass"));
    }
    if !sawn.is_empty() {
        steps.push(
            "From now on the rails beside the opening are the weakest stone of the top: no weight on \
             them, and lift it as the lifting page says."
                .into(),
        );
    }
    steps
}

/// The cuts that are sawn along a guide.
fn guided<'p>(own: &[&'p Cut]) -> Vec<(&'p Cut, &'p StraightSetOut)> {
    let each = own.iter().filter_map(|cut| match &cut.set_out {
        SetOut::Guide(set_out) => Some((*cut, set_out.as_ref())),
        _ => None,
    });
    each.collect()
}

/// Where the cuts stop; said once when all stop alike in core holes.
fn stops(figures: Figures, own: &[&Cut]) -> Vec<String> {
    let guided = guided(own);
    let mut all = guided.iter().flat_map(|(_, s)| &s.stops);
    let alike = guided
        .first()
        .and_then(|(_, s)| s.stops.first())
        .filter(|first| {
            first.into_hole && all.all(|s| s.into_hole && s.centre_short == first.centre_short)
        });
    if let Some(stop) = alike {
        return vec![format!(
            "Every cut ends in the core holes, where the line touches them: stop with the disc's centre {} \
             short of that point, at every depth. Clamp a stop to the guide at both ends.",
            figures.tape(stop.centre_short)
        )];
    }
    let steps = |(cut, set_out): &(&Cut, &StraightSetOut)| -> Vec<String> {
        let each = stop_steps(cut, set_out, figures).into_iter();
        each.map(|w| format!("Cut {}: {w}", cut.number)).collect()
    };
    guided.iter().flat_map(steps).collect()
}

/// Each straight cut: its guide, depths and bearers.
fn straights(book: &Book<'_>, own: &[&Cut]) -> Vec<Part> {
    let figures = book.figures;
    let (mut marks, mut rows, mut bears) = (Vec::new(), Vec::new(), Vec::new());
    let mut straight = Vec::new();
    for (cut, set_out) in guided(own) {
        straight.push(cut);
        marks.extend(line_rows(
            figures,
            cut,
            &set_out.face,
            "line to keep",
            ["a", "b"],
        ));
        marks.extend(line_rows(
            figures,
            cut,
            &set_out.guide,
            "guide edge",
            ["c", "d"],
        ));
        let side = match set_out.guide_side {
            GuideSide::Kept => "kept",
            GuideSide::Waste => "waste",
        };
        rows.push(vec![
            cut.number.to_string(),
            cut.edge.clone(),
            figures.tape_bare(cut.length),
            side.into(),
            figures.small(set_out.guide_to_face),
            tool_words(book.plan, cut, figures, Kerf::Untold),
        ]);
        bears.extend(bearing(cut, figures).map(|w| format!("Cut {}: {w}", cut.number)));
    }
    if rows.is_empty() {
        return Vec::new();
    }
    let mut parts: Vec<Part> = vec![
        Block::Subheading("Straight cuts".into()).into(),
        cut_table(figures, rows).into(),
        Block::Subheading("Passes: tick each one".into()).into(),
    ];
    parts.extend(passes(&straight));
    parts.push(Block::List(Mark::Dot, bears).into());
    let words = "Marks on the edges of the slab, before the first cut";
    parts.push(Block::Subheading(words.into()).into());
    parts.push(marks_table(figures, marks).into());
    parts
}

/// The depths, and a line to tick for each cut; they are the same for all.
fn passes(cuts: &[&Cut]) -> Vec<Part> {
    const ACROSS: usize = 8;
    let Some(first) = cuts.first() else {
        return Vec::new();
    };
    let table = |group: &[Pass]| {
        let mut headings = vec![Heading::words("Pass", Width::Mm(28.0))];
        let number = |p: &Pass| Heading::numbers(p.number.to_string(), Width::Part(1.0));
        headings.extend(group.iter().map(number));
        let row = |name: String, of: &dyn Fn(&Pass) -> String| {
            std::iter::once(name).chain(group.iter().map(of)).collect()
        };
        let mut rows: Vec<Vec<String>> =
            vec![row("Depth, mm".into(), &|p| format!("{:.1}", p.depth))];
        let tick = |cut: &&Cut| row(format!("Cut {}", cut.number), &|_| "____".to_owned());
        rows.extend(cuts.iter().map(tick));
        Table {
            headings,
            rows,
            style: Scale::BENCH.strong,
        }
    };
    first
        .passes
        .chunks(ACROSS)
        .map(|g| table(g).into())
        .collect()
}

fn cut_table(figures: Figures, rows: Vec<Vec<String>>) -> Table {
    Table {
        headings: vec![
            Heading::words("Cut", Width::Mm(13.0)),
            Heading::words("Edge", Width::Mm(16.0)),
            Heading::numbers(format!("Length, {}", figures.unit()), Width::Mm(28.0)),
            Heading::words("Guide on", Width::Mm(24.0)),
            Heading::words("Guide to line", Width::Mm(32.0)),
            Heading::words("Disc", Width::Part(1.0)),
        ],
        rows,
        style: Scale::BENCH.strong,
    }
}
