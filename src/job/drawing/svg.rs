//! The elements of an SVG: paths and basic shapes, with their transformations.

use std::f64::consts::{FRAC_PI_2, TAU};
use std::str::FromStr;

use roxmltree::{Document, Node, ParsingOptions};
use svgtypes::{Length, LengthUnit, PointsParser, Transform, ViewBox};

use super::affine::Affine;
use super::bit::Bit;
use super::content::{Drawing, MOST_ELEMENTS};
use super::svg_path::{subpaths, unit_arc};
use crate::geom::Point;

/// What is never drawn where it stands.
const HIDDEN: [&str; 6] = ["defs", "clipPath", "mask", "symbol", "marker", "pattern"];
/// The deepest element that is read.
const DEEPEST: usize = 100;

/// Reads an SVG. Its y runs down: it is turned over, so that what is seen stays as it is.
///
/// # Errors
/// What is wrong with it, in words that name the element.
pub(super) fn read(text: &str) -> Result<Drawing, String> {
    let options = ParsingOptions {
        nodes_limit: u32::try_from(MOST_ELEMENTS).unwrap_or(u32::MAX),
        ..ParsingOptions::default()
    };
    let document =
        Document::parse_with_options(text, options).map_err(|e| format!("it is no SVG: {e}"))?;
    let root = document.root_element();
    if root.tag_name().name() != "svg" {
        return Err(format!(
            "it is no SVG: its element is <{}>",
            root.tag_name().name()
        ));
    }
    let view = view_box(root)?;
    let upright = Affine {
        e: -view.map_or(0.0, |v| v.x),
        f: view.map_or(0.0, |v| v.y + v.h),
        ..Affine::scale(1.0, -1.0)
    };
    let mut drawing = Drawing {
        unit_mm: unit_mm(root, view)?,
        ..Drawing::default()
    };
    for node in root.descendants().filter(Node::is_element) {
        element(node, &upright, &mut drawing)?;
    }
    Ok(drawing)
}

fn element(node: Node<'_, '_>, upright: &Affine, drawing: &mut Drawing) -> Result<(), String> {
    let kind = node.tag_name().name();
    let read = matches!(
        kind,
        "path" | "rect" | "circle" | "ellipse" | "line" | "polyline" | "polygon"
    );
    let refused = matches!(kind, "use" | "image" | "text");
    if !(read || refused) {
        return Ok(());
    }
    let name = name_of(node);
    if node.ancestors().nth(DEEPEST).is_some() {
        return Err(format!("{name} lies more than {DEEPEST} elements deep"));
    }
    if is_hidden(node) {
        return Ok(());
    }
    let ids: Vec<String> = node
        .ancestors()
        .filter_map(|n| n.attribute("id"))
        .map(str::to_owned)
        .collect();
    if refused {
        // Words and pictures beside an outline do no harm; a copy may be part of it.
        if kind == "use" {
            let why = "copies of elements are not read; turn the copy into a path of its own";
            drawing.refuse(name, ids, why);
        }
        return Ok(());
    }
    let named = |why: String| format!("{name}: {why}");
    let onto = upright.after(&transform(node).map_err(named)?);
    for (bits, closed) in shape(node).map_err(named)? {
        let bits: Vec<Bit> = bits.iter().flat_map(|bit| bit.moved(&onto)).collect();
        let sound = bits
            .iter()
            .all(|b| b.start().is_finite() && b.end().is_finite());
        if !sound {
            return Err(named("a place in it is no finite number".to_owned()));
        }
        drawing.add(name.clone(), ids.clone(), (bits, closed));
    }
    Ok(())
}

fn is_hidden(node: Node<'_, '_>) -> bool {
    node.ancestors().any(|n| {
        HIDDEN.contains(&n.tag_name().name())
            || n.attribute("display") == Some("none")
            || n.attribute("style")
                .is_some_and(|s| s.replace(' ', "").contains("display:none"))
    })
}

fn name_of(node: Node<'_, '_>) -> String {
    let kind = node.tag_name().name();
    node.attribute("id").map_or_else(
        || {
            let line = node.document().text_pos_at(node.range().start).row;
            format!("<{kind}> on line {line}")
        },
        |id| format!("<{kind} id=\"{id}\">"),
    )
}

/// The transformations of an element and all that hold it.
fn transform(node: Node<'_, '_>) -> Result<Affine, String> {
    let mut all = Affine::IDENTITY;
    for holder in node.ancestors() {
        if let Some(text) = holder.attribute("transform") {
            let t = Transform::from_str(text)
                .map_err(|e| format!("its transform cannot be read: {e}"))?;
            let own = Affine {
                a: t.a,
                b: t.b,
                c: t.c,
                d: t.d,
                e: t.e,
                f: t.f,
            };
            all = own.after(&all);
        }
    }
    Ok(all)
}

fn view_box(root: Node<'_, '_>) -> Result<Option<ViewBox>, String> {
    let given = root.attribute("viewBox");
    let read = given.map(|text| ViewBox::from_str(text).map_err(|e| format!("its viewBox: {e}")));
    read.transpose()
}

