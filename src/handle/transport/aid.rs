//! What carries the stone when hands must not: the numbers each aid needs.
//!
//! | file | the aid |
//! |---|---|
//! | [`trolley`] | a trolley that carries the stone on edge |
//! | [`vacuum`] | a vacuum lifter, and where its cups go |
//! | [`sling`] | a gantry or hoist with two slings |
//! | `finding` | what is told of the one that is used |
//!
//! Makers' instructions and competent people come before all of these: the numbers only say what
//! to ask for.

pub(crate) mod finding;
mod needs;
pub mod sling;
pub mod trolley;
pub mod vacuum;

pub use needs::{Aids, Rating};

use crate::diag::Findings;
use crate::job::Job;

/// What must be read before the aid of this job is used.
pub(crate) fn findings(job: &Job, stones: &[Aids; 2]) -> Findings {
    finding::findings(job, stones)
}
