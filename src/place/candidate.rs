//! One position of the top, judged.

use crate::geom::{FLATTEN_MM, Line, Outline, Point, Pose, SAME_MM, Seg};
use crate::job::{CornerCut, EdgeState, Finish, Job, Naming, Part, Shape};

use super::order::{self, Trim, TrimEnd};
use super::{Miss, Objection, Placement, SawnCutout, obstacle, opening, room, vein};

/// What becomes of one edge of the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum EdgeUse {
    /// It is sawn; this much is left to take off afterwards.
    Sawn {
        /// Stone left on the edge, mm.
        allowance_mm: f64,
    },
    /// It lies on an edge of the slab.
    Flush {
        /// The slab's edge, counted from 0.
        slab_edge: usize,
        /// Distance to it, mm.
        gap_mm: f64,
        /// Stone left on the edge, mm: none on a factory edge.
        allowance_mm: f64,
    },
    /// Roundings have used it up and there is no room to saw it square first.
    UsedUp,
    /// It is bowed: a curve, not a straight trim.
    Bowed {
        /// Stone left on the edge, mm.
        allowance_mm: f64,
    },
}

impl EdgeUse {
    /// Stone left on the edge, mm.
    #[must_use]
    pub const fn allowance_mm(&self) -> f64 {
        match self {
            Self::Sawn { allowance_mm }
            | Self::Bowed { allowance_mm }
            | Self::Flush { allowance_mm, .. } => *allowance_mm,
            Self::UsedUp => 0.0,
        }
    }
}

/// A position that breaks no rule, its cuts not yet ordered.
#[derive(Clone, Debug)]
pub struct Candidate {
    pose: Pose,
    top: Shape,
    sawn: Outline,
    sawn_parts: Vec<Part>,
    uses: Vec<EdgeUse>,
    corner_allowances: Vec<f64>,
    cutouts: Vec<SawnCutout>,
    least_spare_mm: f64,
}

/// Judges a position.
///
/// # Errors
/// Everything that stands against it.
pub fn judge(job: &Job, pose: Pose) -> Result<Candidate, Miss> {
    let top = job.top.shape.posed(pose);
    let mut objections = Vec::new();
    let uses: Vec<EdgeUse> = (0..top.count())
        .map(|edge| edge_use(job, &top, edge, &mut objections))
        .collect();
    let corner_allowances: Vec<f64> = (0..top.count()).map(|c| corner_allowance(job, c)).collect();
    let edge_allowances: Vec<f64> = uses.iter().map(EdgeUse::allowance_mm).collect();
    // Without a sawn outline the finished one stands in, so that all other objections are told too.
    let (sawn, sawn_parts) =
        sawn_with(&top, &edge_allowances, &corner_allowances).unwrap_or_else(|| {
            objections.push(Objection::NoSawnOutline);
            (top.outline().clone(), top.parts().to_vec())
        });
    objections.extend(outside(job, &sawn));
    let cutouts = opening::all(job, pose, &mut objections);
    let mut spares = spares_of_edges(job, &top, &uses);
    for (flaw, f) in job.slab.flaws.iter().enumerate() {
        let spare = obstacle::distance(top.outline(), f) - f.clear_mm;
        if spare < -SAME_MM {
            let by_mm = -spare;
            objections.push(Objection::OnFlaw { flaw, by_mm });
        }
        spares.push(spare);
    }
    objections.extend(vein::against(job, pose));
    spares.extend(spares_of_corners(job, &sawn, &sawn_parts));
    let least_spare_mm = spares.into_iter().fold(f64::INFINITY, f64::min);
    if objections.is_empty() {
        Ok(Candidate {
            pose,
            top,
            sawn,
            sawn_parts,
            uses,
            corner_allowances,
            cutouts,
            least_spare_mm,
        })
    } else {
        Err(Miss { pose, objections })
    }
}

