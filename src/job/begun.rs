//! What has been cut into a slab already.

use serde::Serialize;

use super::Slab;
use crate::geom::{Outline, Point, Region, boolean};

/// Holes and slots that go right through a slab whose cutting has begun, in its frame.
#[derive(Clone, Debug, Default)]
pub struct Begun {
    /// Openings, slots and core holes; they may overlap and reach over the slab's edge.
    pub taken: Vec<Outline>,
    /// The core holes among them.
    pub drilled: Vec<Drilled>,
}

/// A core hole that has been drilled.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Drilled {
    /// Its middle.
    pub at: Point,
    /// Across, mm.
    pub diameter: f64,
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
