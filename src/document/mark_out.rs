//! Page 2, mark out: every line and point of the whole job from one drawing and one table.

use super::block::{Block, Cell, Column, Table};
use super::figure::{Figure, Lettering, LineStyle, Side, Thing};
use super::mark::{self, Marked, Struck};
use super::say::{cell, name, plain, say, value};
use super::scene;
use crate::cut::{Cut, EdgeMark, FromCorner, SetOut, StruckStation, Tie};
use crate::geom::{Outline, Seg};
use crate::job::EdgeState;
use crate::plan::{Plan, SlabEdge};
use crate::units::LengthUnit;
use crate::words::{Message, Value};

/// At most so many rows of dimensions on a side; with more lines than `FEW` they all stand in the table.
const MOST_ROWS: u8 = 2;
const FEW: usize = 4;

/// The page's blocks.
pub(super) fn blocks(plan: &Plan) -> Vec<Block> {
    let mut blocks = vec![
        Block::Title(Vec::new(), plain("bench-mark-title")),
        Block::Boxed(plain("bench-mark-rule")),
        Block::Figure(Box::new(figure(plan))),
        Block::Table(lines(plan)),
    ];
    blocks.extend(points(plan).map(Block::Table));
    blocks.extend(proofs(plan));
    blocks
}

fn figure(plan: &Plan) -> Figure {
    let mut figure = Figure::new(plain("bench-mark-alt"), scene::slab_bounds(plan));
    figure.extend(scene::stage(plan, 1));
    for cut in &plan.cuts {
        for line in mark::lines(cut) {
            let [a, b] = line.ends.map(|e| e.at);
            let stroke = if line.guide {
                LineStyle::Thin
            } else {
                LineStyle::SetOut
            };
            figure.add(Thing::Line(stroke, vec![Seg::Line(a, b)]));
            for (named, at) in line.names.iter().zip([a, b]) {
                figure.add(Thing::Mark(at, named.clone()));
            }
        }
    }
    for point in taped_points(plan) {
        figure.add(Thing::Pivot(point.at, point.name));
    }
    figure.extend(plan.cuts.iter().flat_map(scene::stations));
    figure.extend(practice(plan));
    figure.extend(dimensions(plan));
    figure.extend(scene::corner_names(plan));
    figure.extend(scene::flaws(plan));
    figure.extend(scene::top_corners(plan, |_| true));
    figure.add(scene::keep(plan, plan.top.balance));
    figure.extend(scene::waste_names(&plan.pieces));
    figure
}

/// Where to practise: a line for the cut, with the word, and for each plunge.
fn practice(plan: &Plan) -> Vec<Thing> {
    let marks = [&plan.practice.cut, &plan.practice.plunges];
    let mut things = Vec::new();
    for mark in marks.into_iter().flatten() {
        let [from, to] = mark.ends.each_ref().map(|e| e.at);
        let right = (to - from).unit().right();
        let count = mark.strokes.iter().filter(|s| s.pass == 1).count();
        let mut off = 0.0;
        for _ in 0..count {
            let line = Seg::Line(from + right * off, to + right * off);
            things.push(Thing::Line(LineStyle::Hidden, vec![line]));
            off += mark.apart;
        }
        if mark.apart == 0.0 {
            let word = value("bench-practice-here", []);
            let piece = plan.pieces.iter().find(|p| p.name == mark.piece);
            let ring = piece.and_then(|p| Outline::new(p.outline.first()?.clone()).ok());
            things.push(match ring {
                Some(ring) => Thing::Within(ring, from.midpoint(to), Lettering::Word, word),
                None => Thing::Label(from.midpoint(to), Lettering::Word, word),
            });
        }
    }
    things
}

/// Dimensions from the corners to the first lines to keep, as many as there are rows for.
fn dimensions(plan: &Plan) -> Vec<Thing> {
    let mut used = [0_u8; 4];
    let mut things = Vec::new();
    let lines: usize = plan.cuts.iter().map(|c| mark::lines(c).len() / 2).sum();
    for cut in plan.cuts.iter().filter(|_| lines <= FEW) {
        for line in mark::lines(cut).iter().filter(|l| !l.guide) {
            for end in line.ends {
                let Some((from, side)) = scene::reach(plan, end) else {
                    continue;
                };
                let row = &mut used[side as usize];
                if *row < MOST_ROWS && end.tie.distance > 1.0 {
                    let figure = mark::taped(end);
                    things.push(Thing::Dimension(from, end.at, side, *row, figure));
                    *row += 1;
                }
            }
        }
    }
    let rows = used[Side::Below as usize].max(used[Side::Left as usize]);
    things.extend(scene::slab_dimensions(plan, rows));
    things
}

/// The lines: where each end of the line to keep is and what proves it, and where the guide's line is.
fn lines(plan: &Plan) -> Table {
    let end = || {
        [
            Column::words(value("bench-mark-keep", []), 61),
            Column::words(value("bench-mark-line-check", []), 55),
            Column::words(value("bench-mark-guide", []), 54),
        ]
    };
    let mut columns = vec![Column::words(value("bench-relief-cut", []), 14)];
    columns.extend(end().into_iter().chain(end()));
    columns.push(Column::words(Value::Nothing, 6));
    let rows = plan.cuts.iter().filter_map(|cut| {
        let lines = mark::lines(cut);
        match &lines[..] {
            [keep, guide] => Some(line_row(cut, keep, guide)),
            _ => None,
        }
    });
    Table {
        columns,
        rows: rows.collect(),
    }
}

