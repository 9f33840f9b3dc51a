//! A curve on one page: the drawing beside the table of its stations, the pivot or the chord, the rings
//! to tick, the ridges to take down.

pub(super) mod steps;

use super::block::{Block, Cell, Column, Fact, Table};
use super::figure::{Figure, Lettering, LineStyle, Thing};
use super::mark;
use super::relief::relief_row;
use super::say::{cell, names, plain, say, value};
use super::scene;
use super::straight::free;
use crate::cut::{CurveSetOut, Cut, PivotPlace, SetOut};
use crate::geom::{Bounds, Point, Seg};
use crate::piece::Piece;
use crate::plan::Plan;
use crate::words::{Message, Value};

/// Up to so many stations are a small curve (judgement): its drawing goes right across the page, so that they can be
/// told apart.
const FEW: usize = 12;
/// Stations that stand beside the drawing; more stand below it in lanes (judgement: what a page holds).
const BESIDE: usize = 32;
/// Stations in a lane below the drawing.
const LANE: usize = 20;
/// From so many depths on their columns take more than half of the page.
const WIDE_FROM: usize = 5;
/// Half the length of the jig's mark as it is drawn, mm.
const ARM_MARK_MM: f64 = 12.0;
/// Waste so near to a station's slot is parted by it, mm.
const BESIDE_MM: f64 = 1.0;
/// How much of the slab is shown round the stations: half of what they take, within these, mm (judgement).
const ROUND_MM: [f64; 2] = [30.0, 140.0];

/// The page's blocks.
pub(super) fn blocks(plan: &Plan, cuts: &[&Cut], relief: &[&Cut]) -> Vec<Block> {
    let numbers = relief.iter().chain(cuts).map(|c| c.number).collect();
    let mut blocks = vec![Block::Title(numbers, title(cuts))];
    let figure = Block::Figure(Box::new(figure(plan, cuts)));
    let mut words = vec![Block::Facts(facts(cuts))];
    let mut how = vec![
        Block::Heading(plain("bench-curve-how")),
        Block::Steps(steps::steps(plan, cuts)),
        Block::Text(plain("bench-curve-template")),
    ];
    let all = relief.iter().chain(cuts);
    let freed = all.flat_map(|c| freed(plan, cuts, c));
    let stations: usize = cuts.iter().map(|c| count(c)).sum();
    if !relief.is_empty() {
        blocks.push(Block::Boxed(plain("bench-relief-first")));
        blocks.push(Block::Table(reliefs(relief)));
    }
    if stations <= FEW {
        let mut under = vec![Block::Table(table(cuts, 0, usize::MAX, true))];
        under.extend(words.into_iter().chain(freed));
        blocks.push(figure);
        blocks.push(Block::Beside(50, under, how));
    } else if stations <= BESIDE {
        let wide = cuts.iter().any(|c| c.passes.len() > WIDE_FROM);
        let mut left = vec![figure];
        left.extend(words.into_iter().chain(how).chain(freed));
        let table = vec![Block::Table(table(cuts, 0, usize::MAX, true))];
        blocks.push(Block::Beside(if wide { 40 } else { 50 }, left, table));
    } else {
        for (i, piece) in freed.enumerate() {
            // The steps are longer than the facts by about three frames.
            let column = if i < 3 || i % 2 == 0 {
                &mut words
            } else {
                &mut how
            };
            column.push(piece);
        }
        blocks.push(figure);
        blocks.push(Block::Beside(50, words, how));
        blocks.push(lanes(cuts, stations));
    }
    blocks
}

/// The stations in two or three lanes, one box to tick for each: the depths stand in the steps.
fn lanes(cuts: &[&Cut], stations: usize) -> Block {
    let lane = |from, to| vec![Block::Table(table(cuts, from, to, false))];
    if stations <= 2 * LANE {
        let half = stations.div_ceil(2);
        return Block::Beside(50, lane(0, half), lane(half, stations));
    }
    let third = stations.div_ceil(3);
    let rest = Block::Beside(50, lane(third, 2 * third), lane(2 * third, stations));
    Block::Beside(32, lane(0, third), vec![rest])
}

fn count(cut: &Cut) -> usize {
    cut.set_out.curve().map_or(0, |c| c.stations.len())
}

