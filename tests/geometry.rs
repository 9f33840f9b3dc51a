//! The geometry of lines and arcs against other people's: kurbo's moments, cavalier_contours' exact
//! arcs, clipper2's polygons, and printed answers.

#[path = "geometry/booleans.rs"]
mod booleans;
#[path = "geometry/other.rs"]
mod other;
#[path = "geometry/outlines.rs"]
mod outlines;
#[path = "geometry/published.rs"]
mod published;
#[path = "geometry/single.rs"]
mod single;