fn line_row(cut: &Cut, keep: &Struck<'_>, guide: &Struck<'_>) -> Vec<Cell> {
    let marked = |mark: &EdgeMark, named: &str, same: bool| {
        let gaps = [
            ("mark", name(named)),
            ("distance", mark::taped(mark)),
            ("corner", name(&mark.tie.corner)),
        ];
        let id = if same {
            "bench-marked"
        } else {
            "bench-marked-from"
        };
        cell(id, gaps)
    };
    let end = |i: usize| {
        let (line, rail) = (keep.ends[i], guide.ends[i]);
        let same = line.tie.corner == rail.tie.corner;
        [
            marked(line, &keep.names[i], false),
            cell(
                "bench-tape",
                [
                    ("corner", name(&line.check.corner)),
                    ("distance", mark::checked(line)),
                ],
            ),
            marked(rail, &guide.names[i], same),
        ]
    };
    let mut row = vec![Cell::Value(cut.number.into())];
    row.extend(end(0));
    row.extend(end(1));
    row.push(Cell::Tick);
    row
}

/// The tape from a corner.
fn tape(tie: &Tie) -> Cell {
    let corner = ("corner", name(&tie.corner));
    cell(
        "bench-tape",
        [corner, ("distance", Value::tape(tie.distance))],
    )
}

/// How the tape is held and what else proves the lines: across a corner its distances from it, and how far a
/// guide's line lies off.
fn proofs(plan: &Plan) -> Vec<Block> {
    let corners = plan.cuts.iter().flat_map(|cut| {
        let lines = mark::lines(cut).into_iter();
        lines.filter_map(move |l| Some(across(cut, l.from_corner?)))
    });
    let mut proofs: Vec<Block> = corners.map(Block::Text).collect();
    let mut offsets: Vec<Value> = Vec::new();
    for cut in &plan.cuts {
        if let SetOut::Guide(set_out) = &cut.set_out {
            let offset = mark::offset(set_out);
            if !offsets.contains(&offset) {
                offsets.push(offset);
            }
        }
    }
    let rough = |e: &SlabEdge| e.state == EdgeState::Rough;
    if plan.slab.edges.iter().any(rough) {
        proofs.push(Block::Text(plain("bench-mark-rough")));
    }
    let tape = ("tape", Value::tape(plan.slab.tape).up());
    let guides = match offsets[..] {
        [] => Value::Nothing,
        _ => value("bench-mark-guides", [("offset", Value::List(offsets))]),
    };
    proofs.push(Block::Text(say(
        "bench-mark-tape",
        [tape, ("guides", guides)],
    )));
    if plan.job.units == LengthUnit::Inch {
        proofs.push(Block::Text(plain("bench-mark-between")));
    }
    proofs
}

/// A line across a corner, measured from it.
fn across(cut: &Cut, from: &FromCorner) -> Message {
    let [before, after] = from.along;
    let number = ("cut", cut.number.into());
    let corner = ("corner", name(&from.corner));
    if (before - after).abs() < crate::geom::SAME_MM {
        let gaps = [number, corner, ("distance", Value::tape(before))];
        return say("bench-mark-both", gaps);
    }
    let [before, after] = [before, after].map(Value::tape);
    let gaps = [number, corner, ("before", before), ("after", after)];
    say("bench-mark-along", gaps)
}

/// The points with their tapes, and the struck stations of curves.
fn points(plan: &Plan) -> Option<Table> {
    let mut rows: Vec<Vec<Cell>> = taped_points(plan).iter().map(point_row).collect();
    rows.extend(plan.cuts.iter().flat_map(station_rows));
    let columns = vec![
        Column::words(value("bench-mark-what", []), 28),
        Column::words(value("bench-mark-tape-from", []), 26),
        Column::words(value("bench-mark-tape-from", []), 26),
        Column::words(value("bench-mark-check", []), 23),
        Column::words(value("bench-mark-check", []), 23),
        Column::words(Value::Nothing, 6),
    ];
    (!rows.is_empty()).then_some(Table { columns, rows })
}

/// The points that tapes find: those of an opening are measured from its lines, on its own page.
fn taped_points(plan: &Plan) -> Vec<Marked> {
    let mut points = mark::all_points(&plan.cuts);
    points.retain(|point| point.offsets.is_empty());
    points
}

fn point_row(point: &Marked) -> Vec<Cell> {
    let tie = |i: usize| point.ties.get(i).map_or(Cell::Empty, tape);
    let what = cell(point.what, [("mark", name(&point.name))]);
    vec![what, tie(0), tie(1), tie(2), tie(3), Cell::Tick]
}

/// The struck stations of a curve, two in a row: each lies on the line struck about the pivot, and one tape
/// finds it there.
fn station_rows(cut: &Cut) -> Vec<Vec<Cell>> {
    let stations = mark::stations(cut);
    let found = |(named, s): &(String, &StruckStation)| {
        let gaps = [
            ("mark", name(named)),
            ("corner", name(&s.tie.corner)),
            ("distance", Value::tape(s.tie.distance)),
        ];
        cell("bench-marked-from", gaps)
    };
    let row = |pair: &[(String, &StruckStation)]| {
        let what = cell("bench-mark-on-curve", [("cut", cut.number.into())]);
        let second = pair.get(1).map_or(Cell::Empty, found);
        let first = pair.first().map_or(Cell::Empty, found);
        vec![what, first, second, Cell::Empty, Cell::Empty, Cell::Tick]
    };
    stations.chunks(2).map(row).collect()
}
