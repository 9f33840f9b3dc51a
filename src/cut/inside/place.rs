//! An inside corner or a hollow arc, and what it is made with.

use crate::cut::corner::{Bored, Sides};
use crate::cut::kept::Ring;
use crate::geom::Point;

/// How it is made.
#[derive(Clone, Debug)]
pub enum Way {
    /// By core holes.
    Bored(Bored),
    /// By plunges.
    Plunged,
    /// By nothing in the kit.
    Unable,
}

/// An inside corner or a hollow arc.
#[derive(Clone, Debug)]
pub struct InsidePlace {
    /// The pieces on both sides of it.
    pub sides: Sides,
    /// The hollow arc itself; nothing at a sharp corner.
    pub arc: Option<usize>,
    /// How it is made.
    pub way: Way,
}

impl InsidePlace {
    /// Where core holes or an arc end the pieces beside it: the one before and the one after.
    #[must_use]
    pub fn stops(&self, ring: &Ring) -> [Option<Point>; 2] {
        match (&self.way, self.arc) {
            (Way::Bored(bored), _) => bored.stops.map(Some),
            (_, Some(arc)) => {
                let seg = &ring.pieces[arc].seg;
                [Some(seg.start()), Some(seg.end())]
            }
            (_, None) => [None, None],
        }
    }
}
