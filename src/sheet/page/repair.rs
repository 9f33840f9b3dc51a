//! What happened at the cutting, what it costs, what to do now.

use super::repair_openings;
use crate::plan::Plan;
use crate::repair::{CornerNow, EdgeNow, Letters, OpeningNow, Outcome, Repair, ToDo};
use crate::sheet::book::{Book, Part};
use crate::sheet::drawing::Drawing;
use crate::sheet::figure::{Figures, area};
use crate::sheet::flow::{Block, Grade, Mark, Scale};
use crate::sheet::item::{Dash, Ink, Stroke};
use crate::sheet::scene;
use crate::sheet::table::{Heading, Table, Width};

/// Greatest height of the drawing, mm.
const DRAWING_MM: f64 = 88.0;

/// Adds the page, when something happened.
pub fn add(book: &mut Book<'_>) {
    let plan = book.plan;
    let Some(repair) = &plan.repair else {
        return;
    };
    let figures = book.figures;
    let mut column = book.column(Scale::BENCH);
    column.place(&Block::Heading(
        "What happened, and what can still be had".into(),
    ));
    column.place(&Block::Notice(
        Grade::Caution,
        verdict(repair, figures),
        vec![letters(repair).into()],
    ));
    let paper = column.reserve(scene::height_for(plan, column.width, DRAWING_MM));
    column.items.extend(drawing(plan, repair, paper).finish());
    column.place(&Block::Note(
        "Wide line: the top as it can be had. Long dash and dot: the top as it was wanted. Dotted area: \
         what a chip or a cut has taken. The other line is the stone as it is now."
            .into(),
    ));
    let parts = parts(repair, figures);
    book.fill("Repair", column, &parts);
}

fn drawing(plan: &Plan, repair: &Repair, paper: crate::geom::Bounds) -> Drawing {
    let mut drawing = Drawing::fit(scene::slab_bounds(plan), paper, scene::DIMENSIONED_MM);
    drawing.slab(&plan.slab.outline);
    drawing.gone(&plan.slab.taken);
    drawing.kept(&repair.now.outline, &plan.top.cutouts);
    let wanted = Stroke::solid(0.25, Ink::Accent).dashed(Dash::DashDot);
    drawing.line(repair.wanted.outline.segs(), wanted);
    for chip in &repair.chips {
        drawing.gone(std::slice::from_ref(&chip.outline));
    }
    scene::slab_names(&mut drawing, plan);
    scene::top_names(&mut drawing, plan);
    for chip in &repair.chips {
        if let Some(seg) = chip.outline.first() {
            drawing.name(seg.at(0.5), "chip");
        }
    }
    drawing.word(plan.top.balance, "keep");
    drawing
}

/// The whole result in one sentence.
#[must_use]
pub fn verdict(repair: &Repair, figures: Figures) -> String {
    match repair.outcome {
        Outcome::AsPlanned => "Everything lies on its line. Go on as planned.".into(),
        Outcome::WithinAllowance => {
            "The allowance takes it up: nothing is lost. Grind to the finished line.".into()
        }
        Outcome::Smaller => smaller(repair, figures),
        Outcome::OtherOpening => openings_now(repair, figures),
    }
}

fn smaller(repair: &Repair, figures: Figures) -> String {
    let [wanted, now] = [&repair.wanted, &repair.now];
    let lost = area(wanted.area_mm2 - now.area_mm2);
    let box_stays = (0..2).all(|i| (wanted.size[i] - now.size[i]).abs() < 0.05);
    if box_stays {
        let moved = repair.edges.iter().filter(|e| e.moved_in > 0.05);
        let moved: Vec<String> = moved
            .map(|e| format!("edge {} moves in {}", e.name, figures.small(e.moved_in)))
            .collect();
        let how = if moved.is_empty() {
            "its corners become others".to_owned()
        } else {
            moved.join(", ")
        };
        return format!(
            "The top keeps its {} × {} {}, but {how}: {lost} smaller",
            figures.tape_bare(now.size[0]),
            figures.tape_bare(now.size[1]),
            figures.unit(),
        );
    }
    format!(
        "The top becomes {} × {} {} instead of {} × {}: {lost} smaller",
        figures.tape_bare(now.size[0]),
        figures.tape_bare(now.size[1]),
        figures.unit(),
        figures.tape_bare(wanted.size[0]),
        figures.tape_bare(wanted.size[1]),
    )
}

