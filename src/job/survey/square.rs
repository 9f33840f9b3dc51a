//! How far corners that are meant to be square are not.

use serde::Serialize;

use crate::geom::Vector;
use crate::job::shape::Shape;

/// A corner is meant to be square when it is within this of a right angle, degrees (judgement).
pub const MEANT_SQUARE_DEG: f64 = 5.0;

/// A corner that is out of square by more than the tape's error. Lengths mm.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct OutOfSquare {
    /// The corner.
    pub corner: String,
    /// The angle inside the slab, degrees.
    #[serde(rename = "angle_deg")]
    pub angle: f64,
    /// The shorter of the two edges, between sharp corners, held against a square laid along the longer.
    pub edge: String,
    /// Its length.
    #[serde(rename = "over_mm")]
    pub over: f64,
    /// How far its other end lies from the square: + when the corner is opened, − when it is closed.
    #[serde(rename = "out_mm")]
    pub out: f64,
}

/// The corners out of square by more than the tape's error, in mm. Bowed edges count as their chords.
#[must_use]
pub fn out_of_square(shape: &Shape, tape_error: f64) -> Vec<OutOfSquare> {
    let corners = (0..shape.count()).map(|corner| at(shape, corner));
    corners
        .flatten()
        .filter(|c| c.out.abs() > tape_error)
        .collect()
}

fn at(shape: &Shape, corner: usize) -> Option<OutOfSquare> {
    let count = shape.count();
    let before = (corner + count - 1) % count;
    let (arriving, leaving) = (along(shape, before), along(shape, corner));
    let turn = arriving.cross(leaving).atan2(arriving.dot(leaving));
    // Past a right angle outside, the corner is opened; past one inside, closed.
    let opened = std::f64::consts::FRAC_PI_2 - turn.abs();
    if opened.abs() > MEANT_SQUARE_DEG.to_radians() {
        return None;
    }
    let lengths = [before, corner].map(|edge| (edge, shape.edge_length(edge)));
    let (edge, over) = if lengths[0].1 < lengths[1].1 {
        lengths[0]
    } else {
        lengths[1]
    };
    Some(OutOfSquare {
        corner: shape.corner_name(corner),
        angle: 180.0 - turn.to_degrees(),
        edge: shape.edge_name(edge),
        over,
        out: over * opened.sin() * turn.signum(),
    })
}

fn along(shape: &Shape, edge: usize) -> Vector {
    let corners = shape.corners();
    corners[(edge + 1) % shape.count()] - corners[edge]
}
