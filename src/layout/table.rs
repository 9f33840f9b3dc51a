//! Tables.

use super::item::{Anchor, Ink, Item, Path, PenStroke, Tag};
use super::pen::{MIDDLE_MM, NARROW_MM};
use super::setter::Setter;
use super::voice::Voice;
use super::words::{Set, tick_box};
use crate::document::block::{Cell, Column, Table};
use crate::geom::Point;

/// Space left and right inside a cell, mm.
const SIDE_MM: f64 = 1.0;
/// Space above and below the words of a row, mm.
const ABOVE_MM: f64 = 0.35;
/// Side of a box to tick, mm.
const BOX_MM: f64 = 3.6;

impl Setter {
    /// Height of a table at a width, mm.
    pub(super) fn table_height(&self, table: &Table, width: f64) -> f64 {
        self.table(table, Point::ORIGIN, width).1
    }

    /// A table from its top left corner, and its height.
    pub(super) fn table(&self, table: &Table, top: Point, width: f64) -> Set {
        let spans = spans(&table.columns, width);
        let mut items = vec![Item::Begin(Tag::Table)];
        let head = self.kind.small.bold();
        let titles = table.columns.iter().map(|c| Cell::Value(c.title.clone()));
        let titles: Vec<Cell> = titles.collect();
        let (row, mut down) = self.row(&titles, &table.columns, &spans, top, head, &Tag::Head);
        items.extend(row);
        items.push(rule(top, width, down, MIDDLE_MM));
        for cells in &table.rows {
            let at = Point::new(top.x, top.y - down);
            let body = self.kind.body;
            let (row, height) = self.row(cells, &table.columns, &spans, at, body, &Tag::Cell);
            items.extend(row);
            down += height;
            items.push(rule(top, width, down, NARROW_MM * 0.6));
        }
        items.push(Item::End);
        (items, down + 0.5)
    }

    fn row(
        &self,
        cells: &[Cell],
        columns: &[Column],
        spans: &[(f64, f64)],
        top: Point,
        voice: Voice,
        tag: &Tag,
    ) -> Set {
        let mut items = vec![Item::Begin(Tag::Row)];
        let mut tallest = voice.words.leading_mm;
        for ((cell, column), (from, to)) in cells.iter().zip(columns).zip(spans) {
            items.push(Item::Begin(tag.clone()));
            let middle = top.x + f64::midpoint(*from, *to);
            match cell {
                Cell::Value(value) => {
                    let text = self.writer.write(value);
                    let (x, anchor) = if column.figures {
                        (top.x + to - SIDE_MM, Anchor::End)
                    } else {
                        (top.x + from + SIDE_MM, Anchor::Start)
                    };
                    let at = Point::new(x, top.y - ABOVE_MM);
                    let wide = to - from - 2.0 * SIDE_MM;
                    let (set, height) = voice.set(&text, at, wide, anchor);
                    items.extend(set);
                    tallest = tallest.max(height);
                }
                Cell::Tick => {
                    let low = top.y - ABOVE_MM - voice.words.leading_mm / 2.0 - BOX_MM / 2.0;
                    items.extend(tick_box(Point::new(middle - BOX_MM / 2.0, low), false));
                    tallest = tallest.max(BOX_MM + 0.4);
                }
                Cell::Blank | Cell::Empty => {}
            }
            items.push(Item::End);
        }
        items.push(Item::End);
        (items, tallest + 2.0 * ABOVE_MM)
    }
}

/// From where to where each column runs, mm from the table's left edge.
fn spans(columns: &[Column], width: f64) -> Vec<(f64, f64)> {
    let parts: f64 = columns.iter().map(|c| f64::from(c.width)).sum();
    let mut from = 0.0;
    let span = |column: &Column| {
        let to = from + width * f64::from(column.width) / parts.max(1.0);
        (std::mem::replace(&mut from, to), to)
    };
    columns.iter().map(span).collect()
}

fn rule(top: Point, width: f64, down: f64, thick: f64) -> Item {
    let left = Point::new(top.x, top.y - down);
    let right = Point::new(top.x + width, top.y - down);
    Path::line(left, right, PenStroke::solid(thick, Ink::Black)).into()
}
