//! Lifting, bending and setting down against published examples, statics and a second method.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "../replay/mod.rs"]
mod replay;

mod agree;
mod bending;
mod finite_elements;
mod fixtures;
mod keys;
mod lifting;
mod mass;
mod narrow;
mod published;
mod setting_down;
mod trestles;
mod waste;
mod whole_job;
