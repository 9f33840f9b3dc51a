//! An opening on one page: its holes, cuts and rails in one drawing, the order to tick.

mod corner;
mod curves;

use crate::cut::{Because, Cut, CutKind, Offset, SetOut};
use crate::document::opening::corner::{ON_LINE_MM, taped};
use crate::geom::{Bounds, Point, Seg};
use crate::handle::rail::{Rail, RailVerdict};
use crate::piece::Piece;
use crate::plan::Plan;
use crate::units::Mass;
use crate::words::{Message, Value};

use super::block::{Block, Cell, Column, Fact, Table};
use super::figure::{Figure, Lettering, LineStyle, Side, Thing};
use super::mark::{self, Marked};
use super::say::{cell, name, names, plain, say, value};
use super::scene;
use super::straight::{depths, free, light};

/// More points of a cut than this are named by the first and the last.
const NAMED: usize = 3;
/// A piece no heavier is a sliver, kg; more of them than a few are told together (judgement).
const SLIVER_KG: f64 = 0.2;
const FEW_SLIVERS: usize = 1;
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
    let mut points = mark::all_points(cuts.iter().copied());
    points.retain(|point| !point.offsets.is_empty());
    let corners = corner::blocks(plan, cuts, &points);
    let rails = rails_of(plan, number);
    let drawn = figure(plan, number, cuts, &rails, corners.is_none());
    let mut blocks = vec![
        Block::Title(numbers, title),
        Block::Figure(Box::new(drawn)),
        Block::Table(table(cuts)),
    ];
    match corners {
        Some(corners) => blocks.extend(corners),
        None => blocks.extend(told(&points).map(Block::Table)),
    }
    blocks.extend(curves::tables(cuts));
    let kinds = [
        (CutKind::Straight, "bench-depths-straight"),
        (CutKind::Curve, "bench-depths-curve"),
    ];
    for (kind, id) in kinds {
        if let Some(cut) = cuts.iter().find(|c| c.kind == kind) {
            blocks.push(Block::Run(plain(id), depths(cut)));
        }
    }
    if !rails.is_empty() {
        blocks.push(Block::Facts(rails.iter().map(|r| rail(r)).collect()));
    }
    blocks.push(Block::Steps(steps(cuts)));
    let (pieces, slivers) = freed(plan, cuts);
    for piece in pieces {
        blocks.push(Block::Boxed(free(plan, piece)));
    }
    if let [first, .., last] = &slivers[..] {
        let most = slivers.iter().map(|p| p.mass.high.kg()).fold(0.0, f64::max);
        let named = format!("{}–{}", first.name, last.name);
        blocks.push(Block::Boxed(light(&named, Mass::from_kg(most))));
    }
    blocks
}

/// The pieces that come free, and apart from them the slivers between holes and cuts where there are many.
fn freed<'a>(plan: &'a Plan, cuts: &[&'a Cut]) -> (Vec<&'a Piece>, Vec<&'a Piece>) {
    let all = cuts.iter().flat_map(|c| scene::freed(plan, c));
    let sliver = |p: &&Piece| p.mass.high.kg() <= SLIVER_KG;
    let (slivers, pieces): (Vec<_>, Vec<_>) = all.partition(sliver);
    if slivers.len() > FEW_SLIVERS {
        return (pieces, slivers);
    }
    let all = cuts.iter().flat_map(|c| scene::freed(plan, c));
    (all.collect(), Vec::new())
}

/// The strips of stone beside an opening that are told.
fn rails_of(plan: &Plan, number: usize) -> Vec<&Rail> {
    let Some(opening) = number.checked_sub(1).and_then(|i| plan.top.openings.get(i)) else {
        return Vec::new();
    };
    let rails = plan.handling.top.rails.iter();
    rails
        .filter(|rail| rail.place.cutouts.contains(&opening.what))
        .collect()
}

/// The opening with its cuts and rails; the names of its points where nothing else shows them.
fn figure(plan: &Plan, number: usize, cuts: &[&Cut], rails: &[&Rail], named: bool) -> Figure {
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
            figure.add(Thing::Line(LineStyle::Thin, vec![Seg::Line(a, b)]));
        }
        let points = mark::points(cut).into_iter();
        for point in points.filter(|p| named || p.offsets.is_empty()) {
            figure.add(Thing::Pivot(point.at, point.name));
        }
        figure.extend(scene::stations(cut));
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
    for rail in rails {
        let [a, b] = rail.narrowest;
        figure.add(Thing::Line(LineStyle::Hidden, vec![Seg::Line(a, b)]));
        figure.add(Thing::Label(
            a.midpoint(b),
            Lettering::Number,
            Value::size(rail.width_mm).down(),
        ));
    }
    figure.extend(scene::waste_names(freed(plan, cuts).0));
    figure
}

