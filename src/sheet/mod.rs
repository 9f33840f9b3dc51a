//! The job sheet: pages of items at fixed places, in mm.

pub mod item;
