//! The words for a figure, shared by the slab and the top: `rectangle` or `corners`, `round`,
//! `clip`.

use super::figure_fault;
use crate::geom::Point;
use crate::job::given::Given;
use crate::job::ledger::Span;
use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;
use crate::job::shape::{corner_name, edge_name};
use crate::job::words::{known_names, nearest};
use crate::job::{CornerCut, Naming, Shape};

/// The most corners a figure may have (judgement: far more than a worktop has).
const MOST_CORNERS: usize = 64;
/// A side of a slab or a top, mm (judgement: from the smallest thing to measure with a tape to
/// longer than any slab).
const SIDE: Limits = from_to(1.0, 20_000.0);
/// The radius or set-back of a corner, mm.
const CORNER: Limits = from_to(0.1, 20_000.0);

/// A figure being read: its corners, what is done to each, and where each was said.
#[derive(Debug)]
pub(super) struct Figure {
    pub(super) naming: Naming,
    pub(super) corners: Vec<Point>,
    pub(super) cuts: Vec<CornerCut>,
    /// The key and the place of the corners.
    pub(super) said: (String, Span),
    /// The key and the place of each corner's treatment.
    pub(super) cut_said: Vec<Option<(String, Span)>>,
}

/// Reads a figure. Every other way the table may describe one must have been asked for before.
pub(super) fn read(r: &mut Reader<'_>, naming: Naming, wanted: bool) -> Option<Shape> {
    let rectangle = r.get("rectangle");
    let corners = r.get("corners");
    let (round, clip) = (r.get("round"), r.get("clip"));
    let (said, corners) = match (rectangle, corners) {
        (Some(rectangle), None) => (place_of(&rectangle), sides(&rectangle)),
        (None, Some(given)) => (place_of(&given), listed_corners(&given, naming)),
        (Some(_), Some(second)) => {
            return second.fault(
                "stands beside `rectangle`: the figure is described twice",
                "keep one of `rectangle` and `corners`",
            );
        }
        (None, None) => {
            if wanted {
                r.missing("rectangle", "its size, or its `corners`");
            }
            return None;
        }
    };
    let corners = corners?;
    let mut figure = Figure {
        naming,
        cuts: vec![CornerCut::Sharp; corners.len()],
        cut_said: vec![None; corners.len()],
        corners,
        said,
    };
    let clean = [
        figure.treat(round, CornerCut::Round),
        figure.treat(clip, CornerCut::Clip),
    ];
    if clean.contains(&None) {
        return None;
    }
    figure_fault::shape(r.ledger, &figure)
}

fn place_of(given: &Given<'_>) -> (String, Span) {
    (given.key.clone(), given.span)
}

/// The corners of `[length, depth]`.
fn sides(given: &Given<'_>) -> Option<Vec<Point>> {
    let sides: Vec<_> = given.list(2, 2)?.iter().map(|s| s.length(SIDE)).collect();
    let [Some(length), Some(depth)] = sides[..] else {
        return None;
    };
    let xy = [(0.0, 0.0), (length, 0.0), (length, depth), (0.0, depth)];
    Some(xy.map(|(x, y)| Point::new(x, y)).to_vec())
}

/// The corners as listed; the first is the origin of the figure's frame.
fn listed_corners(given: &Given<'_>, naming: Naming) -> Option<Vec<Point>> {
    let points = given.points(3, MOST_CORNERS)?;
    let first = *points.first()?;
    if first != Point::new(0.0, 0.0) {
        let name = corner_name(naming, 0);
        let ledger = given.ledger;
        let (x, y) = (ledger.length(first.x), ledger.length(first.y));
        return given.fault(
            &format!("puts corner {name} at ({x}, {y}); it is the origin of the frame and belongs at (0, 0)"),
            "take its x from every x and its y from every y, here and in everything measured in the same frame",
        );
    }
    Some(points)
}

impl Figure {
    /// Name of a corner.
    pub(super) fn corner(&self, corner: usize) -> String {
        corner_name(self.naming, corner)
    }

    /// Name of an edge.
    pub(super) fn edge(&self, edge: usize) -> String {
        edge_name(self.naming, edge, self.corners.len())
    }

    /// Takes over `round` or `clip`. Nothing when one of its entries is at fault.
    fn treat(&mut self, given: Option<Given<'_>>, make: fn(f64) -> CornerCut) -> Option<()> {
        let Some(given) = given else {
            return Some(());
        };
        let mut clean = Some(());
        for (name, name_span, value) in given.entries()? {
            let size = value.length(CORNER);
            let corner = self.find_corner(name, name_span, &value);
            let (Some(size), Some(corner)) = (size, corner) else {
                clean = None;
                continue;
            };
            if self.cut_said[corner].is_some() {
                let message = format!("treats corner {name}, which is treated already");
                clean = value.fault(&message, "a corner is either rounded or clipped; keep one");
                continue;
            }
            self.cuts[corner] = make(size);
            self.cut_said[corner] = Some((value.key.clone(), value.span));
        }
        clean
    }

    fn find_corner(&self, name: &str, span: Span, value: &Given<'_>) -> Option<usize> {
        let count = self.corners.len();
        let found = (0..count).find(|i| self.corner(*i) == name);
        if found.is_none() {
            let last = self.corner(count - 1);
            let message = format!("{}: there is no corner {name}", value.key);
            let hint = format!("the corners are {} to {last}", self.corner(0));
            value.ledger.fault(&value.key, span, message, hint);
        }
        found
    }
}

/// The edge a name means, in either direction: `AB` or `BA`.
pub(super) fn find_edge(shape: &Shape, name: &str) -> Option<usize> {
    let count = shape.count();
    (0..count).find(|edge| {
        let ends = [*edge, (*edge + 1) % count].map(|c| shape.corner_name(c));
        let dash = if shape.edge_name(*edge).contains('-') {
            "-"
        } else {
            ""
        };
        name == format!("{}{dash}{}", ends[0], ends[1])
            || name == format!("{}{dash}{}", ends[1], ends[0])
    })
}

/// What to say about an edge that is not there.
pub(super) fn edge_hint(shape: &Shape, name: &str) -> String {
    let names: Vec<String> = (0..shape.count()).map(|e| shape.edge_name(e)).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    match nearest(name, names.iter().copied()) {
        Some(near) => format!("did you mean {near}? The edges are {}", known_names(&names)),
        None => format!("the edges are {}", known_names(&names)),
    }
}
