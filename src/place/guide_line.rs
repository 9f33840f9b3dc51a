//! Lines of shifts along which the best places lie.

use crate::geom::{Line, Point, SAME_MM, Seg, Vector};
use crate::job::{EdgeState, FlawPlace, Job, Part, Shape};

use super::edge::{edge_span, flush_allowance};
use super::flaw::{kerf_mm, most_beside};
use super::ground::{Ground, Rim};
use super::room::ENDS_A_STRIP;
use super::trim::Trim;

/// The most lines through inside corners of the slab and along flaws that are followed at one turn; a
/// slab with more inside corners than a few is nearly smooth.
const MOST_KEYS: usize = 64;

/// Shifts that lay an edge of the top on an edge of the slab.
#[derive(Clone, Debug)]
pub(super) struct FlushLine {
    /// The top's edge.
    pub(super) edge: usize,
    /// The slab's.
    pub(super) slab_edge: usize,
    /// The edge has no allowance there.
    pub(super) bare: bool,
    /// The line of shifts.
    pub(super) line: Line,
    /// Shifts at which the edge lies as far along the slab's edge as it goes.
    pub(super) ends: [Point; 2],
}

/// Every line that lays an edge on an edge of the slab, as near as can be and as far in as the tape's
/// error lets it be; for edges that run along one to within two tape errors and are no longer.
pub(super) fn flush(job: &Job, top: &Shape) -> Vec<FlushLine> {
    let slab = &job.slab.shape;
    let within = 2.0 * job.slab.tape_error_mm;
    let mut found = Vec::new();
    for edge in (0..top.count()).filter(|e| top.is_straight(*e)) {
        let along = top.edge_line(edge).along;
        let (from, to) = edge_span(top, edge);
        for slab_edge in 0..slab.count() {
            let target = slab.edge_line(slab_edge);
            if target.along.dot(along) <= 0.0 {
                continue;
            }
            let (Some(allowance), Some(piece)) = (
                flush_allowance(job, edge, slab_edge),
                slab.edge_seg(slab_edge),
            ) else {
                continue;
            };
            let depths = [from, to].map(|p| target.left_of(p));
            let (near, far) = (depths[0].min(depths[1]), depths[0].max(depths[1]));
            let longer = from.distance(to) - piece.start().distance(piece.end());
            if far - near > within || longer > 2.0 * (within + allowance) + 1.0 {
                continue;
            }
            // A hollow edge is touched in its middle.
            let on = allowance + (-slab.bows()[slab_edge]).max(0.0);
            let left = target.along.left();
            for by in [on - near, on + within - far] {
                found.push(FlushLine {
                    edge,
                    slab_edge,
                    bare: job.slab.edges[slab_edge] == EdgeState::Factory,
                    line: shifts_by(target.along, by),
                    ends: ends(&piece, from, to, left * on),
                });
            }
        }
    }
    found
}

/// The shifts that carry everything so far to the left of a direction.
fn shifts_by(along: Vector, by: f64) -> Line {
    Line {
        point: Point::ORIGIN + along.left() * by,
        along,
    }
}

fn ends(piece: &Seg, from: Point, to: Point, inwards: Vector) -> [Point; 2] {
    [(piece.start(), from), (piece.end(), to)].map(|(on, own)| Point::ORIGIN + (on - own) + inwards)
}

/// Lines of shifts on which a face runs through an inside corner of the slab, a hair to either side of
/// it, or begins or ends to run along a line flaw. Where a cut would change its length at once comes
/// first.
pub(super) fn keys(ground: &Ground<'_>, turn: f64) -> Vec<Line> {
    let mut jumps = Vec::new();
    let mut bends = Vec::new();
    for trim in &ground.faces {
        let face = Line {
            point: Point::ORIGIN + trim.face.point.to_vector().turned(turn),
            along: trim.face.along.turned(turn),
        };
        for corner in &ground.inside_corners {
            let line = shifts_by(face.along, face.left_of(corner.at));
            let (before, after) = (
                face.along.cross(corner.before),
                face.along.cross(corner.after),
            );
            let found = if before * after < 0.0 {
                &mut jumps
            } else {
                &mut bends
            };
            found.extend(to_both_sides(&line));
        }
        jumps.extend(along_flaws(ground.job, &face));
        jumps.extend(edges_of_strips(ground, trim, &face));
    }
    jumps.extend(bends);
    jumps.truncate(MOST_KEYS);
    jumps
}

/// Where an edge that roundings have used up just has, or just lacks, the room to be sawn square.
fn edges_of_strips(ground: &Ground<'_>, trim: &Trim, face: &Line) -> Vec<Line> {
    let top = &ground.job.top.shape;
    if !matches!(trim.part, Part::Edge(e) if top.edge_seg(e).is_none()) {
        return Vec::new();
    }
    let out = face.along.right();
    let end = face.at(trim.foot()) + out * ground.job.place.least_strip_mm;
    let along = ground.rim.iter().filter(|r| !r.of_arc).filter(|r| {
        let steep = (r.to - r.from).unit().dot(out).abs() >= ENDS_A_STRIP;
        !steep && (r.to - r.from).dot(face.along) > 0.0
    });
    let line = |r: &Rim| Line {
        point: Point::ORIGIN + (r.from - end),
        along: (r.to - r.from).unit(),
    };
    along.flat_map(|r| to_both_sides(&line(r))).collect()
}

/// Where the kerf of a face reaches or leaves a line flaw that lies along it, or stays beside it for
/// just as long as it may.
fn along_flaws(job: &Job, face: &Line) -> Vec<Line> {
    let kerf = kerf_mm(job);
    let mut found = Vec::new();
    for flaw in &job.slab.flaws {
        let FlawPlace::Line(points) = &flaw.place else {
            continue;
        };
        let most = most_beside(flaw.clear_mm, kerf);
        for w in points.windows(2) {
            let along = (w[1] - w[0]).unit();
            let (sin, cos) = (face.along.cross(along).abs(), face.along.dot(along).abs());
            if w[0].distance(w[1]) * cos <= most || cos <= 0.0 {
                continue;
            }
            let depths = [face.left_of(w[0]), face.left_of(w[1])];
            let (low, high) = (depths[0].min(depths[1]), depths[0].max(depths[1]));
            let partly = most * sin / cos;
            let band = (-(kerf + flaw.clear_mm), flaw.clear_mm);
            for by in [
                low - band.1,
                low + partly - band.1,
                high - band.0,
                high - partly - band.0,
            ] {
                found.push(shifts_by(face.along, by));
            }
        }
    }
    found
}

/// A shift a hair off, to either side of a line.
pub(super) fn to_both_sides(line: &Line) -> [Line; 2] {
    // Far above rounding, far below what a tape can tell.
    [1.0, -1.0].map(|side| line.shifted_right(side * 100.0 * SAME_MM))
}
