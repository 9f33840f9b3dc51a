//! What stands out over the sawn arcs after the last cut, measured on the stone that is left.

use crate::cut::kept::{BoundaryPiece, Kept, Whose};
use crate::cut::{Cut, CutKind, LeftOver, Remains, Removal};
use crate::geom::{Outline, Point, Region, SAME_MM, Seg, Side};
use crate::job::Job;
use crate::place::Placement;

/// More than a cut is said to leave by less than this is rounding, mm.
const MORE_MM: f64 = 0.002;

/// Adds to each curve what stands out over its arc farther than the curve is said to leave: at the face or at the
/// underside, the corner of the stone that is farthest out. The formulas of [`crate::cut::curve`] and
/// [`crate::cut::concave`] hold along an arc; at its ends the cuts beside it have their part in what is left.
///
/// Waste that no cut frees, run-outs and the edges of core holes are told apart. Corners of the stone × pieces of the kept
/// boundary.
pub(super) fn add(
    job: &Job,
    placement: &Placement,
    stones: [&Region; 2],
    unfreed: &[Region],
    cuts: &mut [Cut],
) {
    let kept = Kept::of(job, placement);
    let run_outs: Vec<Outline> = cuts.iter().flat_map(Cut::run_outs).collect();
    let told_apart = |p: Point| {
        unfreed.iter().any(|waste| waste.side(p) != Side::Outside)
            || run_outs
                .iter()
                .any(|run_out| run_out.side(p) != Side::Outside)
    };
    let mut farthest: Vec<Option<(f64, Point)>> = vec![None; cuts.len()];
    for corner in stones.into_iter().flat_map(corners) {
        if kept.region().side(corner) != Side::Outside {
            continue;
        }
        let Some((out, cut)) = over_curve(&kept, cuts, corner) else {
            continue;
        };
        let told = farthest[cut].map_or(cuts[cut].stands_out_mm(), |(most, _)| most);
        let of_slab = || out <= beside_flush_mm(job, &kept, corner);
        if out > told + MORE_MM && !of_slab() && !bored(cuts, corner) && !told_apart(corner) {
            farthest[cut] = Some((out, corner));
        }
    }
    for (cut, found) in cuts.iter_mut().zip(farthest) {
        cut.left_to_remove
            .extend(found.map(|(length, at)| LeftOver {
                why: Remains::AtEnd,
                at,
                length,
                heading: None,
                left: length,
                by: Removal::Ground,
            }));
    }
}

fn corners(stone: &Region) -> impl Iterator<Item = Point> {
    let rings = std::iter::once(&stone.outer).chain(&stone.holes);
    rings.flat_map(|ring| ring.segs().iter().map(Seg::start))
}

/// How far a corner of the stone stands out, mm, and the curve that makes the piece of the kept boundary nearest to it;
/// nothing where a straight cut makes that. Where two pieces are as near, the arc counts.
fn over_curve(kept: &Kept, cuts: &[Cut], corner: Point) -> Option<(f64, usize)> {
    let pieces = kept
        .rings
        .iter()
        .flat_map(|ring| ring.pieces.iter().map(|piece| (ring.whose, piece)));
    let behind = |piece: &BoundaryPiece| match piece.seg {
        Seg::Line(..) => SAME_MM,
        Seg::Arc(_) => 0.0,
    };
    let off = |(_, piece): &(Whose, &BoundaryPiece)| piece.seg.distance(corner) + behind(piece);
    let (whose, piece) = pieces.min_by(|a, b| off(a).total_cmp(&off(b)))?;
    let makes = |cut: &Cut| {
        cut.kind == CutKind::Curve && cut.edge == piece.name && cut.cutout == whose.cutout_number()
    };
    let cut = cuts.iter().position(makes)?;
    Some((piece.seg.distance(corner), cut))
}

/// Beside an edge that stays as the slab has it the stone goes on to the slab's own edge: as far off as the tape lets
/// that be, and in a corner between two such edges farther, mm.
fn beside_flush_mm(job: &Job, kept: &Kept, corner: Point) -> f64 {
    let flush = kept.rings[0].pieces.iter().any(|p| !p.sawn);
    if flush && job.slab.shape.outline().distance(corner) <= SAME_MM {
        3.0 * job.slab.tape_error_mm
    } else {
        0.0
    }
}

/// Whether a corner lies on the edge of a core hole: what that leaves is told with the hole.
fn bored(cuts: &[Cut], corner: Point) -> bool {
    let mut holes = cuts.iter().flat_map(|c| &c.holes);
    holes.any(|h| (h.at.distance(corner) - h.diameter / 2.0).abs() <= MORE_MM)
}
