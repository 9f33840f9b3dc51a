//! Openings: one core hole when a bit is their size; otherwise core holes at the corners, straight cuts
//! between them, plunges along arcs, and the run-outs that hold the drop-out to the last; before the cuts, holes
//! that part it where it would hang on at the underside.

use crate::diag::{Finding, Phrase};
use crate::geom::{Outline, Region, SAME_MM, Seg, Side, boolean};
use crate::job::{CoreBit, Job};
use crate::place::Placement;
use crate::words::Value;

use super::corner::GROUND_MM;
use super::course::Course;
use super::inside::{InsidePlace, Way};
use super::kept::{ALL_ROUND, Kept, Ring, Whose};
use super::missing::Spot;
use super::rail::called;
use super::{Because, Cut, Hole, LeftOver, Remains, Removal, core, free};

pub(crate) const NARROWER_THAN_KERF: Phrase =
    Phrase::of_job("opening-narrower-than-kerf").key("top.cutout.rectangle");
pub(crate) const HELD_BELOW: Phrase = Phrase::of_job("piece-held-below").key("core_bit.diameter");
/// The saw may take so much beyond the finished opening, mm²: the rounding of corners met by a core bit
/// (judgement).
const BEYOND_MM2: f64 = 5.0;

/// A round opening that one core hole makes.
#[derive(Clone, Debug)]
pub(super) struct Bore {
    cutout: usize,
    hole: Hole,
    bit: CoreBit,
    /// Stone left all round to the finished size, mm.
    left_mm: f64,
}

/// Finds the round openings that one core hole makes: the largest bit no wider than the finished
/// opening that leaves no more than the allowance, or so little that a hand takes it off. The hole
/// is then the boundary of the kept stone.
pub(super) fn bored(job: &Job, mut kept: Kept, placement: &Placement) -> (Kept, Vec<Bore>) {
    let mut bores = Vec::new();
    for (cutout, opening) in placement.cutouts.iter().enumerate() {
        let made = job.top.cutouts[cutout].is_made();
        let Some((centre, radius)) = opening.shape.as_circle().filter(|_| !made) else {
            continue;
        };
        let leaves = |bit: &CoreBit| radius - bit.diameter / 2.0;
        let most = GROUND_MM.max(opening.allowance_mm);
        let fits = |bit: &&CoreBit| leaves(bit) >= -SAME_MM && leaves(bit) <= most + SAME_MM;
        let bit = job
            .core_bits
            .iter()
            .filter(fits)
            .max_by(|a, b| a.diameter.total_cmp(&b.diameter));
        let Some(bit) = bit else { continue };
        if let Ok(outline) = Outline::circle(centre, bit.diameter / 2.0) {
            kept = kept.bored(cutout, outline);
            bores.push(Bore {
                cutout,
                hole: Hole {
                    at: centre,
                    diameter: bit.diameter,
                },
                bit: *bit,
                left_mm: leaves(bit).max(0.0),
            });
        }
    }
    (kept, bores)
}

/// Plans every opening: single holes first, then the sawn ones in the order given.
pub(super) fn all(course: &mut Course<'_>, bores: &[Bore]) {
    for bore in bores {
        drill(course, bore);
    }
    for cutout in 0..course.placement.cutouts.len() {
        if bores.iter().all(|b| b.cutout != cutout) && !course.job.top.cutouts[cutout].is_made() {
            saw(course, cutout);
        }
    }
}

fn drill(course: &mut Course<'_>, bore: &Bore) {
    let opening = &course.job.top.cutouts[bore.cutout];
    let over = bore.left_mm - course.placement.cutouts[bore.cutout].allowance_mm;
    let left = (over > SAME_MM).then_some(LeftOver {
        why: Remains::Corner,
        at: bore.hole.at,
        length: bore.left_mm,
        heading: None,
        left: bore.left_mm,
        by: Removal::Ground,
    });
    let drilled = core::Drilled {
        whose: Whose::Cutout(bore.cutout),
        name: ALL_ROUND.into(),
        bit: bore.bit,
        holes: vec![bore.hole],
        allowance_mm: bore.left_mm,
        finish: opening.finish,
        because: Because::OpeningLast,
        left_to_remove: left.into_iter().collect(),
    };
    course.push(core::plan(course.job, drilled));
}

