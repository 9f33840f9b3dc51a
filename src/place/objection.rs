//! What stands against a position, and its message.

use crate::geom::Pose;
use crate::job::{Job, Part};

/// What stands against a position.
#[derive(Clone, Debug, PartialEq)]
pub enum Objection {
    /// The top sticks out over the slab.
    Outside {
        /// The slab's edge or corner.
        slab_part: Part,
        /// By how much, mm.
        by_mm: f64,
    },
    /// The top touches a flaw's clearance.
    OnFlaw {
        /// The flaw, counted from 0.
        flaw: usize,
        /// By how much it is too near, mm.
        by_mm: f64,
    },
    /// The strip beyond an edge is too narrow to saw and too wide to leave.
    NarrowStrip {
        /// The top's edge, counted from 0.
        edge: usize,
        /// Its width, mm.
        width_mm: f64,
    },
    /// The top comes too near to an edge of the slab that it must keep off: a rough one, or any when it is
    /// round.
    NearEdge {
        /// The slab's edge, counted from 0.
        slab_edge: usize,
        /// By how much it is too near, mm.
        by_mm: f64,
    },
    /// An edge that must use a finished edge of the slab does not lie on one.
    NotOnFactoryEdge {
        /// The top's edge, counted from 0.
        edge: usize,
    },
    /// An edge that must use a finished edge of the slab is bowed, and a bowed edge is always sawn.
    FactoryBow {
        /// The top's edge, counted from 0.
        edge: usize,
    },
    /// A trim would run along a line flaw.
    AlongFlaw {
        /// The edge, or the flat at a corner, that the trim makes.
        part: Part,
        /// The flaw, counted from 0.
        flaw: usize,
        /// How far its kerf lies within the clearance, mm.
        length_mm: f64,
    },
    /// The allowances cannot be carried round the top's outline.
    NoSawnOutline,
    /// The allowance leaves nothing of an opening to saw.
    NoSawnCutout {
        /// The cutout, counted from 0.
        cutout: usize,
    },
    /// The long direction lies wrong to the vein.
    Vein {
        /// Angle between the two, degrees.
        angle_deg: f64,
    },
}

impl Objection {
    /// How much is amiss, mm, for comparing misses.
    pub(super) fn weight_mm(&self, job: &Job) -> f64 {
        match self {
            Self::Outside { by_mm, .. }
            | Self::OnFlaw { by_mm, .. }
            | Self::NearEdge { by_mm, .. } => *by_mm,
            Self::NarrowStrip { width_mm, .. } => job.place.least_strip_mm - width_mm,
            Self::AlongFlaw { flaw, .. } => 2.0 * job.slab.flaws[*flaw].clear_mm,
            Self::NotOnFactoryEdge { .. }
            | Self::FactoryBow { .. }
            | Self::Vein { .. }
            | Self::NoSawnOutline
            | Self::NoSawnCutout { .. } => 1e4,
        }
    }
}

/// How far it is shown that there is no place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Proof {
    /// One place was looked at, and it breaks the rules.
    ThisPlace,
    /// At no turn is there a place, nor for a top smaller by [`WITHIN_MM`](super::WITHIN_MM) all round.
    AnyTurn,
    /// None was found; that there is none is not proved.
    Searched,
    /// The place that the job file fixes breaks the rules; left out, one is found.
    Elsewhere,
}

/// A position that breaks the rules, and which.
#[derive(Clone, Debug)]
pub struct Miss {
    pub(super) pose: Pose,
    pub(super) objections: Vec<Objection>,
    /// What is shown about all other positions.
    pub proof: Proof,
}
