//! What really happened at the cutting: which cuts have been made, and what came out otherwise.

use crate::geom::Point;

use super::Part;

/// The state of a job that has been begun.
#[derive(Clone, Debug)]
pub struct AsCut {
    /// The cuts that have been made, by the edge or corner of the top that each makes.
    pub done: Vec<Part>,
    /// The cuts that have been made, by their numbers on the sheet.
    pub cuts: Vec<usize>,
    /// Faces that do not lie on the line to keep.
    pub slips: Vec<DeviatingFace>,
    /// Openings that have been begun.
    pub openings: Vec<OpeningCut>,
    /// Chips broken out of an edge, of the top or of an opening.
    pub chips: Vec<Chip>,
    /// The most that is ground off an edge by hand; a thicker strip is sawn, mm.
    pub grind_mm: f64,
}

/// An opening that has been begun.
#[derive(Clone, Debug)]
pub struct OpeningCut {
    /// The cutout, counted from 0.
    pub cutout: usize,
    /// The cuts that have been made, by the side or corner of the opening that each makes.
    pub done: Vec<Part>,
    /// Faces that do not lie on the line to keep; short of it where the opening is too large.
    pub slips: Vec<DeviatingFace>,
}

/// A face that does not lie where it was wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DeviatingFace {
    /// The edge or corner.
    pub part: Part,
    /// Where its face came to lie.
    pub came: Deviation,
}

/// Where a sawn face came to lie.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Deviation {
    /// Inside the line to keep by this much, mm: too much was taken.
    Short(f64),
    /// Outside the line to keep by this much, mm: too little was taken.
    Over(f64),
    /// Slanting along a straight edge: outside the line to keep by so much at its start and at its end, mm,
    /// negative inside it.
    Taper([f64; 2]),
    /// An arc of this radius on the stone, about the right centre, mm.
    Radius(f64),
}

/// A piece broken out of an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chip {
    /// Its middle on the edge, in the top's frame.
    pub at: Point,
    /// How far it reaches in from the edge of the stone, mm.
    pub deep_mm: f64,
    /// Its length along the edge, mm.
    pub across_mm: f64,
}
