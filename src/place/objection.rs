//! What stands against a position, and its message.

use crate::geom::Pose;
use crate::job::{EdgeState, Job, Part, PlaceHow};

use crate::words::{Arg, Message, Unit, Value};

use super::{NoFit, Stock};

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
    fn weight_mm(&self, job: &Job) -> f64 {
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

impl Miss {
    /// A position looked at by itself.
    pub(super) const fn of(pose: Pose, objections: Vec<Objection>) -> Self {
        Self {
            pose,
            objections,
            proof: Proof::ThisPlace,
        }
    }

    /// How much is amiss in all, mm.
    #[must_use]
    pub fn weight_mm(&self, job: &Job) -> f64 {
        self.objections.iter().map(|o| o.weight_mm(job)).sum()
    }

    /// The miss as it is told to the user.
    #[must_use]
    pub fn in_words(self, job: &Job) -> NoFit {
        let begun = matches!(job.place.how, PlaceHow::AsCut { .. });
        let reasons = self.objections.iter().map(|o| message(o, job));
        NoFit {
            stock: if begun { Stock::Begun } else { Stock::Slab },
            turn_deg: self.pose.turn.to_degrees(),
            reasons: reasons.collect(),
            objections: self.objections,
            proof: self.proof,
            fitting: Vec::new(),
        }
    }
}

/// An objection as a message.
fn message(objection: &Objection, job: &Job) -> Message {
    let edge_name = |edge: usize| ("edge", Value::name(job.top.shape.edge_name(edge)));
    match *objection {
        Objection::Outside { slab_part, by_mm } => outside(job, slab_part, by_mm),
        Objection::OnFlaw { flaw, by_mm } => {
            let by = ("by", Value::fine(by_mm));
            let [what, clear] = of_flaw(job, flaw);
            Message::new("place-on-flaw", [by, what, clear])
        }
        Objection::NearEdge { slab_edge, by_mm } => near_edge(job, slab_edge, by_mm),
        Objection::AlongFlaw {
            part,
            flaw,
            length_mm,
        } => {
            let part = ("part", Value::name(job.top.shape.part_name(part)));
            let long = ("long", Value::size(length_mm));
            let [what, clear] = of_flaw(job, flaw);
            Message::new("place-along-flaw", [part, long, what, clear])
        }
        Objection::NarrowStrip { edge, width_mm } => {
            let least = ("least", Value::fine(job.place.least_strip_mm));
            let width = ("width", Value::fine(width_mm));
            Message::new("place-narrow-strip", [edge_name(edge), width, least])
        }
        Objection::NotOnFactoryEdge { edge } => {
            Message::new("place-not-on-factory-edge", [edge_name(edge)])
        }
        Objection::FactoryBow { edge } => Message::new("place-factory-bow", [edge_name(edge)]),
        Objection::NoSawnOutline => Message::plain("place-no-sawn-outline"),
        Objection::NoSawnCutout { cutout } => {
            let what = Value::name(job.top.cutouts[cutout].what.clone());
            Message::new("place-no-sawn-cutout", [("what", what)])
        }
        Objection::Vein { angle_deg } => {
            let angle = Value::of(angle_deg, Unit::Degree).decimals(0);
            Message::new("place-vein", [("angle", angle)])
        }
    }
}

fn outside(job: &Job, slab_part: Part, by_mm: f64) -> Message {
    let part = ("part", Value::name(job.slab.shape.part_name(slab_part)));
    let by = ("by", Value::fine(by_mm));
    let tape_mm = 2.0 * job.slab.tape_error_mm;
    if by_mm <= tape_mm {
        let tape = ("tape", Value::fine(tape_mm));
        Message::new("place-outside-within-tape", [part, by, tape])
    } else {
        Message::new("place-outside", [part, by])
    }
}

fn near_edge(job: &Job, slab_edge: usize, by_mm: f64) -> Message {
    let name = ("edge", Value::name(job.slab.shape.edge_name(slab_edge)));
    let by = ("by", Value::fine(by_mm));
    if job.slab.edges[slab_edge] == EdgeState::Rough {
        let margin = ("margin", Value::fine(job.slab.rough_margin_mm));
        Message::new("place-near-rough-edge", [name, by, margin])
    } else {
        let least = ("least", Value::fine(job.place.least_strip_mm));
        Message::new("place-round-near-edge", [name, by, least])
    }
}

fn of_flaw(job: &Job, flaw: usize) -> [Arg; 2] {
    let flaw = &job.slab.flaws[flaw];
    [
        ("flaw", Value::name(flaw.what.clone())),
        ("clear", Value::fine(flaw.clear_mm)),
    ]
}
