//! Every record: the hazards, the checks of the stages, and the formulas.
//!
//! A new hazard is a file with its record and a line here.

mod checks;
mod formulas;
mod list;

pub use list::{HAZARDS, all, checks, find, formulas};
