//! An outline with each piece moved outwards by its own amount.

use super::SAME_MM;
use super::arc::Arc;
use super::outline::{Outline, OutlineFault};
use super::point::{Point, Vector};
use super::seg::Seg;

/// Why an outline cannot be offset as asked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum OffsetFault {
    /// A hollow arc would shrink to nothing, or an arc inwards past its centre.
    ArcVanishes {
        /// The piece, counted from 0.
        piece: usize,
    },
    /// Two neighbouring pieces no longer meet.
    Apart {
        /// The later of the two pieces.
        piece: usize,
    },
    /// The result is not an outline.
    Broken(OutlineFault),
}

impl Outline {
    /// The outline whose piece `i` lies `by_mm[i]` outside this one's (inside when negative).
    ///
    /// Lines stay lines and arcs stay arcs about the same centre; neighbours are carried on until
    /// they meet (a sharp corner stays sharp). Exact.
    ///
    /// # Errors
    /// See [`OffsetFault`]. `by_mm` must have one entry for each piece; missing ones count as 0.
    pub fn offset_each(&self, by_mm: &[f64]) -> Result<Self, OffsetFault> {
        let n = self.segs().len();
        let by = |i: usize| by_mm.get(i).copied().unwrap_or(0.0);
        let moved = (0..n)
            .map(|i| moved_out(&self.segs()[i], by(i)).ok_or(OffsetFault::ArcVanishes { piece: i }))
            .collect::<Result<Vec<_>, _>>()?;
        let joint = |i: usize| {
            let before = (i + n - 1) % n;
            joint_of(self, &moved, before, i, by(before), by(i))
                .ok_or(OffsetFault::Apart { piece: i })
        };
        let joints = (0..n).map(joint).collect::<Result<Vec<_>, _>>()?;
        let segs = (0..n)
            .map(|i| between(&moved[i], joints[i], joints[(i + 1) % n]))
            .collect();
        Self::new(segs).map_err(OffsetFault::Broken)
    }
}

fn outwards(seg: &Seg, share: f64) -> Vector {
    seg.heading(share).right()
}

fn moved_out(seg: &Seg, by: f64) -> Option<Seg> {
    match *seg {
        Seg::Line(a, b) => {
            let out = outwards(seg, 0.0) * by;
            Some(Seg::Line(a + out, b + out))
        }
        Seg::Arc(arc) => {
            let radius = arc.radius + by * arc.sweep.signum();
            (radius > SAME_MM).then_some(Seg::Arc(Arc { radius, ..arc }))
        }
    }
}

/// The point where moved pieces `a` and `b` (neighbours) join.
fn joint_of(
    from: &Outline,
    moved: &[Seg],
    a: usize,
    b: usize,
    by_a: f64,
    by_b: f64,
) -> Option<Point> {
    let old = from.segs()[b].start();
    let (out_a, out_b) = (
        outwards(&from.segs()[a], 1.0),
        outwards(&from.segs()[b], 0.0),
    );
    let smooth = out_a.cross(out_b).abs() < 1e-9 && out_a.dot(out_b) > 0.0;
    if smooth && (by_a - by_b).abs() < SAME_MM * 1e-3 {
        return Some(old + out_a * by_a);
    }
    // A wider arc crosses its tangent neighbour twice, equally near: the one on the arc counts.
    let beside_arc = |p: Point| {
        let off = |s: &Seg| matches!(s, Seg::Arc(arc) if arc.share_at((p - arc.centre).angle(), 0.0).is_none());
        off(&moved[a]) || off(&moved[b])
    };
    let far = |p: &Point| p.distance(old) + if smooth && beside_arc(*p) { 1e6 } else { 0.0 };
    moved[a]
        .carrier_meets(&moved[b])
        .into_iter()
        .min_by(|p, q| far(p).total_cmp(&far(q)))
}

/// The piece of a moved line or arc between two points on it.
fn between(seg: &Seg, from: Point, to: Point) -> Seg {
    match seg {
        Seg::Line(..) => Seg::Line(from, to),
        Seg::Arc(arc) => Seg::Arc(Arc::between(arc.centre, from, to, arc.sweep)),
    }
}
