//! What becomes of one edge of the top.

use crate::geom::{Line, Outline, Point, SAME_MM, Seg};
use crate::job::{EdgeState, Finish, Job, Part, PlaceHow, Shape};

use super::allowance::edge_allowance;
use super::apart::between;
use super::tolerance::TOUCH_MM;
use super::{Objection, room};

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

/// The use of an edge where the top lies; what stands against it is added to the objections.
pub(super) fn edge_use(
    job: &Job,
    top: &Shape,
    edge: usize,
    objections: &mut Vec<Objection>,
) -> EdgeUse {
    let finish = job.top.finishes[edge];
    let allowance_mm = edge_allowance(job, edge);
    if !top.is_straight(edge) {
        if finish == Finish::Factory {
            objections.push(Objection::FactoryBow { edge });
        }
        return EdgeUse::Bowed { allowance_mm };
    }
    if let Some(ready) = ready(job, top, edge) {
        return ready;
    }
    let (from, to) = edge_span(top, edge);
    let along = top.edge_line(edge).along;
    let same_way = |s: &usize| job.slab.shape.edge_line(*s).along.dot(along) > 0.0;
    let mut slab_edges = (0..job.slab.shape.count()).filter(same_way);
    if let Some(flush) = slab_edges.find_map(|s| flush_with(job, edge, s, from, to)) {
        return flush;
    }
    if finish == Finish::Factory {
        objections.push(Objection::NotOnFactoryEdge { edge });
    }
    let used_up = top.edge_seg(edge).is_none();
    if used_up && beside_inside_corner(top, edge) {
        return EdgeUse::UsedUp;
    }
    let width_mm = strip_beyond(job, top, edge, allowance_mm);
    if width_mm >= job.place.least_strip_mm - TOUCH_MM {
        EdgeUse::Sawn { allowance_mm }
    } else if used_up {
        EdgeUse::UsedUp
    } else if matches!(job.place.how, PlaceHow::AsCut { .. }) {
        // Its strip has been settled; what is left of it may be narrow where a core hole touches it.
        EdgeUse::Sawn { allowance_mm }
    } else {
        objections.push(Objection::NarrowStrip { edge, width_mm });
        EdgeUse::Sawn { allowance_mm }
    }
}

