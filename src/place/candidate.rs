//! One position of the top, judged.

use crate::geom::{FLATTEN_MM, Line, Outline, Point, Pose, Seg};
use crate::job::{Job, Part, PlaceHow, Shape};

use super::allowance::corner_allowance;
use super::edge::{self, EdgeUse, edge_use};
use super::sawn::sawn_with;
use super::tolerance::TOUCH_MM;
use super::trim::{self, Trim};
use super::{Miss, Objection, Placement, SawnCutout, flaw, opening, order, vein};

/// Judges a position: the place with its trims in order.
///
/// # Errors
/// Everything that stands against it.
pub fn judge(job: &Job, pose: Pose) -> Result<Placement, Miss> {
    assess(job, pose, Telling::All)
}

/// The place at a position, unless something stands against it.
pub(super) fn valid(job: &Job, pose: Pose) -> Option<Placement> {
    assess(job, pose, Telling::First).ok()
}

/// How much is told of what stands against a position.
#[derive(Clone, Copy, PartialEq)]
enum Telling {
    /// Everything.
    All,
    /// The first thing found; there may be more.
    First,
}

fn assess(job: &Job, pose: Pose, telling: Telling) -> Result<Placement, Miss> {
    let top = job.top.shape.posed(pose);
    let enough = |objections: &[Objection]| telling == Telling::First && !objections.is_empty();
    let mut objections: Vec<Objection> = vein::against(job, pose.turn).into_iter().collect();
    let uses: Vec<EdgeUse> = (0..top.count())
        .map_while(|edge| {
            let used = edge_use(job, &top, edge, &mut objections);
            (!enough(&objections)).then_some(used)
        })
        .collect();
    if enough(&objections) {
        return Err(Miss::of(pose, objections));
    }
    let edges: Vec<f64> = uses.iter().map(EdgeUse::allowance_mm).collect();
    let corner_allowances: Vec<f64> = (0..top.count())
        .map(|corner| corner_allowance(job, corner, &edges))
        .collect();
    // Without a sawn outline the finished one stands in, so that all other objections are told too.
    let (sawn, sawn_parts) = sawn_with(&top, &edges, &corner_allowances).unwrap_or_else(|| {
        objections.push(Objection::NoSawnOutline);
        (top.outline().clone(), top.parts().to_vec())
    });
    objections.extend(outside(job, &sawn));
    let cutouts = opening::all(job, pose, &mut objections);
    if enough(&objections) {
        return Err(Miss::of(pose, objections));
    }
    if !matches!(job.place.how, PlaceHow::AsCut { .. }) {
        let near = edge::too_near(job, &top).into_iter();
        objections.extend(near.map(|(slab_edge, by_mm)| Objection::NearEdge { slab_edge, by_mm }));
    }
    let mut spares = spares_of_flaws(job, &top, &cutouts, &mut objections);
    spares.extend(edge::spares(job, &top, &uses, &sawn));
    spares.extend(spares_of_corners(job, &sawn, &sawn_parts));
    let mut trims = Vec::new();
    if objections.is_empty() {
        let faces = trim::faces(&top, &uses, &corner_allowances, &sawn_parts);
        trims = order::least_sawing(&trim::runs(job, faces, &sawn));
        objections.extend(along_flaws(job, &trims));
    }
    if !objections.is_empty() {
        return Err(Miss::of(pose, objections));
    }
    Ok(Placement {
        work_mm2: work_mm2(job, &top, &trims),
        pose,
        top,
        sawn,
        sawn_parts,
        uses,
        corner_allowances,
        cutouts,
        trims,
        least_spare_mm: spares.into_iter().fold(f64::INFINITY, f64::min),
    })
}

/// Sawing work: the sawn face of the trims and curves, curves and stopped cuts by their factors, mm².
fn work_mm2(job: &Job, top: &Shape, trims: &[Trim]) -> f64 {
    let weight = |t: &Trim| {
        if t.runs_off() {
            1.0
        } else {
            job.passes.stopped_factor
        }
    };
    let straight: f64 = trims.iter().map(|t| weight(t) * t.length_mm).sum();
    straight * job.stone.thickness.mean + steady_work_mm2(job, top)
}

