//! One page as an SVG of its own, in mm, with arcs as arcs.

use std::fmt::Write;

use crate::geom::{Arc, Point, Seg};
use crate::layout::item::{
    Anchor, Dash, Ink, Item, Page, Path, PenStroke, Text, TextTurn, Typeface,
};
use crate::layout::typeface::POINT_MM;

/// Room round an element of a document for lines that lie on its border, mm.
const BLEED_MM: f64 = 1.0;
/// Width of what can be pointed at, mm (judgement: a fingertip on a telephone, a line on a screen).
const POINTED_MM: f64 = 5.0;

/// A page as a standalone SVG 1.1 document of a size in mm.
///
/// y runs down in SVG, so places are turned over here; text is set in the reader's sans serif,
/// drawn to the width it has in the sheet's typeface so that it keeps its place.
/// Places that are not finite numbers are left out of the drawing as SVG readers would refuse it.
#[must_use]
pub fn svg_page(page: &Page, size_mm: (f64, f64)) -> String {
    let mut canvas = Canvas::new(size_mm.1, Kind::Alone);
    let (width, height) = (canvas.number(size_mm.0), canvas.number(size_mm.1));
    canvas.out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{width}mm\" \
         height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n\
         <title>{}</title>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#ffffff\"/>\n",
        escaped(&page.name)
    );
    canvas.draw(&page.items)
}

/// Items as an element of an HTML document, as wide as there is room: `label` says what they show to
/// whoever does not see it; without one they are an ornament.
pub(super) fn inline(items: &[Item], size_mm: (f64, f64), label: Option<&str>) -> String {
    let mut canvas = Canvas::new(size_mm.1, Kind::Inline);
    let [width, height] = [size_mm.0, size_mm.1].map(|mm| canvas.number(mm + 2.0 * BLEED_MM));
    let role = label.map_or_else(
        || "aria-hidden=\"true\"".to_owned(),
        |words| format!("role=\"img\" aria-label=\"{}\"", escaped(words)),
    );
    canvas.out = format!(
        "<svg viewBox=\"-{BLEED_MM} -{BLEED_MM} {width} {height}\" fill-rule=\"evenodd\" \
         font-family=\"sans-serif\" {role}>\n"
    );
    canvas.draw(items)
}

/// Where a drawing stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    /// In a file of its own.
    Alone,
    /// In a document, small: its root says what all its elements have in common.
    Inline,
}

/// An SVG under way.
struct Canvas {
    kind: Kind,
    /// Height of the page, mm.
    height: f64,
    out: String,
}

impl Canvas {
    const fn new(height: f64, kind: Kind) -> Self {
        Self {
            kind,
            height,
            out: String::new(),
        }
    }

    fn draw(mut self, items: &[Item]) -> String {
        for item in items {
            match item {
                Item::Path(path) => self.path(path),
                Item::Text(text) => self.text(text),
                Item::Part(name, run) => self.part(name, run),
                Item::Begin(_) | Item::End => {}
            }
        }
        self.out.push_str("</svg>\n");
        self.out
    }

    fn path(&mut self, path: &Path) {
        let mut d = String::new();
        for run in &path.runs {
            self.run_data(run, path.closed, &mut d);
        }
        if d.is_empty() {
            return;
        }
        let fill = path.fill.map_or_else(|| "none".to_owned(), colour);
        let _ = write!(self.out, "<path d=\"{}\" fill=\"{fill}\"", d.trim_end());
        if self.kind == Kind::Alone {
            self.out.push_str(" fill-rule=\"evenodd\"");
        }
        if let Some(stroke) = path.stroke {
            self.stroke(stroke);
        }
        self.out.push_str("/>\n");
    }

    fn stroke(&mut self, stroke: PenStroke) {
        let (ink, width) = (colour(stroke.ink), self.number(stroke.width_mm));
        let _ = write!(self.out, " stroke=\"{ink}\" stroke-width=\"{width}\"");
        if stroke.dash != Dash::Continuous {
            let parts = stroke.dash.pattern_mm().iter();
            let parts: Vec<String> = parts.map(|mm| self.number(*mm)).collect();
            let _ = write!(self.out, " stroke-dasharray=\"{}\"", parts.join(" "));
        }
    }

