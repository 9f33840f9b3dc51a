//! Lines broken to a width.

use super::item::{Anchor, Ink, Text, Typeface};
use super::typeface;
use crate::geom::Point;

/// How a run of lines is set.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Style {
    /// Weight.
    pub face: Typeface,
    /// Size, points.
    pub size_pt: f64,
    /// From one base line to the next, mm.
    pub leading_mm: f64,
    /// Colour.
    pub ink: Ink,
}

impl Style {
    /// Black text in a weight, size (points) and line distance (mm).
    #[must_use]
    pub const fn new(face: Typeface, size_pt: f64, leading_mm: f64) -> Self {
        Self {
            face,
            size_pt,
            leading_mm,
            ink: Ink::Black,
        }
    }

    /// The same in bold.
    #[must_use]
    pub const fn bold(self) -> Self {
        Self {
            face: Typeface::Bold,
            ..self
        }
    }

    /// The same in another colour.
    #[must_use]
    pub const fn inked(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }

    /// Width of a line, mm.
    #[must_use]
    pub fn width_mm(&self, line: &str) -> f64 {
        typeface::width_mm(line, self.face, self.size_pt)
    }

    /// From the top of a line's space down to its base line, mm: the letters stand in its middle.
    #[must_use]
    pub fn base_mm(&self) -> f64 {
        let up = typeface::cap_height_mm(self.face, self.size_pt);
        f64::midpoint(self.leading_mm, up)
    }

    /// One line of text in this style.
    #[must_use]
    pub fn text(&self, line: impl Into<String>, at: Point, anchor: Anchor) -> Text {
        Text::new(line, at, self.face, self.size_pt)
            .anchored(anchor)
            .inked(self.ink)
    }
}

/// The lines of a text at a width in mm.
///
/// Breaks at spaces and at line feeds; a no-break space (U+00A0) holds. A word wider than the
/// width is broken between characters. Never returns a line wider than the width unless a single
/// character is.
#[must_use]
pub fn wrap(text: &str, style: &Style, width_mm: f64) -> Vec<String> {
    text.split('\n')
        .flat_map(|paragraph| wrap_paragraph(paragraph, style, width_mm))
        .collect()
}

fn wrap_paragraph(paragraph: &str, style: &Style, width_mm: f64) -> Vec<String> {
    let mut lines = Vec::new();
    let mut line = String::new();
    for word in paragraph.split(' ').filter(|w| !w.is_empty()) {
        let longer = if line.is_empty() {
            word.to_owned()
        } else {
            format!("{line} {word}")
        };
        if style.width_mm(&longer) <= width_mm {
            line = longer;
            continue;
        }
        if !line.is_empty() {
            lines.push(std::mem::take(&mut line));
        }
        line = break_word(word, style, width_mm, &mut lines);
    }
    lines.push(line);
    lines
}

/// Breaks a word where it must be; full lines go to `lines`, the rest is returned. Linear for a word that fits.
pub(super) fn break_word(
    word: &str,
    style: &Style,
    width_mm: f64,
    lines: &mut Vec<String>,
) -> String {
    if style.width_mm(word) <= width_mm {
        return word.to_owned();
    }
    let mut part = String::new();
    for c in word.chars() {
        part.push(c);
        if style.width_mm(&part) > width_mm && part.chars().count() > 1 {
            part.pop();
            lines.push(std::mem::replace(&mut part, c.to_string()));
        }
    }
    part
}
