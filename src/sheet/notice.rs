//! Boxed notices: a stop, thick and black, and a caution, thin.

use super::flow::{Column, Grade, Scale};
use super::item::{Anchor, Ink, Item, Path, Stroke};
use super::pen::MIDDLE_MM;
use super::typeface::cap_height_mm;
use super::wrap::{Style, wrap};
use crate::geom::{Bounds, Point};

/// Border of a stop, mm: to be seen from across the shop.
const STOP_BORDER_MM: f64 = 1.2;
/// From border to text, mm.
const PADDING_MM: f64 = 3.2;
/// Around the word in its panel, mm.
const PANEL_MM: f64 = 1.6;

/// Places a notice across a column: its word and title on one line, its lines below.
pub(super) fn place(column: &mut Column, grade: Grade, title: &str, lines: &[String]) {
    let border = match grade {
        Grade::Stop => STOP_BORDER_MM,
        Grade::Caution => MIDDLE_MM,
    };
    let inset = border + PADDING_MM;
    let head = heading_style(&column.scale);
    let mut inner = Column {
        x: column.x + inset,
        width: column.width - 2.0 * inset,
        y: column.y - inset,
        items: vec![],
        ..*column
    };
    let word_end = word(&mut inner, grade, &head);
    set_lines(&mut inner, title, &head, word_end);
    if !lines.is_empty() {
        inner.y -= inner.scale.body.leading_mm / 4.0;
    }
    let body = inner.scale.body;
    for line in lines {
        set_lines(&mut inner, line, &body, 0.0);
    }
    let foot = inner.y - inset;
    column.items.push(edge(column, foot, border));
    column.items.append(&mut inner.items);
    column.y = foot - column.scale.body.leading_mm / 2.0;
}

fn heading_style(scale: &Scale) -> Style {
    Style {
        ink: Ink::Black,
        leading_mm: scale.subheading.leading_mm + PANEL_MM,
        ..scale.subheading
    }
}

/// The border, its outer edge on the column's edge.
fn edge(column: &Column, foot: f64, border: f64) -> Item {
    let half = border / 2.0;
    let area = Bounds {
        min: Point::new(column.x + half, foot + half),
        max: Point::new(column.x + column.width - half, column.y - half),
    };
    Path::frame(area, Some(Stroke::solid(border, Ink::Black)), None).into()
}

/// Draws the grade's word and returns how far it reaches from the left, mm.
fn word(inner: &mut Column, grade: Grade, style: &Style) -> f64 {
    let base = inner.y - style.base_mm();
    let [stop, caution] = inner.scale.notice_words;
    let word = match grade {
        Grade::Stop => stop,
        Grade::Caution => caution,
    };
    let width = style.width_mm(word);
    let cap = cap_height_mm(style.face, style.size_pt);
    let panel = Bounds {
        min: Point::new(inner.x, base - PANEL_MM),
        max: Point::new(inner.x + width + 2.0 * PANEL_MM, base + cap + PANEL_MM),
    };
    let line = Stroke::solid(MIDDLE_MM, Ink::Black);
    let (stroke, fill, ink) = match grade {
        Grade::Stop => (None, Some(Ink::Black), Ink::White),
        Grade::Caution => (Some(line), None, Ink::Black),
    };
    let at = Point::new(inner.x + PANEL_MM, base);
    inner.items.push(Path::frame(panel, stroke, fill).into());
    let text = style.inked(ink).text(word, at, Anchor::Start);
    inner.items.push(text.into());
    panel.width() + 2.0 * PANEL_MM
}

fn set_lines(inner: &mut Column, text: &str, style: &Style, indent: f64) {
    for line in wrap(text, style, inner.width - indent) {
        let at = Point::new(inner.x + indent, inner.y - style.base_mm());
        inner.items.push(style.text(line, at, Anchor::Start).into());
        inner.y -= style.leading_mm;
    }
}
