//! Faults of a job file and findings of a plan, as data. Drawing them is someone else's job.

mod diagnostic;
mod finding;
mod phrase;

pub use diagnostic::{Diagnostic, Severity};

pub use finding::{Finding, Findings, Grade};
pub use phrase::{Clears, Harm, Phrase, Scope};
