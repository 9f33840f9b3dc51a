//! The whole job as named elements on layers with plain names, in the slab's frame.

use crate::cut::{Cut, CutKind, SetOut};
use crate::document::mark;
use crate::geom::{Point, Seg};
use crate::plan::{NamedPoint, Plan};

/// Length of the stroke that shows a station, mm (judgement: seen beside a line, not taken for one).
const STATION_MM: f64 = 20.0;

/// Elements that belong together.
#[derive(Clone, Debug)]
pub struct Layer {
    /// Its name: lower case letters and `-`.
    pub name: &'static str,
    /// What is on it, in the plan's order.
    pub elements: Vec<Element>,
}

/// One line or mark.
#[derive(Clone, Debug)]
pub struct Element {
    /// Its name, like no other in the drawing: letters, digits and `-`.
    pub id: String,
    /// Where it is, mm in the slab's frame.
    pub form: Form,
    /// What is written beside it, if anything.
    pub label: Option<(Point, String)>,
}

/// The form of an element.
#[derive(Clone, Debug)]
pub enum Form {
    /// Closed: pieces end to end, back to the first.
    Ring(Vec<Seg>),
    /// Open: pieces end to end.
    Line(Vec<Seg>),
    /// A circle about a point, its radius in mm.
    Circle(Point, f64),
    /// A place.
    Point(Point),
}

impl Element {
    fn new(id: impl Into<String>, form: Form) -> Self {
        Self {
            id: id.into(),
            form,
            label: None,
        }
    }

    fn labelled(self, at: Point, words: impl Into<String>) -> Self {
        Self {
            label: Some((at, words.into())),
            ..self
        }
    }
}

/// The layers that have something on them.
#[must_use]
pub fn layers(plan: &Plan) -> Vec<Layer> {
    let all = [
        ("slab", slab(plan)),
        ("flaws", flaws(plan)),
        ("top", top(plan)),
        ("openings", openings(plan)),
        ("sawn", sawn(plan)),
        ("saw-lines", each_cut(plan, saw_line)),
        ("guide-lines", each_cut(plan, guide_line)),
        ("stations", each_cut(plan, stations)),
        ("core-holes", each_cut(plan, holes)),
        ("marks", each_cut(plan, marks)),
        ("offcuts", offcuts(plan)),
    ];
    let layers = all.map(|(name, elements)| Layer { name, elements });
    layers
        .into_iter()
        .filter(|l| !l.elements.is_empty())
        .collect()
}

fn ring(id: impl Into<String>, segs: &[Seg]) -> Element {
    Element::new(id, Form::Ring(segs.to_vec()))
}

fn numbered(name: &str, i: usize) -> String {
    format!("{name}-{}", i + 1)
}

fn each_cut(plan: &Plan, elements: impl Fn(&Cut) -> Vec<Element>) -> Vec<Element> {
    plan.cuts.iter().flat_map(elements).collect()
}

/// The slab with what goes through it already.
fn slab(plan: &Plan) -> Vec<Element> {
    let outline = ring("slab-outline", plan.slab.outline.segs());
    let taken = plan.slab.taken.iter().enumerate();
    let taken = taken.map(|(i, taken)| ring(numbered("taken", i), taken));
    std::iter::once(outline)
        .chain(taken)
        .chain(corners(&plan.slab.corners))
        .collect()
}

/// The finished outline with the names of its corners.
fn top(plan: &Plan) -> Vec<Element> {
    let outline = ring("top-outline", plan.top.outline.segs());
    std::iter::once(outline)
        .chain(corners(&plan.top.corners))
        .collect()
}

fn corners(corners: &[NamedPoint]) -> impl Iterator<Item = Element> {
    corners.iter().map(|corner| {
        let place = Form::Point(corner.edge);
        Element::new(format!("corner-{}", corner.name), place).labelled(corner.edge, &corner.name)
    })
}

