//! The words for a figure, shared by the slab, the top, its cutouts and its base: `rectangle`,
//! `corners`, `circle` or a drawing, and `round`, `clip`, `scoop`, `bow`.

use super::figure_said::SaidFigure;
use super::{drawn, figure_fault};
use crate::geom::Point;
use crate::job::given::Given;
use crate::job::ledger::TextRange;
use crate::job::reader::Reader;
use crate::job::shape::{STRAIGHT, corner_name, edge_name, turn_at};
use crate::job::words::{known_names, nearest};
use crate::job::{CornerCut, Naming, Shape};

/// A rise below this is a straight edge, mm (far below what a tape can tell).
const LEAST_RISE: f64 = 1e-3;

/// Reads a figure.
pub(super) fn read(r: &mut Reader<'_>, naming: Naming, wanted: bool) -> Option<Shape> {
    let drawing = r.get("shape");
    if drawing.is_none() {
        drawn::no_drawing(r);
    }
    let ways = [
        r.get("rectangle"),
        r.get("corners"),
        circle_key(r, naming),
        drawing,
    ];
    let mut given = ways.into_iter().flatten();
    let Some(first) = given.next() else {
        if wanted {
            r.none_of("rectangle");
        }
        return None;
    };
    if let Some(second) = given.next() {
        let (first, second_key) = (last_key(&first.key), last_key(&second.key));
        return second.fault(
            &format!("stands beside `{first}`: the figure is described twice"),
            format!("keep one of `{first}` and `{second_key}`"),
        );
    }
    let corners = match last_key(&first.key) {
        "circle" => return circle(r, naming, &first),
        "shape" => return drawn_figure(r, naming, &first),
        "rectangle" => sides(&first),
        _ => listed_corners(&first, naming),
    };
    with_corners(r, naming, corners?, place_of(&first))
}

/// The figure with these corners, and what the table says of each corner and edge. `said` is the key
/// and the place that the corners come from.
pub(super) fn with_corners(
    r: &mut Reader<'_>,
    naming: Naming,
    corners: Vec<Point>,
    said: (String, TextRange),
) -> Option<Shape> {
    treated(r, SaidFigure::sharp(naming, corners, said))
}

/// The figure with what the table says of its corners and edges.
fn treated(r: &mut Reader<'_>, mut figure: SaidFigure) -> Option<Shape> {
    let [round, clip, scoop, bow] = treatments(r);
    // The bows come first: they decide at which corners an edge runs straight on.
    let clean = [
        figure.bend(bow),
        figure.treat(round, CornerCut::Round),
        figure.treat(clip, CornerCut::Clip),
        figure.treat(scoop, CornerCut::Scoop),
    ];
    if clean.contains(&None) {
        return None;
    }
    figure_fault::shape(r.ledger, &figure)
}

/// What a table may say of a figure's corners and edges.
fn treatments<'a>(r: &mut Reader<'a>) -> [Option<Given<'a>>; 4] {
    [r.get("round"), r.get("clip"), r.get("scoop"), r.get("bow")]
}

/// A slab is not bought as a circle.
fn circle_key<'a>(r: &mut Reader<'a>, naming: Naming) -> Option<Given<'a>> {
    match naming {
        Naming::Letters => None,
        Naming::Numbers => r.get("circle"),
    }
}

/// A circle has no corners to treat.
fn circle(r: &mut Reader<'_>, naming: Naming, given: &Given<'_>) -> Option<Shape> {
    let mut clean = true;
    for treated in treatments(r).into_iter().flatten() {
        treated.fault::<()>(
            "treats corners or edges, but a circle has none",
            "leave it out, or give the figure as `rectangle` or `corners`",
        );
        clean = false;
    }
    let across = given.length()?;
    clean.then(|| Shape::circle(naming, across).ok()).flatten()
}

/// A figure from a drawing.
fn drawn_figure(r: &mut Reader<'_>, naming: Naming, given: &Given<'_>) -> Option<Shape> {
    let drawn = drawn::figure(r, naming, given)?;
    match drawn.circle {
        Some(across) if naming == Naming::Numbers => Shape::circle(naming, across).ok(),
        _ => {
            let figure = SaidFigure {
                cuts: drawn.cuts,
                bows: drawn.bows,
                ..SaidFigure::sharp(naming, drawn.corners, place_of(given))
            };
            treated(r, figure)
        }
    }
}

/// The last part of a key: `rectangle` of `top.cutout[0].rectangle`.
fn last_key(key: &str) -> &str {
    key.rsplit('.').next().unwrap_or(key)
}

fn place_of(given: &Given<'_>) -> (String, TextRange) {
    (given.key.clone(), given.span)
}