fn openings_now(repair: &Repair, figures: Figures) -> String {
    let other = |o: &&OpeningNow| (0..2).any(|i| (o.size_wanted[i] - o.size_now[i]).abs() > 0.05);
    let others: Vec<String> = repair
        .openings
        .iter()
        .filter(other)
        .map(|o| {
            format!(
                "{} becomes {} × {} {} instead of {} × {}",
                o.what,
                figures.tape_bare(o.size_now[0]),
                figures.tape_bare(o.size_now[1]),
                figures.unit(),
                figures.tape_bare(o.size_wanted[0]),
                figures.tape_bare(o.size_wanted[1]),
            )
        })
        .collect();
    let how = if others.is_empty() {
        "an opening gets other corners".to_owned()
    } else {
        others.join("; ")
    };
    format!("The top keeps its outline, but {how}")
}

/// What the letters of the stone's corners now mean.
#[must_use]
pub fn letters(repair: &Repair) -> &'static str {
    match repair.letters {
        Letters::SameA => {
            "Letters on this and all other pages are corners of the stone as it is now. A is where it \
             was, AB runs as it did; the others are new."
        }
        Letters::New => {
            "Letters on this and all other pages are corners of the stone as it is now: all are new. \
             Write them on the stone."
        }
    }
}

fn parts(repair: &Repair, figures: Figures) -> Vec<Part> {
    let mut parts: Vec<Part> = vec![edge_table("Edge", &repair.edges, came, figures).into()];
    if !repair.corners.is_empty() {
        parts.push(corner_table(&repair.corners, came, figures).into());
    }
    repair_openings::add(&mut parts, repair, figures);
    parts.push(Block::Subheading("What to do".into()).into());
    parts.push(Block::List(Mark::From(1), to_do(repair, figures)).into());
    if !repair.overhangs.is_empty() {
        parts.push(Block::Subheading("How far it stands over its base".into()).into());
        parts.push(overhang_table(repair, figures).into());
    }
    parts.push(Block::Subheading("The top there is now, as lines of a job file".into()).into());
    let lines: Vec<Part> = repair
        .job_lines
        .iter()
        .map(|l| Block::Paragraph(l.clone()).into())
        .collect();
    parts.extend(lines);
    parts
}

/// Words for where a face came to lie, mm out of its line.
pub(super) type Came = fn(Option<f64>, Figures) -> String;

/// Where a face came to lie, in words.
#[must_use]
pub fn came(face_out: Option<f64>, figures: Figures) -> String {
    match face_out {
        None => "not cut".into(),
        Some(out) if out.abs() < 0.05 => "on its line".into(),
        Some(out) if out < 0.0 => format!("{} short", figures.small(-out)),
        Some(out) => format!("{} over", figures.small(out)),
    }
}

/// What is to be done on an edge or corner, in words.
#[must_use]
pub fn task(to_do: ToDo, figures: Figures) -> String {
    match to_do {
        ToDo::Nothing => "nothing".into(),
        ToDo::Finish(mm) if mm < 0.05 => "finish only".into(),
        ToDo::Finish(mm) => format!("grind {}", figures.small(mm)),
        ToDo::Cut => "cut: see its page".into(),
    }
}

pub(super) fn edge_table(name: &str, edges: &[EdgeNow], came: Came, figures: Figures) -> Table {
    let row = |e: &EdgeNow| {
        vec![
            e.name.clone(),
            came(e.face_out, figures),
            figures.small(e.moved_in),
            task(e.to_do, figures),
        ]
    };
    Table {
        headings: vec![
            Heading::words(name, Width::Mm(24.0)),
            Heading::words("Came out", Width::Part(1.0)),
            Heading::numbers("Line moves in", Width::Mm(40.0)),
            Heading::words("To do", Width::Part(1.2)),
        ],
        rows: edges.iter().map(row).collect(),
        style: Scale::BENCH.strong,
    }
}

