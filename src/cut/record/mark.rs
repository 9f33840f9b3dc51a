//! Marks: how a place on the stone is measured from named corners, and where the stone is borne.

use serde::Serialize;

use crate::geom::Point;

/// A taped distance from a named corner.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tie {
    /// The slab's corner.
    pub corner: String,
    /// Distance, mm.
    #[serde(rename = "distance_mm")]
    pub distance: f64,
}

/// A mark on the edge of the slab.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct EdgeMark {
    /// Where it is.
    pub at: Point,
    /// The slab's edge (or corner, when it falls on a rounded one).
    pub on: String,
    /// From the nearest sharp corner.
    pub tie: Tie,
    /// From another corner, as a check: where there is one, it changes by at least half as much as the mark
    /// is off along its edge.
    pub check: Tie,
    /// Whether the kept stone begins at the mark as seen from the corner of its tie: the distance is then
    /// never rounded up, else never down.
    pub kept_beyond: bool,
    /// Whether that stone is still there when the cut is made: if not, the line struck before the
    /// first cut shows the place on the stone that is left.
    pub still_there: bool,
}

/// How far a point lies from a struck line, square to it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Offset {
    /// The cut whose line to keep it is.
    pub cut: usize,
    /// Distance into the waste, mm.
    #[serde(rename = "distance_mm")]
    pub distance: f64,
}

/// Where the middle of a core hole is marked.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CentreMark {
    /// The middle of the hole.
    pub at: Point,
    /// Across the hole, mm.
    #[serde(rename = "diameter_mm")]
    pub diameter: f64,
    /// Ties from the slab's corners: two, and one or two more as checks.
    pub ties: Vec<Tie>,
    /// In an opening, its distances from two lines struck for its cuts; none where there are no such lines.
    pub offsets: Vec<Offset>,
}

/// Bearers along a cut: blocks across it on the deck, one on each side of the line at every place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bearers {
    /// Places along the cut, mm from where it enters the stone; they lie evenly from either end.
    #[serde(rename = "at_mm")]
    pub at: Vec<f64>,
    /// From the line to the middle of the bearers under the kept stone, mm.
    #[serde(rename = "kept_off_mm")]
    pub kept_off: f64,
    /// From the line to the middle of the bearers under the waste, mm: in the middle of a strip too
    /// narrow for more.
    #[serde(rename = "waste_off_mm")]
    pub waste_off: f64,
}
