//! What is drawn on a page, as the operators of a PDF's content (ISO 32000-1, 8 and 9).
//!
//! Linear in the items. Places stand in points with two decimals.

use std::fmt::Write;

use crate::geom::{Point, Seg};
use crate::layout::item::{Ink, Path, PenStroke, Text, TextTurn, Typeface};
use crate::layout::typeface::{glyph, missing_from};

use super::bezier::cubics;
use super::fault::RenderFault;

/// Points in a millimetre.
pub(super) const POINTS_PER_MM: f64 = 72.0 / 25.4;
/// Parts of a point that a place on paper is written in: 3.5 micrometres each, which halves the figures of a page.
const PARTS: i64 = 100;
/// No sheet of paper is so large, parts of a point: 3,500 km.
const FAR: f64 = 1e12;

/// A page's content while it grows, and what is set so far, so that it is not set again: it halves the file.
#[derive(Default)]
pub(super) struct Content {
    pub(super) text: String,
    fill: Option<Ink>,
    stroke: Option<PenStroke>,
    font: Option<(Typeface, f64)>,
}

impl Content {
    /// Begins marked content: with its number a part of the page, without one an artifact.
    pub(super) fn begin_marked(&mut self, tag: &str, number: Option<i64>) {
        match number {
            Some(number) => self.written(format_args!("/{tag} <</MCID {number}>> BDC\n")),
            None => self.written(format_args!("/{tag} BMC\n")),
        }
    }

    pub(super) fn end_marked(&mut self) {
        self.operator("EMC\n");
    }

    pub(super) fn operator(&mut self, text: &str) {
        self.text.push_str(text);
    }

    pub(super) fn written(&mut self, text: std::fmt::Arguments<'_>) {
        // Writing to memory does not fail.
        let _ = self.text.write_fmt(text);
    }

    /// A length in mm, and a space.
    fn length(&mut self, mm: f64) {
        let parts = parts_of_a_point(mm);
        if parts < 0 {
            self.text.push('-');
        }
        let (whole, part) = (parts.abs() / PARTS, parts.abs() % PARTS);
        self.digits(whole);
        if part > 0 {
            self.text.push('.');
            self.digits(part / 10);
            if part % 10 > 0 {
                self.digits(part % 10);
            }
        }
        self.text.push(' ');
    }

    /// A whole number that is not negative.
    fn digits(&mut self, number: i64) {
        if number >= 10 {
            self.digits(number / 10);
        }
        let digit = u8::try_from(number % 10).unwrap_or(0);
        self.text.push(char::from(b'0' + digit));
    }

    fn point(&mut self, at: Point) {
        self.length(at.x);
        self.length(at.y);
    }

    fn colour(&mut self, ink: Ink, [grey, colour]: [&str; 2]) {
        let [r, g, b] = ink.rgb().map(|part| f32::from(part) / 255.0);
        if r == g && g == b {
            self.written(format_args!("{r:.3} {grey}\n"));
        } else {
            self.written(format_args!("{r:.3} {g:.3} {b:.3} {colour}\n"));
        }
    }

    fn set_fill(&mut self, ink: Ink) {
        if self.fill.replace(ink) != Some(ink) {
            self.colour(ink, ["g", "rg"]);
        }
    }

    fn set_stroke(&mut self, stroke: PenStroke) {
        let before = self.stroke.replace(stroke);
        if before.map(|b| b.ink) != Some(stroke.ink) {
            self.colour(stroke.ink, ["G", "RG"]);
        }
        if before.map(|b| b.width_mm) != Some(stroke.width_mm) {
            self.length(stroke.width_mm);
            self.operator("w\n");
        }
        if before.map(|b| b.dash) != Some(stroke.dash) {
            self.operator("[");
            for mm in stroke.dash.pattern_mm() {
                self.length(*mm);
            }
            self.operator("] 0 d\n");
        }
    }

    pub(super) fn path(&mut self, path: &Path, page: &str) -> Result<(), RenderFault> {
        let finite =
            |s: &Seg| s.start().is_finite() && s.end().is_finite() && s.length().is_finite();
        let width = path.stroke.map_or(0.0, |s| s.width_mm);
        if !width.is_finite() || !path.runs.iter().flatten().all(finite) {
            return Err(RenderFault::NotFinite {
                page: page.to_owned(),
                item: "a line".to_owned(),
            });
        }
        if let Some(ink) = path.fill {
            self.set_fill(ink);
            for run in &path.runs {
                self.run(run);
                self.operator("h\n");
            }
            self.operator("f*\n");
        }
        if let Some(stroke) = path.stroke {
            self.set_stroke(stroke);
            for run in &path.runs {
                self.run(run);
                self.operator(if path.closed { "s\n" } else { "S\n" });
            }
        }
        Ok(())
    }

    /// The pieces of a run from its start on.
    fn run(&mut self, run: &[Seg]) {
        if let Some(first) = run.first() {
            self.point(first.start());
            self.operator("m\n");
        }
        for seg in run {
            match seg {
                Seg::Line(_, to) => {
                    self.point(*to);
                    self.operator("l\n");
                }
                Seg::Arc(arc) => {
                    for curve in cubics(arc) {
                        for at in curve {
                            self.point(at);
                        }
                        self.operator("c\n");
                    }
                }
            }
        }
    }

    pub(super) fn text(
        &mut self,
        text: &Text,
        page: &str,
        fonts: impl Fn(Typeface) -> &'static str,
    ) -> Result<(), RenderFault> {
        if !text.at.is_finite() || !text.size_pt.is_finite() {
            return Err(RenderFault::NotFinite {
                page: page.to_owned(),
                item: format!("the text \"{}\"", text.content.escape_debug()),
            });
        }
        if let Some(character) = missing_from(&text.content, text.face).first() {
            return Err(RenderFault::MissingCharacter {
                page: page.to_owned(),
                character: *character,
                text: text.content.clone(),
            });
        }
        self.set_fill(text.ink);
        self.operator("BT\n");
        let font = (text.face, text.size_pt);
        if self.font.replace(font) != Some(font) {
            self.written(format_args!("/{} {} Tf\n", fonts(text.face), text.size_pt));
        }
        self.operator(match text.turn {
            TextTurn::Level => "1 0 0 1 ",
            TextTurn::Upwards => "0 1 -1 0 ",
        });
        self.point(text.start());
        self.operator("Tm\n<");
        for glyph in text.content.chars().filter_map(|c| glyph(c, text.face)) {
            for place in [12, 8, 4, 0] {
                let half = HEX[usize::from(glyph >> place & 15)];
                self.text.push(char::from(half));
            }
        }
        self.operator("> Tj\nET\n");
        Ok(())
    }
}

const HEX: &[u8; 16] = b"0123456789abcdef";

#[allow(clippy::cast_possible_truncation)]
fn parts_of_a_point(mm: f64) -> i64 {
    #[allow(clippy::cast_precision_loss)]
    let parts = mm * POINTS_PER_MM * PARTS as f64;
    parts.round().clamp(-FAR, FAR) as i64
}
