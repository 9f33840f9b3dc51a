//! The respirator that is asked for and the one at hand: the report, and one file for each hazard.

mod assess;

pub(super) use assess::assess;
pub mod filter;
pub mod fit;
pub mod mark;
pub mod missing;
pub mod nuisance;
mod report;
pub mod scheme;
pub mod weak;

pub(super) use report::powered;
use report::tight;
pub use report::{Enough, MOST, Required, RespiratorReport, Suitable, Worn, max_use_concentration};
