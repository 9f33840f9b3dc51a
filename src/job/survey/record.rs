//! What the tapes say of the slab, and how well they close.

use serde::Serialize;

use crate::job::shape::Shape;

use super::{Blunder, OutOfSquare, square};

/// How much of a tape's stated error is taken for granted: a misclosure is explained when it is at most
/// so many times what single errors of that size add up to (judgement: about 1 in 20 good sets of tapes
/// is more than two standard deviations out).
pub const EXPLAINED: f64 = 2.0;

/// How the slab was measured, and what came of it.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Survey {
    /// What was measured.
    pub how: How,
    /// Every check that the tapes allow; none when nothing was measured twice.
    pub misclosures: Vec<Misclosure>,
    /// The corners out of square by more than the tape's error; none for a slab given as a rectangle.
    pub out_of_square: Vec<OutOfSquare>,
    /// The diagonals of a four-cornered slab, AC and BD; none for a slab given as a rectangle.
    #[serde(rename = "diagonals_mm")]
    pub diagonals: Option<[f64; 2]>,
}

impl Survey {
    /// The survey of a finished figure.
    #[must_use]
    pub fn of(how: How, misclosures: Vec<Misclosure>, shape: &Shape, tape_error: f64) -> Self {
        let empty = Self {
            how,
            misclosures,
            ..Self::default()
        };
        if how == How::Rectangle {
            return empty;
        }
        let diagonals = match shape.corners() {
            [a, b, c, d] => Some([a.distance(*c), b.distance(*d)]),
            _ => None,
        };
        Self {
            out_of_square: square::out_of_square(shape, tape_error),
            diagonals,
            ..empty
        }
    }
}

/// What was measured.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum How {
    /// Length and depth of a rectangle, taken as square.
    #[default]
    Rectangle,
    /// Offsets of every corner from a base line.
    Offsets,
    /// Four sides and one diagonal: nothing is checked.
    SidesAndDiagonal,
    /// Four sides and both diagonals.
    SidesAndDiagonals,
    /// Tapes to every corner from the two ends of a base line.
    Ties,
}

/// How far tapes that check each other disagree.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Misclosure {
    /// What is checked: `slab`, or the name of a corner.
    pub of: String,
    /// The tape counted as the check.
    pub check: String,
    /// What it reads.
    #[serde(rename = "taped_mm")]
    pub taped: f64,
    /// What it should read by the others.
    #[serde(rename = "computed_mm")]
    pub computed: f64,
    /// The most that the tape's error explains (judgement, see [`EXPLAINED`]).
    #[serde(rename = "explained_mm")]
    pub explained: f64,
    /// Every tape of the check.
    pub tapes: Vec<TapeCheck>,
}

impl Misclosure {
    /// What is left over: taped less computed.
    #[must_use]
    pub fn by(&self) -> f64 {
        self.taped - self.computed
    }

    /// Whether the tape's error explains it.
    #[must_use]
    pub fn is_explained(&self) -> bool {
        self.by().abs() <= self.explained
    }

    /// The tapes of which a slip of a kind that people make would explain the misclosure, the one that
    /// fits best first.
    #[must_use]
    pub fn suspects(&self) -> Vec<&TapeCheck> {
        let missed = |tape: &TapeCheck| match (tape.blunder, tape.alone) {
            (Some((_, meant)), Some(alone)) => (meant - alone).abs() / tape.open,
            _ => f64::INFINITY,
        };
        let mut suspects: Vec<_> = self.tapes.iter().filter(|t| t.blunder.is_some()).collect();
        suspects.sort_by(|a, b| missed(a).total_cmp(&missed(b)));
        suspects
    }
}

/// One tape of a check.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TapeCheck {
    /// The tape, such as `AB`.
    pub name: String,
    /// What it reads.
    #[serde(rename = "taped_mm")]
    pub taped: f64,
    /// The same length on the best fit.
    #[serde(rename = "adjusted_mm")]
    pub adjusted: f64,
    /// What it would have to read if every other tape were right; none when no length closes.
    #[serde(rename = "alone_mm")]
    pub alone: Option<f64>,
    /// How exactly the others say so: a length this near to `alone` is as good.
    #[serde(rename = "open_mm")]
    pub open: f64,
    /// The slip that would explain the whole misclosure, and the length meant; none when it is
    /// explained already, or when no usual slip fits. Not in a plan, where every check is explained.
    #[serde(skip)]
    pub blunder: Option<(Blunder, f64)>,
}

/// The apex of a triangle on a base along x from the origin, above it: its two other sides from the
/// base's start and end. Nothing when they do not meet.
#[must_use]
pub fn apex(base: f64, from_start: f64, from_end: f64) -> Option<crate::geom::Point> {
    let x = (from_start - from_end) * (from_start + from_end) / (2.0 * base) + base / 2.0;
    let square = (from_start - x) * (from_start + x);
    (square >= 0.0).then(|| crate::geom::Point::new(x, square.sqrt()))
}
