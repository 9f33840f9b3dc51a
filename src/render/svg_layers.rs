//! The job at true size as an SVG: one group a layer, lines and arcs as they are.

use std::fmt::Write;

use super::svg::escaped;
use crate::geom::{Arc, Bounds, Point, Seg};
use crate::template::{Element, Form, Layer};

/// White round everything, mm.
const ROUND_MM: f64 = 20.0;
/// Height of the letters, mm.
const LETTERS_MM: f64 = 8.0;
/// Half the length of a mark's strokes, mm.
const MARK_MM: f64 = 4.0;

/// A standalone SVG 1.1 document whose user unit is a millimetre. Every layer is a group with the
/// layer's name as its id, every element has an id of its own; y runs down, as SVG has it.
#[must_use]
pub fn svg_layers(title: &str, layers: &[Layer]) -> String {
    let bounds = layers.iter().flat_map(|l| &l.elements).map(bounds);
    let around = bounds.reduce(Bounds::joined).unwrap_or(Bounds {
        min: Point::ORIGIN,
        max: Point::ORIGIN,
    });
    let frame = UpperLeft {
        left: around.min.x - ROUND_MM,
        top: around.max.y + ROUND_MM,
    };
    let size = [around.width(), around.height()].map(|mm| number(mm + 2.0 * ROUND_MM));
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"{0}mm\" height=\"{1}mm\" \
         viewBox=\"0 0 {0} {1}\">\n<title>{2}</title>\n",
        size[0],
        size[1],
        escaped(title)
    );
    for layer in layers {
        let _ = writeln!(
            out,
            "<g id=\"{}\" fill=\"none\" stroke=\"#000000\" stroke-width=\"0.25\">",
            layer.name
        );
        for element in &layer.elements {
            frame.element(element, &mut out);
        }
        out.push_str("</g>\n");
    }
    out.push_str("</svg>\n");
    out
}

fn bounds(element: &Element) -> Bounds {
    match &element.form {
        Form::Ring(segs) | Form::Line(segs) => {
            let all = segs.iter().map(Seg::bounds);
            all.reduce(Bounds::joined).unwrap_or(Bounds::around([]))
        }
        Form::Circle(at, radius) => Bounds::around(
            crate::geom::seg::circle(*at, *radius)
                .iter()
                .flat_map(|s| [s.at(0.0), s.at(0.5)]),
        ),
        Form::Point(at) => Bounds::around([*at]),
    }
}

/// The upper left corner of the drawing.
struct UpperLeft {
    left: f64,
    top: f64,
}

impl UpperLeft {
    fn element(&self, element: &Element, out: &mut String) {
        let id = escaped(&element.id);
        match &element.form {
            Form::Ring(segs) => self.path(&id, segs, "Z", out),
            Form::Line(segs) => self.path(&id, segs, "", out),
            Form::Circle(at, radius) => {
                let (at, radius) = (self.at(*at), number(*radius));
                let _ = writeln!(
                    out,
                    "<circle id=\"{id}\" cx=\"{}\" cy=\"{}\" r=\"{radius}\"/>",
                    at[0], at[1]
                );
            }
            Form::Point(at) => {
                let at = self.at(*at);
                let _ = writeln!(
                    out,
                    "<path id=\"{id}\" d=\"M{} {} m-{MARK_MM} 0 h{} m-{MARK_MM} -{MARK_MM} v{}\"/>",
                    at[0],
                    at[1],
                    2.0 * MARK_MM,
                    2.0 * MARK_MM
                );
            }
        }
        if let Some((at, words)) = &element.label {
            let at = self.at(*at);
            let _ = writeln!(
                out,
                "<text x=\"{}\" y=\"{}\" font-family=\"sans-serif\" font-size=\"{LETTERS_MM}\" \
                 fill=\"#000000\" stroke=\"none\">{}</text>",
                at[0],
                at[1],
                escaped(words)
            );
        }
    }

    fn path(&self, id: &str, segs: &[Seg], end: &str, out: &mut String) {
        let Some(first) = segs.first() else { return };
        let [x, y] = self.at(first.start());
        let mut d = format!("M{x} {y}");
        for seg in segs {
            match seg {
                Seg::Line(_, to) => {
                    let [x, y] = self.at(*to);
                    let _ = write!(d, " L{x} {y}");
                }
                Seg::Arc(arc) => self.arc(arc, &mut d),
            }
        }
        let _ = writeln!(out, "<path id=\"{id}\" d=\"{d}{end}\"/>");
    }

    /// Two arcs of half the sweep: one from a point to itself would be drawn as nothing.
    fn arc(&self, arc: &Arc, d: &mut String) {
        let radius = number(arc.radius);
        // Turned over, what ran counter-clockwise still looks so; SVG calls that sweep 0.
        let sweep = u8::from(arc.sweep < 0.0);
        for share in [0.5, 1.0] {
            let [x, y] = self.at(arc.at_angle(arc.start + arc.sweep * share));
            let _ = write!(d, " A{radius} {radius} 0 0 {sweep} {x} {y}");
        }
    }

    fn at(&self, at: Point) -> [String; 2] {
        [number(at.x - self.left), number(self.top - at.y)]
    }
}

/// A length to a nanometre, so that areas keep to a millionth; without trailing zeros.
fn number(mm: f64) -> String {
    let text = format!("{mm:.6}");
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0" } else { text }.to_owned()
}