    /// A part that can be pointed at: nothing is seen of it until it is.
    fn part(&mut self, name: &str, run: &[Seg]) {
        let mut d = String::new();
        self.run_data(run, false, &mut d);
        if !d.is_empty() {
            let _ = writeln!(
                self.out,
                "<path data-part=\"{}\" d=\"{}\" fill=\"none\" stroke=\"#000000\" stroke-opacity=\"0\" \
                 stroke-width=\"{POINTED_MM}\" stroke-linecap=\"round\" pointer-events=\"stroke\"/>",
                escaped(name),
                d.trim_end()
            );
        }
    }

    fn run_data(&self, run: &[Seg], closed: bool, d: &mut String) {
        let finite = |s: &Seg| s.start().is_finite() && s.end().is_finite();
        let Some(first) = run.first().filter(|_| run.iter().all(finite)) else {
            return;
        };
        let _ = write!(d, "M{} ", self.place(first.start()));
        for seg in run {
            match seg {
                Seg::Line(_, to) => {
                    let _ = write!(d, "L{} ", self.place(*to));
                }
                Seg::Arc(arc) => self.arc_data(arc, d),
            }
        }
        if closed {
            d.push_str("Z ");
        }
    }

    /// Two arcs of half the sweep: a full circle from a point to itself would be drawn as nothing.
    fn arc_data(&self, arc: &Arc, d: &mut String) {
        let radius = self.number(arc.radius);
        // Turned over, what ran counter-clockwise still looks so; SVG calls that sweep 0.
        let sweep = u8::from(arc.sweep < 0.0);
        for share in [0.5, 1.0] {
            let to = self.place(arc.at_angle(arc.start + arc.sweep * share));
            let _ = write!(d, "A{radius} {radius} 0 0 {sweep} {to} ");
        }
    }

    fn text(&mut self, text: &Text) {
        if !text.at.is_finite() || !text.size_pt.is_finite() {
            return;
        }
        let (x, y) = (self.number(text.at.x), self.number(self.height - text.at.y));
        let size = self.number(text.size_pt * POINT_MM);
        let (anchor, ink) = (anchor_name(text.anchor), colour(text.ink));
        let _ = write!(self.out, "<text x=\"{x}\" y=\"{y}\"");
        if self.kind == Kind::Alone {
            self.out.push_str(" font-family=\"sans-serif\"");
        }
        let _ = write!(
            self.out,
            " font-size=\"{size}\" text-anchor=\"{anchor}\" fill=\"{ink}\""
        );
        let length = self.number(text.width_mm());
        if length != "0" {
            let _ = write!(
                self.out,
                " textLength=\"{length}\" lengthAdjust=\"spacingAndGlyphs\""
            );
        }
        if text.face == Typeface::Bold {
            self.out.push_str(" font-weight=\"bold\"");
        }
        if text.turn == TextTurn::Upwards {
            let _ = write!(self.out, " transform=\"rotate(-90 {x} {y})\"");
        }
        let _ = writeln!(self.out, ">{}</text>", escaped(&text.content));
    }

    fn place(&self, at: Point) -> String {
        format!("{} {}", self.number(at.x), self.number(self.height - at.y))
    }

    /// A length to a ten thousandth of a mm, in a document to a hundredth, without trailing zeros.
    fn number(&self, value: f64) -> String {
        let text = match self.kind {
            Kind::Alone => format!("{value:.4}"),
            Kind::Inline => format!("{value:.2}"),
        };
        let text = text.trim_end_matches('0').trim_end_matches('.');
        if text == "-0" { "0" } else { text }.to_owned()
    }
}

const fn anchor_name(anchor: Anchor) -> &'static str {
    match anchor {
        Anchor::Start => "start",
        Anchor::Middle => "middle",
        Anchor::End => "end",
    }
}

fn colour(ink: Ink) -> String {
    let [r, g, b] = ink.rgb();
    format!("#{r:02x}{g:02x}{b:02x}")
}

/// The text with what XML reserves written as entities; characters XML forbids become U+FFFD.
pub(super) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            c if c.is_control() || matches!(c, '\u{FFFE}' | '\u{FFFF}') => out.push('\u{FFFD}'),
            c => out.push(c),
        }
    }
    out
}