/// Millimetres in a user unit, when width or height are in a unit of length.
fn unit_mm(root: Node<'_, '_>, view: Option<ViewBox>) -> Result<Option<f64>, String> {
    let mut found: Option<f64> = None;
    for (key, across) in [("width", view.map(|v| v.w)), ("height", view.map(|v| v.h))] {
        let Some(text) = root.attribute(key) else {
            continue;
        };
        let length = Length::from_str(text).map_err(|e| format!("its {key}: {e}"))?;
        let Some(unit) = mm_in(length.unit) else {
            continue;
        };
        // Without a viewBox a user unit is a CSS pixel, 1/96 in.
        let mm = across.map_or(25.4 / 96.0, |units| length.number * unit / units);
        let smaller = found.is_none_or(|before| mm < before);
        if mm.is_finite() && mm > 0.0 && smaller {
            found = Some(mm);
        }
    }
    Ok(found)
}

const fn mm_in(unit: LengthUnit) -> Option<f64> {
    match unit {
        LengthUnit::Mm => Some(1.0),
        LengthUnit::Cm => Some(10.0),
        LengthUnit::In => Some(25.4),
        LengthUnit::Pt => Some(25.4 / 72.0),
        LengthUnit::Pc => Some(25.4 / 6.0),
        _ => None,
    }
}

/// A number of an element in user units; 0 when it is left out.
fn number(node: Node<'_, '_>, key: &str) -> Result<f64, String> {
    let Some(text) = node.attribute(key) else {
        return Ok(0.0);
    };
    let length = Length::from_str(text).map_err(|e| format!("its {key}: {e}"))?;
    match length.unit {
        LengthUnit::None | LengthUnit::Px => Ok(length.number),
        other => mm_in(other)
            .map(|mm| length.number * mm * 96.0 / 25.4)
            .ok_or_else(|| format!("its {key} is in a unit that depends on the page")),
    }
}

fn shape(node: Node<'_, '_>) -> Result<Vec<(Vec<Bit>, bool)>, String> {
    let n = |key| number(node, key);
    match node.tag_name().name() {
        "path" => subpaths(node.attribute("d").unwrap_or("")),
        "line" => {
            let (from, to) = (
                Point::new(n("x1")?, n("y1")?),
                Point::new(n("x2")?, n("y2")?),
            );
            Ok(vec![(vec![Bit::line(from, to)], false)])
        }
        "circle" => round(Point::new(n("cx")?, n("cy")?), (n("r")?, n("r")?)),
        "ellipse" => round(Point::new(n("cx")?, n("cy")?), (n("rx")?, n("ry")?)),
        "rect" => rectangle(node),
        kind => {
            let data = node.attribute("points").unwrap_or("");
            let points: Vec<Point> = PointsParser::from(data)
                .map(|(x, y)| Point::new(x, y))
                .collect();
            Ok(vec![polygon(&points, kind == "polygon")])
        }
    }
}

fn round(centre: Point, (rx, ry): (f64, f64)) -> Result<Vec<(Vec<Bit>, bool)>, String> {
    if rx > 0.0 && ry > 0.0 {
        let onto = Affine::ellipse(centre, (rx, ry), 0.0);
        return Ok(vec![(unit_arc(0.0, TAU, &onto), true)]);
    }
    Err("it has no radius".to_owned())
}

fn polygon(points: &[Point], closed: bool) -> (Vec<Bit>, bool) {
    let mut bits: Vec<Bit> = points.windows(2).map(|w| Bit::line(w[0], w[1])).collect();
    if let (Some(first), Some(last), true) = (points.first(), points.last(), closed) {
        bits.push(Bit::line(*last, *first));
    }
    bits.retain(|b| b.start() != b.end());
    (bits, closed)
}

fn rectangle(node: Node<'_, '_>) -> Result<Vec<(Vec<Bit>, bool)>, String> {
    let [x, y, w, h] = ["x", "y", "width", "height"].map(|key| number(node, key));
    let (x, y, w, h) = (x?, y?, w?, h?);
    let radius = |key, other, most: f64| {
        let key = if node.has_attribute(key) { key } else { other };
        number(node, key).map(|r| r.clamp(0.0, most / 2.0))
    };
    let (rx, ry) = (radius("rx", "ry", w)?, radius("ry", "rx", h)?);
    let corners = [(x, y), (x + w, y), (x + w, y + h), (x, y + h)].map(|(x, y)| Point::new(x, y));
    if rx <= 0.0 || ry <= 0.0 {
        return Ok(vec![polygon(&corners, true)]);
    }
    // Each corner's arc about its own centre, from upper left round by the right.
    let centres = [
        (x + rx, y + ry),
        (x + w - rx, y + ry),
        (x + w - rx, y + h - ry),
        (x + rx, y + h - ry),
    ];
    let arcs: Vec<Vec<Bit>> = centres
        .into_iter()
        .zip([2.0, 3.0, 0.0, 1.0])
        .map(|((cx, cy), quarter)| {
            let onto = Affine::ellipse(Point::new(cx, cy), (rx, ry), 0.0);
            unit_arc(quarter * FRAC_PI_2, FRAC_PI_2, &onto)
        })
        .collect();
    let mut bits: Vec<Bit> = Vec::new();
    for arc in arcs {
        if let (Some(last), Some(first)) = (bits.last(), arc.first()) {
            bits.push(Bit::line(last.end(), first.start()));
        }
        bits.extend(arc);
    }
    if let (Some(last), Some(first)) = (bits.last(), bits.first()) {
        bits.push(Bit::line(last.end(), first.start()));
    }
    bits.retain(|b| b.start().distance(b.end()) > 1e-9);
    Ok(vec![(bits, true)])
}