fn title(cuts: &[&Cut]) -> Message {
    say(
        "bench-curve-title",
        [
            ("corners", names(cuts.iter().map(|c| c.edge.as_str()))),
            ("count", Value::count(cuts.iter().map(|c| plunges(c)).sum())),
            (
                "depths",
                Value::count(cuts.first().map_or(0, |c| c.passes.len())),
            ),
        ],
    )
}

fn plunges(cut: &Cut) -> usize {
    let stations = cut.set_out.curve().map(|c| c.stations.iter());
    stations.map_or(0, |s| s.filter(|s| s.in_stone).count())
}

/// The stations of all arcs in one run, with their cut and their place in it.
fn stations<'a>(cuts: &[&'a Cut]) -> Vec<(usize, &'a Cut, usize)> {
    let each = cuts
        .iter()
        .flat_map(|c| (0..count(c)).map(move |i| (*c, i)));
    each.enumerate().map(|(n, (c, i))| (n + 1, c, i)).collect()
}

fn figure(plan: &Plan, cuts: &[&Cut]) -> Figure {
    let curves: Vec<&CurveSetOut> = cuts.iter().filter_map(|c| c.set_out.curve()).collect();
    let touches = curves
        .iter()
        .flat_map(|c| c.stations.iter().map(|s| s.touch));
    let points = cuts.iter().flat_map(|c| mark::points(c)).map(|m| m.at);
    let beside = off_stone(cuts).map(|(_, at, _)| at);
    let arm = arm(cuts);
    let near = Bounds::around(touches.chain(points).chain(beside));
    let [least, most] = ROUND_MM;
    let round = (near.width().max(near.height()) / 2.0).clamp(least, most);
    let near = arm.map_or(near, |((_, end), _)| near.joined(Bounds::around([end])));
    let shown = scene::grown(near, round);
    let mut figure = Figure::new(
        plain("bench-curve-alt"),
        within(shown, scene::grown(scene::slab_bounds(plan), 40.0)),
    );
    figure.clipped = true;
    let first = cuts.iter().map(|c| c.number).min().unwrap_or(1);
    figure.extend(scene::stage(plan, first));
    for cut in cuts {
        figure.extend(scene::kerf(cut));
    }
    let strokes = stations(cuts).into_iter().filter_map(|(_, cut, i)| {
        let curve = cut.set_out.curve()?;
        let touch = curve.stations[i].touch;
        Some((touch, (curve.pivot - touch).unit()))
    });
    figure.add(Thing::Stations(strokes.collect()));
    for point in mark::all_points(cuts.iter().copied()) {
        figure.add(Thing::Pivot(point.at, point.name));
    }
    figure.extend(cuts.iter().flat_map(|c| scene::stations(c)));
    figure.extend(off_stone(cuts).map(|(cut, at, _)| Thing::Pivot(at, mark::mark_name(cut, "p"))));
    figure.extend(scene::top_corners(plan, |name| {
        let own = cuts.iter().flat_map(|c| c.edge.split([',', '-', ' ']));
        own.into_iter().any(|n| n == name)
    }));
    if let Some((at, arm)) = arm {
        let across = (at.1 - at.0).unit().left() * ARM_MARK_MM;
        let end = Seg::Line(at.1 - across, at.1 + across);
        figure.add(Thing::Line(LineStyle::SetOut, vec![Seg::Line(at.0, at.1)]));
        figure.add(Thing::Line(LineStyle::Solid, vec![end]));
        figure.add(Thing::Label(
            at.1,
            Lettering::Number,
            value("bench-arm", [("length", Value::tape(arm))]),
        ));
    }
    let freed: Vec<_> = cuts.iter().flat_map(|c| scene::freed(plan, c)).collect();
    figure.extend(scene::waste_names(freed));
    figure
}

fn within(a: Bounds, b: Bounds) -> Bounds {
    Bounds {
        min: Point::new(a.min.x.max(b.min.x), a.min.y.max(b.min.y)),
        max: Point::new(a.max.x.min(b.max.x), a.max.y.min(b.max.y)),
    }
}

/// The line to keep about a pivot; inside a hollow arc the stations lie on another.
fn line_to_keep(cut: &Cut, curve: &CurveSetOut) -> Value {
    let radius = ("radius", mark::swung(curve, curve.sawn_radius));
    let left = ("left", Value::fine(cut.allowance));
    match curve.inside {
        Some(hollow) => {
            let stations = ("stations", mark::swung(curve, hollow.face_at));
            value("bench-curve-line-inside", [radius, left, stations])
        }
        None => value("bench-curve-line", [radius, left]),
    }
}

