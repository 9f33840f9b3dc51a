//! What is left of a job that did not go as planned, as a job of its own.
//!
//! The job as first planned is placed again, so that the wanted lines are known; the faces and chips that
//! really came out are laid against them. What the allowance takes up costs nothing. What it does
//! not makes the top smaller: an edge moves in, or a rounding grows. The stone as it is now becomes the
//! slab of a new job and the top's place on it is fixed; from there everything goes the usual way.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | the way from the old job to the new |
//! | [`faces`] | where each face lies, and how far in the stone is unhurt |
//! | [`stone`] | the stone as it is now: its outline, and the slab it makes |
//! | [`mod@settle`] | what becomes of one edge |
//! | [`made`] | what the cuts that have been made took out where they stop inside the stone |
//! | [`opening`], `openings` | what becomes of an opening; the same as data |
//! | `moved` | a figure with its edges moved |
//! | [`smaller`] | the largest top of the same kind that the stone still holds |
//! | [`overhang`] | how far the top stands over its base |
//! | [`rim`] | what a larger opening gives cause to say |
//! | `numbered` | cuts told by their numbers on the sheet |
//! | [`note`] | what happened and what it costs, as data |
//! | [`lines`] | the top there is now as lines of a job file |

mod account;
mod after;
pub mod faces;
mod happened;
pub mod lines;
pub mod made;
mod moved;
mod no_way;
pub mod note;
mod numbered;
pub mod opening;
mod openings;
pub mod overhang;
pub mod rim;
pub mod settle;
pub mod smaller;
pub mod stone;

pub use after::{Repaired, after};

pub use note::{
    ChipNote, CornerNow, EdgeNow, Letters, OpeningNow, Outcome, RailNow, Repair, ToDo, TopMeasures,
};
pub use overhang::OverhangNow;
pub use settle::{Settled, settle};
