//! What happened and what it costs, as data.

use serde::Serialize;

use crate::cut::kept::Whose;
use crate::geom::{Outline, Pose, Seg, Vector};
use crate::job::{CornerCut, Finish, Job, Part, Shape};
use crate::piece::mass_of;
use crate::place::Placement;
use crate::units::MassRange;

use super::faces::{Faces, On, notch, of_words};
use super::overhang::{self, Overhang};
use super::smaller::Smaller;
use super::{Happened, lines, openings};

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
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub off_holes: Vec<(String, f64)>,
    /// Cuts that are made and stop inside the stone, whose tails are to be taken out before the rest.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub tails_first: Vec<String>,
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
    pub overhangs: Vec<Overhang>,
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
    pub face_out: Option<f64>,
    /// Of a slanting face the same at its start and at its end, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub taper: Option<[f64; 2]>,
    /// How far its finished line has moved in, mm: into the stone that was to be kept.
    pub moved_in: f64,
    /// Its length between sharp corners as wanted, mm.
    pub length_wanted: f64,
    /// The same as it can be had, mm.
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
    pub wanted: f64,
    /// As it can be had, mm.
    pub now: f64,
    /// Where its face came to lie outside the line to keep, mm, negative inside; nothing when it has
    /// not been cut.
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
    pub size_wanted: [f64; 2],
    /// The same as it can be had, mm.
    pub size_now: [f64; 2],
    /// Its sides; of a circle none.
    pub sides: Vec<EdgeNow>,
    /// Its rounded corners; of a circle the whole, named `all round`.
    pub corners: Vec<CornerNow>,
    /// Corners that lie elsewhere now than where their core holes were drilled, and how far, mm.
    pub off_holes: Vec<(String, f64)>,
    /// Rails beside it that have become other than they were wanted.
    pub rails: Vec<Rail>,
}

/// The stone between an opening and an edge of the top, or another opening.
#[derive(Clone, Debug, Serialize)]
pub struct Rail {
    /// The edge or corner of the top, or the other opening.
    pub beside: String,
    /// Its least width as wanted, mm.
    pub wanted: f64,
    /// As it can be had, mm.
    pub now: f64,
}

/// A chip.
#[derive(Clone, Debug, Serialize)]
pub struct ChipNote {
    /// The edge or corner it is on.
    pub on: String,
    /// Depth, mm.
    pub deep: f64,
    /// Length along the edge, mm.
    pub across: f64,
    /// Its outline.
    pub outline: Vec<Seg>,
}

/// A top's measures.
#[derive(Clone, Debug, Serialize)]
pub struct TopMeasures {
    /// Length and width of the box round it in its own frame, mm.
    pub size: [f64; 2],
    /// Area, its cutouts taken out, mm².
    pub area_mm2: f64,
    /// Mass.
    pub mass: MassRange,
    /// Its outline where it lies.
    pub outline: Outline,
}

/// Puts it together; `rest` is the job that is left.
#[must_use]
pub(super) fn of(happened: &Happened<'_>, rest: &Job) -> Repair {
    let Happened {
        job,
        placement,
        faces,
        smaller,
        now,
        ..
    } = *happened;
    let edges = edges(job, placement, faces, smaller);
    let corners = corners(job, faces, smaller);
    let openings = openings::of(happened);
    let chips = faces.chips.iter().map(|(chip, on)| ChipNote {
        on: name_of(placement, *on),
        deep: chip.deep_mm,
        across: chip.across_mm,
        outline: notch(placement, faces, chip, *on)
            .map(|n| n.posed(now.frame.pose).segs().to_vec())
            .unwrap_or_default(),
    });
    let there_now = smaller.shape.posed(Pose::new(0.0, smaller.corner_1));
    let here = now.frame.then(placement.pose, Vector::default());
    let there = now.frame.then(placement.pose, smaller.corner_1);
    Repair {
        outcome: outcome(faces, &edges, &corners, &openings),
        letters: if now.frame.kept {
            Letters::SameA
        } else {
            Letters::New
        },
        chips: chips.collect(),
        wanted: measures(job, &job.top.shape, job.top.area(), here),
        now: measures(job, &smaller.shape, rest.top.area(), there),
        overhangs: overhang::of(job, smaller),
        corner_1_moved: smaller.corner_1,
        job_lines: lines::of(job, &smaller.shape, &rest.top.cutouts),
        off_holes: openings::off_holes(happened, &job.top.shape, &there_now),
        tails_first: now.tails.clone(),
        ground_first: happened
            .ground
            .iter()
            .map(|e| job.top.shape.edge_name(*e))
            .collect(),
        edges,
        corners,
        openings,
    }
}

