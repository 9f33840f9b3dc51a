//! A job begun and gone wrong: what came out, what is to be done at every edge, and what the top is now.

use crate::plan::Plan;
use crate::repair::{CornerNow, EdgeNow, Letters, Outcome, Repair, ToDo};
use crate::words::Value;

use super::block::{Block, Cell, Column, Fact, Table};
use super::figure::{Figure, Shape, Thing};
use super::say::{cell, name, names, plain, value};
use super::scene;

/// Smaller than this is no deviation, mm: below what a calliper on sawn stone shows (judgement).
const NONE_MM: f64 = 0.05;

/// The page's blocks.
pub(super) fn blocks(plan: &Plan, repair: &Repair) -> Vec<Block> {
    let outcome = match repair.outcome {
        Outcome::AsPlanned => "bench-repair-as-planned",
        Outcome::WithinAllowance => "bench-repair-within",
        Outcome::GrindOff => "bench-repair-grind",
        Outcome::SawAgain => "bench-repair-again",
        Outcome::Smaller => "bench-repair-smaller",
        Outcome::OtherOpening => "bench-repair-opening",
    };
    let letters = match repair.letters {
        Letters::SameA => "bench-repair-same-a",
        Letters::New => "bench-repair-new",
    };
    let mut blocks = vec![
        Block::Title(Vec::new(), plain("bench-repair-title")),
        Block::Boxed(plain(outcome)),
        Block::Figure(Box::new(figure(plan, repair))),
        Block::Facts(facts(repair)),
        Block::Table(table(&repair.edges, &repair.corners)),
    ];
    for opening in &repair.openings {
        blocks.push(Block::Heading(super::say::say(
            "bench-opening-title",
            [("what", name(&opening.what))],
        )));
        blocks.push(Block::Table(table(&opening.sides, &opening.corners)));
    }
    blocks.push(Block::Text(plain(letters)));
    blocks
}

fn figure(plan: &Plan, repair: &Repair) -> Figure {
    let mut figure = Figure::new(plain("bench-repair-alt"), scene::slab_bounds(plan));
    figure.extend(scene::stage(plan, 1));
    let wanted = repair.wanted.outline.segs().to_vec();
    figure.add(Thing::Line(super::figure::LineStyle::Clearance, wanted));
    for chip in &repair.chips {
        figure.add(Thing::Area(Shape::Kerf, vec![chip.outline.clone()]));
    }
    figure.extend(scene::slab_dimensions(plan, 0));
    figure.extend(scene::corner_names(plan));
    figure.add(scene::keep(plan, plan.top.balance));
    figure
}

fn facts(repair: &Repair) -> Vec<Fact> {
    let size = |[length, width]: [f64; 2]| {
        value(
            "bench-top-size",
            [
                ("length", Value::fine(length)),
                ("width", Value::fine(width)),
            ],
        )
    };
    let mut facts = vec![
        Fact::new("bench-repair-wanted", size(repair.wanted.size)),
        Fact::new("bench-repair-now", size(repair.now.size)),
        Fact::new(
            "bench-repair-weighs",
            Value::mass(repair.now.mass.high).up(),
        ),
    ];
    if !repair.run_outs_first.is_empty() {
        let first = names(repair.run_outs_first.iter().map(String::as_str));
        facts.push(Fact::new(
            "bench-repair-first",
            value("bench-repair-run-outs", [("pieces", first)]),
        ));
    }
    if !repair.ground_first.is_empty() {
        let edges = names(repair.ground_first.iter().map(String::as_str));
        facts.push(Fact::new(
            "bench-repair-first",
            value("bench-repair-grind-first", [("edges", edges)]),
        ));
    }
    if !repair.job_lines.is_empty() {
        let lines = names(repair.job_lines.iter().map(String::as_str));
        facts.push(Fact::new("bench-repair-lines", lines));
    }
    facts
}

fn table(edges: &[EdgeNow], corners: &[CornerNow]) -> Table {
    let columns = vec![
        Column::words(value("bench-repair-part", []), 24),
        Column::words(value("bench-repair-came", []), 36),
        Column::figures(value("bench-repair-is-wanted", []), 30),
        Column::figures(value("bench-repair-is-now", []), 30),
        Column::words(value("bench-repair-do", []), 44),
        Column::words(Value::Nothing, 8),
    ];
    let edges = edges.iter().map(|e| {
        let part = cell("bench-repair-edge", [("name", name(&e.name))]);
        let face = e.taper.map_or_else(|| came(e.face_out), slanting);
        row(part, face, [e.length_wanted, e.length_now], e.to_do)
    });
    let corners = corners.iter().map(|c| {
        let part = cell(
            "bench-repair-corner",
            [("name", name(&c.name)), ("what", Value::term(c.what))],
        );
        row(part, came(c.face_out), [c.wanted, c.now], c.to_do)
    });
    Table {
        columns,
        rows: edges.chain(corners).collect(),
    }
}

fn row(part: Cell, face: Cell, sizes: [f64; 2], to_do: ToDo) -> Vec<Cell> {
    let [wanted, now] = sizes.map(|mm| Cell::Value(Value::fine(mm)));
    vec![part, face, wanted, now, task(to_do), Cell::Tick]
}

/// How a slanting edge came out, at its start and at its end.
fn slanting([start, end]: [f64; 2]) -> Cell {
    let id = if start.min(end) < 0.0 {
        "bench-came-slanting-short"
    } else {
        "bench-came-slanting-over"
    };
    let [start, end] = [start, end].map(|mm| Value::fine(mm.abs()));
    cell(id, [("start", start), ("end", end)])
}

/// How an edge came out.
fn came(face_out: Option<f64>) -> Cell {
    let off = |id, mm: f64| cell(id, [("off", Value::fine(mm))]);
    match face_out {
        None => cell("bench-came-not-cut", []),
        Some(out) if out.abs() < NONE_MM => cell("bench-came-on-line", []),
        Some(out) if out < 0.0 => off("bench-came-short", -out),
        Some(out) => off("bench-came-over", out),
    }
}

/// What is to be done on an edge or corner.
fn task(to_do: ToDo) -> Cell {
    match to_do {
        ToDo::Nothing => cell("bench-do-nothing", []),
        ToDo::Finish(mm) if mm < NONE_MM => cell("bench-do-finish", []),
        ToDo::Finish(mm) => cell("bench-do-grind", [("off", Value::fine(mm))]),
        ToDo::Cut => cell("bench-do-cut", []),
    }
}
