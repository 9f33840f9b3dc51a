//! The job: what was measured, wanted and decided.
//!
//! Text becomes a [`JobFile`] (as typed), and that a [`Job`]: defaults filled in, millimetres
//! everywhere, outlines closed and checked. Nothing after [`Job`] asks whether a value was given;
//! what was assumed is listed in [`Job::assumed`].
//!
//! | file | what it does |
//! |---|---|
//! | [`shape`] | figures with named corners and edges |
//! | [`file`](mod@file) | the text as typed, with places |
//! | `reader`, `given`, `quantity` | one table, one value, its units and limits |
//! | `ledger`, `words` | what is noted meanwhile; words for messages |
//! | `read/` | one file for each section of the job file |

pub mod file;
mod given;
mod ledger;
mod quantity;
mod read;
mod reader;
pub mod shape;
mod words;

pub use file::JobFile;

pub use shape::{CornerCut, Naming, Part, Shape};

use serde::Serialize;

use crate::diag::Diagnostic;
use crate::geom::{Outline, Point, Seg, seg};
use crate::tables::region::RegionCode;
use crate::tables::stone::StoneKind;
use crate::units::{LengthUnit, Mass};

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
    /// What the top will stand on, in the top's frame.
    pub supports: Vec<Support>,
    /// Where the top should lie on the slab.
    pub place: PlaceWish,
    /// The machine.
    pub machine: Machine,
    /// The discs of the kit, at least one.
    pub discs: Vec<Disc>,
    /// The straight guide.
    pub guide: Guide,
    /// The circle jig.
    pub circle_jig: CircleJig,
    /// Passes and rates.
    pub passes: Passes,
    /// Dust control.
    pub dust: Dust,
    /// Lifting.
    pub lift: Lift,
    /// Every value that the job file left open and what was taken for it.
    pub assumed: Vec<Assumption>,
}

/// The title block: free text.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Heading {
    /// Name of the job.
    pub title: String,
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
    /// The finish of each edge, in the order 1-2, 2-3 ….
    pub finishes: Vec<Finish>,
    /// Stone left by the saw for each finish.
    pub allowances: Allowances,
    /// How the long direction should lie to the vein.
    pub vein: VeinWish,
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
    /// Check this place only.
    Fixed {
        /// Where the origin of the top's frame lies on the slab.
        at: Point,
        /// Turn, degrees counter-clockwise.
        turn_deg: f64,
    },
}

/// The machine.
#[derive(Clone, Debug)]
pub struct Machine {
    /// What it is.
    pub kind: MachineKind,
    /// Speed without load, turns per minute.
    pub rpm: f64,
    /// What drives it.
    pub power: Power,
    /// Built for wet use by its maker.
    pub wet_rated: bool,
    /// How the supply is protected.
    pub protected: Protection,
    /// Everything between machine and stone, mm.
    pub plate_mm: f64,
    /// Vibration.
    pub vibration: Vibration,
    /// Noise at the ear, dB(A).
    pub noise_db: f64,
}

/// What machine it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum MachineKind {
    /// Hand-held grinder with a cutting disc.
    #[serde(rename = "angle grinder")]
    AngleGrinder,
    /// Hand-held masonry saw.
    #[serde(rename = "hand saw")]
    HandSaw,
}

/// What drives the machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Power {
    /// Mains electricity.
    Mains,
    /// A battery.
    Battery,
    /// Compressed air.
    Air,
    /// A combustion engine.
    Engine,
}

/// How the electric supply is protected.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum Protection {
    /// Residual current device, 30 mA or less.
    #[serde(rename = "rcd")]
    Rcd,
    /// Ground-fault circuit interrupter.
    #[serde(rename = "gfci")]
    Gfci,
    /// 110 V with the centre of the transformer earthed.
    #[serde(rename = "110v-cte")]
    CentreTapped110V,
    /// Battery: nothing to protect.
    #[serde(rename = "battery")]
    Battery,
    /// None known.
    #[serde(rename = "none")]
    None,
}

/// Hand-arm vibration of the machine.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Vibration {
    /// Magnitude, m/s².
    pub a: f64,
    /// Uncertainty added to it, m/s².
    pub k: f64,
}

