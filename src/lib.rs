//! kerfwright plans the cutting of stone worktops.
pub mod diag;
pub mod geom;
pub mod handle;
pub mod hazard;
pub mod job;
pub mod render;
pub mod sheet;
pub mod tables;
pub mod units;
