//! Where the top lies on the slab, or why nothing fits.
//!
//! | file | operation |
//! |---|---|
//! | [`mod@self`] | the [`Placement`] and the way to it |
//! | [`candidate`] | one position judged: everything that stands against it, or the place |
//! | [`edge`] | what becomes of one edge: sawn, flush, used up, bowed |
//! | `any_turn` | a place at any turn, or the proof that there is none |
//! | `free_turn` | a turn in between that saves sawing |
//! | `allowance` | the stone left on each edge and corner |
//! | `sawn` | the top with its allowances |
//! | [`opening`] | the top's cutouts on the slab |
//! | [`room`] | how much stone lies beyond an edge |
//! | [`flaw`] | how the top and its cuts lie to the flaws |
//! | `tolerance` | the tolerances that decide a case |
//! | `vein` | how the top lies to the vein |
//! | [`trim`] | where each straight trim runs, and where it must stop |
//! | `order` | the order of the straight trims with the least length sawn |
//! | [`objection`] | what stands against a position, and the words for it |
//! | [`search`] | the best of all positions worth judging |
//! | `ground` | the slab and the top taken apart into convex pieces |
//! | `turned`, `guide_line` | the shifts worth judging at one turn |
//! | `bound` | the least work a position can take, before it is judged |
//! | `share` | the margin shared where nothing pulls the top to one side |
//! | [`leftover`] | what a place leaves of the slab |
//! | [`several`] | the best few places that differ |
//! | [`size`] | the largest size of the wanted top that fits |

mod allowance;
mod any_turn;
mod bound;
pub mod candidate;
pub mod edge;
pub mod flaw;
mod free_turn;
mod ground;
mod guide_line;
pub mod leftover;
pub mod objection;
pub mod opening;
mod order;
pub mod room;
mod sawn;
pub mod search;
pub mod several;
mod share;
pub mod size;
mod tolerance;
pub mod trim;
mod turned;
mod vein;

pub use any_turn::WITHIN_MM;
pub use edge::EdgeUse;
pub(crate) use free_turn::TURN_SAVES;
pub use objection::{Miss, Objection, Proof};
pub use opening::SawnCutout;
pub use size::{Fitting, Less};
pub use trim::{Trim, TrimEnd};

use crate::diag::{Finding, Findings, Phrase};
use crate::geom::{Outline, Pose, Region};
use crate::job::{Job, Part, PlaceHow, Shape};
use crate::words::{Message, Value};

/// A valid place of the top on the slab, in the slab's frame.
#[derive(Clone, Debug)]
pub struct Placement {
    /// Carries the top's frame into the slab's.
    pub pose: Pose,
    /// The finished top.
    pub top: Shape,
    /// What the saw leaves: the finished top and its allowances.
    pub sawn: Outline,
    /// What each piece of `sawn` belongs to; a corner whose edges' faces meet before it is missing.
    pub sawn_parts: Vec<Part>,
    /// What becomes of each edge of the top, in the order 1-2, 2-3 ….
    pub uses: Vec<EdgeUse>,
    /// The allowance on the arc or flat at each corner, mm.
    pub corner_allowances: Vec<f64>,
    /// The openings, in the order given.
    pub cutouts: Vec<SawnCutout>,
    /// The straight trims in the order they are sawn: those that run off the slab, then those that
    /// stop inside it.
    pub trims: Vec<Trim>,
    /// Sawing work: sawn face, with curves counted by their factor, mm².
    pub work_mm2: f64,
    /// The least distance to spare on any side that is not flush, mm.
    pub least_spare_mm: f64,
}

impl Placement {
    /// The finished top without its openings.
    #[must_use]
    pub fn finished(&self) -> Region {
        Region {
            outer: self.top.outline().clone(),
            holes: self
                .cutouts
                .iter()
                .map(|c| c.shape.outline().clone())
                .collect(),
        }
    }
}

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