pub(super) fn corner_table(corners: &[CornerNow], came: Came, figures: Figures) -> Table {
    let row = |c: &CornerNow| {
        vec![
            c.name.clone(),
            came(c.face_out, figures),
            format!("{} {}", c.what, figures.tape_bare(c.wanted)),
            figures.tape(c.now),
            task(c.to_do, figures),
        ]
    };
    Table {
        headings: vec![
            Heading::words("Corner", Width::Mm(24.0)),
            Heading::words("Came out", Width::Part(1.0)),
            Heading::words("Wanted", Width::Mm(36.0)),
            Heading::numbers("Now", Width::Mm(30.0)),
            Heading::words("To do", Width::Part(1.2)),
        ],
        rows: corners.iter().map(row).collect(),
        style: Scale::BENCH.strong,
    }
}

fn overhang_table(repair: &Repair, figures: Figures) -> Table {
    let rows = repair.overhangs.iter().map(|o| {
        vec![
            o.edge.clone(),
            figures.tape_bare(o.wanted),
            figures.tape_bare(o.now),
        ]
    });
    let unit = figures.unit();
    Table {
        headings: vec![
            Heading::words("Edge", Width::Mm(30.0)),
            Heading::numbers(format!("Wanted, {unit}"), Width::Mm(40.0)),
            Heading::numbers(format!("Now, {unit}"), Width::Mm(40.0)),
            Heading::words("", Width::Part(1.0)),
        ],
        rows: rows.collect(),
        style: Scale::BENCH.strong,
    }
}

/// The steps in words.
#[must_use]
pub fn to_do(repair: &Repair, figures: Figures) -> Vec<String> {
    let mut steps = repair_openings::first(repair);
    let cut: Vec<&str> = repair
        .edges
        .iter()
        .filter(|e| e.to_do == ToDo::Cut && e.face_out.is_some())
        .map(|e| e.name.as_str())
        .collect();
    if !cut.is_empty() {
        steps.push(format!(
            "Cut again: {}. A narrower strip would let the disc wander: where the line has moved in, it has as \
             far as that strip needs.",
            cut.join(", ")
        ));
    }
    let ground = repair.edges.iter().filter_map(|e| match e.to_do {
        ToDo::Finish(mm) if mm >= 0.05 => {
            Some(format!("{} off edge {}", figures.small(mm), e.name))
        }
        _ => None,
    });
    let corners = repair.corners.iter().filter_map(|c| match c.to_do {
        ToDo::Finish(mm) if mm >= 0.05 => {
            Some(format!("{} off corner {}", figures.small(mm), c.name))
        }
        _ => None,
    });
    let ground: Vec<String> = ground.chain(corners).collect();
    if !ground.is_empty() {
        steps.push(format!(
            "Grind down to the finished line, where it is thickest: {}.",
            ground.join(", ")
        ));
    }
    for corner in repair
        .corners
        .iter()
        .filter(|c| (c.now - c.wanted).abs() > 0.05)
    {
        steps.push(format!(
            "Corner {}: {} {} instead of {}.",
            corner.name,
            corner.what,
            figures.tape(corner.now),
            figures.tape(corner.wanted)
        ));
    }
    steps.extend(repair_openings::steps(repair, figures));
    let moved = repair.corner_1_moved;
    if moved.length() > 0.05 {
        steps.push(format!(
            "Corner 1 has moved by {} along edge 1-2 and {} square to it. Take that off everything measured \
             in the top's frame: supports, cutouts, base.",
            figures.tape(moved.x),
            figures.tape(moved.y)
        ));
    }
    steps.push("All other pages plan what is left on the stone as it is now.".into());
    steps
}