fn saw(course: &mut Course<'_>, cutout: usize) {
    let ring = course.kept.rings[cutout + 1].clone();
    let places = course.places(&ring);
    let first = course.cuts.len();
    let before = (course.missing.clone(), course.findings.clone());
    course.holes(&ring, &places, &Because::WithinOpening);
    // A corner that a hole makes has no piece of its own to saw.
    let made = |piece: usize| {
        let place = places.iter().find(|p| p.arc == Some(piece));
        place.is_some_and(|p| matches!(p.way, Way::Bored(_)))
    };
    let pieces: Vec<usize> = (0..ring.pieces.len()).filter(|p| !made(*p)).collect();
    let straight = |p: &usize| matches!(ring.pieces[*p].seg, Seg::Line(..));
    let (lines, arcs): (Vec<usize>, Vec<usize>) = pieces.into_iter().partition(straight);
    let all: Vec<usize> = lines.into_iter().chain(arcs).collect();
    if !begun(course, cutout) {
        part_below(course, cutout, (&ring, &places, &all));
    }
    course.group(&ring, &places, &all, &Because::WithinOpening);
    if let Some(cut) = course.cuts.get_mut(first) {
        cut.because = Because::OpeningLast;
    }
    if let Some(stop) = beyond(course, cutout, &course.cuts[first..]) {
        course.cuts.truncate(first);
        (course.missing, course.findings) = before;
        for piece in &ring.pieces {
            course.lacks(stop.clone(), Spot::of(&ring, piece, &*piece.name));
        }
    }
}

/// Whether cutting has begun in an opening: the waste there is no longer whole, and no bit bears all round in it.
fn begun(course: &Course<'_>, cutout: usize) -> bool {
    let opening = course.placement.cutouts[cutout].shape.outline();
    let mut drilled = course.job.slab.begun.drilled.iter();
    !course.job.top.cutouts[cutout].ready.is_empty()
        || drilled.any(|d| opening.side(d.at) == Side::Inside)
}

/// Drills what parts the piece at the underside: where the cuts will end there is known once they have been
/// tried.
fn part_below(
    course: &mut Course<'_>,
    cutout: usize,
    (ring, places, pieces): (&Ring, &[InsidePlace], &[usize]),
) {
    let mut tried = course.clone();
    tried.group(ring, places, pieces, &Because::WithinOpening);
    let cuts = &tried.cuts[course.cuts.len()..];
    match free::holes(course, cutout, cuts) {
        Ok(None) => {}
        Ok(Some(drilled)) => course.push(core::plan(course.job, drilled)),
        // A corner that nothing makes is a stop of its own.
        Err(free::NoRoom) if places.iter().any(|p| matches!(p.way, Way::Unable)) => {}
        Err(free::NoRoom) => {
            let run_outs = cuts.iter().map(|c| c.run_out);
            let values = [
                ("cutout", Value::count(cutout + 1)),
                ("called", called(course.job, cutout)),
                ("run_out", Value::size(run_outs.fold(0.0, f64::max)).up()),
            ];
            let open = Finding::of(&HELD_BELOW, values, "geometry: c(0) − c(t)");
            course.findings.open.push(open);
        }
    }
}

/// The stop for an opening that has no room for the kerf: sawn along one side, it would go into the kept
/// stone at the other, so that nothing is cut there. Boolean of the slots in the face with the finished opening, n log n in their edges.
fn beyond(course: &Course<'_>, cutout: usize, cuts: &[Cut]) -> Option<Finding> {
    let sawn = cuts.iter().filter(|c| c.tool.disc().is_some());
    let kerf = sawn.clone().map(|c| c.tool.width_mm()).reduce(f64::max)?;
    let slots: Vec<Region> = sawn.flat_map(Cut::slots).map(Region::solid).collect();
    let finished = course.placement.cutouts[cutout].shape.outline().clone();
    let beyond = boolean::difference(&slots, &[finished]);
    let area: f64 = beyond.iter().map(Region::area).sum();
    let values = [
        ("cutout", Value::count(cutout + 1)),
        ("called", called(course.job, cutout)),
        ("kerf", Value::fine(kerf)),
    ];
    let source = "geometry: the slots in the face against the finished opening";
    (area > BEYOND_MM2).then(|| Finding::of(&NARROWER_THAN_KERF, values, source))
}
