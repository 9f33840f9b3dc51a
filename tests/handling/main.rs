//! Lifting, bending and setting down against published examples, statics and a second method.

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
mod whole_job;
