//! Stone that the tools leave standing.

use serde::Serialize;

use crate::geom::Point;

/// What stone the tools leave standing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Remains {
    /// Ridges between plunges, or between the holes of a chain.
    Cusps,
    /// Low down under a stopped end, one kerf wide.
    #[serde(rename = "tail")]
    RunOut,
    /// Beside the middle of a straight slot inside a hollow arc.
    Hollow,
    /// Beside the ends of such a slot at the underside.
    HollowUnder,
    /// In a corner that a core hole leaves rounder than asked for.
    Corner,
    /// On an edge that a trim in line with it has made, whose allowance is larger.
    Beside,
    /// At an end of an arc, where the cuts beside it leave more than its own plunges do along it.
    AtEnd,
}

/// How a hand takes off what is left.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Removal {
    /// Ground off.
    Ground,
    /// With a diamond wire or rod from the core hole beside it.
    FromCoreHole,
    /// Low down at the underside, with no hole beside it: taken out last, with a core bit in the waste, the rest
    /// ground off.
    FromBelow,
}

/// Stone that the tools leave standing and a hand takes off.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LeftOver {
    /// What it is.
    pub why: Remains,
    /// Where; for a run-out, where the cut ends in the face, on the middle of the kerf.
    pub at: Point,
    /// Its size, mm; for a run-out, its length at the underside as the disc leaves it.
    pub length: f64,
    /// For a run-out: the direction from the cut towards its end, degrees.
    #[serde(rename = "heading_deg")]
    pub heading: Option<f64>,
    /// What is left of it once core holes beside it have had their share, mm.
    #[serde(rename = "left_mm")]
    pub left: f64,
    /// How it is taken off.
    pub by: Removal,
}
