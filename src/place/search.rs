//! Every position worth judging.
//!
//! For a given turn the work is least where an edge lies flush on an edge of the slab, where it
//! leaves just the least strip, or at a corner of the region of allowed shifts. Candidate turns
//! are those that lay an edge of the top along an edge of the slab, and the vein's directions.
//! The top must be convex (inside corners come with stopped cuts).

use std::f64::consts::{FRAC_PI_2, TAU};

use crate::geom::boolean;
use crate::geom::hull::Hull;
use crate::geom::{Arc, FLATTEN_MM, Line, Point, Pose, SAME_MM, Seg, Vector};
use crate::job::{EdgeState, Finish, Job, Part, Shape};

use super::allowance::{corner_allowance, edge_allowance};
use super::candidate::{edge_span, judge, sawn_with};
use super::{Miss, Placement, obstacle};

/// Places whose work differs by less than this are equally good, mm².
const SAME_WORK_MM2: f64 = 1.0;

/// The best valid place.
///
/// # Errors
/// The nearest miss when there is none.
pub fn best(job: &Job) -> Result<Placement, Miss> {
    let mut found: Vec<Placement> = Vec::new();
    let mut nearest: Option<Miss> = None;
    let mut least = f64::INFINITY;
    let mut try_at = |pose: Pose, found: &mut Vec<Placement>| {
        match judge(job, pose) {
            // What cannot be among the best is not worth ordering its cuts.
            Ok(candidate) if candidate.least_work_mm2(job) > least + SAME_WORK_MM2 => {}
            Ok(candidate) => {
                let placement = candidate.settled(job);
                least = least.min(placement.work_mm2);
                found.push(placement);
            }
            Err(miss) => {
                let closer = |n: &Miss| miss.weight_mm(job) < n.weight_mm(job);
                if nearest.as_ref().is_none_or(closer) {
                    nearest = Some(miss);
                }
            }
        }
    };
    // Only when nothing fits are the places of interest that stick out: which is the nearest miss?
    let mut sticking_out: Vec<Pose> = Vec::new();
    for turn in turns(job) {
        for shift in shifts(job, turn) {
            let pose = Pose::new(turn, shift);
            if corners_held(job, pose) {
                try_at(pose, &mut found);
            } else {
                sticking_out.push(pose);
            }
        }
    }
    if found.is_empty() {
        for pose in sticking_out {
            try_at(pose, &mut found);
        }
    }
    let least = found
        .iter()
        .map(|p| p.work_mm2)
        .fold(f64::INFINITY, f64::min);
    let slab = job.slab.shape.outline();
    found
        .into_iter()
        .filter(|p| p.work_mm2 <= least + SAME_WORK_MM2)
        .map(|p| (p.best_leftover_mm2(slab), p))
        .min_by(|(left_a, a), (left_b, b)| {
            let (turn_a, turn_b) = (smallest(a.pose.turn), smallest(b.pose.turn));
            rounded(*left_b)
                .total_cmp(&rounded(*left_a))
                .then(rounded(turn_a * 1e3).total_cmp(&rounded(turn_b * 1e3)))
                .then(rounded(a.pose.shift.x).total_cmp(&rounded(b.pose.shift.x)))
                .then(rounded(a.pose.shift.y).total_cmp(&rounded(b.pose.shift.y)))
        })
        .map(|(_, p)| p)
        .ok_or_else(|| {
            nearest.unwrap_or(Miss {
                pose: Pose::default(),
                objections: Vec::new(),
            })
        })
}

/// Whether every joint of the finished top's outline lies on the slab: cheap, and false for most.
fn corners_held(job: &Job, pose: Pose) -> bool {
    let slab = job.slab.shape.outline();
    let joints = job.top.shape.outline().segs().iter().map(Seg::start);
    let mut placed = joints.map(|p| pose.apply(p));
    placed.all(|p| slab.depth(p) >= -SAME_MM)
}

/// Cleared of rounding noise, for comparing equals.
fn rounded(value: f64) -> f64 {
    (value * 1e3).round()
}

/// How far a turn is from none, radians.
fn smallest(turn: f64) -> f64 {
    turn.rem_euclid(TAU).min(TAU - turn.rem_euclid(TAU))
}

