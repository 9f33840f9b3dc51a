//! What the drawings of a plan have in common: the slab at a stage of the cutting.

use super::figure::{Lettering, LineStyle, Shape, Side, Thing};
use super::mark;
use super::say::{name, value};
use crate::cut::{Cut, EdgeMark, SetOut};
use crate::geom::{Bounds, Outline, Point, Seg, Vector};
use crate::piece::Piece;
use crate::plan::Plan;
use crate::words::Value;

/// The box round the slab.
pub(super) fn slab_bounds(plan: &Plan) -> Bounds {
    plan.slab.outline.bounds()
}

/// The slab before a cut: what has gone dotted, what is still waste hatched, the top plain.
pub(super) fn stage(plan: &Plan, next_cut: usize) -> Vec<Thing> {
    let shape = |piece: &Piece| {
        if piece.after_cut < next_cut {
            Shape::Gone
        } else {
            Shape::Waste
        }
    };
    let waste = plan.pieces.iter();
    let mut things: Vec<Thing> = waste
        .map(|p| Thing::Area(shape(p), p.outline.clone()))
        .collect();
    if next_cut <= 1 {
        let edge = plan.slab.outline.segs().to_vec();
        things.push(Thing::Area(Shape::Edge, vec![edge]));
    }
    for taken in &plan.slab.taken {
        things.push(Thing::Area(Shape::Gone, vec![taken.clone()]));
    }
    let mut rings = vec![plan.top.outline.segs().to_vec()];
    rings.extend_from_slice(&plan.top.cutouts);
    things.push(Thing::Area(Shape::Kept, rings));
    things
}

/// What a cut takes out of the face.
pub(super) fn kerf(cut: &Cut) -> Vec<Thing> {
    let solid = |ring: Vec<Seg>| Thing::Area(Shape::Kerf, vec![ring]);
    if let SetOut::Guide(set_out) = &cut.set_out {
        // The disc runs out over the slab's edge; the drawing shows what it takes of the stone.
        let [from, to] = set_out.sawn;
        let out = (to - from).unit().right() * cut.tool.width_mm();
        return vec![solid(crate::geom::seg::ring(&[
            from,
            to,
            to + out,
            from + out,
        ]))];
    }
    let slots = cut.slots();
    slots
        .iter()
        .map(|slot| solid(slot.segs().to_vec()))
        .collect()
}

/// The middle of a cut, for its number.
pub(super) fn middle(cut: &Cut) -> Point {
    match &cut.set_out {
        SetOut::Guide(set_out) => set_out.sawn[0].midpoint(set_out.sawn[1]),
        SetOut::Centres(marks) => marks.first().map_or(Point::ORIGIN, |m| m.at),
        SetOut::Pivot(_) | SetOut::Ordinates(_) => cut
            .set_out
            .curve()
            .and_then(|c| c.stations.get(c.stations.len() / 2))
            .map_or(Point::ORIGIN, |s| s.touch),
    }
}

/// Ringed numbers on cuts.
pub(super) fn rings<'a>(plan: &Plan, cuts: impl IntoIterator<Item = &'a Cut>) -> Vec<Thing> {
    let ring = |cut: &Cut| {
        let at = middle(cut);
        // A hole may lie right at the balance point.
        let away = (at - plan.top.balance).unit_or(Vector::new(0.0, 1.0));
        Thing::Ring(at, away, cut.number)
    };
    cuts.into_iter().map(ring).collect()
}

/// Flaws with their clearance and names.
pub(super) fn flaws(plan: &Plan) -> Vec<Thing> {
    let mut things = Vec::new();
    for flaw in &plan.slab.flaws {
        things.push(Thing::Line(LineStyle::Flaw, flaw.path.clone()));
        for ring in &flaw.clearance {
            things.push(Thing::Line(LineStyle::Clearance, ring.clone()));
        }
        if let Some(seg) = flaw.path.first() {
            things.push(Thing::Label(seg.at(0.5), Lettering::Word, name(&flaw.what)));
        }
    }
    things
}

/// Numbers of the top's corners, inside it, of those whose names are asked for.
pub(super) fn top_corners(plan: &Plan, asked: impl Fn(&str) -> bool) -> Vec<Thing> {
    let corners = plan.top.corners.iter().filter(|c| asked(&c.name));
    corners
        .map(|c| {
            let inwards = (plan.top.balance - c.edge).unit();
            let number = value("bench-top-corner", [("corner", name(&c.name))]);
            Thing::Towards(c.edge, inwards, Lettering::Word, number)
        })
        .collect()
}

/// How thick the stone is, from the thinnest reading to the thickest.
pub(super) fn thick(plan: &Plan) -> Value {
    let read = plan.slab.thickness;
    match (Value::fine(read.least).down(), Value::fine(read.most).up()) {
        (Value::Quantity(least), Value::Quantity(most)) if read.least < read.most => {
            Value::Range(least, most)
        }
        (least, _) => least,
    }
}