fn flaws(plan: &Plan) -> Vec<Element> {
    let flaws = plan.slab.flaws.iter().enumerate();
    let each = flaws.filter_map(|(i, flaw)| {
        let start = flaw.path.first()?.start();
        let line = Element::new(numbered("flaw", i), Form::Line(flaw.path.clone()));
        Some(line.labelled(start, &flaw.what))
    });
    each.collect()
}

fn openings(plan: &Plan) -> Vec<Element> {
    let openings = plan.top.openings.iter().enumerate();
    let each = openings.map(|(i, opening)| {
        let outline = ring(numbered("opening", i), opening.outline.segs());
        outline.labelled(opening.outline.centroid(), &opening.what)
    });
    each.collect()
}

/// The outlines with the stone that the saw leaves for the finish: what a shop cuts.
fn sawn(plan: &Plan) -> Vec<Element> {
    let openings = plan.top.openings.iter().enumerate();
    let openings =
        openings.map(|(i, opening)| ring(numbered("sawn-opening", i), opening.made.segs()));
    std::iter::once(ring("sawn-top", plan.top.sawn_outline.segs()))
        .chain(openings)
        .collect()
}

/// The line to keep of a straight cut, as far as it is sawn.
fn saw_line(cut: &Cut) -> Vec<Element> {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return Vec::new();
    };
    let [from, to] = set_out.sawn;
    let kind = if cut.kind == CutKind::Relief {
        "relief"
    } else {
        "cut"
    };
    let line = Form::Line(vec![Seg::Line(from, to)]);
    let number = cut.number;
    vec![
        Element::new(format!("{kind}-{number}"), line)
            .labelled(from.midpoint(to), number.to_string()),
    ]
}

/// The guide's edge from mark to mark.
fn guide_line(cut: &Cut) -> Vec<Element> {
    let lines = mark::lines(cut).into_iter().filter(|line| line.guide);
    let each = lines.map(|line| {
        let [from, to] = line.ends.map(|end| end.at);
        let form = Form::Line(vec![Seg::Line(from, to)]);
        Element::new(format!("guide-{}", cut.number), form)
    });
    each.collect()
}

/// Each station as a stroke across the line to keep, outwards from its touching point.
fn stations(cut: &Cut) -> Vec<Element> {
    let Some(curve) = cut.set_out.curve() else {
        return Vec::new();
    };
    let each = curve.stations.iter().map(|station| {
        let outwards = (station.touch - curve.pivot).unit() * STATION_MM;
        let to = station.touch + outwards;
        let id = format!("cut-{}-station-{}", cut.number, station.number);
        let form = Form::Line(vec![Seg::Line(station.touch, to)]);
        Element::new(id, form).labelled(to, station.number.to_string())
    });
    each.collect()
}

fn holes(cut: &Cut) -> Vec<Element> {
    let holes = cut.holes.iter().enumerate();
    let each = holes.map(|(i, hole)| {
        let id = numbered(&format!("cut-{}-hole", cut.number), i);
        Element::new(id, Form::Circle(hole.at, hole.diameter / 2.0))
    });
    each.collect()
}

/// The marks under the names they have on the sheet.
fn marks(cut: &Cut) -> Vec<Element> {
    let marked = |name: String, at: Point| {
        Element::new(format!("mark-{name}"), Form::Point(at)).labelled(at, name)
    };
    let lines = mark::lines(cut).into_iter();
    let ends = lines.flat_map(|line| {
        let places = line.ends.map(|end| end.at);
        line.names.into_iter().zip(places)
    });
    let points = mark::points(cut).into_iter().map(|p| (p.name, p.at));
    ends.chain(points)
        .map(|(name, at)| marked(name, at))
        .collect()
}

fn offcuts(plan: &Plan) -> Vec<Element> {
    let each = plan.pieces.iter().flat_map(|piece| {
        let rings = piece.outline.iter().enumerate();
        rings.map(|(i, segs)| {
            let element = ring(numbered(&format!("offcut-{}", piece.name), i), segs);
            match i {
                0 => element.labelled(piece.balance, &piece.name),
                _ => element,
            }
        })
    });
    each.collect()
}
