//! Exact plane geometry of lines and circular arcs: the ground every stage stands on.
//!
//! Lengths are mm, areas mm², angles radians unless a name ends in `_deg`.
//! Seen from above, x to the right, y up, turns counter-clockwise.
//!
//! | file | noun or operation |
//! |---|---|
//! | [`point`] | points, vectors, poses, infinite lines |
//! | [`arc`] | circular arcs, and where lines and circles meet |
//! | [`seg`] | one straight or curved piece of an outline |
//! | [`outline`] | a closed, simple, counter-clockwise boundary |
//! | [`offset`] | each edge moved outwards by its own amount |
//! | [`clip`] | the parts of a piece inside a box |
//! | [`split`] | an outline cut in two along a chord |
//! | [`region`] | an outline with holes |
//! | [`boolean`] | difference and intersection; the only file that names `geo` |
//! | [`straighten`] | straight-sided figures that stand in for arcs, on a known side |
//! | [`hull`] | convex polygons: hulls, sums, lines through them |
//! | [`convex`] | a figure taken apart into convex pieces |
//! | [`free`] | what convex obstacles leave of a domain |
//! | [`rectangle`], `level` | the best rectangle inside an outline, at a turn and at any |

pub mod arc;
pub mod boolean;
pub mod clip;
pub mod convex;
pub mod free;
pub mod hull;
mod level;
pub mod offset;
pub mod outline;
pub mod point;
pub mod rectangle;
pub mod region;
pub mod seg;
pub mod split;
pub mod straighten;
mod tolerance;

pub use tolerance::{FLATTEN_MM, SAME_MM};

pub use arc::Arc;
pub use outline::{Outline, OutlineFault, Side};
pub use point::{Bounds, Line, Point, Pose, Vector};
pub use region::Region;
pub use seg::Seg;
