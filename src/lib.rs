//! kerfwright plans the cutting of stone worktops.
pub mod cli;
pub mod cut;
pub mod diag;
pub mod geom;
pub mod handle;
pub mod hazard;
pub mod job;
pub mod piece;
pub mod place;
pub mod plan;
pub mod render;
pub mod sheet;
pub mod tables;
pub mod units;