/// Finds the best place, or checks the one the user has fixed.
///
/// # Errors
/// [`NoFit`] names the nearest miss.
pub fn place(job: &Job) -> Result<(Placement, Findings), NoFit> {
    let placement = match job.place.how {
        PlaceHow::Search => search::best(job).map_err(|miss| NoFit {
            fitting: size::largest(job),
            ..miss.in_words(job)
        }),
        PlaceHow::Fixed { at, turn_deg } | PlaceHow::AsCut { at, turn_deg } => {
            let pose = Pose::new(turn_deg.to_radians(), at.to_vector());
            candidate::judge(job, pose).map_err(|miss| fixed_miss(job, miss).in_words(job))
        }
    }?;
    let mut findings = measure_again(job, &placement);
    findings.open.extend(undescribed(job, &placement));
    findings.warnings.extend(free_turn::saving(job, &placement));
    Ok((placement, findings))
}

/// What is shown where a fixed place breaks the rules: whether there is another.
fn fixed_miss(job: &Job, miss: Miss) -> Miss {
    if !matches!(job.place.how, PlaceHow::Fixed { .. }) {
        return miss;
    }
    let proof = match search::best(job) {
        Ok(_) => Proof::Elsewhere,
        Err(none) => none.proof,
    };
    Miss { proof, ..miss }
}

pub(crate) const EDGES_UNDESCRIBED: Phrase = Phrase::of_job("edges-undescribed").key("slab.sawn");

/// Edges of the slab that nobody has described and that become edges of the top: to be looked at.
fn undescribed(job: &Job, placement: &Placement) -> Option<Finding> {
    let on = placement.uses.iter().filter_map(|used| match used {
        EdgeUse::Flush { slab_edge, .. } => Some(*slab_edge),
        _ => None,
    });
    let on: Vec<usize> = on.filter(|e| job.slab.undescribed.contains(e)).collect();
    let begun = matches!(job.place.how, PlaceHow::AsCut { .. });
    let mut edges = on.clone();
    edges.sort_unstable();
    edges.dedup();
    let names = edges.iter().map(|e| job.slab.shape.edge_name(*e));
    let names: Vec<String> = names.collect();
    let line = |key: &str| Value::name(format!("{key} = {names:?}"));
    let args = [
        (
            "edges",
            Value::List(names.iter().cloned().map(Value::name).collect()),
        ),
        ("count", Value::count(names.len())),
        ("sawn", line("sawn")),
        ("rough", line("rough")),
        ("cuts", Value::count(on.len())),
    ];
    let open = !names.is_empty() && !begun;
    open.then(|| Finding::of(&EDGES_UNDESCRIBED, args, "common practice"))
}

/// The lines of a job file that fix a place, under `[place]`: exact to well below a thousandth of a
/// millimetre, so that what only just fits does so again.
#[must_use]
pub fn fixing_lines(placement: &Placement) -> [String; 2] {
    // 0.0 takes the sign from a zero.
    let mm = |v: f64| format!("\"{} mm\"", (v * 1e8).round() / 1e8 + 0.0);
    let turn = (placement.pose.turn.to_degrees() * 1e9).round() / 1e9 + 0.0;
    let at = placement.pose.shift;
    [
        format!("at = [{}, {}]", mm(at.x), mm(at.y)),
        format!("turn = {turn:?}"),
    ]
}

pub(crate) const MEASURE_AGAIN: Phrase = Phrase::of_job("measure-again");

impl Placement {
    /// What is to spare at the tightest, mm, as it is printed: nothing where the top is the slab, edge on
    /// edge, and no place is tight.
    #[must_use]
    pub const fn spare_mm(&self) -> f64 {
        if self.least_spare_mm.is_finite() {
            self.least_spare_mm
        } else {
            0.0
        }
    }
}

/// A fit with less to spare than two tape errors is not yet a fit.
fn measure_again(job: &Job, placement: &Placement) -> Findings {
    let (spare, least) = (placement.least_spare_mm, 2.0 * job.slab.tape_error_mm);
    let mut findings = Findings::default();
    let begun = matches!(job.place.how, PlaceHow::AsCut { .. });
    if spare < least && !begun {
        let values = [
            ("spare", Value::fine(spare)),
            ("tape", Value::fine(job.slab.tape_error_mm)),
            ("least", Value::fine(least)),
        ];
        let source = "judgement: twice the tape error (slab.tape)";
        let stop = Finding::of(&MEASURE_AGAIN, values, source);
        findings.stops.push(stop);
    }
    findings
}
