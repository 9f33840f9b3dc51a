//! A slab's tapes while they are read.

use crate::geom::Point;
use crate::job::given::Given;
use crate::job::ledger::{TextRange, Units};
use crate::job::survey::quadrilateral::{Quadrilateral, Refusal, Tape};
use crate::job::survey::ties::CornerTapes;
use crate::job::survey::{How, Misclosure};

/// Corners worked out from tapes.
#[derive(Debug)]
pub(super) struct Taped {
    pub(super) how: How,
    pub(super) corners: Vec<Point>,
    pub(super) misclosures: Vec<Misclosure>,
    /// The key and the place that the corners come from.
    pub(super) said: (String, TextRange),
}

/// The tapes as read, and where each stands.
pub(super) struct Read {
    pub(super) tapes: Quadrilateral,
    pub(super) places: [Option<(String, TextRange)>; 6],
    pub(super) diagonals: (String, TextRange),
}

impl Read {
    /// Where a tape stands; where the diagonals stand when it was not taped.
    pub(super) fn place(&self, tape: Tape) -> (String, TextRange) {
        let index = Tape::ALL.iter().position(|t| *t == tape);
        let own = index.and_then(|i| self.places[i].clone());
        own.unwrap_or_else(|| self.diagonals.clone())
    }

    pub(super) fn diagonals(&self) -> (String, TextRange) {
        self.diagonals.clone()
    }

    /// Where a refusal is best shown.
    pub(super) fn place_of(
        &self,
        refusal: &Refusal,
        said: &(String, TextRange),
    ) -> (String, TextRange) {
        match refusal {
            Refusal::NoDiagonal | Refusal::Crossing => self.diagonals(),
            Refusal::InsideCorner { .. } => said.clone(),
            Refusal::NoTriangle(open) => {
                let blamed = open.could_be.iter().map(|(tape, _)| *tape);
                let blamed: Vec<Tape> = blamed.collect();
                match blamed[..] {
                    [only] => self.place(only),
                    _ => self.place(open.long),
                }
            }
        }
    }
}

/// A tie as read.
pub(super) struct Corner<'a> {
    pub(super) name: String,
    pub(super) tie: CornerTapes,
    /// The whole tie, then each of its tapes.
    pub(super) given: Given<'a>,
    pub(super) tapes: Vec<Given<'a>>,
}

/// Whether lengths can be compared at all: not while the unit of bare numbers is at fault.
pub(super) fn can_compare(given: &Given<'_>) -> bool {
    given.ledger.units() != Units::Unclear
}
