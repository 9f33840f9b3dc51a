//! The points of an opening, corner by corner: at each corner of two struck lines a drawing of its points
//! and their distances from the two.

use crate::cut::{Cut, Offset, SetOut};
use crate::document::block::{Block, Cell, Column, Table};
use crate::document::figure::{Figure, LineStyle, Thing};
use crate::document::mark::Marked;
use crate::document::say::{cell, name, plain, value};
use crate::document::scene;
use crate::geom::{Bounds, Line, Point, Seg};
use crate::plan::Plan;
use crate::words::Value;

/// From so many points at a corner on it is drawn.
const POINTS: usize = 3;
/// So many corners a page holds beside everything else.
const CORNERS: usize = 4;
/// Stone shown round a corner's points, mm.
const ROUND_MM: f64 = 4.0;
/// A line's number stands so far beyond the middle of the drawing, mm.
const NUMBER_MM: f64 = 12.0;
/// The part of a corner's width that is its drawing, per cent.
const DRAWN: u8 = 36;

/// The points at a corner of two struck lines, told by their cuts.
struct Corner<'a> {
    lines: [&'a Cut; 2],
    points: Vec<&'a Marked>,
}

/// The corners, two abreast; nothing where they hold few points or are too many for a page.
pub(super) fn blocks(plan: &Plan, cuts: &[&Cut], points: &[Marked]) -> Option<Vec<Block>> {
    let corners = corners(cuts, points);
    let told: usize = corners.iter().map(|c| c.points.len()).sum();
    let crowded = corners.iter().any(|c| c.points.len() >= POINTS);
    if !crowded || told < points.len() || corners.len() > CORNERS {
        return None;
    }
    let block = |corner: &Corner| {
        let figure = Block::Figure(Box::new(figure(plan, cuts, corner)));
        let table = Block::Table(table(corner));
        Block::Beside(DRAWN, vec![figure], vec![table])
    };
    let pairs = corners.chunks(2).map(|pair| {
        let side = |i: usize| pair.get(i).map(block).into_iter().collect();
        Block::Beside(50, side(0), side(1))
    });
    Some(pairs.collect())
}

/// The points by the two lines they are measured from, in the order of the points.
fn corners<'a>(cuts: &[&'a Cut], points: &'a [Marked]) -> Vec<Corner<'a>> {
    let mut corners: Vec<Corner<'_>> = Vec::new();
    for point in points {
        let [one, other] = &point.offsets[..] else {
            continue;
        };
        let of = |number: usize| cuts.iter().find(|c| c.number == number);
        let known = corners
            .iter_mut()
            .find(|c| [c.lines[0].number, c.lines[1].number] == [one.cut, other.cut]);
        match (known, of(one.cut), of(other.cut)) {
            (Some(known), ..) => known.points.push(point),
            (None, Some(one), Some(other)) => corners.push(Corner {
                lines: [one, other],
                points: vec![point],
            }),
            _ => {}
        }
    }
    corners
}

/// The line to keep of a straight cut.
fn line(cut: &Cut) -> Option<Line> {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return None;
    };
    Some(Line::through(set_out.face.start.at, set_out.face.end.at))
}

fn figure(plan: &Plan, cuts: &[&Cut], corner: &Corner<'_>) -> Figure {
    let lines = corner.lines.map(line);
    let met = match lines {
        [Some(one), Some(other)] => one.meet(&other),
        _ => None,
    };
    let near = corner.points.iter().map(|p| p.at).chain(met);
    let near = Bounds::around(near);
    let shown = scene::grown(near, ROUND_MM);
    let mut figure = Figure::new(plain("bench-opening-corner-alt"), shown);
    figure.clipped = true;
    figure.scaled = false;
    let first = cuts.iter().map(|c| c.number).min().unwrap_or(1);
    figure.extend(scene::stage(plan, first));
    for cut in cuts {
        if let SetOut::Centres(_) = cut.set_out {
            let rounds = cut.slots().into_iter().map(|hole| hole.segs().to_vec());
            figure.extend(rounds.map(|hole| Thing::Line(LineStyle::Solid, hole)));
        }
    }
    for (cut, line) in corner.lines.iter().zip(lines) {
        let Some(line) = line else { continue };
        let reach = shown.width() + shown.height();
        let middle = line.foot(near.centre());
        let ends = [middle - reach, middle + reach].map(|at| line.at(at));
        figure.add(Thing::Line(
            LineStyle::SetOut,
            vec![Seg::Line(ends[0], ends[1])],
        ));
        figure.add(ring(cut, line, near.centre(), met));
    }
    for point in &corner.points {
        figure.add(Thing::Mark(point.at, point.name.clone()));
    }
    figure
}

/// A line's number, on it where it has left the corner behind.
fn ring(cut: &Cut, line: Line, middle: Point, met: Option<Point>) -> Thing {
    let (foot, corner) = (line.foot(middle), met.map(|m| line.foot(m)));
    let away = corner.map_or(1.0, |c| (foot - c).signum());
    let at = line.at(foot + away * NUMBER_MM);
    Thing::Ring(at, (at - middle).unit(), cut.number)
}

fn table(corner: &Corner<'_>) -> Table {
    let off = |cut: &&Cut| value("bench-mark-off-that", [("cut", cut.number.into())]);
    let [one, other] = &corner.lines;
    let columns = vec![
        Column::words(value("bench-mark-what", []), 18),
        Column::words(off(one), 41),
        Column::words(off(other), 41),
    ];
    let row = |point: &&Marked| {
        let mut row = vec![Cell::Value(name(&point.name))];
        row.extend(point.offsets.iter().map(off_its_line));
        row
    };
    Table {
        columns,
        rows: corner.points.iter().map(row).collect(),
    }
}

/// The same in a column whose head names the line.
pub(super) fn off_its_line(offset: &Offset) -> Cell {
    if offset.distance < ON_LINE_MM {
        return cell("bench-mark-on-short", [("cut", offset.cut.into())]);
    }
    Cell::Value(taped(offset))
}

/// Nearer to a struck line than this a point is on it, mm: less than a tape shows.
pub(super) const ON_LINE_MM: f64 = 0.25;

/// Never rounded towards the kept stone.
pub(super) const fn taped(offset: &Offset) -> Value {
    Value::tape(offset.distance).to_half(false)
}
