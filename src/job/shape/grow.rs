//! A figure with every edge moved outwards: a top that stands over its base.

use super::Shape;
use super::part::{CornerCut, ShapeFault};
use super::trace::{Sharp, shifted_left, turn_at};
use crate::geom::{Point, SAME_MM, Seg};

/// Why a figure cannot be grown. Corners and edges are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GrowFault {
    /// A hollow edge would shrink past its centre.
    EdgeVanishes {
        /// The edge.
        edge: usize,
    },
    /// The two moved edges of a corner do not meet near it.
    Apart {
        /// The corner.
        corner: usize,
    },
    /// The rounding of an inside corner would shrink to nothing.
    RoundVanishes {
        /// The corner.
        corner: usize,
        /// The radius it needs at least, mm.
        least_mm: f64,
    },
    /// The grown figure is none.
    Shape(ShapeFault),
}

impl Shape {
    /// The figure whose edge `i` lies `by_mm[i]` outside this one's.
    ///
    /// Straight edges stay straight and bowed edges concentric. A rounded corner grows by the smaller
    /// of its two edges' shares (an inside corner shrinks by the larger), so that an even overhang
    /// leaves its arc concentric; the flat of a clipped corner moves out by the smaller share; a
    /// scooped corner keeps its radius.
    ///
    /// # Errors
    /// See [`GrowFault`]. `by_mm` must have one entry for each edge.
    pub fn grown(&self, by_mm: &[f64]) -> Result<Self, GrowFault> {
        let n = self.count();
        let sharp = Sharp::new(&self.corners, &self.bows).map_err(GrowFault::Shape)?;
        let moved = sharp.edges().iter().enumerate();
        let moved = moved
            .map(|(edge, seg)| {
                shifted_left(seg, -by_mm[edge]).ok_or(GrowFault::EdgeVanishes { edge })
            })
            .collect::<Result<Vec<_>, _>>()?;
        let corner = |i: usize| {
            let before = (i + n - 1) % n;
            let even = (by_mm[before] - by_mm[i]).abs() <= SAME_MM;
            joint(&moved[before], &moved[i], self.corners[i], even)
                .ok_or(GrowFault::Apart { corner: i })
        };
        let corners = (0..n).map(corner).collect::<Result<Vec<_>, _>>()?;
        let bows = (0..n).map(|i| bow_between(&moved[i], corners[i], corners[(i + 1) % n]));
        let bows: Vec<f64> = bows.collect();
        let cuts = (0..n).map(|i| self.grown_cut(i, corners[i], by_mm[(i + n - 1) % n], by_mm[i]));
        let cuts = cuts.collect::<Result<Vec<_>, _>>()?;
        Self::bowed(self.naming, corners, cuts, bows).map_err(GrowFault::Shape)
    }

    /// What is done to corner `i` once it has moved to `to`, its edges by `before` and `after` mm.
    fn grown_cut(
        &self,
        i: usize,
        to: Point,
        before: f64,
        after: f64,
    ) -> Result<CornerCut, GrowFault> {
        let turn = turn_at(&self.corners, &self.bows, i);
        let (less, more) = (before.min(after), before.max(after));
        match self.cuts[i] {
            CornerCut::Round(radius) if turn > 0.0 => Ok(CornerCut::Round(radius + less)),
            CornerCut::Round(radius) => {
                let left = radius - more;
                let vanishes = GrowFault::RoundVanishes {
                    corner: i,
                    least_mm: more,
                };
                (left > SAME_MM)
                    .then_some(CornerCut::Round(left))
                    .ok_or(vanishes)
            }
            CornerCut::Clip(back) => {
                let half = (turn / 2.0).cos();
                // From the sharp corner to the flat, along the bisector.
                let flat = back * half + self.corners[i].distance(to) - less;
                Ok(CornerCut::Clip(flat / half))
            }
            kept @ (CornerCut::Sharp | CornerCut::Scoop(_)) => Ok(kept),
        }
    }
}

/// Where two moved edges meet near their old corner. Edges that run straight on into each other meet
/// where the corner itself has moved to, when both move evenly.
fn joint(before: &Seg, after: &Seg, old: Point, even: bool) -> Option<Point> {
    let (arriving, leaving) = (before.heading(1.0), after.heading(0.0));
    let smooth = arriving.cross(leaving).abs() < 1e-9 && arriving.dot(leaving) > 0.0;
    if smooth {
        return even.then(|| after.start());
    }
    let meets = before.carrier_meets(after).into_iter();
    meets.min_by(|p, q| p.distance(old).total_cmp(&q.distance(old)))
}

/// The rise of a moved edge over its new chord, mm.
fn bow_between(moved: &Seg, from: Point, to: Point) -> f64 {
    match moved {
        Seg::Line(..) => 0.0,
        Seg::Arc(arc) => {
            let half = from.distance(to) / 2.0;
            let apothem = (arc.radius * arc.radius - half * half).max(0.0).sqrt();
            (arc.radius - apothem) * arc.sweep.signum()
        }
    }
}
