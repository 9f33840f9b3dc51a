//! How the disc moves, and where it stands: passes, strokes, core holes.

use serde::{Serialize, Serializer};

use crate::cut::disc;
use crate::geom::{Point, Vector};
use crate::job::Disc;

/// One depth.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Pass {
    /// From 1.
    pub number: usize,
    /// Depth of the disc's rim below the face, mm.
    #[serde(rename = "depth_mm")]
    pub depth: f64,
}

/// A core hole, a cylinder right through the stone.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Hole {
    /// Its middle.
    pub at: Point,
    /// Across, mm.
    #[serde(rename = "diameter_mm")]
    pub diameter: f64,
}

/// One movement of the disc.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Stroke {
    /// The pass it belongs to.
    pub pass: usize,
    /// A run or a plunge.
    pub kind: StrokeKind,
    /// Centre of the disc at its start, on the mid-plane of the kerf.
    pub from: Point,
    /// Centre of the disc at its end; for a plunge the same.
    pub to: Point,
    /// Direction of the disc.
    #[serde(serialize_with = "in_degrees")]
    pub heading: f64,
    /// Depth of the rim below the face, mm.
    pub depth: f64,
}

/// How the disc moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum StrokeKind {
    /// Along the cut at one depth.
    Run,
    /// Straight down.
    Plunge,
}

// The signature is the one `serialize_with` asks for.
#[allow(clippy::trivially_copy_pass_by_ref)]
pub(crate) fn in_degrees<S: Serializer>(radians: &f64, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_f64(radians.to_degrees())
}

impl Stroke {
    /// The rectangle this stroke takes out of the stone at `below` mm under the face.
    #[must_use]
    pub fn slot(&self, disc: &Disc, below: f64) -> Vec<Point> {
        let along = Vector::at_angle(self.heading);
        let half = along * disc::half_length(disc, self.depth, below);
        let side = along.left() * (disc.kerf / 2.0);
        let (a, b) = (self.from - half, self.to + half);
        vec![a - side, b - side, b + side, a + side]
    }
}

/// A core hole.
#[derive(Clone, Debug, Serialize)]
pub struct CoreHole {
    /// The cut it belongs to.
    pub cut: usize,
    /// Its centre.
    pub at: Point,
    /// The bit's diameter.
    pub diameter: f64,
}
