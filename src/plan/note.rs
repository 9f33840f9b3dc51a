//! The parts of a plan that describe the job, the stone, the slab and the top.

use serde::Serialize;

use crate::geom::{Outline, Point, Seg, Vector};
use crate::job::{Drilled, DustMethod, EdgeState, Finish, Power, Range, Survey, Thickness};
use crate::units::{LengthUnit, Mass, MassRange};
use crate::words::Language;

/// The title block.
#[derive(Clone, Debug, Serialize)]
pub struct JobNote {
    /// Name of the job.
    pub title: String,
    /// Region code.
    pub region: String,
    /// Region in words.
    pub region_name: String,
    /// Language of the helper's and the safety page.
    pub language: Language,
    /// Date, or empty.
    pub date: String,
    /// For whom.
    pub made_for: String,
    /// By whom.
    pub made_by: String,
    /// A remark.
    pub note: String,
    /// The unit printed first.
    pub units: LengthUnit,
}

/// The stone.
#[derive(Clone, Debug, Serialize)]
pub struct StoneNote {
    /// Its name.
    pub name: String,
    /// Density, kg/m³.
    #[serde(rename = "density_kg_m3")]
    pub density: Range,
    /// Flexural strength, `MPa`.
    pub strength_mpa: f64,
    /// Where that figure comes from.
    pub strength_source: String,
    /// The strength is divided by this.
    pub safety_factor: f64,
    /// Crystalline silica, share of mass.
    #[serde(rename = "silica_share")]
    pub silica: Range,
    /// Weight of the slab on a scale.
    #[serde(rename = "weighed_kg")]
    pub weighed: Option<Mass>,
    /// Weight of the slab by the seller's word.
    #[serde(rename = "said_kg")]
    pub said: Option<Mass>,
}

/// A corner with its name.
#[derive(Clone, Debug, Serialize)]
pub struct NamedPoint {
    /// The name.
    pub name: String,
    /// Where it is; for a rounded or clipped corner, as if it were sharp.
    pub at: Point,
    /// The same for a sharp corner; the middle of the arc or flat for a rounded or clipped one.
    pub edge: Point,
}

/// The slab.
#[derive(Clone, Debug, Serialize)]
pub struct SlabNote {
    /// Its outline.
    pub outline: Outline,
    /// Its corners.
    pub corners: Vec<NamedPoint>,
    /// Its edges.
    pub edges: Vec<SlabEdge>,
    /// Its flaws.
    pub flaws: Vec<FlawNote>,
    /// Openings, slots and core holes that go right through it already; they may overlap.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub taken: Vec<Vec<Seg>>,
    /// The core holes among them.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub drilled: Vec<Drilled>,
    /// Area.
    pub area_mm2: f64,
    /// Thickness readings.
    pub thickness: Thickness,
    /// Mass.
    pub mass: MassRange,
    /// Balance point.
    pub balance: Point,
    /// Tape error.
    #[serde(rename = "tape_mm")]
    pub tape: f64,
    /// Direction of the vein.
    #[serde(rename = "vein_deg")]
    pub vein: Option<f64>,
    /// How it was measured, how well the tapes close, and how square it is.
    pub survey: Survey,
}

/// An edge of the slab.
#[derive(Clone, Debug, Serialize)]
pub struct SlabEdge {
    /// Its name.
    pub name: String,
    /// What it can be used for.
    pub state: EdgeState,
    /// Length between sharp corners.
    #[serde(rename = "length_mm")]
    pub length: f64,
}

/// A flaw.
#[derive(Clone, Debug, Serialize)]
pub struct FlawNote {
    /// What it is.
    pub what: String,
    /// The flaw itself: a circle or an area closed, a line open.
    pub path: Vec<Seg>,
    /// Clearance all round.
    #[serde(rename = "clear_mm")]
    pub clear: f64,
    /// The edge of the clearance, as closed rings that may overlap.
    pub clearance: Vec<Vec<Seg>>,
}

