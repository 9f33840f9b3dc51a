//! The slab as measured: from tapes to corners, and how far the tapes can be trusted.
//!
//! A person has a tape and no angles. Four sides and a diagonal, or two tapes to every corner from a
//! base line, fix a figure; every tape more than that is a check. What is left over is told in mm, is
//! shared out by least squares when the tape's error explains it, and otherwise is a mistake to be
//! found with the tape, not with arithmetic: one tape too many shows that there is a mistake and how
//! large it would be in each tape, never in which of them it is.
//!
//! | file | what it does |
//! |---|---|
//! | [`network`] | least squares |
//! | [`quadrilateral`] | four sides and one or two diagonals |
//! | [`ties`] | two or three tapes to each corner from a base line |
//! | [`blunder`] | mistakes that leave a mark: round numbers, digits changed over |
//! | [`square`] | corners out of square |
//!
//! All lengths are mm; all angles degrees.

pub mod blunder;
pub mod network;
pub mod quadrilateral;
mod record;
pub mod square;
pub mod ties;

pub use record::{EXPLAINED, How, Misclosure, Survey, TapeCheck, apex};

pub use blunder::Blunder;
pub use quadrilateral::{Quadrilateral, Tape};
pub use square::OutOfSquare;
pub use ties::CornerTapes;
