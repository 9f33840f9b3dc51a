//! A place of the top on the slab.

use crate::geom::{Outline, Pose, Region};
use crate::job::{Part, Shape};

use super::{EdgeUse, SawnCutout, Trim};

/// A valid place of the top on the slab, in the slab's frame.
#[derive(Clone, Debug)]
pub struct Placement {
    /// Carries the top's frame into the slab's.
    pub pose: Pose,
    /// The finished top.
    pub top: Shape,
    /// What the saw leaves: the finished top and its allowances.
    pub sawn: Outline,
    /// What each piece of `sawn` belongs to; a corner whose edges' faces meet before it is missing.
    pub sawn_parts: Vec<Part>,
    /// What becomes of each edge of the top, in the order 1-2, 2-3 ….
    pub uses: Vec<EdgeUse>,
    /// The allowance on the arc or flat at each corner, mm.
    pub corner_allowances: Vec<f64>,
    /// The openings, in the order given.
    pub cutouts: Vec<SawnCutout>,
    /// The straight trims in the order they are sawn: those that run off the slab, then those that
    /// stop inside it.
    pub trims: Vec<Trim>,
    /// Sawing work: sawn face, with curves counted by their factor, mm².
    pub work_mm2: f64,
    /// The least distance to spare on any side that is not flush, mm.
    pub least_spare_mm: f64,
}

impl Placement {
    /// The boundaries of the stone that is kept, with its allowances: the top's own and its openings'.
    #[must_use]
    pub fn sawn_boundaries(&self) -> Vec<Outline> {
        let openings = self.cutouts.iter().map(|c| c.sawn.clone());
        std::iter::once(self.sawn.clone()).chain(openings).collect()
    }

    /// The finished top without its openings.
    #[must_use]
    pub fn finished(&self) -> Region {
        Region {
            outer: self.top.outline().clone(),
            holes: self
                .cutouts
                .iter()
                .map(|c| c.shape.outline().clone())
                .collect(),
        }
    }
}

/// The lines of a job file that fix a place, under `[place]`: exact to well below a thousandth of a
/// millimetre, so that what only just fits does so again.
#[must_use]
pub fn fixing_lines(placement: &Placement) -> [String; 2] {
    // 0.0 takes the sign from a zero.
    let mm = |v: f64| format!("\"{} mm\"", (v * 1e8).round() / 1e8 + 0.0);
    let turn = (placement.pose.turn.to_degrees() * 1e9).round() / 1e9 + 0.0;
    let at = placement.pose.shift;
    [
        format!("at = [{}, {}]", mm(at.x), mm(at.y)),
        format!("turn = {turn:?}"),
    ]
}

impl Placement {
    /// What is to spare at the tightest, mm, as it is printed: nothing where the top is the slab, edge on
    /// edge, and no place is tight.
    #[must_use]
    pub const fn spare_mm(&self) -> f64 {
        if self.least_spare_mm.is_finite() {
            self.least_spare_mm
        } else {
            0.0
        }
    }
}
