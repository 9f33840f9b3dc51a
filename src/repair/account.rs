//! The repair, as the plan gives account of it.

use crate::cut::kept::Whose;
use crate::geom::{Pose, Vector};
use crate::job::{Job, Part, Shape};
use crate::piece::mass_of;
use crate::place::Placement;

use super::faces::{Faces, On, notch, of_words};
use super::happened::Happened;
use super::note::size_of;
use super::smaller::Smaller;
use super::{
    ChipNote, CornerNow, EdgeNow, Letters, OpeningNow, Outcome, Repair, ToDo, TopMeasures, lines,
    openings, overhang,
};

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
        run_outs_first: now.run_outs.clone(),
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