/// Names of the slab's corners, outside it.
pub(super) fn corner_names(plan: &Plan) -> Vec<Thing> {
    let middle = plan.slab.balance;
    let corners = plan.slab.corners.iter();
    corners
        .map(|c| {
            let away = (c.at - middle).unit();
            Thing::Towards(c.at, away, Lettering::Name, name(&c.name))
        })
        .collect()
}

/// Names of the waste pieces with the most they can weigh, inside them.
pub(super) fn waste_weights(plan: &Plan) -> Vec<Thing> {
    let weight = |piece: &Piece| {
        let args = [
            ("name", name(&piece.name)),
            ("mass", Value::mass(piece.mass.high).up()),
        ];
        within(piece, value("bench-waste-name", args))
    };
    plan.pieces.iter().filter_map(weight).collect()
}

/// Whether the stone at a point of the slab's edge is still there when a cut is made.
pub(super) fn still_there(plan: &Plan, cut: usize, at: Point) -> bool {
    // Between the line to keep and the waste lie the allowance and a kerf.
    const BESIDE_MM: f64 = 10.0;
    let near = |ring: &[Seg]| ring.iter().any(|s| s.distance(at) < BESIDE_MM);
    let mut later = plan.pieces.iter().filter(|p| p.after_cut >= cut);
    near(plan.top.outline.segs()) || later.any(|p| p.outline.iter().any(|r| near(r)))
}

/// A mark on the slab's edge as a dimension from its corner: the corner's place and the side it lies on;
/// only along an edge that runs level or upright.
pub(super) fn reach(plan: &Plan, mark: &EdgeMark) -> Option<(Point, Side)> {
    const STRAIGHT_MM: f64 = 0.5;
    let corners = &plan.slab.corners;
    let corner = corners.iter().find(|c| c.name == mark.tie.corner)?;
    let bounds = slab_bounds(plan);
    let (a, b) = (corner.at, mark.at);
    let near = |x: f64, y: f64| (x - y).abs() < STRAIGHT_MM;
    let sides = [
        (Side::Below, near(a.y, b.y) && near(a.y, bounds.min.y)),
        (Side::Above, near(a.y, b.y) && near(a.y, bounds.max.y)),
        (Side::Left, near(a.x, b.x) && near(a.x, bounds.min.x)),
        (Side::Right, near(a.x, b.x) && near(a.x, bounds.max.x)),
    ];
    let side = sides.iter().find(|(_, on)| *on)?.0;
    Some((corner.at, side))
}

/// The struck stations of a cut, as marks.
pub(super) fn stations(cut: &Cut) -> impl Iterator<Item = Thing> {
    let each = mark::stations(cut).into_iter();
    each.map(|(named, s)| Thing::Mark(s.at, named))
}

/// Names of waste pieces, inside them.
pub(super) fn waste_names<'a>(pieces: impl IntoIterator<Item = &'a Piece>) -> Vec<Thing> {
    let named = |piece: &Piece| within(piece, name(&piece.name));
    pieces.into_iter().filter_map(named).collect()
}

fn within(piece: &Piece, words: Value) -> Option<Thing> {
    let outline = Outline::new(piece.outline.first()?.clone()).ok()?;
    Some(Thing::Within(
        outline,
        piece.balance,
        Lettering::Number,
        words,
    ))
}

/// The word "keep" inside the kept stone.
pub(super) fn keep(plan: &Plan, near: Point) -> Thing {
    Thing::Within(
        plan.top.outline.clone(),
        near,
        Lettering::Word,
        value("bench-keep", []),
    )
}

/// Overall dimensions of the slab: below it and to its left, in a row.
pub(super) fn slab_dimensions(plan: &Plan, row: u8) -> Vec<Thing> {
    let b = slab_bounds(plan);
    let right = Point::new(b.max.x, b.min.y);
    let high = Point::new(b.min.x, b.max.y);
    vec![
        Thing::Dimension(b.min, right, Side::Below, row, Value::size(b.width())),
        Thing::Dimension(b.min, high, Side::Left, row, Value::size(b.height())),
    ]
}

/// Waste pieces that a cut frees.
pub(super) fn freed<'a>(plan: &'a Plan, cut: &'a Cut) -> impl Iterator<Item = &'a Piece> {
    let pieces = plan.pieces.iter();
    pieces.filter(|p| cut.frees.contains(&p.name))
}

/// A box grown on every side, mm.
pub(super) fn grown(area: Bounds, by: f64) -> Bounds {
    let more = Vector::new(by, by);
    Bounds {
        min: area.min - more,
        max: area.max + more,
    }
}
