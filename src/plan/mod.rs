//! The finished answer as plain data: what the sheet prints and what `--json` writes.
//!
//! Lengths mm, areas mm², masses kg, angles degrees counter-clockwise from AB, all places in the
//! slab's frame. Nothing is rounded. Nothing is computed here that a stage has not computed.

mod fill;
mod note;
mod planned;
mod weigh;

pub use planned::Plan;

pub use note::{
    FlawNote, JobNote, Kit, NamedPoint, OpeningNote, PlacementNote, SlabEdge, SlabNote, StoneNote,
    SupportNote, TopEdge, TopNote, TopPart,
};
pub use weigh::{TopState, Weighing};