/// The corners of `[length, depth]`.
fn sides(given: &Given<'_>) -> Option<Vec<Point>> {
    let sides: Vec<_> = given.list()?.iter().map(Given::length).collect();
    let [Some(length), Some(depth)] = sides[..] else {
        return None;
    };
    let xy = [(0.0, 0.0), (length, 0.0), (length, depth), (0.0, depth)];
    Some(xy.map(|(x, y)| Point::new(x, y)).to_vec())
}

/// The corners as listed; the first is the origin of the figure's frame.
fn listed_corners(given: &Given<'_>, naming: Naming) -> Option<Vec<Point>> {
    let points = given.points()?;
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

impl SaidFigure {
    /// Takes over `round`, `clip` or `scoop`. Nothing when one of its entries is at fault.
    fn treat(&mut self, given: Option<Given<'_>>, make: fn(f64) -> CornerCut) -> Option<()> {
        let Some(given) = given else {
            return Some(());
        };
        if !given.is_table() {
            return self.treat_all(&given, make);
        }
        let mut clean = Some(());
        for (name, name_span, value) in given.entries()? {
            let size = value.length();
            let corner = self.find_corner(name, name_span, &value);
            let (Some(size), Some(corner)) = (size, corner) else {
                clean = None;
                continue;
            };
            clean = clean.and(self.treat_one(&value, corner, make(size)));
        }
        clean
    }

    /// One size for every corner, save where the edges run straight on.
    fn treat_all(&mut self, given: &Given<'_>, make: fn(f64) -> CornerCut) -> Option<()> {
        let size = given.length()?;
        for corner in 0..self.corners.len() {
            if turn_at(&self.corners, &self.bows, corner).abs() >= STRAIGHT {
                self.treat_one(given, corner, make(size))?;
            }
        }
        Some(())
    }

    /// Treats one corner, once.
    fn treat_one(&mut self, given: &Given<'_>, corner: usize, cut: CornerCut) -> Option<()> {
        if self.cut_said[corner].is_some() {
            let name = self.corner(corner);
            return given.fault(
                &format!("treats corner {name}, which is treated already"),
                "a corner is rounded, clipped or scooped; keep one",
            );
        }
        self.cuts[corner] = cut;
        self.cut_said[corner] = Some((given.key.clone(), given.span));
        Some(())
    }

    /// Takes over `bow`. Nothing when one of its entries is at fault.
    fn bend(&mut self, given: Option<Given<'_>>) -> Option<()> {
        let Some(given) = given else {
            return Some(());
        };
        let mut clean = Some(());
        for (name, name_span, value) in given.entries()? {
            let rise = value.length();
            let edge = self.find_edge(name, name_span, &value);
            let (Some(rise), Some(edge)) = (rise, edge) else {
                clean = None;
                continue;
            };
            if self.bow_said[edge].is_some() {
                let message = format!("bends edge {name}, which is bent already");
                clean = value.fault(&message, "keep one of the two");
                continue;
            }
            self.bows[edge] = if rise.abs() < LEAST_RISE { 0.0 } else { rise };
            self.bow_said[edge] = Some((value.key.clone(), value.span));
        }
        clean
    }

    fn find_edge(&self, name: &str, span: TextRange, value: &Given<'_>) -> Option<usize> {
        let count = self.corners.len();
        let found = find_named_edge(self.naming, count, name);
        if found.is_none() {
            let message = format!("{}: there is no edge {name}", value.key);
            let hint = named_edge_hint(self.naming, count, name);
            value.ledger.fault(&value.key, span, message, hint);
        }
        found
    }

    fn find_corner(&self, name: &str, span: TextRange, value: &Given<'_>) -> Option<usize> {
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
    find_named_edge(shape.naming(), shape.count(), name)
}

fn find_named_edge(naming: Naming, count: usize, name: &str) -> Option<usize> {
    let dash = match naming {
        Naming::Letters => "",
        Naming::Numbers => "-",
    };
    (0..count).find(|edge| {
        let [a, b] = [*edge, (*edge + 1) % count].map(|c| corner_name(naming, c));
        name == format!("{a}{dash}{b}") || name == format!("{b}{dash}{a}")
    })
}

/// What to say about an edge that is not there.
pub(super) fn edge_hint(shape: &Shape, name: &str) -> String {
    named_edge_hint(shape.naming(), shape.count(), name)
}

fn named_edge_hint(naming: Naming, count: usize, name: &str) -> String {
    let names: Vec<String> = (0..count).map(|e| edge_name(naming, e, count)).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    match nearest(name, names.iter().copied()) {
        Some(near) => format!("did you mean {near}? The edges are {}", known_names(&names)),
        None => format!("the edges are {}", known_names(&names)),
    }
}
