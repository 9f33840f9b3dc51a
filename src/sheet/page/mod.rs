//! The pages of the job sheet, one file each, in the order they are bound.

pub mod bending;
pub mod both;
pub mod body;
pub mod curve;
pub mod glance;
pub mod helper;
pub mod lifting;
mod moments;
pub mod pieces;
pub mod protection;
pub mod safety;
pub mod set_out;
pub mod setting;
pub mod sources;
pub mod straight;
