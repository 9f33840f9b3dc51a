//! What the stages of the plan look at and report, explained.

mod check;
mod cutting;
mod handling;

use check::{COMPUTED, JUDGED, Sources, check};

pub(super) use cutting::OF_CUTTING;
pub(super) use handling::OF_HANDLING;
