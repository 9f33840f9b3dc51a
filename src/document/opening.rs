//! An opening on one page: its holes, cuts and rails in one drawing, the order to tick.

use super::block::{Block, Cell, Column, Fact, Table};
use super::figure::{Figure, Lettering, Side, Stroke, Thing};
use super::mark::{self, Marked};
use super::say::{cell, name, names, plain, say, value};
use super::scene;
use super::straight::{depths, free};
use crate::cut::{Cut, CutKind, Offset, SetOut};
use crate::geom::{Bounds, Point, Seg};
use crate::handle::rail::RailVerdict;
use crate::plan::Plan;
use crate::words::{Message, Value};

/// Nearer to a struck line than this a point is on it, mm: less than a tape shows.
const ON_LINE_MM: f64 = 0.25;
/// More points of a cut than this are named by the first and the last.
const NAMED: usize = 4;
/// How much stone is shown round an opening, mm.
const ROUND_MM: f64 = 170.0;

/// The page's blocks.
pub(super) fn blocks(plan: &Plan, number: usize, cuts: &[&Cut]) -> Vec<Block> {
    let what = number
        .checked_sub(1)
        .and_then(|i| plan.top.openings.get(i))
        .map_or(Value::Nothing, |o| name(&o.what));
    let numbers = cuts.iter().map(|c| c.number).collect();
    let thick = ("thick", scene::thick(plan));
    let title = say("bench-opening-title", [("what", what), thick]);
    let mut blocks = vec![
        Block::Title(numbers, title),
        Block::Figure(Box::new(figure(plan, number, cuts))),
        Block::Table(table(cuts)),
    ];
    blocks.extend(points(cuts).map(Block::Table));
    let kinds = [
        (CutKind::Straight, "bench-depths-straight"),
        (CutKind::Curve, "bench-depths-curve"),
    ];
    for (kind, id) in kinds {
        if let Some(cut) = cuts.iter().find(|c| c.kind == kind) {
            blocks.push(Block::Run(plain(id), depths(cut)));
        }
    }
    let facts = rails(plan);
    if !facts.is_empty() {
        blocks.push(Block::Facts(facts));
    }
    blocks.push(Block::Steps(steps(cuts)));
    for piece in cuts.iter().flat_map(|c| scene::freed(plan, c)) {
        blocks.push(Block::Boxed(free(plan, piece)));
    }
    blocks
}

fn figure(plan: &Plan, number: usize, cuts: &[&Cut]) -> Figure {
    let opening = number.checked_sub(1).and_then(|i| plan.top.openings.get(i));
    let own = opening.map_or_else(
        || Bounds::around(cuts.iter().map(|c| scene::middle(c))),
        |o| o.outline.bounds(),
    );
    let wide = scene::grown(own, ROUND_MM.max(own.width().max(own.height()) * 0.25));
    let mut figure = Figure::new(plain("bench-opening-alt"), wide);
    figure.clipped = true;
    let first = cuts.iter().map(|c| c.number).min().unwrap_or(1);
    figure.extend(scene::stage(plan, first));
    for cut in cuts {
        figure.extend(scene::kerf(cut));
        for line in mark::lines(cut).iter().filter(|l| l.guide) {
            let [a, b] = line.ends.map(|e| e.at);
            figure.add(Thing::Line(Stroke::Thin, vec![Seg::Line(a, b)]));
        }
        for point in mark::points(cut) {
            figure.add(Thing::Pivot(point.at, point.name));
        }
    }
    figure.extend(scene::rings(plan, cuts.iter().copied()));
    let (low, high) = (own.min, own.max);
    figure.extend([
        Thing::Dimension(
            low,
            Point::new(high.x, low.y),
            Side::Below,
            0,
            Value::size(own.width()),
        ),
        Thing::Dimension(
            low,
            Point::new(low.x, high.y),
            Side::Left,
            0,
            Value::size(own.height()),
        ),
    ]);
    for rail in &plan.handling.top.rails {
        let [a, b] = rail.narrowest;
        figure.add(Thing::Line(Stroke::Hidden, vec![Seg::Line(a, b)]));
        figure.add(Thing::Label(
            a.midpoint(b),
            Lettering::Number,
            Value::size(rail.width_mm).down(),
        ));
    }
    let freed: Vec<_> = cuts.iter().flat_map(|c| scene::freed(plan, c)).collect();
    figure.extend(scene::waste_names(freed));
    figure
}

fn table(cuts: &[&Cut]) -> Table {
    let columns = vec![
        Column::words(value("bench-relief-cut", []), 10),
        Column::words(value("bench-opening-what", []), 40),
        Column::words(value("bench-opening-marks", []), 34),
        Column::words(value("bench-opening-how", []), 90),
        Column::words(Value::Nothing, 8),
    ];
    let rows = cuts.iter().map(|cut| {
        vec![
            Cell::Value(cut.number.into()),
            cell(
                what(cut),
                [
                    ("length", Value::size(cut.length)),
                    ("bit", Value::fine(cut.tool.width_mm())),
                ],
            ),
            Cell::Value(marks(cut)),
            Cell::Value(how(cut)),
            Cell::Tick,
        ]
    });
    Table {
        columns,
        rows: rows.collect(),
    }
}

