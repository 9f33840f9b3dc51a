//! The job: what was measured, wanted and decided.
//!
//! Text becomes a [`JobFile`] (as typed), and that a [`Job`]: defaults filled in, millimetres
//! everywhere, outlines closed and checked. Nothing after [`Job`] asks whether a value was given;
//! what was assumed is listed in [`Job::assumed`].
//!
//! | file | what it does |
//! |---|---|
//! | [`shape`] | figures with named corners and edges |
//! | [`route`] | the way in |
//! | [`as_cut`] | what really happened at the cutting |
//! | [`begun`] | what has been cut into a slab already |
//! | [`file`](mod@file) | the text as typed, with places |
//! | `kit`, `gear` | what the job is done with; what else fills the day |
//! | `reader`, `given`, `quantity` | one table, one value, its units and limits |
//! | [`survey`] | from tapes to corners, and how well they close |
//! | `ledger`, `words` | what is noted meanwhile; words for messages |
//! | `read/` | one file for each section of the job file |

pub mod as_cut;
pub mod begun;
pub mod file;
mod gear;
mod given;
mod kit;
mod ledger;
mod quantity;
mod read;
mod reader;
pub mod route;
pub mod shape;
pub mod survey;
mod words;

pub use as_cut::{AsCut, Came, Chip, OpeningCut, Slip};
pub use begun::{Begun, Drilled};
pub use file::JobFile;

pub use gear::{Bond, Dusty, EarKind, Protector, Spell, Steel};
pub use kit::{
    Aid, CircleJig, CoreBit, Disc, DiscUse, Dust, DustMethod, Guide, Lift, Machine, MachineKind,
    Passes, Place, Power, Protection, Respirator, Trolley, Vibration,
};
pub use route::{Obstacle, Opening, Route};
pub use shape::{CornerCut, Naming, Part, Shape};
pub use survey::Survey;

use serde::Serialize;

use crate::diag::Diagnostic;
use crate::geom::{Outline, Point, Seg, seg};
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;
use crate::units::{LengthUnit, Mass};
use crate::words::Language;

/// Reads a job file into a job, and the remarks on it.
///
/// ```
/// let text = r#"
///     [stone]
///     kind = "granite"
///     thickness = 30
///     [slab]
///     rectangle = [2400, 800]
///     [top]
///     rectangle = [2000, 640]
/// "#;
/// let (job, remarks) = kerfwright::job::read(text).map_err(|faults| format!("{faults:?}"))?;
/// assert_eq!(job.top.shape.outline().area(), 2000.0 * 640.0);
/// assert_eq!(job.passes.step_mm, 6.0);
/// assert!(job.assumed.iter().any(|a| a.key == "passes.step"));
/// assert!(remarks.is_empty());
/// # Ok::<(), String>(())
/// ```
///
/// # Errors
/// Every fault of the file in one run, with the remarks, in the order of their places in it.
pub fn read(text: &str) -> Result<(Job, Vec<Diagnostic>), Vec<Diagnostic>> {
    JobFile::new(text).map_err(|fault| vec![fault])?.resolve()
}

/// A complete, checked job.
#[derive(Clone, Debug)]
pub struct Job {
    /// What is printed in the title block.
    pub heading: Heading,
    /// Whose rules apply.
    pub region: RegionCode,
    /// The unit printed first.
    pub units: LengthUnit,
    /// The stone.
    pub stone: Stone,
    /// The slab as bought.
    pub slab: Slab,
    /// The finished worktop.
    pub top: Top,
    /// The outline of what the top will stand on, in the top's frame, when it was given.
    pub base: Option<Shape>,
    /// The supports the top will stand on, in the top's frame.
    pub supports: Vec<Support>,
    /// Where the top should lie on the slab.
    pub place: PlaceWish,
    /// The machine.
    pub machine: Machine,
    /// The discs of the kit, at least one.
    pub discs: Vec<Disc>,
    /// The core bits of the kit, in the order given.
    pub core_bits: Vec<CoreBit>,
    /// The straight guide.
    pub guide: Guide,
    /// The circle jig.
    pub circle_jig: CircleJig,
    /// Passes and rates.
    pub passes: Passes,
    /// Dust control.
    pub dust: Dust,
    /// The hearing protector at hand.
    pub protector: Protector,
    /// Other work of the same day.
    pub today: Vec<Spell>,
    /// Lifting.
    pub lift: Lift,
    /// The way in.
    pub route: Route,
    /// What really happened, when the cutting has begun and did not go as planned.
    pub as_cut: Option<AsCut>,
    /// Every value that the job file left open and what was taken for it.
    pub assumed: Vec<Assumption>,
}