/// Where the top lies.
#[derive(Clone, Debug, Serialize)]
pub struct PlacementNote {
    /// Turn of the top.
    pub turn: f64,
    /// Where the origin of the top's frame lies.
    pub shift: Vector,
    /// Sawing work, curves counted by their factor.
    pub work_mm2: f64,
    /// The top's edges that lie on an edge of the slab.
    pub flush: Vec<String>,
    /// Least distance to spare.
    pub least_spare: f64,
}

/// The finished top.
#[derive(Clone, Debug, Serialize)]
pub struct TopNote {
    /// Its outline.
    pub outline: Outline,
    /// Finished cutouts, run clockwise.
    pub cutouts: Vec<Vec<Seg>>,
    /// The same with what each is for.
    pub openings: Vec<OpeningNote>,
    /// The outline with the allowances, as the saw leaves it.
    pub sawn_outline: Outline,
    /// Its corners.
    pub corners: Vec<NamedPoint>,
    /// Its edges.
    pub edges: Vec<TopEdge>,
    /// The edge or corner that each piece of the outline belongs to, in the outline's order.
    pub parts: Vec<TopPart>,
    /// Area.
    pub area_mm2: f64,
    /// Mass.
    pub mass: MassRange,
    /// Balance point.
    pub balance: Point,
    /// Length and width of the box around it in its own frame.
    #[serde(rename = "size_mm")]
    pub size: [f64; 2],
}

/// An opening of the top.
#[derive(Clone, Debug, Serialize)]
pub struct OpeningNote {
    /// What it is for.
    pub what: String,
    /// Its finished outline.
    #[serde(skip)]
    pub outline: Outline,
    /// Stone left by the saw, when a disc makes it.
    #[serde(rename = "allowance_mm")]
    pub allowance: f64,
    /// What it is once all is sawn, where some of its sides have been cut already.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub sawn: Option<Outline>,
    /// The outline that the saw leaves.
    #[serde(skip)]
    pub made: Outline,
}

/// An edge of the top.
#[derive(Clone, Debug, Serialize)]
pub struct TopEdge {
    /// Its name.
    pub name: String,
    /// What is done to it.
    pub finish: Finish,
    /// Length between sharp corners.
    #[serde(rename = "length_mm")]
    pub length: f64,
    /// The slab's edge it lies on, when it does.
    pub flush_with: Option<String>,
    /// Stone left by the saw.
    #[serde(rename = "allowance_mm")]
    pub allowance: f64,
}

/// What a piece of the top's outline belongs to.
#[derive(Clone, Debug, Serialize)]
pub struct TopPart {
    /// The edge (`1-2`) or corner (`2`).
    pub name: String,
    /// Stone left by the saw.
    #[serde(rename = "allowance_mm")]
    pub allowance: f64,
}

/// Machine, jig and passes.
#[derive(Clone, Debug, Serialize)]
pub struct Kit {
    /// Speed without load, turns per minute.
    pub rpm: f64,
    /// Between machine and stone.
    #[serde(rename = "plate_mm")]
    pub plate: f64,
    /// From the guide's edge to the near face.
    #[serde(rename = "guide_offset_mm")]
    pub guide_offset: f64,
    /// Length of the guide.
    #[serde(rename = "guide_length_mm")]
    pub guide_length: f64,
    /// From the arm mark to the near face.
    #[serde(rename = "jig_offset_mm")]
    pub jig_offset: f64,
    /// Sawn face a minute, cm².
    #[serde(rename = "rate_cm2_min")]
    pub rate: f64,
    /// The rate is a guess.
    pub rate_is_guess: bool,
    /// Through the stone.
    #[serde(rename = "through_mm")]
    pub through: f64,
    /// Curves take this many times longer.
    pub curve_factor: f64,
    /// The heaviest piece that a curve may free at once.
    #[serde(rename = "waste_piece_kg")]
    pub waste_piece: Mass,
    /// How the dust is held down.
    pub dust_method: DustMethod,
    /// What drives the machine.
    pub power: Power,
}

/// A support.
#[derive(Clone, Debug, Serialize)]
pub struct SupportNote {
    /// What it is.
    pub what: String,
    /// Both ends of a line, or the middle of a pad twice.
    pub ends: [Point; 2],
    /// The most it may carry.
    #[serde(rename = "limit_kg")]
    pub limit: Option<Mass>,
}
