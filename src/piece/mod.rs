//! The stone after each cut: what is left, what came free, and where every square millimetre went.

mod finding;
mod fissure;
mod record;
mod simulation;
mod standing;
mod totals;

pub use simulation::follow;

pub use finding::findings;
pub(crate) use finding::{CURVE_WASTE, NEEDS_SUPPORT, NOT_FREED, SAID_WEIGHT};
pub(crate) use fissure::FISSURE;
pub(crate) use record::CRUMB_MM2;
pub use record::{BalanceSheet, BestRectangle, Crossing, Freed, Piece, Remaining, Stones, mass_of};
pub use totals::Totals;
