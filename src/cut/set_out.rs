//! Marks and ties: what a person measures with a tape from corners that have names.

use serde::Serialize;

use crate::geom::{Point, SAME_MM};
use crate::job::{CornerCut, Part, Shape};

/// A taped distance from a named corner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tie {
    /// The slab's corner.
    pub corner: String,
    /// Distance, mm.
    pub distance: f64,
}

/// A mark on the edge of the slab.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct EdgeMark {
    /// Where it is.
    pub at: Point,
    /// The slab's edge (or corner, when it falls on a rounded one).
    pub on: String,
    /// From the nearest sharp corner.
    pub tie: Tie,
    /// Whether that stone is still there when the cut is made: if not, the line struck before the
    /// first cut shows the place on the stone that is left.
    pub still_there: bool,
}

/// The slab's corners that a tape can be held to: the sharp ones; all of them when none is sharp
/// (then as if squared off).
fn corners(slab: &Shape) -> Vec<(String, Point)> {
    let sharp: Vec<usize> = (0..slab.count())
        .filter(|c| slab.corner_cuts()[*c] == CornerCut::Sharp)
        .collect();
    let usable = if sharp.is_empty() {
        (0..slab.count()).collect()
    } else {
        sharp
    };
    usable
        .into_iter()
        .map(|c| (slab.corner_name(c), slab.corners()[c]))
        .collect()
}

fn tie(corner: &(String, Point), to: Point) -> Tie {
    Tie {
        corner: corner.0.clone(),
        distance: corner.1.distance(to),
    }
}

/// The mark at a point of the slab's boundary, tied to the nearest corner on the same edge.
#[must_use]
pub fn edge_mark(slab: &Shape, at: Point) -> EdgeMark {
    let pieces = slab.outline().segs().iter().zip(slab.parts());
    let on = pieces
        .min_by(|a, b| a.0.distance(at).total_cmp(&b.0.distance(at)))
        .map_or(Part::Edge(0), |(_, part)| *part);
    let ends: Vec<String> = match on {
        Part::Edge(e) => vec![
            slab.corner_name(e),
            slab.corner_name((e + 1) % slab.count()),
        ],
        Part::Corner(_) => Vec::new(),
    };
    let all = corners(slab);
    let nearest = |some: &mut dyn Iterator<Item = &(String, Point)>| {
        some.min_by(|a, b| a.1.distance(at).total_cmp(&b.1.distance(at)))
            .map(|c| tie(c, at))
    };
    let tie = nearest(&mut all.iter().filter(|c| ends.contains(&c.0)))
        .or_else(|| nearest(&mut all.iter()));
    EdgeMark {
        at,
        on: slab.part_name(on),
        still_there: true,
        tie: tie.unwrap_or(Tie {
            corner: slab.corner_name(0),
            distance: slab.corners()[0].distance(at),
        }),
    }
}

/// Ties from two corners to a point inside, chosen so that the tapes cross as squarely as they
/// can, and a third as a check when the slab has one.
#[must_use]
pub fn point_ties(slab: &Shape, at: Point) -> Vec<Tie> {
    let all = corners(slab);
    let crossing = |a: &(String, Point), b: &(String, Point)| {
        let (u, v) = (at - a.1, at - b.1);
        if u.length() <= SAME_MM || v.length() <= SAME_MM {
            0.0
        } else {
            u.unit().cross(v.unit()).abs()
        }
    };
    let mut best = (0, 0, -1.0);
    for i in 0..all.len() {
        for j in i + 1..all.len() {
            let square = crossing(&all[i], &all[j]);
            let shorter = |x: usize| at.distance(all[x].1);
            let better = square > best.2 + 0.02
                || (square > best.2 - 0.02
                    && shorter(i) + shorter(j) < shorter(best.0) + shorter(best.1));
            if better {
                best = (i, j, square);
            }
        }
    }
    let third = (0..all.len())
        .filter(|k| *k != best.0 && *k != best.1)
        .min_by(|a, b| at.distance(all[*a].1).total_cmp(&at.distance(all[*b].1)));
    let mut chosen = vec![best.0, best.1];
    chosen.extend(third);
    chosen.dedup();
    chosen.into_iter().map(|i| tie(&all[i], at)).collect()
}

/// One diagonal tie to a mark on the slab's edge as a check: from the nearest corner that does not
/// end the mark's own edge, or is not its tie.
#[must_use]
pub fn check_tie(slab: &Shape, mark: &EdgeMark) -> Tie {
    let all = corners(slab);
    let on_edge = |name: &String| mark.on.contains(name.as_str());
    let off = all.iter().filter(|c| !on_edge(&c.0));
    off.min_by(|a, b| a.1.distance(mark.at).total_cmp(&b.1.distance(mark.at)))
        .or_else(|| all.iter().find(|c| c.0 != mark.tie.corner))
        .or(all.first())
        .map_or_else(|| mark.tie.clone(), |c| tie(c, mark.at))
}
