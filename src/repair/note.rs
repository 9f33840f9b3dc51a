//! What happened and what it costs, as data.

use serde::Serialize;

use crate::geom::{Outline, Seg, Vector};
use crate::job::{CornerCut, Finish};
use crate::units::MassRange;

use super::overhang::OverhangNow;

/// What happened and what it costs. Places are in the frame of the stone as it is now.
#[derive(Clone, Debug, Serialize)]
pub struct Repair {
    /// What it comes to.
    pub outcome: Outcome,
    /// Whether the stone's corners have new letters.
    pub letters: Letters,
    /// Every edge of the top.
    pub edges: Vec<EdgeNow>,
    /// Every rounded, clipped or scooped corner.
    pub corners: Vec<CornerNow>,
    /// Openings that have been begun or chipped.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub openings: Vec<OpeningNow>,
    /// Inside corners of the top that lie elsewhere now than where their core holes were drilled, and how
    /// far, mm.
    #[serde(rename = "off_holes_mm", skip_serializing_if = "Vec::is_empty")]
    pub off_holes: Vec<(String, f64)>,
    /// Cuts that are made and stop inside the stone, whose run-outs are to be taken out before the rest.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub run_outs_first: Vec<String>,
    /// Edges that are ground down to their lines before the next cut.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub ground_first: Vec<String>,
    /// Chips.
    pub chips: Vec<ChipNote>,
    /// The top as it was wanted.
    pub wanted: TopMeasures,
    /// The top as it can be had.
    pub now: TopMeasures,
    /// How far the top stands over its base, when the base was given.
    pub overhangs: Vec<OverhangNow>,
    /// From the wanted corner 1 to the corner 1 there is now, in the top's frame, mm: to be taken from
    /// everything that was measured in the wanted top's frame.
    pub corner_1_moved: Vector,
    /// The lines of a job file that describe the top as it can be had.
    pub job_lines: Vec<String>,
}

/// What a repair comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// Everything lies on its line: the rest is cut as it was planned.
    AsPlanned,
    /// The allowance takes it up: ground and polished it is as wanted.
    WithinAllowance,
    /// Too much stands on an edge, and is ground off.
    GrindOff,
    /// So much stands on an edge that it is sawn again.
    SawAgain,
    /// The top becomes smaller or its roundings others.
    Smaller,
    /// Its outline stays as wanted, but an opening becomes another.
    OtherOpening,
}

/// Whether corners A, B, C … are those of the slab as bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Letters {
    /// Corner A and edge AB's direction are as before; the others may not be.
    SameA,
    /// All letters are new.
    New,
}

/// What is still to be done on an edge or corner.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ToDo {
    /// Nothing but its finish; this much stone is on it where it is thickest, mm.
    #[serde(rename = "finish-mm")]
    Finish(f64),
    /// It is still to be cut, or cut again: see the cuts.
    Cut,
    /// Nothing: it lies on the slab's own edge.
    Nothing,
}

/// An edge of the top.
#[derive(Clone, Debug, Serialize)]
pub struct EdgeNow {
    /// Its name.
    pub name: String,
    /// Its finish.
    pub finish: Finish,
    /// Where its face came to lie outside the line to keep, mm, negative inside; nothing when it has
    /// not been cut.
    #[serde(rename = "face_out_mm")]
    pub face_out: Option<f64>,
    /// Of a slanting face the same at its start and at its end, mm.
    #[serde(rename = "taper_mm", skip_serializing_if = "Option::is_none")]
    pub taper: Option<[f64; 2]>,
    /// How far its finished line has moved in, mm: into the stone that was to be kept.
    #[serde(rename = "moved_in_mm")]
    pub moved_in: f64,
    /// Its length between sharp corners as wanted, mm.
    #[serde(rename = "length_wanted_mm")]
    pub length_wanted: f64,
    /// The same as it can be had, mm.
    #[serde(rename = "length_now_mm")]
    pub length_now: f64,
    /// What is to be done.
    pub to_do: ToDo,
}

/// A corner of the top with something made of it.
#[derive(Clone, Debug, Serialize)]
pub struct CornerNow {
    /// Its name.
    pub name: String,
    /// What it is: `round`, `clip` or `scoop`.
    pub what: &'static str,
    /// Radius or set-back as wanted, mm.
    #[serde(rename = "wanted_mm")]
    pub wanted: f64,
    /// As it can be had, mm.
    #[serde(rename = "now_mm")]
    pub now: f64,
    /// Where its face came to lie outside the line to keep, mm, negative inside; nothing when it has
    /// not been cut.
    #[serde(rename = "face_out_mm")]
    pub face_out: Option<f64>,
    /// What is to be done.
    pub to_do: ToDo,
}

/// An opening that has been begun or chipped.
#[derive(Clone, Debug, Serialize)]
pub struct OpeningNow {
    /// Its number, from 1.
    pub number: usize,
    /// What it is for.
    pub what: String,
    /// Length and width of the box round it in the top's frame as wanted, mm.
    #[serde(rename = "size_wanted_mm")]
    pub size_wanted: [f64; 2],
    /// The same as it can be had, mm.
    #[serde(rename = "size_now_mm")]
    pub size_now: [f64; 2],
    /// Its sides; of a circle none.
    pub sides: Vec<EdgeNow>,
    /// Its rounded corners; of a circle the whole, named `all round`.
    pub corners: Vec<CornerNow>,
    /// Corners that lie elsewhere now than where their core holes were drilled, and how far, mm.
    #[serde(rename = "off_holes_mm")]
    pub off_holes: Vec<(String, f64)>,
    /// Rails beside it that have become other than they were wanted.
    pub rails: Vec<RailNow>,
}

/// The stone between an opening and an edge of the top, or another opening.
#[derive(Clone, Debug, Serialize)]
pub struct RailNow {
    /// The edge or corner of the top, or the other opening.
    pub beside: String,
    /// Its least width as wanted, mm.
    #[serde(rename = "wanted_mm")]
    pub wanted: f64,
    /// As it can be had, mm.
    #[serde(rename = "now_mm")]
    pub now: f64,
}

/// A chip.
#[derive(Clone, Debug, Serialize)]
pub struct ChipNote {
    /// The edge or corner it is on.
    pub on: String,
    /// Depth, mm.
    #[serde(rename = "deep_mm")]
    pub deep: f64,
    /// Length along the edge, mm.
    #[serde(rename = "across_mm")]
    pub across: f64,
    /// Its outline.
    pub outline: Vec<Seg>,
}

/// A top's measures.
#[derive(Clone, Debug, Serialize)]
pub struct TopMeasures {
    /// Length and width of the box round it in its own frame, mm.
    #[serde(rename = "size_mm")]
    pub size: [f64; 2],
    /// Area, its cutouts taken out, mm².
    pub area_mm2: f64,
    /// Mass.
    pub mass: MassRange,
    /// Its outline where it lies.
    pub outline: Outline,
}

pub(super) const fn size_of(cut: CornerCut) -> Option<(&'static str, f64)> {
    match cut {
        CornerCut::Sharp => None,
        CornerCut::Round(radius) => Some(("round", radius)),
        CornerCut::Clip(back) => Some(("clip", back)),
        CornerCut::Scoop(radius) => Some(("scoop", radius)),
    }
}
