//! What has been cut into a slab already.

use serde::Serialize;

use crate::geom::{Outline, Point};

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
    #[serde(rename = "diameter_mm")]
    pub diameter: f64,
}
