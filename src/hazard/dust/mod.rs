//! How the dust is held down: the report, and one file for each hazard.

mod assess;

pub(super) use assess::assess;
pub mod filter;
pub mod indoors;
pub mod order;
mod report;
pub mod shroud;
pub mod table;
pub mod uncontrolled;
pub mod water;

pub use report::DustReport;
pub(super) use report::consults_table;

pub use shroud::{Airflow, airflow};