/// A pivot that lies off the stone when the curve is cut: its cut, its place, and its distance from the
/// stations, mm.
fn off_stone<'a>(cuts: &[&'a Cut]) -> impl Iterator<Item = (&'a Cut, Point, f64)> {
    cuts.first()
        .into_iter()
        .filter_map(|cut| match &cut.set_out {
            SetOut::Pivot(c) if c.pivot_on == PivotPlace::Off => {
                let station = c.stations.first()?;
                Some((*cut, c.pivot, c.pivot.distance(station.touch)))
            }
            _ => None,
        })
}

/// How such a pivot is found from the struck stations.
fn swing(cut: &Cut, mm: f64) -> Fact {
    let gaps = [
        ("mark", Value::name(mark::mark_name(cut, "p"))),
        ("radius", Value::tape(mm)),
        (
            "points",
            names(mark::stations(cut).iter().map(|(named, _)| named.as_str())),
        ),
    ];
    Fact::new("bench-fact-swing", value("bench-curve-swing", gaps))
}

/// The arm at the middle station of a swung curve: from the pivot outwards, and its length.
fn arm(cuts: &[&Cut]) -> Option<((Point, Point), f64)> {
    let SetOut::Pivot(curve) = &cuts.first()?.set_out else {
        return None;
    };
    // Not at a station with a number.
    let middle = curve.stations.len() / 2;
    let station = curve.stations.get(middle / 5 * 5 + 2)?;
    let way = (station.touch - curve.pivot).unit();
    Some(((curve.pivot, curve.pivot + way * curve.arm), curve.arm))
}

fn facts(cuts: &[&Cut]) -> Vec<Fact> {
    let mut facts = Vec::new();
    let Some(first) = cuts.first() else {
        return facts;
    };
    match &first.set_out {
        SetOut::Pivot(curve) => {
            facts.push(Fact::new("bench-fact-pivot", struck(cuts)));
            facts.extend(off_stone(cuts).map(|(cut, _, mm)| swing(cut, mm)));
            facts.push(Fact::new(
                "bench-fact-stands",
                value(stands_on(curve.pivot_on), []),
            ));
            facts.push(Fact::new("bench-fact-line", line_to_keep(first, curve)));
        }
        SetOut::Ordinates(o) => {
            facts.push(Fact::new("bench-fact-chord", struck(&[*first])));
            facts.push(Fact::new(
                "bench-fact-line",
                value(
                    "bench-curve-rise",
                    [
                        ("chord", Value::tape(o.chord_length)),
                        ("rise", mark::swung(&o.curve, o.rise)),
                    ],
                ),
            ));
        }
        SetOut::Guide(_) | SetOut::Centres(_) => {}
    }
    facts
}

/// Points that were struck on the whole slab: their corners may have gone with the waste.
fn struck(cuts: &[&Cut]) -> Value {
    let points = mark::all_points(cuts.iter().copied()).into_iter();
    let stations = cuts.iter().flat_map(|c| mark::stations(c));
    let all: Vec<String> = points
        .map(|p| p.name)
        .chain(stations.map(|(named, _)| named))
        .collect();
    let points = names(all.iter().map(String::as_str));
    value("bench-curve-struck", [("points", points)])
}

const fn stands_on(place: PivotPlace) -> &'static str {
    match place {
        PivotPlace::Top => "bench-pivot-top",
        PivotPlace::Cutout => "bench-pivot-cutout",
        PivotPlace::Waste => "bench-pivot-waste",
        PivotPlace::Off => "bench-pivot-off",
    }
}

