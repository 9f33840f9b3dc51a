//! The curves of an opening: where each station lies by tape, and how the disc is set there.

use crate::cut::{Cut, CutKind, SetOut};
use crate::document::block::{Block, Cell, Column, Table};
use crate::document::curve::{place_of, steps};
use crate::document::say::{say, value};
use crate::words::{Message, Value, Writer};

/// Stations of a lane that stands beside the words; more stand in two lanes beside each other, or in three.
const LANE: usize = 8;
const LONG_LANE: usize = 12;

/// A table of stations for each curve, beside it how they are found and the disc is set there; curves whose
/// figures are the same share one.
pub(super) fn tables(cuts: &[&Cut]) -> Vec<Block> {
    let mut told: Vec<String> = Vec::new();
    let mut blocks = Vec::new();
    for some in alike(cuts) {
        let mut ways = some.first().map_or_else(Vec::new, |cut| ways(cut).to_vec());
        ways.retain(|way| !told.contains(&Writer::default().say(way)));
        told.extend(ways.iter().map(|way| Writer::default().say(way)));
        blocks.push(Block::Heading(heading(&some)));
        blocks.extend(lanes(&some, ways));
    }
    blocks
}

/// How a curve's stations are found and the disc is set at them.
fn ways(cut: &Cut) -> [Message; 2] {
    [steps::stations(cut), steps::plunge(cut)]
}

/// The curves, those with the same printed figures together.
fn alike<'a>(cuts: &[&'a Cut]) -> Vec<Vec<&'a Cut>> {
    let mut groups: Vec<Vec<&Cut>> = Vec::new();
    for cut in cuts.iter().filter(|c| c.kind == CutKind::Curve) {
        let own = figures(cut);
        match groups.iter_mut().find(|some| figures(some[0]) == own) {
            Some(some) => some.push(cut),
            None => groups.push(vec![cut]),
        }
    }
    groups
}

/// A curve's figures as they are printed.
fn figures(cut: &Cut) -> Vec<String> {
    let writer = Writer::default();
    let cells = (0..count(cut)).flat_map(|i| place(cut, i));
    let places = cells.filter_map(|cell| match cell {
        Cell::Value(value) => Some(writer.write(&value)),
        Cell::Tick | Cell::Blank | Cell::Empty => None,
    });
    let said = ways(cut).map(|way| writer.say(&way));
    places.chain(said).collect()
}

/// Where a station lies: along the chord and off it into the waste, or straight from a struck mark.
fn place(cut: &Cut, i: usize) -> Vec<Cell> {
    match &cut.set_out {
        SetOut::Ordinates(o) if into_waste(cut) => o.marks.get(i).map_or_else(Vec::new, |m| {
            let [along, off] = [m.touch.along, -m.touch.off].map(Value::tape);
            vec![Cell::Value(along), Cell::Value(off.to_half(false))]
        }),
        _ => place_of(cut, i, false),
    }
}

/// Whether every station of a curve set out from its chord lies on the waste's side of it.
fn into_waste(cut: &Cut) -> bool {
    match &cut.set_out {
        SetOut::Ordinates(o) => {
            o.curve.inside.is_some() && o.marks.iter().all(|m| m.touch.off < 0.0)
        }
        _ => false,
    }
}

fn count(cut: &Cut) -> usize {
    cut.set_out.curve().map_or(0, |c| c.stations.len())
}

fn heading(cuts: &[&Cut]) -> Message {
    let numbers = cuts.iter().map(|c| Value::count(c.number)).collect();
    let chord = cuts.iter().any(|c| is_from_chord(c));
    let id = if chord {
        "bench-opening-stations-chord"
    } else {
        "bench-opening-stations-pivot"
    };
    say(id, [("cuts", Value::List(numbers))])
}

const fn is_from_chord(cut: &Cut) -> bool {
    matches!(cut.set_out, SetOut::Ordinates(_))
}

/// The stations in as few lanes as keep them short, the words beside a short one.
fn lanes(cuts: &[&Cut], ways: Vec<Message>) -> Vec<Block> {
    let stations = cuts.first().map_or(0, |c| count(c));
    let lane = |from, to| vec![Block::Table(table(cuts, from, to))];
    let words = (!ways.is_empty()).then_some(Block::Steps(ways));
    let (half, third) = (stations.div_ceil(2), stations.div_ceil(3));
    if stations <= LANE {
        let beside = Block::Beside(50, lane(0, stations), words.into_iter().collect());
        return vec![beside];
    }
    let lanes = if stations <= 2 * LONG_LANE {
        Block::Beside(50, lane(0, half), lane(half, stations))
    } else {
        let rest = Block::Beside(50, lane(third, 2 * third), lane(2 * third, stations));
        Block::Beside(32, lane(0, third), vec![rest])
    };
    std::iter::once(lanes).chain(words).collect()
}

/// Some of the stations, each with a box to tick for every cut that plunges there.
fn table(cuts: &[&Cut], from: usize, to: usize) -> Table {
    let mut columns = vec![Column::words(value("bench-station", []), 8)];
    if cuts.iter().any(|c| is_from_chord(c)) {
        columns.push(Column::figures(value("bench-station-along", []), 18));
        let off = if cuts.iter().all(|c| into_waste(c)) {
            "bench-station-off-waste"
        } else {
            "bench-station-off"
        };
        columns.push(Column::figures(value(off, []), 26));
    } else {
        columns.push(Column::words(value("bench-mark-tape-from", []), 30));
    }
    let numbers = cuts.iter().map(|c| Value::count(c.number));
    columns.extend(numbers.map(|number| Column::words(number, 8)));
    let row = |i: usize| {
        let mut row = vec![Cell::Value(Value::count(i + 1))];
        row.extend(cuts.first().map_or_else(Vec::new, |c| place(c, i)));
        let plunged = |cut: &&Cut| cut.set_out.curve().is_some_and(|c| c.stations[i].in_stone);
        let tick = |cut: &&Cut| {
            if plunged(cut) {
                Cell::Tick
            } else {
                Cell::Empty
            }
        };
        row.extend(cuts.iter().map(tick));
        row
    };
    Table {
        columns,
        rows: (from..to).map(row).collect(),
    }
}