/// The use of an edge whose face is on the stone already: it lies on the edge of the stone nearest to
/// that face.
fn ready(job: &Job, top: &Shape, edge: usize) -> Option<EdgeUse> {
    let allowance_mm = job.top.ready_mm(Part::Edge(edge))?;
    let (from, to) = edge_span(top, edge);
    let middle = from.midpoint(to) + top.edge_line(edge).along.right() * allowance_mm;
    let slab = &job.slab.shape;
    let away = |e: &usize| {
        let seg = slab.edge_seg(*e);
        seg.map_or(f64::INFINITY, |s| s.distance(middle))
    };
    let nearest = (0..slab.count()).min_by(|a, b| away(a).total_cmp(&away(b)));
    Some(EdgeUse::Flush {
        slab_edge: nearest?,
        gap_mm: 0.0,
        allowance_mm,
    })
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

/// A used-up edge next to an inside corner cannot be sawn square: its line runs into kept stone.
pub(super) fn beside_inside_corner(top: &Shape, edge: usize) -> bool {
    [edge, (edge + 1) % top.count()]
        .into_iter()
        .any(|corner| top.is_inside_corner(corner))
}

/// Width of the stone beyond an edge's sawn face, mm.
pub(super) fn strip_beyond(job: &Job, top: &Shape, edge: usize, allowance_mm: f64) -> f64 {
    let (from, to) = edge_span(top, edge);
    let face = top.edge_line(edge).shifted_right(allowance_mm);
    let out = face.along.right() * allowance_mm;
    room::beyond(job.slab.shape.outline(), &face, from + out, to + out)
}

/// The allowance an edge has when it lies on an edge of the slab; nothing when it may not.
pub(super) fn flush_allowance(job: &Job, edge: usize, slab_edge: usize) -> Option<f64> {
    match job.slab.edges[slab_edge] {
        EdgeState::Factory => Some(0.0),
        EdgeState::Sawn if job.top.finishes[edge] != Finish::Factory => {
            Some(edge_allowance(job, edge))
        }
        EdgeState::Sawn | EdgeState::Rough => None,
    }
}

/// The use of a straight edge that lies on a usable edge of the slab, within two tape errors; `from`
/// and `to` are the two ends of its straight piece.
pub(super) fn flush_with(
    job: &Job,
    edge: usize,
    slab_edge: usize,
    from: Point,
    to: Point,
) -> Option<EdgeUse> {
    let allowance_mm = flush_allowance(job, edge, slab_edge)?;
    let piece = job.slab.shape.edge_seg(slab_edge)?;
    let near = 2.0 * job.slab.tape_error_mm;
    let beside = |p: Point| piece.distance(p) <= near + allowance_mm + SAME_MM;
    if !beside(from) || !beside(to) {
        return None;
    }
    let line = job.slab.shape.edge_line(slab_edge);
    let gaps = gaps_to(&piece, &line, from, to).map(|g| g - allowance_mm);
    gaps.iter()
        .all(|g| *g >= -SAME_MM && *g <= near + SAME_MM)
        .then_some(EdgeUse::Flush {
            slab_edge,
            gap_mm: gaps.into_iter().fold(0.0, f64::max),
            allowance_mm,
        })
}

/// Distances inside a slab edge: of both ends of a straight stretch, and of its point that is
/// nearest to the middle of the circle when the slab's edge is bowed.
fn gaps_to(piece: &Seg, line: &Line, from: Point, to: Point) -> [f64; 3] {
    match piece {
        Seg::Line(..) => {
            let ends = [from, to].map(|p| line.left_of(p));
            [ends[0], ends[1], ends[0]]
        }
        Seg::Arc(arc) => {
            let inside = |p: Point| (arc.radius - arc.centre.distance(p)) * arc.sweep.signum();
            let share = if from.distance(to) > SAME_MM {
                Seg::Line(from, to).nearest(arc.centre)
            } else {
                0.0
            };
            [from, to, from + (to - from) * share].map(inside)
        }
    }
}

/// Distances to spare at the edges: the strip beyond a sawn edge, the gap at an edge whose opposite
/// is flush as well, and the room beyond a bowed one. Between two factory edges of the slab nothing is
/// cut: the top is as long as the slab, whatever the tape says.
pub(super) fn spares(job: &Job, top: &Shape, uses: &[EdgeUse], sawn: &Outline) -> Vec<f64> {
    let factory = |edge: usize| matches!(uses[edge], EdgeUse::Flush { slab_edge, .. } if job.slab.edges[slab_edge] == EdgeState::Factory);
    let opposite = |edge: usize| {
        let along = top.edge_line(edge).along;
        (0..top.count()).any(|other| {
            let facing = top.edge_line(other).along.dot(along) < -0.999_999;
            facing
                && matches!(uses[other], EdgeUse::Flush { gap_mm, .. } if gap_mm <= TOUCH_MM)
                && !(factory(edge) && factory(other))
        })
    };
    let spare = |(edge, used): (usize, &EdgeUse)| match used {
        EdgeUse::Sawn { allowance_mm } => Some(strip_beyond(job, top, edge, *allowance_mm)),
        EdgeUse::Flush { gap_mm, .. } if opposite(edge) => Some(*gap_mm),
        EdgeUse::Bowed { .. } => top
            .edge_seg(edge)
            .map(|piece| beside_curve(job, &piece, sawn)),
        EdgeUse::Flush { .. } | EdgeUse::UsedUp => None,
    };
    uses.iter().enumerate().filter_map(spare).collect()
}

/// How far the finished top must keep off an edge of the slab, mm: off a rough one by the margin; a round
/// top off every one by its allowance and the least strip, since no side of it lies along an edge.
pub(super) fn margin_mm(job: &Job, slab_edge: usize) -> f64 {
    let round = match job.top.shape.as_circle() {
        Some(_) => edge_allowance(job, 0) + job.place.least_strip_mm,
        None => 0.0,
    };
    if job.slab.edges[slab_edge] == EdgeState::Rough {
        round.max(job.slab.rough_margin_mm)
    } else {
        round
    }
}

/// How far the finished top is too near to edges of the slab that it must keep off: each edge, counted from
/// 0, and mm.
pub(super) fn too_near(job: &Job, top: &Shape) -> Vec<(usize, f64)> {
    let slab = &job.slab.shape;
    let lacks = |edge: usize| {
        let margin = margin_mm(job, edge);
        let seg = slab.edge_seg(edge).filter(|_| margin > 0.0)?;
        let lacks = margin - between(top.outline(), &[seg]);
        (lacks > TOUCH_MM).then_some((edge, lacks))
    };
    (0..slab.count()).filter_map(lacks).collect()
}

/// Depth in the slab of the sawn outline beside the middle half of a curve, mm.
fn beside_curve(job: &Job, piece: &Seg, sawn: &Outline) -> f64 {
    let slab = job.slab.shape.outline();
    let out = |share: f64| slab.depth(piece.at(share)) - sawn.distance(piece.at(share));
    [0.25, 0.5, 0.75]
        .map(out)
        .into_iter()
        .fold(f64::INFINITY, f64::min)
}
