//! One record for each kind of stone.

pub mod made;
pub mod natural;
pub mod sources;