impl Candidate {
    /// Orders the cuts and adds up the work.
    #[must_use]
    pub fn settled(self, job: &Job) -> Placement {
        let slab = job.slab.shape.outline();
        let trims = order::least_sawing(slab, &self.trims(job));
        let thickness = job.stone.thickness.mean;
        let straight: f64 = trims.iter().map(|t| t.length_mm).sum();
        let curved: f64 = self.arcs().map(Seg::length).sum();
        Placement {
            work_mm2: (straight + job.passes.curve_factor * curved) * thickness,
            pose: self.pose,
            top: self.top,
            sawn: self.sawn,
            sawn_parts: self.sawn_parts,
            uses: self.uses,
            corner_allowances: self.corner_allowances,
            cutouts: self.cutouts,
            trims,
            least_spare_mm: self.least_spare_mm,
        }
    }

    /// Work that no order of the cuts gets below, mm²: every sawn edge at its finished length, less
    /// what a slanting neighbour may take off its sawn face.
    #[must_use]
    pub fn least_work_mm2(&self, job: &Job) -> f64 {
        let edges = self.uses.iter().enumerate();
        let straight: f64 = edges
            .filter_map(|(i, used)| match used {
                EdgeUse::Sawn { allowance_mm } => {
                    let (from, to) = edge_span(&self.top, i);
                    Some((from.distance(to) - 4.0 * allowance_mm).max(0.0))
                }
                EdgeUse::Flush { .. } | EdgeUse::UsedUp | EdgeUse::Bowed { .. } => None,
            })
            .sum();
        let curved: f64 = self.arcs().map(Seg::length).sum();
        (straight + job.passes.curve_factor * curved) * job.stone.thickness.mean
    }

    fn arcs(&self) -> impl Iterator<Item = &Seg> {
        let segs = self.top.outline().segs();
        segs.iter().filter(|s| matches!(s, Seg::Arc(_)))
    }

    /// The trims in the order of the edges, lengths not yet known.
    fn trims(&self, job: &Job) -> Vec<Trim> {
        let mut trims = Vec::new();
        for i in 0..self.top.count() {
            if self.sawn_parts.contains(&Part::Corner(i))
                && let Some(Seg::Line(a, b)) = self.top.corner_seg(i)
            {
                let allowance = self.corner_allowances[i];
                trims.push(trim(
                    Part::Corner(i),
                    Line::through(a, b),
                    a.midpoint(b),
                    allowance,
                ));
            }
            if let EdgeUse::Sawn { allowance_mm } = self.uses[i] {
                let middle = edge_span(&self.top, i);
                let middle = middle.0.midpoint(middle.1);
                trims.push(trim(
                    Part::Edge(i),
                    self.top.edge_line(i),
                    middle,
                    allowance_mm,
                ));
            }
        }
        // A trim of no length is already an edge of the slab.
        let slab = job.slab.shape.outline();
        trims.retain(|t| slab.chord(&t.face, t.middle).is_some());
        trims
    }
}

fn trim(part: Part, edge: Line, middle: Point, allowance_mm: f64) -> Trim {
    Trim {
        part,
        face: edge.shifted_right(allowance_mm),
        middle,
        allowance_mm,
        ends: [TrimEnd::RunOff; 2],
        length_mm: 0.0,
    }
}

/// The two ends of an edge's straight piece; the same point twice when roundings have used it up.
pub(super) fn edge_span(top: &Shape, edge: usize) -> (Point, Point) {
    if let Some(seg) = top.edge_seg(edge) {
        return (seg.start(), seg.end());
    }
    // The corner's arc ends where the straight piece would begin.
    let touch = top
        .corner_seg(edge)
        .map_or(top.corners()[edge], |s| s.end());
    (touch, touch)
}

