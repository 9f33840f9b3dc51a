//! The job at true size as a DXF; the only file that writes with `dxf`.

use dxf::entities::{Circle, Entity, EntityType, LwPolyline, ModelPoint, Text};
use dxf::enums::{AcadVersion, DrawingUnits, Units};
use dxf::tables::Layer as Table;
use dxf::{Drawing, LwPolylineVertex, Point as Place};

use super::fault::RenderFault;
use crate::geom::{Point, Seg};
use crate::template::{Element, Form, Layer};

/// Height of the letters, mm.
const LETTERS_MM: f64 = 8.0;

/// A DXF (release 2000) in millimetres: lines and arcs as polylines with bulges, which are true arcs,
/// core holes as circles, marks as points. The same layers give the same text.
///
/// # Errors
/// [`RenderFault::Writer`] when the file cannot be put together.
pub fn dxf(layers: &[Layer]) -> Result<String, RenderFault> {
    let mut drawing = Drawing::new();
    let header = &mut drawing.header;
    header.version = AcadVersion::R2000;
    header.default_drawing_units = Units::Millimeters;
    header.drawing_units = DrawingUnits::Metric;
    for layer in layers {
        drawing.add_layer(Table {
            name: layer.name.to_owned(),
            ..Table::default()
        });
        for element in &layer.elements {
            for kind in kinds(element) {
                let mut entity = Entity::new(kind);
                layer.name.clone_into(&mut entity.common.layer);
                drawing.add_entity(entity);
            }
        }
    }
    let mut bytes = Vec::new();
    let fault = |e: String| RenderFault::Writer(e);
    drawing.save(&mut bytes).map_err(|e| fault(e.to_string()))?;
    let text = String::from_utf8(bytes).map_err(|e| fault(e.to_string()))?;
    Ok(lasting(&text))
}

/// The header's variables that come from the clock or from chance.
const OF_THE_MOMENT: [&str; 3] = ["$TD", "$FINGERPRINTGUID", "$VERSIONGUID"];

/// The text without those variables.
fn lasting(text: &str) -> String {
    let mut lines = text.split_inclusive('\n');
    let mut out = String::with_capacity(text.len());
    let mut skipping = false;
    while let (Some(code), Some(value)) = (lines.next(), lines.next()) {
        let starts = matches!(code.trim(), "9" | "0");
        let momentary = OF_THE_MOMENT.iter().any(|name| value.starts_with(name));
        skipping = momentary || skipping && !starts;
        if !skipping {
            out.push_str(code);
            out.push_str(value);
        }
    }
    out
}

fn kinds(element: &Element) -> Vec<EntityType> {
    let form = match &element.form {
        Form::Ring(segs) => EntityType::LwPolyline(polyline(segs, true)),
        Form::Line(segs) => EntityType::LwPolyline(polyline(segs, false)),
        Form::Circle(at, radius) => EntityType::Circle(Circle::new(place(*at), *radius)),
        Form::Point(at) => EntityType::ModelPoint(ModelPoint::new(place(*at))),
    };
    let label = element.label.iter().map(|(at, words)| {
        EntityType::Text(Text {
            location: place(*at),
            text_height: LETTERS_MM,
            value: words.clone(),
            ..Text::default()
        })
    });
    std::iter::once(form).chain(label).collect()
}

fn polyline(segs: &[Seg], closed: bool) -> LwPolyline {
    let vertex = |at: Point, bulge: f64| LwPolylineVertex {
        x: at.x,
        y: at.y,
        bulge,
        ..LwPolylineVertex::default()
    };
    let mut vertices: Vec<LwPolylineVertex> =
        segs.iter().map(|s| vertex(s.start(), bulge(s))).collect();
    if let (Some(last), false) = (segs.last(), closed) {
        vertices.push(vertex(last.end(), 0.0));
    }
    let mut line = LwPolyline {
        vertices,
        ..LwPolyline::default()
    };
    line.set_is_closed(closed);
    line
}

/// The tangent of a quarter of the angle run through; 0 for a straight piece.
fn bulge(seg: &Seg) -> f64 {
    match seg {
        Seg::Line(..) => 0.0,
        Seg::Arc(arc) => (arc.sweep / 4.0).tan(),
    }
}

fn place(at: Point) -> Place {
    Place::new(at.x, at.y, 0.0)
}