/// Turns that lay an edge of the top along an edge of the slab or the vein, radians in [0, 2π).
fn turns(job: &Job) -> Vec<f64> {
    let (slab, top) = (&job.slab.shape, &job.top.shape);
    let directions = |s: &Shape| -> Vec<f64> {
        (0..s.count())
            .map(|e| s.edge_line(e).along.angle())
            .collect()
    };
    let vein = job.slab.vein_deg.map(f64::to_radians);
    let veins = vein
        .into_iter()
        .flat_map(|v| (0..4).map(move |q| v + f64::from(q) * FRAC_PI_2));
    let targets: Vec<f64> = directions(slab).into_iter().chain(veins).collect();
    let mut turns: Vec<f64> = Vec::new();
    for top_edge in directions(top) {
        for target in &targets {
            let turn = (target - top_edge).rem_euclid(TAU);
            let same = |t: &f64| smallest(t - turn) < 1e-9;
            if !turns.iter().any(same) {
                // A turn a hair below a full one is none.
                turns.push(if smallest(turn) < 1e-9 { 0.0 } else { turn });
            }
        }
    }
    turns
}

/// Shifts worth judging at one turn.
fn shifts(job: &Job, turn: f64) -> Vec<Vector> {
    let top = job.top.shape.posed(Pose::new(turn, Vector::default()));
    let all_sawn = blocked_when_all_sawn(job, &top);
    let mut found = boolean::free_corners(&domain(job, &top), &all_sawn);
    let mut blocked = all_sawn;
    let finished = top.outline().flattened();
    blocked.extend(obstacle::of_boundary(job.slab.shape.outline(), &finished));
    blocked.extend(blocked_when_sawn_top_touches(job, &top));
    let aligned = alignments(job, &top);
    found.extend(ends_of_flush(job, &top));
    for (i, line) in aligned.iter().enumerate() {
        found.extend(aligned[..i].iter().filter_map(|other| line.meet(other)));
        let ends = blocked.iter().filter_map(|h| h.stretch(line));
        found.extend(ends.flat_map(|(a, b)| [line.at(a), line.at(b)]));
    }
    let mut distinct: Vec<Point> = Vec::new();
    for p in found {
        if p.is_finite() && distinct.iter().all(|q| q.distance(p) > 1e-5) {
            distinct.push(p);
        }
    }
    distinct.into_iter().map(Point::to_vector).collect()
}

/// All shifts that keep the top's box over the slab's box, with a margin for flush positions.
fn domain(job: &Job, top: &Shape) -> Hull {
    let (slab, top) = (job.slab.shape.outline().bounds(), top.outline().bounds());
    let low = slab.min - top.min;
    let high = slab.max - top.max;
    let (low, high) = (
        Vector::new(low.x.min(high.x) - 1.0, low.y.min(high.y) - 1.0),
        Vector::new(low.x.max(high.x) + 1.0, low.y.max(high.y) + 1.0),
    );
    Hull(vec![
        Point::new(low.x, low.y),
        Point::new(high.x, low.y),
        Point::new(high.x, high.y),
        Point::new(low.x, high.y),
    ])
}

/// Shifts at which the top, with every straight edge sawn and its strip beyond it, crosses the
/// slab's boundary, or the finished top a flaw's clearance.
fn blocked_when_all_sawn(job: &Job, top: &Shape) -> Vec<Hull> {
    let slab = job.slab.shape.outline();
    let mut hulls = Vec::new();
    for (seg, part) in top.outline().segs().iter().zip(top.parts()) {
        let ahead = match part {
            Part::Edge(i) => edge_allowance(job, *i) + job.place.least_strip_mm,
            Part::Corner(i) => corner_allowance(job, *i),
        };
        hulls.extend(obstacle::of_boundary(slab, &swept_out(seg, ahead)));
    }
    let finished = top.outline().flattened();
    for flaw in &job.slab.flaws {
        hulls.extend(obstacle::of_flaw(flaw, &finished));
    }
    hulls
}