/// The work that is the same wherever the top lies: its curves and openings, mm².
pub(super) fn steady_work_mm2(job: &Job, top: &Shape) -> f64 {
    let passes = &job.passes;
    let curves = top
        .outline()
        .segs()
        .iter()
        .filter(|s| matches!(s, Seg::Arc(_)));
    let curved: f64 = curves.map(Seg::length).sum();
    let openings = job
        .top
        .cutouts
        .iter()
        .flat_map(|c| c.shape.outline().segs());
    let of_opening = |s: &Seg| match s {
        Seg::Line(..) => passes.stopped_factor * s.length(),
        Seg::Arc(_) => passes.curve_factor * s.length(),
    };
    let openings: f64 = openings.map(of_opening).sum();
    (passes.curve_factor * curved + openings) * job.stone.thickness.mean
}

/// Where the sawn outline sticks out over the slab: the farthest on each side.
fn outside(job: &Job, sawn: &Outline) -> Vec<Objection> {
    let slab = &job.slab.shape;
    let pieces = slab.outline().segs();
    let mut worst = vec![0.0_f64; pieces.len()];
    for p in sawn.flattened() {
        let depth = slab.outline().depth(p);
        if depth < -TOUCH_MM {
            for (piece, by) in beyond_pieces(pieces, p, -depth) {
                worst[piece] = worst[piece].max(by);
            }
        }
    }
    for (piece, p) in slab_corners(slab.outline()) {
        let depth = sawn.depth(p);
        if depth > TOUCH_MM {
            worst[piece] = worst[piece].max(depth);
        }
    }
    worst
        .iter()
        .zip(slab.parts())
        .filter(|(by, _)| **by > 0.0)
        .map(|(by, part)| Objection::Outside {
            slab_part: *part,
            by_mm: *by,
        })
        .collect()
}

/// The corners of the slab's pieces, and the points of its hollow arcs in between.
fn slab_corners(slab: &Outline) -> impl Iterator<Item = (usize, Point)> {
    slab.segs().iter().enumerate().flat_map(|(piece, seg)| {
        let points = match seg {
            Seg::Arc(arc) if arc.sweep < 0.0 => seg.flattened(FLATTEN_MM),
            _ => vec![seg.start()],
        };
        points.into_iter().map(move |p| (piece, p))
    })
}

/// The slab's pieces that a point lies beyond, `away` mm from the nearest, and how far square to
/// each: off a corner it lies beyond both edges.
fn beyond_pieces(pieces: &[Seg], p: Point, away: f64) -> Vec<(usize, f64)> {
    let nearest = pieces.iter().enumerate();
    nearest
        .filter(|(_, seg)| seg.distance(p) <= away + TOUCH_MM)
        .map(|(piece, seg)| match seg {
            Seg::Line(a, b) => (piece, -Line::through(*a, *b).left_of(p)),
            Seg::Arc(_) => (piece, away),
        })
        .filter(|(_, by)| *by > TOUCH_MM)
        .collect()
}

/// Distances to spare at the middles of arcs and flats.
fn spares_of_corners(job: &Job, sawn: &Outline, parts: &[Part]) -> Vec<f64> {
    let slab = job.slab.shape.outline();
    sawn.segs()
        .iter()
        .zip(parts)
        .filter(|(_, part)| matches!(part, Part::Corner(_)))
        .map(|(seg, _)| slab.depth(seg.at(0.5)))
        .collect()
}

/// Distances to spare at the clearances of the flaws, those aside that an opening takes out.
fn spares_of_flaws(
    job: &Job,
    top: &Shape,
    cutouts: &[SawnCutout],
    objections: &mut Vec<Objection>,
) -> Vec<f64> {
    let mut spares = Vec::new();
    for (flaw, f) in job.slab.flaws.iter().enumerate() {
        if flaw::is_taken_out(cutouts, f) {
            continue;
        }
        let spare = flaw::distance(top.outline(), f) - f.clear_mm;
        if spare < -TOUCH_MM {
            let by_mm = -spare;
            objections.push(Objection::OnFlaw { flaw, by_mm });
        }
        spares.push(spare);
    }
    spares
}

fn along_flaws(job: &Job, trims: &[Trim]) -> Vec<Objection> {
    let each = flaw::runs_along(job, trims).into_iter();
    each.map(|r| Objection::AlongFlaw {
        part: trims[r.trim].part,
        flaw: r.flaw,
        length_mm: r.length_mm,
    })
    .collect()
}