/// The title block: free text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Heading {
    /// Name of the job.
    pub title: String,
    /// Language of the helper's and the safety page.
    pub language: Language,
    /// Date as `YYYY-MM-DD`; empty when the job file gives none.
    pub date: String,
    /// For whom.
    pub made_for: String,
    /// By whom.
    pub made_by: String,
    /// A remark.
    pub note: String,
}

/// A value the job file left open.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Assumption {
    /// The key that would set it, such as `passes.rate`.
    pub key: String,
    /// The value taken, with its unit.
    pub value: String,
    /// Why this one: source, judgement or common practice.
    pub why: String,
}

/// A value with the least and the most it may be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Range {
    /// Least.
    pub low: f64,
    /// Likely.
    pub likely: f64,
    /// Most.
    pub high: f64,
}

/// The stone.
#[derive(Clone, Debug)]
pub struct Stone {
    /// The kind from the table, or a kind of the user's own.
    pub kind: StoneKind,
    /// Name as printed.
    pub name: String,
    /// Thickness readings, mm.
    pub thickness: Thickness,
    /// Density, kg/m³. When the slab was weighed the three are equal.
    pub density: Range,
    /// Flexural strength, `MPa`.
    pub strength_mpa: f64,
    /// Where the strength comes from, for the sheet.
    pub strength_source: String,
    /// The strength is divided by this.
    pub safety_factor: f64,
    /// Crystalline silica, share of mass 0 to 1.
    pub silica: Range,
    /// Whether rods, dowels or mesh of steel are in it.
    pub steel: Steel,
    /// Weight of the whole slab on a scale.
    pub weighed: Option<Mass>,
    /// Weight of the whole slab by the seller's word.
    pub said: Option<Mass>,
}

/// Thickness readings, mm.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Thickness {
    /// Thinnest reading: decides bending.
    pub least: f64,
    /// Mean reading: decides weight.
    pub mean: f64,
    /// Thickest reading: decides whether the disc gets through.
    pub most: f64,
}

/// The slab as bought.
#[derive(Clone, Debug)]
pub struct Slab {
    /// Its outline with the names of its corners and edges (letters).
    pub shape: Shape,
    /// The state of each edge, in the order AB, BC ….
    pub edges: Vec<EdgeState>,
    /// Flaws to keep clear of.
    pub flaws: Vec<Flaw>,
    /// Tape error, mm.
    pub tape_error_mm: f64,
    /// Direction of the vein, degrees counter-clockwise from AB.
    pub vein_deg: Option<f64>,
    /// How it was measured, how well the tapes close, and how square it is.
    pub survey: Survey,
    /// What has been cut into it already; nothing in a slab as bought.
    pub begun: Begun,
}

/// What an edge of the slab can be used for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum EdgeState {
    /// Finished, usable as it is.
    Factory,
    /// Sawn straight: usable as a sawn edge.
    Sawn,
    /// Not usable.
    Rough,
}

/// A flaw of the slab and how far to keep clear of it.
#[derive(Clone, Debug)]
pub struct Flaw {
    /// What it is, in the user's words.
    pub what: String,
    /// Where it is, in the slab's frame.
    pub place: FlawPlace,
    /// Clearance all round, mm.
    pub clear_mm: f64,
}

impl Flaw {
    /// The edge of the clearance: a ring round a spot, one round each straight piece of a line or
    /// of an area's boundary.
    #[must_use]
    pub fn clearance(&self) -> Vec<Vec<Seg>> {
        let round = |a: &Point, b: &Point| seg::capsule(*a, *b, self.clear_mm);
        match &self.place {
            FlawPlace::Spot { at, across_mm } => {
                vec![seg::circle(*at, across_mm / 2.0 + self.clear_mm)]
            }
            FlawPlace::Line(points) => points.windows(2).map(|w| round(&w[0], &w[1])).collect(),
            FlawPlace::Area(outline) => {
                let ring = outline.flattened();
                let next = ring.iter().cycle().skip(1);
                ring.iter().zip(next).map(|(a, b)| round(a, b)).collect()
            }
        }
    }
}

/// The shape of a flaw.
#[derive(Clone, Debug)]
pub enum FlawPlace {
    /// A round spot.
    Spot {
        /// Its centre.
        at: Point,
        /// Its diameter, mm.
        across_mm: f64,
    },
    /// A line through two or more points.
    Line(Vec<Point>),
    /// An area.
    Area(Outline),
}

