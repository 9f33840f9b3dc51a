//! What must be read before anybody lifts.

mod all;
pub(crate) mod lift;
pub(crate) mod narrow;
pub(crate) mod setting;
mod sources;
pub(crate) mod strength;

pub(crate) use all::NOT_A_LIMIT;
pub(super) use all::findings;
