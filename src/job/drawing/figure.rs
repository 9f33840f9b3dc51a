//! From lines and arcs to corners with names: rounded corners, bowed edges.

use std::f64::consts::TAU;

use super::arcs::{Found, WITHIN_MM};
use crate::geom::{Arc, Line, Outline, Point, Seg, Vector};
use crate::job::CornerCut;

/// A bow rises less than half its chord: an arc that runs through more than this, radians, is parted.
const MOST_SWEEP: f64 = 2.6;
/// An arc that leaves its neighbours by less than this angle, radians, is tangent to them.
const TANGENT: f64 = 0.01;

/// A figure taken from a drawing.
#[derive(Clone, Debug)]
pub(in crate::job) struct Drawn {
    /// Its outline, in mm of the drawing.
    pub(in crate::job) outline: Outline,
    /// Its corners, counter-clockwise, in its own frame: the first is the origin.
    pub(in crate::job) corners: Vec<Point>,
    /// What is done to each.
    pub(in crate::job) cuts: Vec<CornerCut>,
    /// The rise of each edge.
    pub(in crate::job) bows: Vec<f64>,
    /// Across, when it is a whole circle.
    pub(in crate::job) circle: Option<f64>,
    /// From the drawing's origin to its own, mm.
    pub(in crate::job) shift: Vector,
    /// The arcs that were not drawn as arcs, and how far they are from what was drawn at most, mm.
    pub(in crate::job) arcs: usize,
    /// See `arcs`.
    pub(in crate::job) off_mm: f64,
}

/// Names the corners of a closed run. The first is the one nearest to the lower left.
///
/// # Errors
/// Why the run is no outline.
pub(super) fn of(found: &Found) -> Result<Drawn, String> {
    let segs = with_halves(&found.segs);
    let outline = Outline::new(segs).map_err(|fault| {
        use crate::geom::OutlineFault as F;
        match fault {
            F::Crossing { at, .. } => format!(
                "the outline crosses itself near ({:.2}, {:.2}) mm of the drawing",
                at.x, at.y
            ),
            _ => "the outline encloses no area".to_owned(),
        }
    })?;
    let segs = outline.segs().to_vec();
    let (mut corners, mut cuts, mut bows) = (Vec::new(), Vec::new(), Vec::new());
    let n = segs.len();
    let rounds: Vec<Option<(Point, f64)>> = (0..n)
        .map(|i| rounded(&segs[(i + n - 1) % n], &segs[i], &segs[(i + 1) % n]))
        .collect();
    for (i, seg) in segs
        .iter()
        .enumerate()
        .filter(|(i, _)| rounds[*i].is_none())
    {
        let (corner, cut) = match rounds[(i + n - 1) % n] {
            Some((corner, radius)) => (corner, CornerCut::Round(radius)),
            None => (seg.start(), CornerCut::Sharp),
        };
        corners.push(corner);
        cuts.push(cut);
        bows.push(rise(seg));
    }
    let low = |p: &Point| p.x + p.y;
    let firsts = corners.iter().enumerate();
    let first = firsts
        .min_by(|a, b| low(a.1).total_cmp(&low(b.1)))
        .map_or(0, |c| c.0);
    corners.rotate_left(first);
    cuts.rotate_left(first);
    bows.rotate_left(first);
    let shift = corners.first().map_or(Vector::default(), |c| c.to_vector());
    Ok(Drawn {
        circle: whole_circle(&segs),
        corners: corners.iter().map(|c| *c - shift).collect(),
        cuts,
        bows,
        shift,
        outline,
        arcs: found.arcs,
        off_mm: found.off_mm,
    })
}

/// Arcs that run through too much for one edge, in equal parts.
fn with_halves(segs: &[Seg]) -> Vec<Seg> {
    let each = segs.iter().flat_map(|seg| {
        let parts: u32 = match seg {
            Seg::Arc(arc) if arc.sweep.abs() > 2.0 * MOST_SWEEP => 3,
            Seg::Arc(arc) if arc.sweep.abs() > MOST_SWEEP => 2,
            _ => 1,
        };
        let share = move |i: u32| f64::from(i) / f64::from(parts);
        (0..parts).map(move |i| seg.part(share(i), share(i + 1)))
    });
    each.collect()
}

/// The sharp corner that an arc rounds, and its radius: it is tangent to a line before and after.
fn rounded(before: &Seg, seg: &Seg, after: &Seg) -> Option<(Point, f64)> {
    let (Seg::Line(a, from), Seg::Arc(arc), Seg::Line(to, b)) = (before, seg, after) else {
        return None;
    };
    let tangent = |u: Vector, v: Vector| u.cross(v).abs() < TANGENT && u.dot(v) > 0.0;
    let smooth = tangent(before.heading(1.0), seg.heading(0.0))
        && tangent(seg.heading(1.0), after.heading(0.0));
    let corner = Line::through(*a, *from).meet(&Line::through(*to, *b))?;
    let back = arc.radius * (arc.sweep / 2.0).tan().abs();
    let true_to = |p: &Point| (corner.distance(*p) - back).abs() <= WITHIN_MM;
    (smooth && true_to(from) && true_to(to)).then_some((corner, arc.radius))
}

/// The rise of a piece over its chord, mm: + outwards.
fn rise(seg: &Seg) -> f64 {
    match seg {
        Seg::Line(..) => 0.0,
        Seg::Arc(arc) => arc.radius * (1.0 - (arc.sweep / 2.0).cos()) * arc.sweep.signum(),
    }
}

/// Across the circle that an outline is.
fn whole_circle(segs: &[Seg]) -> Option<f64> {
    let arcs: Vec<&Arc> = segs
        .iter()
        .filter_map(|s| match s {
            Seg::Arc(arc) => Some(arc),
            Seg::Line(..) => None,
        })
        .collect();
    let first = arcs.first().filter(|_| arcs.len() == segs.len())?;
    let same = |arc: &&Arc| {
        arc.centre.distance(first.centre) + (arc.radius - first.radius).abs() <= WITHIN_MM
    };
    let swept: f64 = arcs.iter().map(|arc| arc.sweep).sum();
    (arcs.iter().all(same) && (swept - TAU).abs() < 1e-3).then_some(first.radius * 2.0)
}
