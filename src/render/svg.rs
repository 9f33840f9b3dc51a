//! One page as an SVG of its own, in mm, with arcs as arcs.

use std::fmt::Write;

use crate::geom::{Arc, Point, Seg};
use crate::sheet::item::{Anchor, Dash, Face, Ink, Item, Page, Path, Text, TextTurn};
use crate::sheet::typeface::POINT_MM;

/// A page as a standalone SVG 1.1 document of a size in mm.
///
/// y runs down in SVG, so places are turned over here; text is set in the reader's sans serif,
/// drawn to the width it has in the sheet's typeface so that it keeps its place.
/// Places that are not finite numbers are left out of the drawing as SVG readers would refuse it.
#[must_use]
pub fn svg_page(page: &Page, size_mm: (f64, f64)) -> String {
    let (width, height) = (number(size_mm.0), number(size_mm.1));
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{width}mm\" \
         height=\"{height}mm\" viewBox=\"0 0 {width} {height}\">\n\
         <title>{}</title>\n<rect width=\"{width}\" height=\"{height}\" fill=\"#ffffff\"/>\n",
        escaped(&page.name)
    );
    for item in &page.items {
        match item {
            Item::Path(path) => path_element(path, size_mm.1, &mut out),
            Item::Text(text) => text_element(text, size_mm.1, &mut out),
        }
    }
    out.push_str("</svg>\n");
    out
}

fn path_element(path: &Path, height: f64, out: &mut String) {
    let mut d = String::new();
    for run in &path.runs {
        run_data(run, path.closed, height, &mut d);
    }
    if d.is_empty() {
        return;
    }
    let fill = path.fill.map_or_else(|| "none".to_owned(), colour);
    out.push_str("<path d=\"");
    out.push_str(d.trim_end());
    let _ = write!(out, "\" fill=\"{fill}\" fill-rule=\"evenodd\"");
    if let Some(stroke) = path.stroke {
        let (ink, width) = (colour(stroke.ink), number(stroke.width_mm));
        let _ = write!(out, " stroke=\"{ink}\" stroke-width=\"{width}\"");
        if stroke.dash != Dash::Continuous {
            let parts = stroke.dash.pattern_mm();
            let parts: Vec<String> = parts.iter().map(|mm| number(*mm)).collect();
            let _ = write!(out, " stroke-dasharray=\"{}\"", parts.join(" "));
        }
    }
    out.push_str("/>\n");
}

fn run_data(run: &[Seg], closed: bool, height: f64, d: &mut String) {
    let finite = |s: &Seg| s.start().is_finite() && s.end().is_finite();
    let Some(first) = run.first().filter(|_| run.iter().all(finite)) else {
        return;
    };
    let _ = write!(d, "M{} ", place(first.start(), height));
    for seg in run {
        match seg {
            Seg::Line(_, to) => {
                let _ = write!(d, "L{} ", place(*to, height));
            }
            Seg::Arc(arc) => arc_data(arc, height, d),
        }
    }
    if closed {
        d.push_str("Z ");
    }
}

/// Two arcs of half the sweep: a full circle from a point to itself would be drawn as nothing.
fn arc_data(arc: &Arc, height: f64, d: &mut String) {
    let radius = number(arc.radius);
    // Turned over, what ran counter-clockwise still looks so; SVG calls that sweep 0.
    let sweep = u8::from(arc.sweep < 0.0);
    for share in [0.5, 1.0] {
        let to = place(arc.at_angle(arc.start + arc.sweep * share), height);
        let _ = write!(d, "A{radius} {radius} 0 0 {sweep} {to} ");
    }
}

fn text_element(text: &Text, height: f64, out: &mut String) {
    if !text.at.is_finite() || !text.size_pt.is_finite() {
        return;
    }
    let (x, y) = (number(text.at.x), number(height - text.at.y));
    let size = number(text.size_pt * POINT_MM);
    let (anchor, ink) = (anchor_name(text.anchor), colour(text.ink));
    let _ = write!(
        out,
        "<text x=\"{x}\" y=\"{y}\" font-family=\"sans-serif\" font-size=\"{size}\" \
         text-anchor=\"{anchor}\" fill=\"{ink}\""
    );
    let length = number(text.width_mm());
    if length != "0" {
        let _ = write!(
            out,
            " textLength=\"{length}\" lengthAdjust=\"spacingAndGlyphs\""
        );
    }
    if text.face == Face::Bold {
        out.push_str(" font-weight=\"bold\"");
    }
    if text.turn == TextTurn::Upwards {
        let _ = write!(out, " transform=\"rotate(-90 {x} {y})\"");
    }
    let _ = writeln!(out, ">{}</text>", escaped(&text.content));
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

fn place(at: Point, height: f64) -> String {
    format!("{} {}", number(at.x), number(height - at.y))
}

/// A length to a ten thousandth of a mm, without trailing zeros.
fn number(value: f64) -> String {
    let text = format!("{value:.4}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0" } else { text }.to_owned()
}

/// The text with what XML reserves written as entities; characters XML forbids become U+FFFD.
fn escaped(text: &str) -> String {
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
