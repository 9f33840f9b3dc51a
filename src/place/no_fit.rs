//! Why the top does not fit, in words.

use crate::geom::Pose;
use crate::job::{EdgeState, Job, Part, PlaceHow};
use crate::words::{Arg, Message, Unit, Value};

use super::{Fitting, Miss, Objection, Proof, WITHIN_MM, size};

/// What a top is to be had from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stock {
    /// The slab as bought.
    Slab,
    /// What is left of a slab whose cutting has begun.
    Begun,
}

/// Why the top does not fit.
#[derive(Clone, Debug)]
pub struct NoFit {
    /// What it was to be had from.
    pub stock: Stock,
    /// Turn of the nearest miss, degrees.
    pub turn_deg: f64,
    /// What stands against it there.
    pub objections: Vec<Objection>,
    /// The same as messages, one line each; of a begun job what stands against it.
    pub reasons: Vec<Message>,
    /// How far it is shown that there is no place.
    pub proof: Proof,
    /// The largest sizes of the wanted top that do fit; none when the place was fixed.
    pub fitting: Vec<Fitting>,
}

impl NoFit {
    /// The sizes that do fit, one message each.
    #[must_use]
    pub fn advice(&self) -> Vec<Message> {
        self.fitting.iter().map(size::message).collect()
    }

    /// What is shown, in one line.
    #[must_use]
    pub fn verdict(&self) -> Message {
        let id = match (self.stock, self.proof) {
            (Stock::Begun, _) => "place-none-begun",
            (Stock::Slab, Proof::Elsewhere) => "place-at-fault",
            (Stock::Slab, Proof::ThisPlace) => "place-not-here",
            (Stock::Slab, Proof::Searched) => "place-none-found",
            (Stock::Slab, Proof::AnyTurn) => {
                let within = ("within", Value::fine(WITHIN_MM));
                return Message::new("place-none-at-any-turn", [within]);
            }
        };
        Message::plain(id)
    }
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