/// Points in a row of their table.
const ABREAST: usize = 2;

/// Holes and stops, each by its distances from two struck lines; nothing when tapes find them.
fn points(cuts: &[&Cut]) -> Option<Table> {
    let mut points = mark::all_points(cuts.iter().copied());
    points.retain(|point| !point.offsets.is_empty());
    let columns = (0..ABREAST).flat_map(|_| {
        [
            Column::words(value("bench-mark-what", []), 20),
            Column::words(value("bench-mark-off", []), 34),
            Column::words(value("bench-mark-off", []), 34),
        ]
    });
    let row = |some: &[Marked]| {
        let cells = some.iter().flat_map(|point| {
            let mut cells = vec![cell(point.what, [("mark", name(&point.name))])];
            cells.extend(point.offsets.iter().map(off));
            cells
        });
        let mut cells: Vec<Cell> = cells.collect();
        cells.resize(3 * ABREAST, Cell::Empty);
        cells
    };
    (!points.is_empty()).then(|| Table {
        columns: columns.collect(),
        rows: points.chunks(ABREAST).map(row).collect(),
    })
}

/// A distance from a struck line into the waste: never rounded towards the kept stone.
fn off(offset: &Offset) -> Cell {
    let line = ("cut", offset.cut.into());
    if offset.distance < ON_LINE_MM {
        return cell("bench-mark-on-line", [line]);
    }
    let distance = Value::tape(offset.distance).to_half(false);
    cell("bench-mark-off-line", [line, ("distance", distance)])
}

const fn what(cut: &Cut) -> &'static str {
    match cut.kind {
        CutKind::Core => "bench-opening-hole",
        CutKind::Straight | CutKind::Relief => "bench-opening-straight",
        CutKind::Curve => "bench-opening-curve",
    }
}

fn marks(cut: &Cut) -> Value {
    let guide = mark::lines(cut);
    let lines = guide
        .iter()
        .filter(|l| l.guide)
        .flat_map(|l| l.names.clone());
    let points: Vec<String> = mark::points(cut).into_iter().map(|p| p.name).collect();
    if let ([], [first, .., last], true) = (&guide[..], &points[..], points.len() > NAMED) {
        return value("bench-span", [("from", name(first)), ("to", name(last))]);
    }
    let all: Vec<String> = lines.chain(points).collect();
    names(all.iter().map(String::as_str))
}

fn how(cut: &Cut) -> Value {
    match &cut.set_out {
        SetOut::Guide(set_out) => {
            let named = set_out.stops.iter().zip(["s", "t"]);
            let stops = named.map(|(stop, letter)| {
                value(
                    "bench-opening-stop",
                    [
                        ("mark", Value::name(mark::mark_name(cut, letter))),
                        ("short", Value::tape(stop.centre_short).up()),
                    ],
                )
            });
            Value::List(stops.collect())
        }
        SetOut::Pivot(curve) => value(
            "bench-opening-swing",
            [
                ("radius", mark::swung(curve, curve.sawn_radius)),
                ("arm", mark::swung(curve, curve.arm)),
                ("count", curve.stations.len().into()),
            ],
        ),
        SetOut::Ordinates(o) => value(
            "bench-opening-plunges",
            [
                ("count", o.marks.len().into()),
                ("chord", Value::tape(o.chord_length)),
                ("rise", mark::swung(&o.curve, o.rise)),
            ],
        ),
        SetOut::Centres(_) => value("bench-opening-drill", []),
    }
}

/// The strips of stone beside the openings that need a splint or are too weak.
fn rails(plan: &Plan) -> Vec<Fact> {
    let rails = plan.handling.top.rails.iter();
    let said = rails.map(|rail| {
        let id = match rail.verdict {
            RailVerdict::Holds { .. } => "bench-rail-holds",
            RailVerdict::Brace { .. } => "bench-rail-brace",
            RailVerdict::TooWeak { .. } => "bench-rail-weak",
        };
        let splint = rail.splint.as_ref().map_or(Value::Nothing, |s| {
            value(
                "bench-splint",
                [
                    ("count", Value::Count(i64::from(s.count))),
                    ("wide", Value::size(s.timber_mm[0])),
                    ("high", Value::size(s.timber_mm[1])),
                    ("length", Value::size(s.length_mm).up()),
                ],
            )
        });
        Fact {
            name: say("bench-rail", [("what", name(&rail.name))]),
            value: value(
                id,
                [
                    ("width", Value::size(rail.width_mm).down()),
                    ("splint", splint),
                ],
            ),
        }
    });
    said.collect()
}

fn steps(cuts: &[&Cut]) -> Vec<Message> {
    let mut steps = Vec::new();
    if cuts.iter().any(|c| c.kind == CutKind::Core) {
        steps.push(plain("bench-opening-step-drill"));
    }
    if cuts.iter().any(|c| c.kind == CutKind::Straight) {
        steps.push(plain("bench-opening-step-saw"));
    }
    steps.push(plain("bench-opening-step-last"));
    steps
}
