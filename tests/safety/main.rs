//! Safety from outside: every region's safety pages as text, every finding's record, the commands
//! that explain.
//!
//! After a change that is meant: `SNAPSHOTS=overwrite cargo test --test safety`, then read the
//! difference.

mod aids;
mod cutting_said;
mod explained;
mod factors;
mod ids;
mod keys;
mod matrix;
mod pages;
mod records;
mod stages;
