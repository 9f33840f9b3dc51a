//! The top as the saw leaves it: the finished figure with its allowances.

use crate::geom::{Line, Outline, SAME_MM, Seg};
use crate::job::{CornerCut, Part, Shape};

/// The finished figure with each edge's allowance added, and what each piece belongs to. A corner
/// whose own allowance lies beyond those of its edges is not sawn: the edges' faces meet before it.
/// Nothing when the pieces cannot be carried on to meet.
pub(super) fn sawn_with(
    top: &Shape,
    edges: &[f64],
    corners: &[f64],
) -> Option<(Outline, Vec<Part>)> {
    let cuts = top.corner_cuts().iter().enumerate();
    let cuts: Vec<CornerCut> = cuts
        .map(|(i, cut)| {
            if buried(top, edges, corners, i) {
                CornerCut::Sharp
            } else {
                *cut
            }
        })
        .collect();
    let squared = if cuts == top.corner_cuts() {
        None
    } else {
        let (corners, bows) = (top.corners().to_vec(), top.bows().to_vec());
        Some(Shape::bowed(top.naming(), corners, cuts, bows).ok()?)
    };
    let top = squared.as_ref().unwrap_or(top);
    let by: Vec<f64> = top
        .parts()
        .iter()
        .map(|part| match part {
            Part::Edge(i) => edges[*i],
            Part::Corner(i) => corners[*i],
        })
        .collect();
    let outline = top.outline().offset_each(&by).ok()?;
    Some((outline, top.parts().to_vec()))
}

/// Whether the sawn faces of a corner's two edges meet inside its own sawn arc or flat.
fn buried(top: &Shape, edges: &[f64], corners: &[f64], corner: usize) -> bool {
    let n = top.count();
    let (before, own) = ((corner + n - 1) % n, corners[corner]);
    let sides = [before, corner].map(|edge| {
        let straight = top.is_straight(edge) && top.edge_seg(edge).is_some();
        straight.then(|| edges[edge])
    });
    match (top.corner_cuts()[corner], top.corner_seg(corner)) {
        // Each face takes an angle off its end of the arc.
        (CornerCut::Round(_), Some(Seg::Arc(arc))) => {
            let way = arc.sweep.signum();
            let off = |by: f64| {
                let share = (arc.radius + way * by) / (arc.radius + way * own);
                share.clamp(-1.0, 1.0).acos()
            };
            let both: f64 = sides.into_iter().flatten().map(off).sum();
            both >= arc.sweep.abs() - 1e-6
        }
        (CornerCut::Clip(_), Some(Seg::Line(a, b))) if sides.iter().all(Option::is_some) => {
            let flat = Line::through(a, b).shifted_right(own);
            let meet = |edge: usize| {
                let face = top.edge_line(edge).shifted_right(edges[edge]);
                Some(flat.foot(face.meet(&flat)?))
            };
            let ends = meet(before).zip(meet(corner));
            ends.is_some_and(|(from, to)| to - from <= SAME_MM)
        }
        _ => false,
    }
}
