//! Tables: a header row, pale stripes, wrapped cells; they may run over several columns or pages.

use super::flow::Column;
use super::item::{Anchor, Ink, Path, Stroke};
use super::pen::{MIDDLE_MM, NARROW_MM};
use super::wrap::{Style, wrap};
use crate::geom::{Bounds, Point};

/// From a cell's side to its text, mm.
const SIDE_MM: f64 = 2.2;
/// Above and below a cell's text, mm.
const ABOVE_MM: f64 = 0.7;

/// How wide a table's column is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Width {
    /// So many mm.
    Mm(f64),
    /// A part of what the fixed ones leave, in proportion to the others.
    Part(f64),
}

/// One column of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct Heading {
    /// Its title; a line feed begins a new line.
    pub title: String,
    /// Its width.
    pub width: Width,
    /// Where its text stands: start, middle or end (numbers).
    pub anchor: Anchor,
}

impl Heading {
    /// A column of words.
    #[must_use]
    pub fn words(title: impl Into<String>, width: Width) -> Self {
        Self::anchored(title, width, Anchor::Start)
    }

    /// A column of numbers, right-aligned.
    #[must_use]
    pub fn numbers(title: impl Into<String>, width: Width) -> Self {
        Self::anchored(title, width, Anchor::End)
    }

    fn anchored(title: impl Into<String>, width: Width, anchor: Anchor) -> Self {
        Self {
            title: title.into(),
            width,
            anchor,
        }
    }
}

/// A table. Rows shorter than the headings end in empty cells; cells beyond them are an author's
/// mistake and are joined to the last column.
#[derive(Clone, Debug, PartialEq)]
pub struct Table {
    /// The columns.
    pub headings: Vec<Heading>,
    /// The cells, row by row.
    pub rows: Vec<Vec<String>>,
    /// Style of the cells; the header row is the same in bold.
    pub style: Style,
}

/// How much of a table was placed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Placed {
    /// All of it.
    All,
    /// It goes on with this row, counted from 0, in another column or on another page.
    GoesOn(usize),
    /// This row is higher than the whole column.
    RowTooHigh(usize),
}

impl Table {
    /// Height of the whole table at a width, mm.
    #[must_use]
    pub fn height_mm(&self, width_mm: f64) -> f64 {
        let spans = self.spans(width_mm);
        let rows: f64 = self.rows.iter().map(|r| self.row_height(r, &spans)).sum();
        self.head_height(&spans) + rows + self.style.leading_mm / 2.0
    }

    /// Places the header row and as many rows from `first` on as fit.
    ///
    /// Places nothing when not even one row fits below the header.
    pub fn place(&self, first: usize, column: &mut Column) -> Placed {
        let spans = self.spans(column.width);
        let head = self.head_height(&spans);
        let mut room = column.left() - head;
        let mut last = first;
        for row in self.rows.iter().skip(first) {
            room -= self.row_height(row, &spans);
            if room < 0.0 {
                break;
            }
            last += 1;
        }
        if last == first && first < self.rows.len() {
            return if column.is_fresh() {
                Placed::RowTooHigh(first)
            } else {
                Placed::GoesOn(first)
            };
        }
        self.draw(first..last, &spans, column);
        if last < self.rows.len() {
            Placed::GoesOn(last)
        } else {
            Placed::All
        }
    }

    fn draw(&self, rows: std::ops::Range<usize>, spans: &[(f64, f64)], column: &mut Column) {
        let titles: Vec<String> = self.headings.iter().map(|h| h.title.clone()).collect();
        self.draw_row(&titles, &self.style.bold(), spans, column);
        rule(column, MIDDLE_MM);
        let shown = self.rows.get(rows).unwrap_or_default();
        for (i, row) in shown.iter().enumerate() {
            if i % 2 == 1 {
                let high = Point::new(column.x + column.width, column.y);
                let low = Point::new(column.x, column.y - self.row_height(row, spans));
                let stripe = Bounds {
                    min: low,
                    max: high,
                };
                let fill = Path::frame(stripe, None, Some(Ink::Pale));
                column.items.push(fill.into());
            }
            self.draw_row(row, &self.style, spans, column);
        }
        rule(column, NARROW_MM);
        column.y -= self.style.leading_mm / 2.0;
    }

    fn draw_row(&self, row: &[String], style: &Style, spans: &[(f64, f64)], column: &mut Column) {
        let cells = self.cells(row);
        for ((cell, heading), (from, to)) in cells.iter().zip(&self.headings).zip(spans) {
            let x = column.x
                + match heading.anchor {
                    Anchor::Start => from + SIDE_MM,
                    Anchor::Middle => f64::midpoint(*from, *to),
                    Anchor::End => to - SIDE_MM,
                };
            let mut y = column.y - ABOVE_MM - style.base_mm();
            for line in wrap(cell, style, to - from - 2.0 * SIDE_MM) {
                let text = style.text(line, Point::new(x, y), heading.anchor);
                if !text.content.is_empty() {
                    column.items.push(text.into());
                }
                y -= style.leading_mm;
            }
        }
        column.y -= self.height_in(row, style, spans);
    }

    /// The cells of a row, one for each heading.
    fn cells(&self, row: &[String]) -> Vec<String> {
        let n = self.headings.len();
        let mut cells: Vec<String> = row.iter().take(n).cloned().collect();
        cells.resize(n, String::new());
        if let Some(last) = cells.last_mut() {
            for extra in row.iter().skip(n) {
                last.push(' ');
                last.push_str(extra);
            }
        }
        cells
    }

    fn head_height(&self, spans: &[(f64, f64)]) -> f64 {
        let titles: Vec<String> = self.headings.iter().map(|h| h.title.clone()).collect();
        self.height_in(&titles, &self.style.bold(), spans)
    }

    fn row_height(&self, row: &[String], spans: &[(f64, f64)]) -> f64 {
        self.height_in(row, &self.style, spans)
    }

    fn height_in(&self, row: &[String], style: &Style, spans: &[(f64, f64)]) -> f64 {
        let cells = self.cells(row);
        let heights = cells.iter().zip(spans).map(|(cell, (from, to))| {
            let lines = wrap(cell, style, to - from - 2.0 * SIDE_MM).len();
            #[allow(clippy::cast_precision_loss)]
            let lines = lines as f64;
            lines * style.leading_mm
        });
        heights.fold(style.leading_mm, f64::max) + 2.0 * ABOVE_MM
    }

    /// From where to where each column runs, mm from the table's left edge.
    fn spans(&self, width_mm: f64) -> Vec<(f64, f64)> {
        let (mut fixed, mut parts) = (0.0, 0.0);
        for heading in &self.headings {
            match heading.width {
                Width::Mm(mm) => fixed += mm,
                Width::Part(part) => parts += part,
            }
        }
        let mut from = 0.0;
        let span = |heading: &Heading| {
            let to = from
                + match heading.width {
                    Width::Mm(mm) => mm,
                    Width::Part(part) => (width_mm - fixed) * part / parts,
                };
            (std::mem::replace(&mut from, to), to)
        };
        self.headings.iter().map(span).collect()
    }
}

fn rule(column: &mut Column, width_mm: f64) {
    let left = Point::new(column.x, column.y);
    let right = Point::new(column.x + column.width, column.y);
    let line = Path::line(left, right, Stroke::solid(width_mm, Ink::Black));
    column.items.push(line.into());
}