/// The finished worktop, in its own frame: corner 1 at the origin.
#[derive(Clone, Debug)]
pub struct Top {
    /// Its outline with the names of its corners and edges (numbers).
    pub shape: Shape,
    /// Its cutouts, in the order given.
    pub cutouts: Vec<Cutout>,
    /// The finish of each edge, in the order 1-2, 2-3 ….
    pub finishes: Vec<Finish>,
    /// Stone left by the saw for each finish.
    pub allowances: Allowances,
    /// How the long direction should lie to the vein.
    pub vein: VeinWish,
    /// Edges and corners whose face is on the stone already and is not sawn again, and the stone left
    /// on each, mm; none before the first cut.
    pub ready: Vec<(Part, f64)>,
}

impl Top {
    /// The stone left on a face that is on the stone already, mm; nothing for one still to be sawn.
    #[must_use]
    pub fn ready_mm(&self, part: Part) -> Option<f64> {
        self.ready.iter().find(|r| r.0 == part).map(|r| r.1)
    }

    /// Area of the finished top, its cutouts taken out, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        let holes = self.cutouts.iter().map(|c| c.shape.outline().area());
        self.shape.outline().area() - holes.sum::<f64>()
    }
}

/// An opening in the top. Openings lie inside the top and touch neither it nor each other.
#[derive(Clone, Debug)]
pub struct Cutout {
    /// What it is for, in the user's words; `cutout 1` when nothing was said.
    pub what: String,
    /// The finished opening, in the top's frame; corners and edges named by numbers of its own.
    pub shape: Shape,
    /// What is done to its edge.
    pub finish: Finish,
    /// Sides and corners whose face is on the stone already and is not sawn again, and the stone left on
    /// each, mm; none before the first cut.
    pub ready: Vec<(Part, f64)>,
}

impl Cutout {
    /// The stone left on a face that is on the stone already, mm; nothing for one still to be sawn.
    #[must_use]
    pub fn ready_mm(&self, part: Part) -> Option<f64> {
        self.ready.iter().find(|r| r.0 == part).map(|r| r.1)
    }

    /// Whether every face of it is on the stone already.
    #[must_use]
    pub fn is_made(&self) -> bool {
        let mut parts = self.shape.parts().iter();
        parts.all(|part| self.ready_mm(*part).is_some())
    }
}

/// What is done to an edge after sawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Finish {
    /// Not sawn: an existing finished edge of the slab is used.
    Factory,
    /// Ground and polished.
    Polish,
    /// Sawn, arris taken off.
    Ease,
    /// Left as sawn.
    Saw,
}

/// Stone left on a sawn edge, mm.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Allowances {
    /// For a polished edge.
    pub polish_mm: f64,
    /// For an eased edge.
    pub ease_mm: f64,
    /// For an edge left as sawn.
    pub saw_mm: f64,
}

impl Allowances {
    /// The allowance for a finish; none on a factory edge, which is not sawn.
    #[must_use]
    pub const fn for_finish(&self, finish: Finish) -> f64 {
        match finish {
            Finish::Factory => 0.0,
            Finish::Polish => self.polish_mm,
            Finish::Ease => self.ease_mm,
            Finish::Saw => self.saw_mm,
        }
    }
}

/// How the top's long direction should lie to the vein.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum VeinWish {
    /// Along the vein.
    Along,
    /// Across the vein.
    Across,
    /// Either way.
    Any,
}

/// Something the top stands on, in the top's frame.
#[derive(Clone, Debug)]
pub struct Support {
    /// What it is.
    pub what: String,
    /// Where it is.
    pub place: SupportPlace,
    /// The most it may carry.
    pub limit: Option<Mass>,
    /// How stiff it is for its length against a full support, above 0 and at most 1: a wall or a
    /// sound cabinet side is 1.
    pub stiffness: f64,
}

/// The shape of a support.
#[derive(Clone, Debug)]
pub enum SupportPlace {
    /// A line: cabinet side, rail, wall.
    Line(Point, Point),
    /// A pad of a diameter in mm.
    Pad(Point, f64),
}

/// Where the top should lie.
#[derive(Clone, Debug)]
pub struct PlaceWish {
    /// Fixed by the user, or searched.
    pub how: PlaceHow,
    /// Narrowest strip that can be sawn off, mm.
    pub least_strip_mm: f64,
}

/// Fixed or searched.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PlaceHow {
    /// Find the best place.
    Search,
    /// Where the cutting that has begun has it: nothing is left to be found or measured again.
    AsCut {
        /// Where the origin of the top's frame lies on the slab.
        at: Point,
        /// Turn, degrees counter-clockwise.
        turn_deg: f64,
    },
    /// Check this place only.
    Fixed {
        /// Where the origin of the top's frame lies on the slab.
        at: Point,
        /// Turn, degrees counter-clockwise.
        turn_deg: f64,
    },
}
