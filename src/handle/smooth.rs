//! The kept stone's boundary without the cusps that plunges leave along a sawn curve.
//!
//! A curve sawn by a hundred plunges leaves a boundary of hundreds of short edges, none farther than a
//! cusp from the sawn outline. There the outline stands for them: arcs stay arcs, no cusp counts as an inside
//! corner, and everything that follows costs by the outline's pieces instead of the plunges.

use crate::geom::{Outline, Point, Region, SAME_MM, Seg};

/// Added to the height of a cusp, mm: rounding of the booleans.
const SLACK_MM: f64 = 0.05;
/// Shorter runs of pieces are left as they are: a straight cut's edge between two corners.
const RUN: usize = 4;
/// A run along the outline and the outline itself differ in length by no more than this part.
const LONGER: f64 = 0.25;

/// The region with its boundaries laid on the sawn outlines where they run along them, no farther than a
/// cusp away. Cost: pieces of the boundary × pieces of the outlines.
pub(super) fn smooth(region: Region, sawn: &[&Outline], cusp_mm: f64) -> Region {
    let near_mm = cusp_mm + SLACK_MM;
    let along = |ring: Outline| {
        let laid =
            |ring: Outline, outline: &&Outline| laid(&ring, outline, near_mm).unwrap_or(ring);
        sawn.iter().fold(ring, laid)
    };
    Region {
        outer: along(region.outer),
        holes: region.holes.into_iter().map(along).collect(),
    }
}

/// The ring along one outline; nothing when it runs along it nowhere.
fn laid(ring: &Outline, outline: &Outline, near_mm: f64) -> Option<Outline> {
    let segs = ring.segs();
    let near: Vec<bool> = segs
        .iter()
        .map(|s| {
            let mut places = [0.0, 0.5, 1.0].map(|share| s.at(share)).into_iter();
            places.all(|at| outline.distance(at) <= near_mm)
        })
        .collect();
    if near.iter().filter(|n| **n).count() < RUN {
        return None;
    }
    let Some(start) = near.iter().position(|n| !n) else {
        return is_alike(segs, outline.segs()).then(|| outline.clone());
    };
    let turned: Vec<(Seg, bool)> = (0..segs.len())
        .map(|k| (start + k) % segs.len())
        .map(|i| (segs[i], near[i]))
        .collect();
    let mut made = Vec::new();
    for run in turned.chunk_by(|a, b| a.1 == b.1) {
        let run: Vec<Seg> = run.iter().map(|r| r.0).collect();
        let is_near = run
            .first()
            .is_some_and(|s| outline.distance(s.at(0.5)) <= near_mm);
        let path = (is_near && run.len() >= RUN).then(|| path(&run, outline));
        made.extend(path.flatten().unwrap_or(run));
    }
    (made.len() < segs.len())
        .then(|| Outline::new(made).ok())
        .flatten()
}

/// The outline from where a run begins to where it ends, joined to the run's own ends.
fn path(run: &[Seg], outline: &Outline) -> Option<Vec<Seg>> {
    let (from, to) = (run.first()?.start(), run.last()?.end());
    let [enters, leaves] = [from, to].map(|p| {
        let place = outline.share_of(p)?;
        let seg = outline.segs().get(place.0)?;
        Some((place, seg.at(place.1)))
    });
    let ((enters, first), (leaves, last)) = (enters?, leaves?);
    let way = outline.way(enters, first, leaves, last);
    if !is_alike(run, &way) {
        return None;
    }
    let mut path = step(from, first);
    path.extend(way);
    path.extend(step(last, to));
    Some(path)
}

fn step(from: Point, to: Point) -> Vec<Seg> {
    let far = from.distance(to) > SAME_MM;
    far.then_some(Seg::Line(from, to)).into_iter().collect()
}

/// Whether two runs between the same places are about as long: one does not go the other way round.
fn is_alike(run: &[Seg], way: &[Seg]) -> bool {
    let length = |segs: &[Seg]| segs.iter().map(Seg::length).sum::<f64>();
    let (run, way) = (length(run), length(way));
    (run - way).abs() <= LONGER * run.max(way)
}
