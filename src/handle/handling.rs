//! The handling of a whole job.

use serde::Serialize;

use super::bending::bench::Bench;
use super::bending::support::Setting;
use super::lifting::guideline::Guideline;
use super::lifting::waste::Waste;
use super::piece::HandledPiece;
use super::transport::moving::Moving;
use crate::tables::Source;

/// Lifting, carrying and bending of the slab, of the stone after each cut and of the top, and how
/// the top is set down.
#[derive(Clone, Debug, Serialize)]
pub struct Handling {
    /// The slab as delivered.
    pub slab: HandledPiece,
    /// The stone left after each cut that changes it.
    pub states: Vec<HandledPiece>,
    /// The finished top.
    pub top: HandledPiece,
    /// Waste pieces that people lift away.
    pub waste: Vec<Waste>,
    /// How many people lift.
    pub people: usize,
    /// Where two trestles stand while the slab is cut.
    pub bench: Vec<Bench>,
    /// The top on its supports; nothing when the job file names none.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub setting: Option<Setting>,
    /// Aids, standing on edge, and the way in.
    #[serde(flatten)]
    pub moving: Moving,
    /// The region's guideline weight.
    pub guideline: Guideline,
    /// Every document a figure above comes from.
    pub sources: Vec<Source>,
}

impl Handling {
    /// Every stone in the order of the job.
    pub fn pieces(&self) -> impl Iterator<Item = &HandledPiece> {
        let first = std::iter::once(&self.slab).chain(&self.states);
        first.chain(std::iter::once(&self.top))
    }
}