/// Shifts at which the sawn top touches the slab's boundary: an edge not quite along a slab edge may
/// lie flush with it there, within the tape's error. Once with every allowance, and once for each
/// edge that may lie on a factory edge and has none then.
fn blocked_when_sawn_top_touches(job: &Job, top: &Shape) -> Vec<Hull> {
    let n = top.count();
    let corners: Vec<f64> = (0..n).map(|c| corner_allowance(job, c)).collect();
    let states = job.slab.edges.iter().enumerate();
    let factory: Vec<Line> = states
        .filter(|(_, state)| **state == EdgeState::Factory)
        .map(|(i, _)| job.slab.shape.edge_line(i))
        .collect();
    let along_factory = |edge: usize| {
        let along = top.edge_line(edge).along;
        factory.iter().any(|f| f.along.dot(along) > 1.0 - 1e-3)
    };
    let bare = (0..n).filter(|e| along_factory(*e) && edge_allowance(job, *e) > 0.0);
    std::iter::once(n)
        .chain(bare)
        .filter_map(|bare| {
            let allowance = |e| {
                if e == bare {
                    0.0
                } else {
                    edge_allowance(job, e)
                }
            };
            let by: Vec<f64> = (0..n).map(allowance).collect();
            sawn_with(top, &by, &corners)
        })
        .flat_map(|(sawn, _)| obstacle::of_boundary(job.slab.shape.outline(), &sawn.flattened()))
        .collect()
}

/// Shifts that lay an edge flush with a slab edge as far along it as it goes.
fn ends_of_flush(job: &Job, top: &Shape) -> Vec<Point> {
    let (slab, mut found) = (&job.slab.shape, Vec::new());
    for edge in 0..top.count() {
        let (line, Some(own)) = (top.edge_line(edge), top.edge_seg(edge)) else {
            continue;
        };
        for slab_edge in 0..slab.count() {
            let (target, Some(piece)) = (slab.edge_line(slab_edge), slab.edge_seg(slab_edge))
            else {
                continue;
            };
            if target.along.dot(line.along) < 1.0 - 1e-12 {
                continue;
            }
            let inside = match job.slab.edges[slab_edge] {
                EdgeState::Factory => 0.0,
                _ => edge_allowance(job, edge),
            };
            let inwards = target.along.left() * inside;
            for (on, from) in [(piece.start(), own.start()), (piece.end(), own.end())] {
                found.push(Point::ORIGIN + (on - from) + inwards);
            }
        }
    }
    found
}

/// Points of a piece and of the same piece moved outwards, all along it.
fn swept_out(seg: &Seg, by: f64) -> Vec<Point> {
    let mut points = seg.flattened(FLATTEN_MM);
    points.push(seg.end());
    let ahead = match *seg {
        Seg::Line(a, b) => {
            let out = seg.heading(0.0).right() * by;
            vec![a + out, b + out]
        }
        Seg::Arc(arc) => {
            let larger = Seg::Arc(Arc {
                radius: arc.radius + by,
                ..arc
            });
            let mut ahead = larger.flattened(FLATTEN_MM);
            ahead.push(larger.end());
            ahead
        }
    };
    points.extend(ahead);
    points
}

/// Lines of shifts that lay an edge on a slab edge, two tape errors or a least strip inside it; for
/// edges that run along a slab edge to within two tape errors.
fn alignments(job: &Job, top: &Shape) -> Vec<Line> {
    let (slab, mut found) = (&job.slab.shape, Vec::new());
    let within = 2.0 * job.slab.tape_error_mm;
    for edge in 0..top.count() {
        let (line, finish) = (top.edge_line(edge), job.top.finishes[edge]);
        let ends = edge_span(top, edge);
        for slab_edge in 0..slab.count() {
            let target = slab.edge_line(slab_edge);
            let depths = [ends.0, ends.1].map(|p| target.left_of(p));
            let (near, far) = (depths[0].min(depths[1]), depths[0].max(depths[1]));
            if target.along.dot(line.along) < 0.0 || far - near > within {
                continue;
            }
            let allowance = edge_allowance(job, edge);
            let on = match job.slab.edges[slab_edge] {
                EdgeState::Factory => Some(0.0),
                EdgeState::Sawn if finish != Finish::Factory => Some(allowance),
                _ => None,
            };
            let strip = allowance + job.place.least_strip_mm;
            // Flush as near as can be, and as far in as the tape's error lets it be.
            let near_ends = on.into_iter().chain([strip]).map(|depth| depth - near);
            let far_end = on.map(|on| on + within - far);
            for inwards in near_ends.chain(far_end) {
                found.push(Line {
                    point: Point::ORIGIN + target.along.left() * inwards,
                    along: target.along,
                });
            }
        }
    }
    found
}
