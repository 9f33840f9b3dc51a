//! The entities of a DXF: lines, arcs, circles, polylines; the only file that reads with `dxf`.

use std::f64::consts::PI;

use dxf::entities::{Entity, EntityType};
use dxf::enums::Units;

use super::affine::Affine;
use super::bit::Bit;
use super::content::{Drawing, MOST_ELEMENTS};
use super::dxf_pairs::essential;
use crate::geom::seg::circle;
use crate::geom::{Arc, Point, Seg};

/// Reads a DXF text.
///
/// # Errors
/// What is wrong with it, in words.
pub(super) fn read(text: &str) -> Result<Drawing, String> {
    let text = essential(text)?;
    let file =
        ::dxf::Drawing::load(&mut text.as_bytes()).map_err(|e| format!("it is no DXF: {e}"))?;
    let mut drawing = Drawing {
        unit_mm: unit_mm(file.header.default_drawing_units),
        ..Drawing::default()
    };
    if file.entities().count() > MOST_ELEMENTS {
        return Err(format!("it has more than {MOST_ELEMENTS} entities"));
    }
    for entity in file.entities() {
        add(entity, &mut drawing);
    }
    Ok(drawing)
}

const fn unit_mm(unit: Units) -> Option<f64> {
    match unit {
        Units::Millimeters => Some(1.0),
        Units::Centimeters => Some(10.0),
        Units::Decimeters => Some(100.0),
        Units::Meters => Some(1000.0),
        Units::Inches => Some(25.4),
        Units::Feet => Some(304.8),
        _ => None,
    }
}

fn add(entity: &Entity, drawing: &mut Drawing) {
    let layer = entity.common.layer.clone();
    let handle = format!("{:X}", entity.common.handle.0);
    let name = |kind: &str| format!("{kind} {handle} on layer {layer}");
    let ids = vec![handle.clone(), layer.clone()];
    let line = |a: &::dxf::Point, b: &::dxf::Point| Bit::line(place(a), place(b));
    let (kind, bits, closed) = match &entity.specific {
        EntityType::Line(l) => ("LINE", vec![line(&l.p1, &l.p2)], false),
        EntityType::Arc(a) => ("ARC", vec![arc(a)], false),
        EntityType::Circle(c) if c.radius > 0.0 => {
            let ring = circle(place(&c.center), c.radius).into_iter();
            ("CIRCLE", ring.map(Bit::Seg).collect(), true)
        }
        EntityType::LwPolyline(p) => {
            let vertices = p.vertices.iter();
            let vertices = vertices.map(|v| (Point::new(v.x, v.y), v.bulge)).collect();
            (
                "LWPOLYLINE",
                polyline(vertices, p.is_closed()),
                p.is_closed(),
            )
        }
        EntityType::Polyline(p) => {
            let vertices = p
                .vertices()
                .map(|v| (place(&v.location), v.bulge))
                .collect();
            ("POLYLINE", polyline(vertices, p.is_closed()), p.is_closed())
        }
        EntityType::Spline(_) => return drawing.refuse(name("SPLINE"), ids, CURVE),
        EntityType::Ellipse(_) => return drawing.refuse(name("ELLIPSE"), ids, CURVE),
        EntityType::Insert(_) => return drawing.refuse(name("INSERT"), ids, BLOCK),
        _ => return,
    };
    let bits = bits
        .into_iter()
        .filter(|b| b.start().is_finite() && b.end().is_finite());
    let bits = bits.filter(|b| b.start() != b.end());
    let seen = is_mirrored(&entity.specific);
    let mirror = Affine::scale(if seen { -1.0 } else { 1.0 }, 1.0);
    let bits = bits.flat_map(|b| b.moved(&mirror)).collect();
    drawing.add(name(kind), ids, (bits, closed));
}

const CURVE: &str = "this kind of curve is not read; save it as a polyline or as arcs";
const BLOCK: &str = "blocks are not read; break it up into its lines";

/// Entities seen from below have their x turned round.
fn is_mirrored(kind: &EntityType) -> bool {
    let z = match kind {
        EntityType::Arc(a) => a.normal.z,
        EntityType::Circle(c) => c.normal.z,
        EntityType::LwPolyline(p) => p.extrusion_direction.z,
        EntityType::Polyline(p) => p.normal.z,
        _ => 1.0,
    };
    z < 0.0
}

fn place(at: &::dxf::Point) -> Point {
    Point::new(at.x, at.y)
}

/// Runs counter-clockwise from its start to its end.
fn arc(a: &::dxf::entities::Arc) -> Bit {
    let way = (a.end_angle - a.start_angle).rem_euclid(360.0);
    Bit::Seg(Seg::Arc(Arc {
        centre: place(&a.center),
        radius: a.radius,
        start: a.start_angle.to_radians(),
        sweep: way.to_radians(),
    }))
}

/// Lines and arcs between the vertices: a bulge is the tangent of a quarter of the angle run through.
fn polyline(mut vertices: Vec<(Point, f64)>, closed: bool) -> Vec<Bit> {
    vertices.extend(vertices.first().copied().filter(|_| closed));
    let pairs = vertices.windows(2).filter(|w| w[0].0 != w[1].0);
    pairs.map(|w| bulged(w[0].0, w[1].0, w[0].1)).collect()
}

fn bulged(from: Point, to: Point, bulge: f64) -> Bit {
    let sweep = 4.0 * bulge.atan();
    if sweep.abs() < 1e-9 || sweep.abs() > 2.0 * PI - 1e-9 {
        return Bit::line(from, to);
    }
    let half = (to - from) * 0.5;
    let centre = from + half + half.left() * ((1.0 - bulge * bulge) / (2.0 * bulge));
    Bit::Seg(Seg::Arc(Arc {
        centre,
        radius: centre.distance(from),
        start: (from - centre).angle(),
        sweep,
    }))
}
