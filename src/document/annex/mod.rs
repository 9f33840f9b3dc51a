//! The annex: every finding in full, the working, tables, assumptions, sources, studies.

mod assumed;
mod findings;
mod health;
mod sections;
mod stone;
mod strength;
pub(super) mod way;

pub(super) use assumed::assumed;
pub(super) use sections::sections;
