//! What surrounds the lines of a tile: the frame, its name, the bars to measure, the crosses.

use super::tile::{EDGE_MM, OVERLAP_MM, STRIP_MM, Tile, Tiled, WantedSheets, corner, plain};
use crate::geom::{Point, Seg, Vector};
use crate::layout::item::{Anchor, Ink, Item, Path, PenStroke, Tag, Text, Typeface};
use crate::layout::page::shortened;
use crate::layout::pen::{MIDDLE_MM, NARROW_MM};
use crate::layout::wrap::{Style, wrap};
use crate::words::{Message, Unit, Value};

/// Length of a bar to measure, mm.
pub(super) const BAR_MM: f64 = 100.0;
/// Half the length of the strokes at its ends, mm.
const END_MM: f64 = 1.5;
/// Half the length of a cross's strokes, mm.
const CROSS_MM: f64 = 4.0;

const NAME: Style = Style::new(Typeface::Bold, 16.0, 7.0);
const WORDS: Style = Style::new(Typeface::Regular, 9.0, 4.0);

/// Frame, name and bars.
pub(super) fn items(
    tiled: &Tiled,
    tile: &Tile,
    title: &str,
    wanted: &WantedSheets<'_>,
) -> Vec<Item> {
    let frame = tile.frame;
    let thin = PenStroke::solid(NARROW_MM, Ink::Grey);
    let mut items: Vec<Item> = vec![Path::frame(frame, Some(thin), None).into()];
    let left = frame.min.x;
    let top = EDGE_MM + STRIP_MM.1;
    items.push(Item::Begin(Tag::Title));
    let name = NAME.text(&tile.name, Point::new(left, top - 6.0), Anchor::Start);
    let beside = left + name.width_mm() + 3.0;
    items.push(name.into());
    let of = Message::new(
        "template-tile",
        [
            ("count", Value::count(tiled.tiles.len())),
            ("part", Value::name(title)),
            ("job", Value::name(wanted.job)),
            ("plan", Value::name(wanted.plan)),
        ],
    );
    let of = shortened(&wanted.writer.say(&of), &WORDS, frame.max.x - beside);
    items.push(
        WORDS
            .text(of, Point::new(beside, top - 6.0), Anchor::Start)
            .into(),
    );
    items.push(Item::End);
    items.push(Item::Begin(Tag::Paragraph));
    let measure = plain(wanted.writer, "template-measure");
    let lines = wrap(&measure, &WORDS.bold(), frame.width());
    for (line, y) in lines.into_iter().zip([top - 11.5, top - 15.5]) {
        let at = Point::new(left, y);
        items.push(WORDS.bold().text(line, at, Anchor::Start).into());
    }
    items.extend(bars(tile, wanted));
    items.push(Item::End);
    items
}

/// A level and an upright bar, and by how much the print is scaled.
fn bars(tile: &Tile, wanted: &WantedSheets<'_>) -> Vec<Item> {
    let level = Point::new(tile.frame.min.x, EDGE_MM + 3.0);
    let upright = Point::new(EDGE_MM + 3.5, tile.frame.min.y);
    let across = Vector::new(1.0, 0.0);
    let mut items = bar(level, across);
    items.extend(bar(upright, across.left()));
    let length = wanted.writer.write(&Value::of(BAR_MM, Unit::Number)) + "\u{a0}mm";
    let beside = Point::new(level.x + BAR_MM + 3.0, level.y - 1.0);
    let scaled = wanted.measured.map(|m| {
        let [across, up] = m.map(|bar| Value::number(BAR_MM / bar, 4));
        let message = Message::new("template-scaled", [("across", across), ("up", up)]);
        format!(" · {}", wanted.writer.say(&message))
    });
    let words = length.clone() + &scaled.unwrap_or_default();
    let words = shortened(&words, &WORDS, tile.frame.max.x - beside.x);
    items.push(WORDS.text(words, beside, Anchor::Start).into());
    let above = Point::new(upright.x + 1.0, upright.y + BAR_MM + 3.0);
    items.push(Text::upwards(WORDS.text(length, above, Anchor::Start)).into());
    items
}

fn bar(from: Point, along: Vector) -> Vec<Item> {
    let stroke = PenStroke::solid(MIDDLE_MM, Ink::Black);
    let to = from + along * BAR_MM;
    let end = along.left() * END_MM;
    let runs = [(from, to), (from - end, from + end), (to - end, to + end)];
    let runs = runs.map(|(a, b)| vec![Seg::Line(a, b)]).to_vec();
    vec![Path::open(runs, stroke).into()]
}

/// The crosses that a tile shares with its neighbours, and the neighbours' names.
pub(super) fn crosses(tiled: &Tiled, tile: &Tile, pitch: (f64, f64)) -> Vec<Item> {
    let (column, row) = tile.cell;
    let near = tiled.tiles.iter();
    let near = near.filter(|t| t.cell.0.abs_diff(column) + t.cell.1.abs_diff(row) == 1);
    near.flat_map(|other| {
        let shift = corner(other.cell, pitch) - corner(tile.cell, pitch);
        seam(tile, other, shift, pitch)
    })
    .collect()
}

/// Two crosses on the seam to a neighbour that lies `shift` away, and its name between them.
fn seam(tile: &Tile, other: &Tile, shift: Vector, pitch: (f64, f64)) -> Vec<Item> {
    let middle = tile.frame.centre() + shift * 0.5;
    let along = shift.unit().left() * if shift.x == 0.0 { pitch.0 } else { pitch.1 };
    let stroke = PenStroke::solid(NARROW_MM, Ink::Black);
    let cross = |at: Point| {
        let arms = [Vector::new(CROSS_MM, 0.0), Vector::new(0.0, CROSS_MM)];
        let runs = arms.map(|arm| vec![Seg::Line(at - arm, at + arm)]).to_vec();
        Item::from(Path::open(runs, stroke))
    };
    let inwards = shift.unit() * -(OVERLAP_MM / 2.0);
    let at = middle + inwards - Vector::new(0.0, 1.2);
    let name = WORDS.inked(Ink::Grey).text(&other.name, at, Anchor::Middle);
    vec![
        cross(middle + along * 0.25),
        cross(middle - along * 0.25),
        name.into(),
    ]
}