fn name_of(placement: &Placement, on: On) -> String {
    match on.whose {
        Whose::Top => placement.top.part_name(on.part),
        Whose::Cutout(i) => {
            let name = placement.cutouts.get(i).map(|c| c.shape.part_name(on.part));
            format!("{}{}", name.unwrap_or_default(), of_words(on.whose))
        }
    }
}

fn measures(job: &Job, shape: &Shape, area_mm2: f64, pose: crate::geom::Pose) -> TopMeasures {
    let bounds = shape.outline().bounds();
    TopMeasures {
        size: [bounds.width(), bounds.height()],
        area_mm2,
        mass: mass_of(&job.stone, area_mm2),
        outline: shape.outline().posed(pose),
    }
}

fn outcome(
    faces: &Faces,
    edges: &[EdgeNow],
    corners: &[CornerNow],
    openings: &[OpeningNow],
) -> Outcome {
    let other = |c: &CornerNow| (c.wanted - c.now).abs() > crate::geom::SAME_MM;
    let moves = |edges: &[EdgeNow], corners: &[CornerNow]| {
        edges.iter().any(|e| e.moved_in > 0.0) || corners.iter().any(other)
    };
    let all = faces.done.iter().chain(faces.openings.iter().flatten());
    let off = all
        .into_iter()
        .any(|f| f.least_mm() != 0.0 || f.out_mm != 0.0);
    let off = off || !faces.chips.is_empty();
    let over = |e: &&EdgeNow| e.face_out.is_some_and(|out| out > 0.0);
    let all = openings.iter().flat_map(|o| &o.sides).chain(edges);
    let over: Vec<&EdgeNow> = all.filter(over).collect();
    if moves(edges, corners) {
        Outcome::Smaller
    } else if openings.iter().any(|o| moves(&o.sides, &o.corners)) {
        Outcome::OtherOpening
    } else if over.iter().any(|e| e.to_do == ToDo::Cut) {
        Outcome::SawAgain
    } else if !over.is_empty() {
        Outcome::GrindOff
    } else if off {
        Outcome::WithinAllowance
    } else {
        Outcome::AsPlanned
    }
}

fn edges(job: &Job, placement: &Placement, faces: &Faces, smaller: &Smaller) -> Vec<EdgeNow> {
    let top = &job.top.shape;
    let settled = smaller.settled.iter().enumerate();
    settled
        .map(|(edge, settled)| {
            let flush = matches!(placement.uses[edge], crate::place::EdgeUse::Flush { .. });
            let on = On {
                whose: Whose::Top,
                part: Part::Edge(edge),
            };
            let face = faces.face(on);
            EdgeNow {
                name: top.edge_name(edge),
                finish: job.top.finishes[edge],
                face_out: face.map(|f| {
                    if f.least_mm() < 0.0 {
                        f.least_mm()
                    } else {
                        f.out_mm
                    }
                }),
                taper: face.and_then(|f| f.taper),
                moved_in: settled.moved_mm,
                length_wanted: top.edge_length(edge),
                length_now: smaller.shape.edge_length(edge),
                to_do: match settled.ready_mm {
                    Some(_) => ToDo::Finish(settled.take_off_mm),
                    None if flush && settled.moved_mm == 0.0 => ToDo::Nothing,
                    None => ToDo::Cut,
                },
            }
        })
        .collect()
}

fn corners(job: &Job, faces: &Faces, smaller: &Smaller) -> Vec<CornerNow> {
    let wanted = job.top.shape.corner_cuts().iter();
    let pairs = wanted.zip(smaller.shape.corner_cuts()).enumerate();
    pairs
        .filter_map(|(corner, (wanted, now))| {
            let (what, size) = size_of(*wanted)?;
            Some(CornerNow {
                name: job.top.shape.corner_name(corner),
                what,
                wanted: size,
                now: size_of(*now).map_or(0.0, |s| s.1),
                face_out: faces.out_mm(Part::Corner(corner)),
                to_do: smaller.corners_take_off[corner].map_or(ToDo::Cut, ToDo::Finish),
            })
        })
        .collect()
}

pub(super) const fn size_of(cut: CornerCut) -> Option<(&'static str, f64)> {
    match cut {
        CornerCut::Sharp => None,
        CornerCut::Round(radius) => Some(("round", radius)),
        CornerCut::Clip(back) => Some(("clip", back)),
        CornerCut::Scoop(radius) => Some(("scoop", radius)),
    }
}