/// A cutting disc.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Disc {
    /// Name as printed.
    pub name: String,
    /// Diameter, mm.
    pub diameter: f64,
    /// Width of the cut, mm.
    pub kerf: f64,
    /// The wider of flange and gear head, mm.
    pub obstruction: f64,
    /// Highest speed marked on the disc, turns per minute.
    pub max_rpm: f64,
    /// What it is kept for.
    #[serde(rename = "for")]
    pub usage: DiscUse,
}

/// What a disc is kept for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum DiscUse {
    /// Every cut.
    All,
    /// Straight cuts only.
    Straights,
    /// Curves only.
    Curves,
}

/// The straight guide.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guide {
    /// Length, mm.
    pub length_mm: f64,
    /// From the guide's edge to the disc's near face, by test cut, mm.
    pub offset_mm: f64,
    /// Overlap of two set-ups of a short guide, mm.
    pub overlap_mm: f64,
}

/// The circle jig.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CircleJig {
    /// From the jig's arm mark to the disc's near face, mm.
    pub offset_mm: f64,
    /// Shortest and longest arm, mm.
    pub reach_mm: (f64, f64),
}

/// Depths and rates.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Passes {
    /// Depth of the scoring pass, mm.
    pub score_mm: f64,
    /// Deepest step of a run, mm.
    pub step_mm: f64,
    /// Deepest step of a plunge, mm.
    pub plunge_step_mm: f64,
    /// How far the disc goes through the stone, mm.
    pub through_mm: f64,
    /// Highest ridge left between plunges, mm.
    pub cusp_mm: f64,
    /// Sawn face per minute, cm².
    pub rate_cm2_per_min: f64,
    /// True when the rate is a guess and not the practice cut's own figure.
    pub rate_is_guess: bool,
    /// Length sawn from the far side first, mm.
    pub far_end_mm: f64,
    /// How many times longer a curve takes than a straight cut of the same face.
    pub curve_factor: f64,
    /// Setting-up time for each cut, minutes.
    pub set_up_min: f64,
}

/// Dust control.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dust {
    /// Where the cutting is done.
    pub place: Place,
    /// How the dust is held down.
    pub method: DustMethod,
    /// Airflow of the extractor, m³/h; 0 when not known.
    pub airflow_m3h: f64,
    /// The respirator at hand.
    pub respirator: Respirator,
    /// The mask was fit-tested on its wearer.
    pub mask_fit_tested: bool,
    /// Other dusty, vibrating or loud work the same day, hours.
    pub hours_today: f64,
}

/// Where the cutting is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Place {
    /// In the open.
    Outdoors,
    /// Indoors or in an enclosed space.
    Indoors,
}

/// How the dust is held down.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum DustMethod {
    /// Water fed to the disc.
    Water,
    /// Shroud and extractor.
    Shroud,
    /// Nothing.
    None,
}

/// The respirator at hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Respirator {
    /// None, or not said.
    None,
    /// Filtering half mask FFP2.
    Ffp2,
    /// Filtering half mask FFP3.
    Ffp3,
    /// Filtering facepiece N95.
    N95,
    /// Filtering facepiece or half mask with P100.
    P100,
    /// Half mask with P3 filters.
    HalfMaskP3,
    /// Full face mask with P3 or P100 filters.
    FullFace,
    /// Powered, hood or helmet.
    PoweredHood,
    /// Powered, tight half or full mask.
    PoweredMask,
}

/// Lifting.
#[derive(Clone, Debug)]
pub struct Lift {
    /// How many people.
    pub people: usize,
    /// What each can lift; one entry per person.
    pub each: Vec<Mass>,
    /// True when `each` is the region's guideline and not the user's figure.
    pub each_is_guideline: bool,
    /// Where they stand, in the top's frame; empty: to be proposed.
    pub stand: Vec<Point>,
    /// What helps.
    pub aid: Aid,
}

/// A lifting aid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Aid {
    /// Hands only.
    None,
    /// Trolley that carries the stone on edge.
    Trolley,
    /// Vacuum lifter.
    #[serde(rename = "vacuum lifter")]
    VacuumLifter,
    /// Gantry or hoist.
    Gantry,
}
