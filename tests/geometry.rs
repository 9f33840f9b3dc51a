//! The geometry of lines and arcs against other people's: kurbo's moments, `cavalier_contours`' exact
//! arcs, clipper2's polygons, and printed answers.

// Counts and grid coordinates are far below what the casts can hold; printed answers stay as printed.
#![allow(
    clippy::unreadable_literal,
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "geometry/booleans.rs"]
mod booleans;
#[path = "geometry/other.rs"]
mod other;
#[path = "geometry/outlines.rs"]
mod outlines;
#[path = "geometry/published.rs"]
mod published;
#[path = "geometry/rectangles.rs"]
mod rectangles;
#[path = "geometry/single.rs"]
mod single;
