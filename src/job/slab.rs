//! The slab, its edges and its flaws.

use serde::Serialize;

use super::begun::Begun;
use super::flaw::Flaw;
use super::shape::Shape;
use super::survey::Survey;
use crate::geom::{Region, boolean};

/// The slab as bought.
#[derive(Clone, Debug)]
pub struct Slab {
    /// Its outline with the names of its corners and edges (letters).
    pub shape: Shape,
    /// The state of each edge, in the order AB, BC ….
    pub edges: Vec<EdgeState>,
    /// The edges whose state nobody has said: taken as sawn.
    pub undescribed: Vec<usize>,
    /// The finished top keeps this far off a rough edge, mm: such an edge is chipped, and cracked
    /// further in.
    pub rough_margin_mm: f64,
    /// Flaws to keep clear of.
    pub flaws: Vec<Flaw>,
    /// Tape error, mm.
    pub tape_error_mm: f64,
    /// Direction of the vein, degrees counter-clockwise from AB.
    pub vein_deg: Option<f64>,
    /// How it was measured, how well the tapes close, and how square it is.
    pub survey: Survey,
    /// What has been cut into it already; nothing in a slab as bought.
    pub begun: Begun,
}

impl Slab {
    /// The stone: the slab without what has been taken out of it already. Where that parts it, the
    /// largest part.
    #[must_use]
    pub fn region(&self) -> Region {
        let whole = Region::solid(self.shape.outline().clone());
        if self.begun.taken.is_empty() {
            return whole;
        }
        let parts = boolean::difference(std::slice::from_ref(&whole), &self.begun.taken);
        let largest = parts
            .into_iter()
            .max_by(|a, b| a.area().total_cmp(&b.area()));
        largest.unwrap_or(whole)
    }
}

/// What an edge of the slab can be used for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum EdgeState {
    /// Finished, usable as it is.
    Factory,
    /// Sawn straight: usable as a sawn edge.
    Sawn,
    /// Not usable.
    Rough,
}