fn edge_use(job: &Job, top: &Shape, edge: usize, objections: &mut Vec<Objection>) -> EdgeUse {
    let finish = job.top.finishes[edge];
    if !top.is_straight(edge) {
        let allowance_mm = edge_allowance(job, edge);
        return EdgeUse::Bowed { allowance_mm };
    }
    if let Some(flush) = flush_with(job, top, edge) {
        return flush;
    }
    if finish == Finish::Factory {
        objections.push(Objection::NotOnFactoryEdge { edge });
    }
    let allowance_mm = edge_allowance(job, edge);
    let width_mm = strip_beyond(job, top, edge, allowance_mm);
    let used_up = top.edge_seg(edge).is_none();
    if width_mm >= job.place.least_strip_mm - SAME_MM {
        EdgeUse::Sawn { allowance_mm }
    } else if used_up {
        EdgeUse::UsedUp
    } else {
        objections.push(Objection::NarrowStrip { edge, width_mm });
        EdgeUse::Sawn { allowance_mm }
    }
}

/// Width of the stone beyond an edge's sawn face, mm.
fn strip_beyond(job: &Job, top: &Shape, edge: usize, allowance_mm: f64) -> f64 {
    let (from, to) = edge_span(top, edge);
    let face = top.edge_line(edge).shifted_right(allowance_mm);
    let out = face.along.right() * allowance_mm;
    room::beyond(job.slab.shape.outline(), &face, from + out, to + out)
}

/// The use of an edge that lies on a usable edge of the slab, within two tape errors.
fn flush_with(job: &Job, top: &Shape, edge: usize) -> Option<EdgeUse> {
    let near = 2.0 * job.slab.tape_error_mm;
    let (from, to) = edge_span(top, edge);
    let along = top.edge_line(edge).along;
    let finish = job.top.finishes[edge];
    (0..job.slab.shape.count()).find_map(|slab_edge| {
        let state = job.slab.edges[slab_edge];
        let usable = match state {
            EdgeState::Factory => true,
            EdgeState::Sawn => finish != Finish::Factory,
            EdgeState::Rough => false,
        };
        let line = job.slab.shape.edge_line(slab_edge);
        let piece = job.slab.shape.edge_seg(slab_edge)?;
        let allowance_mm = match state {
            EdgeState::Factory => 0.0,
            _ => edge_allowance(job, edge),
        };
        let gaps = [from, to].map(|p| line.left_of(p) - allowance_mm);
        let beside = |p: Point| piece.distance(p) <= near + allowance_mm + SAME_MM;
        let flush = usable
            && line.along.dot(along) > 0.0
            && gaps.iter().all(|g| *g >= -SAME_MM && *g <= near + SAME_MM)
            && beside(from)
            && beside(to);
        flush.then_some(EdgeUse::Flush {
            slab_edge,
            gap_mm: gaps[0].max(gaps[1]).max(0.0),
            allowance_mm,
        })
    })
}

/// The allowance on a rounded or clipped corner: the largest of its edges' finishes; that of a
/// polished edge when all of them are the slab's own. Corners that have used up the edge between
/// them are one curve and share their edges.
pub(super) fn corner_allowance(job: &Job, corner: usize) -> f64 {
    let (shape, n) = (&job.top.shape, job.top.shape.count());
    let used_up = |edge: usize| shape.edge_seg(edge).is_none();
    // Past every used-up edge, up to and with the next straight one.
    let along = |edges: Vec<usize>| {
        let straight = edges.iter().position(|e| !used_up(*e));
        let count = straight.map_or(n, |at| at + 1);
        edges.into_iter().take(count)
    };
    let before = along((1..=n).map(|k| (corner + n - k) % n).collect());
    let after = along((0..n).map(|k| (corner + k) % n).collect());
    let finishes: Vec<Finish> = before.chain(after).map(|e| job.top.finishes[e]).collect();
    if finishes.iter().all(|f| *f == Finish::Factory) {
        return job.top.allowances.polish_mm;
    }
    finishes
        .into_iter()
        .map(|f| job.top.allowances.for_finish(f))
        .fold(0.0, f64::max)
}

