//! A straight cut set out along a guide.

use serde::Serialize;

use crate::geom::{Line, Point};

use super::mark::{EdgeMark, Offset, Tie};

/// A line marked on the slab by a mark on its edge at each end.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MarkedLine {
    /// The mark where the line enters the slab.
    pub start: EdgeMark,
    /// The mark where it leaves.
    pub end: EdgeMark,
}

impl MarkedLine {
    pub(crate) fn line(&self) -> Line {
        Line::through(self.start.at, self.end.at)
    }
}

/// On which stone the guide lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum GuideSide {
    /// On the stone that is kept.
    Kept,
    /// On the waste, because the kept stone is too narrow for the jig.
    Waste,
}

/// One setting of a guide that is shorter than the cut.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SetUp {
    /// Beginning of the guide, mm along the cut from the end it is taped from.
    #[serde(rename = "from_mm")]
    pub from: f64,
    /// End of the guide, mm along the cut from the same end.
    #[serde(rename = "to_mm")]
    pub to: f64,
}

/// Where the settings of a short guide and the bearers are taped from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum RunEnd {
    /// From the mark where the line to keep enters the slab.
    Start,
    /// From the mark where it leaves.
    End,
    /// From the end of the stone on the entering side: the cut begins at no mark that is left.
    StoneAtStart,
    /// From the end of the stone on the leaving side.
    StoneAtEnd,
    /// From where the cut stops on the entering side: it runs off the stone at neither end.
    StopAtStart,
}

impl RunEnd {
    /// Whether it is where the cut leaves the stone.
    #[must_use]
    pub const fn is_leaving(self) -> bool {
        matches!(self, Self::End | Self::StoneAtEnd)
    }
}

/// How a straight trim is set out.
#[derive(Clone, Debug, Serialize)]
pub struct StraightSetOut {
    /// The near face of the kerf: the line to mark and to keep.
    pub face: MarkedLine,
    /// The guide's edge.
    pub guide: MarkedLine,
    /// Where the guide lies.
    pub guide_side: GuideSide,
    /// From the guide's edge to the near face, mm.
    #[serde(rename = "guide_to_face_mm")]
    pub guide_to_face: f64,
    /// Where the settings, and the bearers, are taped from.
    pub set_ups_from: RunEnd,
    /// Settings of the guide.
    pub set_ups: Vec<SetUp>,
    /// True when an end of the guide lies farther from the stone's edges than a clamp reaches.
    pub out_of_reach: bool,
    /// Length sawn from the far side first, mm; 0 when the cut is too short to need it, or stops
    /// inside the stone.
    #[serde(rename = "far_end_mm")]
    pub far_end: f64,
    /// The line to keep as far as it is sawn in the face, kept stone to its left.
    pub sawn: [Point; 2],
    /// Where the cut stops inside the stone.
    pub stops: Vec<Stop>,
    /// At a clipped corner: how far along the lines to keep beside it this one meets them.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub from_corner: Option<FromCorner>,
}

/// A line across a corner, measured as a person would: from the corner along both edges.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct FromCorner {
    /// The corner of the top where the lines to keep beside it meet.
    pub corner: String,
    /// From it along the line before and along the line after, mm.
    #[serde(rename = "along_mm")]
    pub along: [f64; 2],
}

/// Where a cut stops inside the stone.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Stop {
    /// Where the cut in the face ends, on the line to keep.
    pub at: Point,
    /// Ties to it from the slab's corners: two, and one or two more as checks.
    pub ties: Vec<Tie>,
    /// In an opening, its distances from two lines struck for its cuts; none where there are no such lines.
    pub offsets: Vec<Offset>,
    /// The disc's centre stays this far short of it, mm: half the length of its cut in the face.
    #[serde(rename = "centre_short_mm")]
    pub centre_short: f64,
    /// Whether a core hole takes up the end of the cut.
    pub into_hole: bool,
}