fn table(cuts: &[&Cut]) -> Table {
    let columns = vec![
        Column::words(value("bench-relief-cut", []), 10),
        Column::words(value("bench-opening-what", []), 40),
        Column::words(value("bench-opening-marks", []), 42),
        Column::words(value("bench-opening-how", []), 82),
        Column::words(Value::Nothing, 8),
    ];
    let rows = cuts.iter().map(|cut| {
        vec![
            Cell::Value(cut.number.into()),
            cell(
                what(cut),
                [
                    ("length", Value::size(cut.length)),
                    ("bit", Value::bit(cut.tool.width_mm())),
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

/// Points in a row of their table, and in one of a long table, whose cells are shorter (judgement: a page holds the
/// drawing as well).
const ABREAST: usize = 2;
const ABREAST_OF_MANY: usize = 3;
/// More points than these are many.
const MANY: usize = 12;

/// Holes and stops, each by its distances from two struck lines; nothing when tapes find them.
fn told(points: &[Marked]) -> Option<Table> {
    let many = points.len() > MANY;
    let abreast = if many { ABREAST_OF_MANY } else { ABREAST };
    let columns = (0..abreast).flat_map(|_| {
        let [named, first, second] = if many { [16, 36, 38] } else { [23, 33, 34] };
        [
            Column::words(value("bench-mark-what", []), named),
            Column::words(value("bench-mark-off", []), first),
            Column::words(value("bench-mark-off", []), second),
        ]
    });
    let row = |some: &[Marked]| {
        let cells = some.iter().flat_map(|point| {
            let named = ("mark", name(&point.name));
            // The cut's own row says whether it is a hole or a stop.
            let what = if many { "bench-mark-named" } else { point.what };
            let mut cells = vec![cell(what, [named])];
            cells.extend(point.offsets.iter().map(|o| off(o, many)));
            cells
        });
        let mut cells: Vec<Cell> = cells.collect();
        cells.resize(3 * abreast, Cell::Empty);
        cells
    };
    (!points.is_empty()).then(|| Table {
        columns: columns.collect(),
        rows: points.chunks(abreast).map(row).collect(),
    })
}

/// A distance from a struck line into the waste.
fn off(offset: &Offset, many: bool) -> Cell {
    let line = ("cut", offset.cut.into());
    let [on, off] = if many {
        ["bench-mark-on-short", "bench-mark-off-short"]
    } else {
        ["bench-mark-on-line", "bench-mark-off-line"]
    };
    if offset.distance < ON_LINE_MM {
        return cell(on, [line]);
    }
    cell(off, [line, ("distance", taped(offset))])
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
            // The same disc stays as far short of both.
            let marks = set_out.stops.iter().zip(["s", "t"]);
            let marks = marks.map(|(_, letter)| Value::name(mark::mark_name(cut, letter)));
            let short = set_out.stops.first().map(|stop| stop.centre_short);
            short.map_or(Value::Nothing, |short| {
                let short = ("short", Value::tape(short).up());
                let marks = ("mark", Value::List(marks.collect()));
                value("bench-opening-stop", [marks, short])
            })
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

/// A strip of stone beside an opening: whether it holds, needs a splint or is too weak.
fn rail(rail: &Rail) -> Fact {
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
    let width = ("width", Value::size(rail.width_mm).down());
    Fact {
        name: say("bench-rail", [("what", name(&rail.name))]),
        value: value(id, [width, ("splint", splint)]),
    }
}

fn steps(cuts: &[&Cut]) -> Vec<Message> {
    let mut steps = Vec::new();
    if cuts.iter().any(|c| c.kind == CutKind::Core) {
        steps.push(plain("bench-opening-step-drill"));
    }
    if cuts.iter().any(|c| c.kind == CutKind::Straight) {
        let parted = cuts.iter().any(|c| c.because == Because::PartsUnderside);
        steps.push(plain(if parted {
            "bench-opening-step-saw-parted"
        } else {
            "bench-opening-step-saw"
        }));
    }
    steps.push(plain("bench-opening-step-last"));
    steps
}
