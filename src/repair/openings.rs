//! What happened at the openings, as data.

use crate::cut::kept::Whose;
use crate::cut::rail;
use crate::geom::{Pose, Vector};
use crate::job::{Cutout, Part, Shape};

use super::faces::On;
use super::happened::Happened;
use super::note::{CornerNow, EdgeNow, OpeningNow, RailNow, ToDo, size_of};
use super::opening::Opened;

/// A rail that has changed by less is told as it was, mm (judgement: no tape can tell).
const CHANGED_MM: f64 = 0.05;

/// Every opening that has been begun or chipped.
pub(super) fn of(happened: &Happened<'_>) -> Vec<OpeningNow> {
    let both = happened.job.top.cutouts.iter().zip(happened.opened);
    let touched = both.enumerate().filter(|(i, _)| {
        let chipped = |(_, on): &(_, On)| on.whose == Whose::Cutout(*i);
        !happened.faces.openings[*i].is_empty() || happened.faces.chips.iter().any(chipped)
    });
    touched
        .map(|(i, (cutout, opened))| one(happened, i, cutout, opened))
        .collect()
}

fn one(happened: &Happened<'_>, i: usize, cutout: &Cutout, opened: &Opened) -> OpeningNow {
    let size = |shape: &Shape| {
        let bounds = shape.outline().bounds();
        [bounds.width(), bounds.height()]
    };
    let round = cutout.shape.as_circle().is_some();
    OpeningNow {
        number: i + 1,
        what: cutout.what.clone(),
        size_wanted: size(&cutout.shape),
        size_now: size(&opened.shape),
        sides: if round {
            Vec::new()
        } else {
            sides(happened, i, cutout, opened)
        },
        corners: if round {
            all_round(happened, i, cutout, opened).into_iter().collect()
        } else {
            corners(happened, i, cutout, opened)
        },
        off_holes: off_holes(happened, &cutout.shape, &opened.shape),
        rails: rails(happened, i, cutout, opened),
    }
}

fn face(happened: &Happened<'_>, i: usize, part: Part) -> Option<f64> {
    let whose = Whose::Cutout(i);
    happened.faces.face_mm(On { whose, part })
}

fn sides(happened: &Happened<'_>, i: usize, cutout: &Cutout, opened: &Opened) -> Vec<EdgeNow> {
    let settled = opened.settled.iter().enumerate();
    settled
        .map(|(side, settled)| EdgeNow {
            name: cutout.shape.edge_name(side),
            finish: cutout.finish,
            face_out: face(happened, i, Part::Edge(side)),
            taper: None,
            moved_in: settled.moved_mm,
            length_wanted: cutout.shape.edge_length(side),
            length_now: opened.shape.edge_length(side),
            to_do: match settled.ready_mm {
                Some(_) => ToDo::Finish(settled.take_off_mm),
                None => ToDo::Cut,
            },
        })
        .collect()
}

fn corners(happened: &Happened<'_>, i: usize, cutout: &Cutout, opened: &Opened) -> Vec<CornerNow> {
    let both = cutout.shape.corner_cuts().iter();
    let both = both.zip(opened.shape.corner_cuts()).enumerate();
    both.filter_map(|(corner, (wanted, now))| {
        let (what, size) = size_of(*wanted)?;
        Some(CornerNow {
            name: cutout.shape.corner_name(corner),
            what,
            wanted: size,
            now: size_of(*now).map_or(0.0, |s| s.1),
            face_out: face(happened, i, Part::Corner(corner)),
            to_do: opened.corners_take_off[corner].map_or(ToDo::Cut, ToDo::Finish),
        })
    })
    .collect()
}

/// A circle as one corner that goes all round.
fn all_round(
    happened: &Happened<'_>,
    i: usize,
    cutout: &Cutout,
    opened: &Opened,
) -> Option<CornerNow> {
    let ((_, wanted), (_, now)) = (cutout.shape.as_circle()?, opened.shape.as_circle()?);
    let part = cutout.shape.parts().first()?;
    let take_off = opened.corners_take_off.first().copied().flatten();
    Some(CornerNow {
        name: "all round".into(),
        what: "round",
        wanted,
        now,
        face_out: face(happened, i, *part),
        to_do: take_off.map_or(ToDo::Cut, ToDo::Finish),
    })
}

/// Corners with a core hole that lie elsewhere now, both figures in the wanted top's frame.
pub(super) fn off_holes(happened: &Happened<'_>, was: &Shape, now: &Shape) -> Vec<(String, f64)> {
    let both = was.corners().iter().zip(now.corners());
    let drilled = &happened.now.begun.drilled;
    both.enumerate()
        .filter_map(|(corner, (from, to))| {
            let moved = from.distance(*to);
            let at = happened.placement.pose.apply(*from);
            let holed = drilled.iter().any(|d| d.at.distance(at) <= d.diameter);
            (moved > CHANGED_MM && holed).then(|| (was.corner_name(corner), moved))
        })
        .collect()
}

/// The rails to each part of the top and to the other openings, those that have changed.
fn rails(happened: &Happened<'_>, i: usize, cutout: &Cutout, opened: &Opened) -> Vec<RailNow> {
    let (top, smaller) = (&happened.job.top, happened.smaller);
    let now_at = Pose::new(0.0, Vector::default() - smaller.corner_1);
    let now = opened.shape.posed(now_at);
    let own = [cutout.shape.outline().segs(), now.outline().segs()];
    let mut rails = Vec::new();
    let parts = top.shape.parts().iter().zip(top.shape.outline().segs());
    for (part, was) in parts {
        let is = match part {
            Part::Edge(e) => smaller.shape.edge_seg(*e),
            Part::Corner(c) => smaller.shape.corner_seg(*c),
        };
        let Some(is) = is else { continue };
        rails.push(RailNow {
            beside: top.shape.part_name(*part),
            wanted: rail::narrowest(own[0], std::slice::from_ref(was)),
            now: rail::narrowest(own[1], std::slice::from_ref(&is)),
        });
    }
    let others = top.cutouts.iter().zip(happened.opened).enumerate();
    for (_, (other, there)) in others.filter(|(j, _)| *j != i) {
        let there = there.shape.posed(now_at);
        rails.push(RailNow {
            beside: other.what.clone(),
            wanted: rail::narrowest(own[0], other.shape.outline().segs()),
            now: rail::narrowest(own[1], there.outline().segs()),
        });
    }
    rails.retain(|r| (r.wanted - r.now).abs() > CHANGED_MM);
    rails
}
