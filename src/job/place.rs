//! Where the top lies on the slab, and what it stands on.

use crate::geom::Point;
use crate::units::Mass;

/// Where the top should lie.
#[derive(Clone, Debug)]
pub struct PlaceWish {
    /// Fixed by the user, or searched.
    pub how: PlaceHow,
    /// Narrowest strip that can be sawn off, mm.
    pub least_strip_mm: f64,
}

/// Fixed or searched.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PlaceHow {
    /// Find the best place.
    Search,
    /// Where the cutting that has begun has it: nothing is left to be found or measured again.
    AsCut {
        /// Where the origin of the top's frame lies on the slab.
        at: Point,
        /// Turn, degrees counter-clockwise.
        turn_deg: f64,
    },
    /// Check this place only.
    Fixed {
        /// Where the origin of the top's frame lies on the slab.
        at: Point,
        /// Turn, degrees counter-clockwise.
        turn_deg: f64,
    },
}

/// Something the top stands on, in the top's frame.
#[derive(Clone, Debug)]
pub struct Support {
    /// What it is.
    pub what: String,
    /// Where it is.
    pub place: SupportPlace,
    /// The most it may carry.
    pub limit: Option<Mass>,
    /// How stiff it is for its length against a full support, above 0 and at most 1: a wall or a
    /// sound cabinet side is 1.
    pub stiffness: f64,
}

/// The shape of a support.
#[derive(Clone, Debug)]
pub enum SupportPlace {
    /// A line: cabinet side, rail, wall.
    Line(Point, Point),
    /// A pad of a diameter in mm.
    Pad(Point, f64),
}