/// The allowance on an edge that is sawn: that of its finish, or of the curve that has used it up.
pub(super) fn edge_allowance(job: &Job, edge: usize) -> f64 {
    if job.top.shape.edge_seg(edge).is_none() {
        corner_allowance(job, edge)
    } else {
        job.top.allowances.for_finish(job.top.finishes[edge])
    }
}

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
    let changed = cuts != top.corner_cuts();
    let squared = if changed {
        Some(Shape::new(Naming::Numbers, top.corners().to_vec(), cuts).ok()?)
    } else {
        None
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
        let straight = top.edge_seg(edge).is_some();
        straight.then(|| edges[edge])
    });
    match top.corner_seg(corner) {
        None => false,
        // Each face takes an angle off its end of the arc.
        Some(Seg::Arc(arc)) => {
            let off = |by: f64| ((arc.radius + by) / (arc.radius + own)).min(1.0).acos();
            let both: f64 = sides.into_iter().flatten().map(off).sum();
            arc.sweep > 0.0 && both >= arc.sweep - 1e-6
        }
        Some(Seg::Line(a, b)) => {
            let flat = Line::through(a, b).shifted_right(own);
            let meet = |edge: usize| {
                let face = top.edge_line(edge).shifted_right(edges[edge]);
                Some(flat.foot(face.meet(&flat)?))
            };
            let ends = meet(before).zip(meet(corner));
            ends.is_some_and(|(from, to)| to - from <= SAME_MM)
        }
    }
}

/// Where the sawn outline sticks out over the slab: the farthest on each side.
fn outside(job: &Job, sawn: &Outline) -> Vec<Objection> {
    let slab = &job.slab.shape;
    let pieces = slab.outline().segs();
    let mut worst = vec![0.0_f64; pieces.len()];
    for p in sawn.flattened() {
        let depth = slab.outline().depth(p);
        if depth < -SAME_MM {
            for (piece, by) in beyond_pieces(pieces, p, -depth) {
                worst[piece] = worst[piece].max(by);
            }
        }
    }
    for (piece, p) in pieces.iter().map(Seg::start).enumerate() {
        let depth = sawn.depth(p);
        if depth > FLATTEN_MM {
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

/// The slab's pieces that a point lies beyond, `away` mm from the nearest, and how far square to
/// each: off a corner it lies beyond both edges.
fn beyond_pieces(pieces: &[Seg], p: Point, away: f64) -> Vec<(usize, f64)> {
    let nearest = pieces.iter().enumerate();
    nearest
        .filter(|(_, seg)| seg.distance(p) <= away + SAME_MM)
        .map(|(piece, seg)| match seg {
            Seg::Line(a, b) => (piece, -Line::through(*a, *b).left_of(p)),
            Seg::Arc(_) => (piece, away),
        })
        .filter(|(_, by)| *by > SAME_MM)
        .collect()
}

/// Distances to spare at the edges: the strip beyond a sawn edge, and the gap at an edge whose
/// opposite is flush as well.
fn spares_of_edges(job: &Job, top: &Shape, uses: &[EdgeUse]) -> Vec<f64> {
    let opposite = |edge: usize| {
        let along = top.edge_line(edge).along;
        (0..top.count()).any(|other| {
            let facing = top.edge_line(other).along.dot(along) < -0.999_999;
            facing && matches!(uses[other], EdgeUse::Flush { gap_mm, .. } if gap_mm <= SAME_MM)
        })
    };
    let spare = |(edge, used): (usize, &EdgeUse)| match used {
        EdgeUse::Sawn { allowance_mm } => Some(strip_beyond(job, top, edge, *allowance_mm)),
        EdgeUse::Flush { gap_mm, .. } if opposite(edge) => Some(*gap_mm),
        EdgeUse::Flush { .. } | EdgeUse::UsedUp | EdgeUse::Bowed { .. } => None,
    };
    uses.iter().enumerate().filter_map(spare).collect()
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