/// What a curve frees, and at which station of the last depth: the last that touches it.
fn freed(plan: &Plan, cuts: &[&Cut], cut: &Cut) -> Vec<Block> {
    let heavy = |p: &Piece| p.mass.high.kg() > plan.kit.waste_piece.kg();
    let told = scene::freed(plan, cut).map(|piece| {
        // The slots beside it stand out over a station's own by half a slot's rise over the arc.
        let beside = |c: &CurveSetOut, touch: Point| {
            let segs = piece.outline.iter().flatten();
            let off = segs.map(|s| s.distance(touch)).fold(f64::MAX, f64::min);
            let rise = c.slot_half * c.slot_half / (2.0 * c.sawn_radius);
            off < cut.tool.width_mm() + rise + BESIDE_MM
        };
        let last = stations(cuts).into_iter().rev().find(|(_, own, i)| {
            let curve = own.set_out.curve().filter(|_| own.number == cut.number);
            curve.is_some_and(|c| c.stations[*i].in_stone && beside(c, c.stations[*i].touch))
        });
        match last {
            Some((number, ..)) if !heavy(piece) => say(
                "bench-free-station",
                [
                    ("name", Value::name(&piece.name)),
                    ("station", Value::count(number)),
                    ("mass", Value::mass(piece.mass.high).up()),
                ],
            ),
            _ => free(plan, piece),
        }
    });
    told.map(Block::Boxed).collect()
}

fn reliefs(relief: &[&Cut]) -> Table {
    Table {
        columns: vec![
            Column::words(value("bench-relief-cut", []), 10),
            Column::words(value("bench-relief-guide", []), 30),
            Column::figures(value("bench-relief-length", []), 25),
            Column::figures(value("bench-depth", []), 25),
            Column::words(Value::Nothing, 10),
        ],
        rows: relief.iter().map(|c| relief_row(c)).collect(),
    }
}

/// The stations from one to another, counted over all arcs.
fn table(cuts: &[&Cut], from: usize, to: usize, every_depth: bool) -> Table {
    let all = stations(cuts);
    let ordinates = cuts
        .iter()
        .any(|c| matches!(c.set_out, SetOut::Ordinates(_)));
    let passes = cuts.first().map_or(&[][..], |c| &c.passes[..]);
    let mut columns = vec![Column::words(value("bench-station", []), 8)];
    if ordinates {
        columns.push(Column::figures(value("bench-station-along", []), 18));
        columns.push(Column::figures(value("bench-station-off", []), 19));
    } else {
        let beside = u8::try_from(passes.len()).unwrap_or(u8::MAX / 8);
        columns.push(Column::words(
            value("bench-mark-tape-from", []),
            21 + beside,
        ));
    }
    let depths = passes.iter().filter(|_| every_depth);
    columns.extend(depths.map(|p| Column::words(Value::tape(p.depth).up(), 12)));
    if !every_depth {
        columns.push(Column::words(Value::Nothing, 6));
    }
    let shown = all.into_iter().skip(from).take(to.saturating_sub(from));
    let rows = shown.map(|(number, cut, i)| {
        let mut row = vec![Cell::Value(Value::count(number))];
        row.extend(place_of(cut, i, ordinates));
        let in_stone = cut.set_out.curve().is_some_and(|c| c.stations[i].in_stone);
        // A dash where no stone stands: nothing has been forgotten there.
        let dash = || Cell::Value(Value::name("–"));
        let tick = || if in_stone { Cell::Tick } else { dash() };
        let boxes = if every_depth { passes.len() } else { 1 };
        row.extend((0..boxes).map(|_| tick()));
        row
    });
    Table {
        columns,
        rows: rows.collect(),
    }
}

/// How a station is found.
pub(super) fn place_of(cut: &Cut, i: usize, ordinates: bool) -> Vec<Cell> {
    if let SetOut::Ordinates(o) = &cut.set_out {
        let Some(touch) = o.marks.get(i).map(|m| m.touch) else {
            return vec![Cell::Empty, Cell::Empty];
        };
        let off = mark::swung(&o.curve, touch.off);
        return vec![Cell::Value(Value::tape(touch.along)), Cell::Value(off)];
    }
    let place = cut
        .set_out
        .curve()
        .map_or(Cell::Empty, |c| taped(cut, c, i));
    if ordinates {
        vec![place, Cell::Empty]
    } else {
        vec![place]
    }
}

/// The struck station that a station is taped from, and how far; of a struck one its own name.
fn taped(cut: &Cut, curve: &CurveSetOut, i: usize) -> Cell {
    let station = &curve.stations[i];
    let struck = mark::stations(cut).into_iter();
    let mark = { struck }
        .find(|(_, s)| s.station == station.taped_from)
        .map_or(Value::Nothing, |(named, _)| Value::name(named));
    if station.taped_from == station.number {
        return Cell::Value(mark);
    }
    let gaps = [("corner", mark), ("distance", Value::tape(station.taped))];
    cell("bench-tape", gaps)
}
