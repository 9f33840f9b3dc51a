//! What stands against a position, and the words for it.

use crate::geom::Pose;
use crate::job::{Job, Part, PlaceHow};

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
    /// An edge that must use a finished edge of the slab does not lie on one.
    NotOnFactoryEdge {
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
            Self::Outside { by_mm, .. } | Self::OnFlaw { by_mm, .. } => *by_mm,
            Self::NarrowStrip { width_mm, .. } => job.place.least_strip_mm - width_mm,
            Self::AlongFlaw { flaw, .. } => 2.0 * job.slab.flaws[*flaw].clear_mm,
            Self::NotOnFactoryEdge { .. }
            | Self::Vein { .. }
            | Self::NoSawnOutline
            | Self::NoSawnCutout { .. } => 1e4,
        }
    }
}

/// A position that breaks the rules, and which.
#[derive(Clone, Debug)]
pub struct Miss {
    pub(super) pose: Pose,
    pub(super) objections: Vec<Objection>,
}

impl Miss {
    /// How much is amiss in all, mm.
    #[must_use]
    pub fn weight_mm(&self, job: &Job) -> f64 {
        self.objections.iter().map(|o| o.weight_mm(job)).sum()
    }

    /// The miss as it is told to the user.
    #[must_use]
    pub fn in_words(self, job: &Job) -> NoFit {
        let begun = matches!(job.place.how, PlaceHow::AsCut { .. });
        NoFit {
            stock: if begun { Stock::Begun } else { Stock::Slab },
            turn_deg: self.pose.turn.to_degrees(),
            reasons: self.objections.iter().map(|o| words(o, job)).collect(),
            objections: self.objections,
            fitting: Vec::new(),
        }
    }
}

fn words(objection: &Objection, job: &Job) -> String {
    let edge_name = |edge: &usize| job.top.shape.edge_name(*edge);
    match objection {
        Objection::Outside { slab_part, by_mm } => {
            let name = job.slab.shape.part_name(*slab_part);
            let tape = 2.0 * job.slab.tape_error_mm;
            let advice = if *by_mm <= tape {
                format!("that is within the tape's error ({tape:.1} mm): measure again")
            } else {
                format!("make the top at least {by_mm:.1} mm smaller there, or take a larger slab")
            };
            format!(
                "the top with its allowance sticks out {by_mm:.1} mm over slab {name}; {advice}"
            )
        }
        Objection::OnFlaw { flaw, by_mm } => {
            let flaw = &job.slab.flaws[*flaw];
            format!(
                "the top comes {by_mm:.1} mm too near to \"{}\" (clearance {:.1} mm); move it, or \
                 make the top smaller",
                flaw.what, flaw.clear_mm
            )
        }
        Objection::AlongFlaw {
            part,
            flaw,
            length_mm,
        } => {
            let flaw = &job.slab.flaws[*flaw];
            format!(
                "the trim of {} would run along \"{}\" for {length_mm:.0} mm, within its clearance \
                 of {:.1} mm: the stone may break there; move or turn the top",
                job.top.shape.part_name(*part),
                flaw.what,
                flaw.clear_mm
            )
        }
        Objection::NarrowStrip { edge, width_mm } => format!(
            "edge {} would leave a strip of {width_mm:.1} mm to saw off, least {:.1} mm; move the \
             top so that the edge lies on the slab's edge or farther in",
            edge_name(edge),
            job.place.least_strip_mm
        ),
        Objection::NotOnFactoryEdge { edge } => format!(
            "edge {} is marked factory but does not lie on a factory edge of the slab; place it \
             on one, or give it another finish",
            edge_name(edge)
        ),
        Objection::NoSawnOutline => {
            "the allowances cannot be carried round the top's outline: an edge \
             is too short or an arc too small for them; change the finish there, or the shape"
                .to_owned()
        }
        Objection::NoSawnCutout { cutout } => format!(
            "the allowance leaves nothing of {} to saw: it is too small, or an arc of it is; make \
             it larger, or change its finish",
            job.top.cutouts[*cutout].what
        ),
        Objection::Vein { angle_deg } => format!(
            "the top's long direction lies {angle_deg:.0}° from the vein's; set top.vein = \
             \"any\" if that does not matter"
        ),
    }
}
