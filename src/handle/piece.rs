//! The handling of one piece of stone at one moment of the job.

use serde::Serialize;

use crate::geom::Point;
use crate::handle::lifting::record::{Lift, Tilt};
use crate::units::MassRange;

use super::bending::judged::Bending;
use super::bending::neck::Neck;
use super::bending::poses::Strength;
use super::bending::rail::Rail;

/// The handling of one piece.
#[derive(Clone, Debug, Serialize)]
pub struct HandledPiece {
    /// Name as printed.
    pub name: String,
    /// Its mass, kg.
    pub mass: MassRange,
    /// Its balance point, slab frame.
    pub balance: Point,
    /// Length along its long direction, mm.
    pub length_mm: f64,
    /// Width across it, mm.
    pub width_mm: f64,
    /// The end that distances along it are counted from, and the other end: the ends of its
    /// right-hand long side, looking along it, slab frame.
    pub base_line: [Point; 2],
    /// Lifting by hand.
    pub lift: Lift,
    /// Tilting up about either long side.
    pub tilts: [Tilt; 2],
    /// Bending under its own weight.
    pub strength: Strength,
    /// Narrow stone beside cutouts.
    pub rails: Vec<Rail>,
    /// Narrow stone at inside corners.
    pub necks: Vec<Neck>,
}

impl HandledPiece {
    /// Every way of lying that was worked out.
    pub fn bendings(&self) -> impl Iterator<Item = &Bending> {
        let s = &self.strength;
        let flat = [&s.best, &s.ends_only, &s.one_end_lifted];
        let on_edge = [&s.best_on_edge, &s.ends_on_edge];
        flat.into_iter().chain(&s.carried).chain(on_edge)
    }

    /// Whether a narrow part of it wants a splint.
    #[must_use]
    pub fn is_braced(&self) -> bool {
        self.rails.iter().any(|r| r.splint.is_some())
            || self.necks.iter().any(|n| n.splint.is_some())
    }
}
