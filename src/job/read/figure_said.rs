//! A figure while it is read.

use crate::geom::Point;
use crate::job::ledger::TextRange;
use crate::job::shape::{corner_name, edge_name};
use crate::job::{CornerCut, Naming};

/// A figure being read: its corners, what is done to each, and where each was said.
#[derive(Debug)]
pub(super) struct SaidFigure {
    pub(super) naming: Naming,
    pub(super) corners: Vec<Point>,
    pub(super) cuts: Vec<CornerCut>,
    pub(super) bows: Vec<f64>,
    /// The key and the place of the corners.
    pub(super) said: (String, TextRange),
    /// The key and the place of each corner's treatment.
    pub(super) cut_said: Vec<Option<(String, TextRange)>>,
    /// The key and the place of each edge's bow.
    pub(super) bow_said: Vec<Option<(String, TextRange)>>,
}

impl SaidFigure {
    /// A figure of straight edges and sharp corners, of which nothing is said yet.
    pub(super) fn sharp(naming: Naming, corners: Vec<Point>, said: (String, TextRange)) -> Self {
        let n = corners.len();
        Self {
            naming,
            cuts: vec![CornerCut::Sharp; n],
            cut_said: vec![None; n],
            bows: vec![0.0; n],
            bow_said: vec![None; n],
            corners,
            said,
        }
    }

    /// Name of a corner.
    pub(super) fn corner(&self, corner: usize) -> String {
        corner_name(self.naming, corner)
    }

    /// Name of an edge.
    pub(super) fn edge(&self, edge: usize) -> String {
        edge_name(self.naming, edge, self.corners.len())
    }
}
