//! Marks and ties: what a person measures with a tape from corners that have names.

use crate::geom::{Point, SAME_MM, Vector};
use crate::job::{CornerCut, Part, Shape};

use super::{EdgeMark, Tie};

/// A corner with its name.
type Named = (String, Point);

/// The slab's corners that a tape can be held to: the sharp ones; all of them when none is sharp
/// (then as if squared off).
fn corners(slab: &Shape) -> Vec<Named> {
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

fn tie(corner: &Named, to: Point) -> Tie {
    Tie {
        corner: corner.0.clone(),
        distance: corner.1.distance(to),
    }
}

/// The mark at a point of the slab's boundary, tied to the nearest corner on the same edge; stone is kept on
/// the side of the line through it that `kept` points to.
#[must_use]
pub fn edge_mark(slab: &Shape, at: Point, kept: Vector) -> EdgeMark {
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
    let nearest = |some: &mut dyn Iterator<Item = &Named>| {
        some.min_by(|a, b| a.1.distance(at).total_cmp(&b.1.distance(at)))
            .cloned()
    };
    let nearest = nearest(&mut all.iter().filter(|c| ends.contains(&c.0)))
        .or_else(|| nearest(&mut all.iter()))
        .unwrap_or((slab.corner_name(0), slab.corners()[0]));
    let along = along_edge(slab, on, nearest.1, at);
    EdgeMark {
        at,
        on: slab.part_name(on),
        still_there: true,
        check: check(&all, &nearest, &ends, at, along),
        kept_beyond: along.dot(kept) > 0.0,
        tie: tie(&nearest, at),
    }
}

/// From a corner along the edge to a mark on it.
fn along_edge(slab: &Shape, on: Part, corner: Point, at: Point) -> Vector {
    let to = at - corner;
    match on {
        Part::Edge(e) if to.length() <= SAME_MM => {
            let ends = [e, (e + 1) % slab.count()].map(|c| slab.corners()[c]);
            let far = ends.into_iter().find(|p| p.distance(corner) > SAME_MM);
            far.map_or(to, |p| (p - corner).unit())
        }
        _ if to.length() <= SAME_MM => to,
        _ => to.unit(),
    }
}

/// A check of a mark: from the other end of its edge, else from the corner that shows it best when the mark
/// is off along the edge.
fn check(all: &[Named], tied: &Named, ends: &[String], at: Point, along: Vector) -> Tie {
    let others = || all.iter().filter(|c| c.0 != tied.0);
    let shows = |c: &Named| (at - c.1).length().max(SAME_MM).recip() * (at - c.1).dot(along).abs();
    let best = others().max_by(|a, b| shows(a).total_cmp(&shows(b)));
    let found = others().find(|c| ends.contains(&c.0)).or(best);
    tie(found.unwrap_or(tied), at)
}

/// The tie to a point of a struck line from the corner that shows best where along the line it is; of those
/// that show about as much the nearest.
#[must_use]
pub fn tie_along(slab: &Shape, at: Point, along: Vector) -> Tie {
    let all = corners(slab);
    let shown = |c: &Named| way(c.1, at).dot(along).abs();
    let most = all.iter().map(shown).fold(0.0, f64::max);
    let near = all.iter().filter(|c| shown(c) >= SQUARE * most);
    let nearest = near.min_by(|a, b| a.1.distance(at).total_cmp(&b.1.distance(at)));
    tie(nearest.unwrap_or(&all[0]), at)
}

/// Ties from two corners to a point inside whose tapes cross squarely, and as checks a third or also a fourth:
/// a misreading of either tape changes one of them by at least half of what it moves the point, where the slab
/// has such corners.
#[must_use]
pub fn point_ties(slab: &Shape, at: Point) -> Vec<Tie> {
    let all = corners(slab);
    let ways: Vec<Vector> = all.iter().map(|c| way(c.1, at)).collect();
    let pairs: Vec<[usize; 2]> = (0..all.len())
        .flat_map(|i| (i + 1..all.len()).map(move |j| [i, j]))
        .collect();
    let square = |pair: &[usize; 2]| ways[pair[0]].cross(ways[pair[1]]).abs();
    let most = pairs.iter().map(square).fold(0.0, f64::max);
    let reach = |pair: [usize; 2]| pair.map(|x| at.distance(all[x].1)).iter().sum::<f64>();
    let checked = |pair: [usize; 2]| {
        let (checks, shown) = checks(&ways, pair);
        (pair, checks, (shown.min(SHOWN) * 20.0).round())
    };
    let squarest = pairs.iter().filter(|p| square(p) >= SQUARE * most);
    let best = squarest.map(|pair| checked(*pair)).max_by(|a, b| {
        let nearer = reach(b.0).total_cmp(&reach(a.0));
        a.2.total_cmp(&b.2).then(nearer)
    });
    let Some((pair, checks, _)) = best else {
        return all.first().map(|c| tie(c, at)).into_iter().collect();
    };
    let chosen = pair.into_iter().chain(checks);
    chosen.map(|i| tie(&all[i], at)).collect()
}

/// The corners that check the tapes from two others: the one that shows a misreading of either best, and a
/// second where that one alone shows too little; and how much of it they show.
fn checks(ways: &[Vector], pair: [usize; 2]) -> (Vec<usize>, f64) {
    // A misread tape moves the point along the other one's circle.
    let moved = [ways[pair[1]].left(), ways[pair[0]].left()];
    let shown = |k: usize| moved.map(|m| m.dot(ways[k]).abs());
    let rest = || (0..ways.len()).filter(|k| !pair.contains(k));
    let least = |s: [f64; 2]| s[0].min(s[1]);
    let one = |k: &usize| least(shown(*k));
    let Some(first) = rest().max_by(|a, b| one(a).total_cmp(&one(b))) else {
        return (Vec::new(), 0.0);
    };
    let both = |k: &usize| least([0, 1].map(|i| shown(first)[i].max(shown(*k)[i])));
    let second = rest()
        .filter(|k| one(&first) < SHOWN && both(k) > one(&first))
        .max_by(|a, b| both(a).total_cmp(&both(b)));
    let shown = second.map_or(one(&first), |k| both(&k));
    (std::iter::once(first).chain(second).collect(), shown)
}

/// Two tapes cross at least so squarely against those that cross most squarely (judgement).
const SQUARE: f64 = 0.8;
/// A check changes by at least this share of what a mark is off (judgement: a tolerance of a millimetre then
/// lets two pass).
const SHOWN: f64 = 0.5;

/// From a corner to a point; nothing where they are one.
fn way(corner: Point, at: Point) -> Vector {
    let to = at - corner;
    if to.length() <= SAME_MM {
        Vector::new(0.0, 0.0)
    } else {
        to.unit()
    }
}
