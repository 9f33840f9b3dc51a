//! The cuts in the order they are made: strokes, passes and set-out.
//!
//! | file | operation |
//! |---|---|
//! | [`record`] | the [`Cut`] and its parts, as planned |
//! | [`order`] | the order of the cuts, and the way to them |
//! | [`course`] | the cuts being planned, the stone left so far |
//! | `making` | one corner, edge or arc of a boundary made |
//! | [`disc`] | what a disc reaches, the shape of its cut, which disc is put on |
//! | [`passes`] | the depths, one after another |
//! | [`set_out`] | marks and ties from named corners |
//! | [`kept`] | the boundary of the kept stone, and what is clear of it |
//! | [`station`] | stations of a curve, and which are struck before the first cut |
//! | [`straight`] | straight cuts along a guide, and the trims that run off |
//! | [`stopped`] | straight cuts that stop inside the stone |
//! | [`resumed`] | what is there already when a job goes on after a repair |
//! | `run_out` | what core holes leave of the run-outs |
//! | [`curve`] | outside arcs as plunges |
//! | [`tangents`] | for comparison: straight cuts tangent to an arc |
//! | [`concave`] | concave arcs as plunges |
//! | [`ordinates`] | curves set out from their chord where no arm reaches |
//! | [`relief`] | straight cuts that part a curve's waste into pieces a person can hold |
//! | [`practice`] | a practice cut and practice plunges in the waste |
//! | [`inside`] | what each inside corner and hollow arc is made with |
//! | [`corner`] | inside corners and small arcs: which bit, where each hole lies |
//! | [`core`] | core holes as a cut |
//! | [`cutout`] | an opening: holes, cuts between them, the drop-out |
//! | `free` | the holes that part an opening's piece at the underside |
//! | [`rail`] | stone left beside openings and inside corners |
//! | [`missing`] | what nothing in the kit makes, one stop for each cause |
//! | [`bearer`] | where the stone is borne along a cut |
//! | [`consumable`] | time, water, tape |

pub mod bearer;
pub mod concave;
pub mod consumable;
pub mod core;
pub mod corner;
pub mod course;
pub mod curve;
pub mod cutout;
pub mod disc;
pub(crate) mod field;
mod free;
pub mod inside;
pub mod kept;
pub(crate) mod making;
pub mod missing;
mod offsets;
pub mod order;
pub mod ordinates;
pub mod passes;
pub mod practice;
pub mod rail;
pub mod record;
pub mod relief;
pub mod resumed;
mod run_out;
pub mod set_out;
pub mod station;
pub mod stopped;
pub mod straight;
pub mod tangents;

pub use consumable::Consumables;
pub use order::plan;
pub use practice::{Clearance, MarkedEnd, Practice, PracticeMark};
pub use record::{
    Bearers, Because, CentreMark, ChordEnd, ConcaveArc, CoreHole, CurveSetOut, Cut, CutKind,
    EdgeMark, FromCorner, GuideSide, Hole, LeftOver, Makes, MarkedLine, Offset, Ordinate,
    OrdinateSetOut, Pass, PivotPlace, Reach, Remains, Removal, RunEnd, SetOut, SetUp, Station,
    StationMarks, Stop, StraightSetOut, Stroke, StrokeKind, StruckStation, Tangents, Tie, Tool,
};
