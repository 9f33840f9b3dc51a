//! Names, corners and what can be wrong with a figure.

use crate::geom::OutlineFault;

/// How corners and edges are named.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Naming {
    /// Corners A, B, C …, edges AB, BC …: the slab.
    Letters,
    /// Corners 1, 2, 3 …, edges 1-2, 2-3 …: the top.
    Numbers,
}

/// What is done to a corner of the straight-sided figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CornerCut {
    /// Left sharp.
    Sharp,
    /// Rounded by an arc of a radius in mm, tangent to both edges.
    Round(f64),
    /// A flat across it, set back along both edges by this many mm.
    Clip(f64),
    /// A hollow of a radius in mm about the corner itself.
    Scoop(f64),
}

/// Which corner or edge a piece of the outline belongs to, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Part {
    /// The edge from corner `i` to the next: straight, or an arc when it is bowed.
    Edge(usize),
    /// The arc, hollow or flat at corner `i`.
    Corner(usize),
}

/// Why a figure cannot be made. Corners and edges are counted from 0.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ShapeFault {
    /// Corners run clockwise.
    Clockwise,
    /// The straight-sided figure is not an outline.
    Figure(OutlineFault),
    /// The treatments of an edge's two ends need more than its length.
    EdgeTooShort {
        /// The edge.
        edge: usize,
        /// Its length, mm.
        length_mm: f64,
        /// What its two ends need, mm.
        needed_mm: f64,
    },
    /// A bow rises half its edge's length or more.
    BowTooHigh {
        /// The edge.
        edge: usize,
        /// Half its length, mm.
        half_mm: f64,
    },
    /// No arc of this radius touches both edges of a corner.
    NoRound {
        /// The corner.
        corner: usize,
        /// The largest radius that does, mm.
        most_mm: f64,
    },
    /// The finished figure is not an outline.
    Finished(OutlineFault),
}
