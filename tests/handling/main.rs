//! Lifting, bending and setting down against published examples, statics and a second method.

mod bending;
mod fixtures;
mod lifting;
mod published;
mod whole_job;
