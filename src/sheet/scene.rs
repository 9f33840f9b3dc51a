//! What the drawings of a plan have in common: the slab at a stage of the cutting.

use super::dimension::Run;
use super::drawing::{Drawing, FIGURE};
use super::figure::Figures;
use super::item::{Dash, Ink, Stroke as Line};
use super::labels::Prefer;
use super::pen::NARROW_MM;
use crate::cut::{Cut, SetOut};
use crate::geom::{Bounds, Outline, Point, Vector};
use crate::piece::Piece;
use crate::plan::Plan;

/// Paper left free round a drawing with two rows of dimensions, mm.
pub const DIMENSIONED_MM: f64 = 14.0;

/// The slab before a cut: what has gone dotted, what is still waste hatched, the top plain.
pub fn stage(drawing: &mut Drawing, plan: &Plan, next_cut: usize) {
    for piece in &plan.pieces {
        if piece.after_cut < next_cut {
            drawing.gone(&piece.outline);
        } else {
            drawing.waste(&piece.outline);
        }
    }
    if next_cut == 1 {
        drawing.slab(&plan.slab.outline);
    }
    drawing.gone(&plan.slab.taken);
    drawing.kept(&plan.top.outline, &plan.top.cutouts);
}

/// What a cut takes out of the face, solid.
pub fn kerf(drawing: &mut Drawing, cut: &Cut) {
    if let SetOut::Guide(set_out) = &cut.set_out {
        // The disc runs out over the slab's edge; the drawing shows what it takes of the stone.
        let [from, to] = set_out.sawn;
        let out = (to - from).unit().right() * cut.tool.width_mm();
        drawing.kerf(&[from, to, to + out, from + out]);
        return;
    }
    for slot in cut.slots() {
        drawing.kerf(&slot.flattened());
    }
}

/// The practice slots in the waste, solid, with their word.
pub fn practice(drawing: &mut Drawing, plan: &Plan) {
    let practice = &plan.practice;
    for mark in practice.cut.iter().chain(&practice.plunges) {
        let last = mark.passes.last().map_or(0, |p| p.number);
        for stroke in mark.strokes.iter().filter(|s| s.pass == last) {
            drawing.kerf(&stroke.slot(&mark.disc, 0.0));
        }
    }
}

/// The middle of a cut, for its number.
#[must_use]
pub fn middle(cut: &Cut) -> Point {
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

/// Flaws with their clearance.
pub fn flaws(drawing: &mut Drawing, plan: &Plan) {
    let edge = Line::solid(NARROW_MM, Ink::Accent);
    for flaw in &plan.slab.flaws {
        drawing.line(&flaw.path, Line::solid(0.35, Ink::Accent));
        for ring in &flaw.clearance {
            drawing.line(ring, edge.dashed(Dash::Dashed));
        }
        if let Some(seg) = flaw.path.first() {
            drawing.label(seg.at(0.5), &flaw.what, &FIGURE, Prefer::Beside);
        }
    }
}

/// Names of the slab's corners, outside it.
pub fn slab_names(drawing: &mut Drawing, plan: &Plan) {
    let middle = plan.slab.balance;
    for corner in &plan.slab.corners {
        drawing.name_towards(corner.at, (corner.at - middle).unit(), &corner.name);
    }
}

/// Names of the top's corners, inside it: at a rounded or clipped corner by the middle of what
/// was made of it.
pub fn top_names(drawing: &mut Drawing, plan: &Plan) {
    let corners = &plan.top.corners;
    let count = corners.len();
    for (i, corner) in corners.iter().enumerate() {
        let before = corners[(i + count - 1) % count].at;
        let after = corners[(i + 1) % count].at;
        let inwards = (before - corner.at).unit() + (after - corner.at).unit();
        drawing.name_towards(corner.edge, inwards.unit(), &corner.name);
    }
}

/// Ringed numbers on the cuts.
pub fn cut_numbers(drawing: &mut Drawing, plan: &Plan) {
    for cut in &plan.cuts {
        let at = middle(cut);
        let away = (at - plan.top.balance).unit();
        drawing.badge_off(at, away * 4.0, &cut.number.to_string());
    }
}

/// Names of the waste pieces with the most they can weigh, as the cards say it.
pub fn piece_names(drawing: &mut Drawing, plan: &Plan, figures: Figures) {
    for piece in &plan.pieces {
        let text = format!("{}  {}", piece.name, figures.mass(piece.mass.high));
        name_piece(drawing, piece, &text);
    }
}

/// The name of one waste piece.
pub fn name_piece(drawing: &mut Drawing, piece: &Piece, text: &str) {
    let outer = piece.outline.first().map(|r| Outline::new(r.clone()));
    if let Some(Ok(outline)) = outer {
        drawing.piece(&outline, piece.balance, text);
    }
}

/// Overall dimensions of the slab: below it and to its right.
pub fn slab_dimensions(drawing: &mut Drawing, plan: &Plan, figures: Figures) {
    let b = plan.slab.outline.bounds();
    let right = Point::new(b.max.x, b.min.y);
    drawing.dimension(
        b.min,
        right,
        Run::Level,
        -8.0,
        figures.size_label(b.width()),
    );
    drawing.dimension(
        right,
        b.max,
        Run::Upright,
        8.0,
        figures.size_label(b.height()),
    );
}

/// Height of paper that a drawing of the whole slab needs at a width, mm, at most `most`.
#[must_use]
pub fn height_for(plan: &Plan, width: f64, most: f64) -> f64 {
    let slab = slab_bounds(plan);
    let free = 2.0 * DIMENSIONED_MM;
    let needed = (width - free) * slab.height() / slab.width().max(1.0) + free;
    needed.min(most)
}

/// The box round the slab and what is drawn about it.
#[must_use]
pub fn slab_bounds(plan: &Plan) -> Bounds {
    plan.slab.outline.bounds()
}

/// The whole picture: slab, waste, kerfs, top, names, dimensions.
#[must_use]
pub fn overview(plan: &Plan, area: Bounds) -> Drawing {
    let figures = Figures {
        units: plan.job.units,
    };
    let mut drawing = Drawing::fit(slab_bounds(plan), area, DIMENSIONED_MM);
    stage(&mut drawing, plan, 1);
    for cut in &plan.cuts {
        kerf(&mut drawing, cut);
    }
    practice(&mut drawing, plan);
    slab_dimensions(&mut drawing, plan, figures);
    cut_numbers(&mut drawing, plan);
    slab_names(&mut drawing, plan);
    top_names(&mut drawing, plan);
    drawing.balance(plan.top.balance);
    top_size(&mut drawing, plan, figures);
    flaws(&mut drawing, plan);
    piece_names(&mut drawing, plan, figures);
    drawing
}

/// The top's name and size in the middle of it.
fn top_size(drawing: &mut Drawing, plan: &Plan, figures: Figures) {
    let [length, width] = plan.top.size;
    let text = format!(
        "top {} × {} {}",
        figures.size_bare(length),
        figures.size_bare(width),
        figures.unit()
    );
    let below = Vector::new(0.0, -1.0);
    drawing.name_towards(plan.top.balance, below * 2.0, &text);
}
