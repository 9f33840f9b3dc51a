//! What is known of a cut once it is planned: records only, which the planners of the room fill in.
//!
//! | file | operation |
//! |---|---|
//! | [`operation`] | the [`Cut`]: what it makes, with what, why now |
//! | [`stroke`] | how the disc moves; passes and core holes |
//! | [`mark`] | ties to named corners, marks on edges, middles of holes, bearers |
//! | [`straight`] | set out along a guide |
//! | [`curve`] | set out about a pivot or from a chord |
//! | [`left_over`] | stone that the tools leave standing |

pub mod curve;
pub mod left_over;
pub mod mark;
pub mod operation;
pub mod straight;
pub mod stroke;

pub use curve::{
    ChordEnd, ConcaveArc, CurveSetOut, Ordinate, OrdinateSetOut, PivotPlace, Reach, Station,
    StationMarks, StruckStation, Tangents,
};
pub use left_over::{LeftOver, Remains, Removal};
pub use mark::{Bearers, CentreMark, EdgeMark, Offset, Tie};
pub use operation::{Because, Cut, CutKind, Makes, SetOut, Tool};
pub use straight::{FromCorner, GuideSide, MarkedLine, RunEnd, SetUp, Stop, StraightSetOut};
pub use stroke::{CoreHole, Hole, Pass, Stroke, StrokeKind};
