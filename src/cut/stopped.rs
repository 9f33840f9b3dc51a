//! Straight cuts that stop inside the stone: at inside corners and in openings.
//!
//! The cut in the face ends where kept stone or a core hole ends it. The disc being round, the cut at the
//! underside ends short of that by c(0) − c(t): the run-out.

use crate::diag::{Finding, Phrase};
use crate::geom::{Line, Outline, Point, SAME_MM, Vector};
use crate::job::{Disc, Finish, Job};
use crate::words::Value;

use super::disc::{Choice, Sunk, full_depth, that_would_fit};
use super::kept::{Kept, Whose};
use super::set_out::point_ties;
use super::straight::{Guided, JigRoom, far_end, set_out, strokes, timed};
use super::{
    Because, Cut, Hole, LeftOver, Pass, Remains, Removal, Stop, Stroke, StrokeKind, bearer, passes,
};

/// A straight cut that may stop inside the stone.
#[derive(Clone, Debug)]
pub struct WantedStopped<'a> {
    /// Whose edge it is.
    pub whose: Whose,
    /// Name of the edge, or of the corner whose flat it is.
    pub name: String,
    /// The line to keep, kept stone to its left.
    pub face: Line,
    /// A point of it that is to be sawn.
    pub middle: Point,
    /// Stone left on it, mm.
    pub allowance_mm: f64,
    /// What is done to the edge afterwards.
    pub finish: Finish,
    /// Where core holes or curves end it, backwards and forwards.
    pub stops: [Option<Point>; 2],
    /// Core holes that are there already.
    pub holes: &'a [Hole],
    /// Why it comes at this place in the order.
    pub because: Because,
}

impl WantedStopped<'_> {
    /// How far along the line the cut in the face may reach each way, mm; infinite where nothing kept
    /// stands in its way.
    #[must_use]
    pub fn limits(&self, kept: &Kept, kerf: f64) -> (f64, f64) {
        let free = kept.free_stretch(&self.face, kerf, self.middle);
        let [back, on] = self.stops.map(|p| p.map(|p| self.face.foot(p)));
        (
            back.map_or(free.0, |b| free.0.max(b)),
            on.map_or(free.1, |o| free.1.min(o)),
        )
    }
}

/// Why a stopped cut is not planned.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NotCut {
    /// The room between two stops, mm, is shorter than the disc's cut in the face.
    NoRoom(f64),
    /// The guide's edge has no place on the slab.
    NoGuide,
    /// The line does not meet the stone.
    NoStone,
}

/// Plans a straight cut through `stone` that stops where kept stone or a core hole ends it.
///
/// # Errors
/// [`NotCut`] when the disc finds no room, the guide no place, or the line no stone.
pub fn plan(
    job: &Job,
    wanted: &WantedStopped<'_>,
    kept: &Kept,
    stone: &Outline,
    disc: &Disc,
) -> Result<Cut, NotCut> {
    let sunk = Sunk::of(job, disc);
    let middle = wanted.face.shifted_right(disc.kerf / 2.0);
    let chord = stone.chord(&middle, wanted.middle).ok_or(NotCut::NoStone)?;
    let (first, last) = (middle.foot(chord.start), middle.foot(chord.end));
    let (low, high) = wanted.limits(kept, disc.kerf);
    // Off the edge of the stone the centre needs to go no farther than the edge.
    let mut from = first.max(low + sunk.face_mm);
    let mut to = last.min(high - sunk.face_mm);
    if from > to {
        let room = high - low;
        if room < 2.0 * sunk.face_mm {
            return Err(NotCut::NoRoom(room));
        }
        // The end that runs off gives way.
        if from <= first { from = to } else { to = from }
    }
    let ends = [from - sunk.face_mm, to + sunk.face_mm];
    let sawn = [ends[0].max(first), ends[1].min(last)];
    // Off an end that the underside's cut reaches there is no run-out.
    let stops = [from - sunk.under_mm > first, to + sunk.under_mm < last];
    let far_end = if stops[0] || stops[1] {
        0.0
    } else {
        far_end(job, to - from)
    };
    let guided = Guided {
        face: wanted.face,
        middle: wanted.middle,
        sawn: sawn.map(|at| wanted.face.at(at)),
        stops,
        far_end,
        room: room_beside(wanted, kept, stone, disc.kerf),
    };
    let mut set_out = set_out(job, &guided, stone, disc).ok_or(NotCut::NoGuide)?;
    let run_outs = run_outs(wanted, &middle, ends, stops, &sunk);
    set_out.stops = run_outs
        .iter()
        .map(|run_out| stop_of(job, wanted, run_out, &sunk))
        .collect();
    let passes = passes::depths(job.passes.score_mm, job.passes.step_mm, full_depth(job));
    let places = (middle.at(from), middle.at(to));
    let run_out = if run_outs.is_empty() {
        0.0
    } else {
        sunk.run_out_mm()
    };
    Ok(Cut {
        cutout: wanted.whose.cutout_number(),
        because: wanted.because.clone(),
        run_off: !(stops[0] || stops[1]),
        allowance: wanted.allowance_mm,
        finish: wanted.finish,
        run_out,
        strokes: stopped_strokes(&passes, places, wanted.face.along.angle(), stops, far_end),
        bearers: Some(bearer::along(job, stone, &wanted.face, &guided.sawn)),
        left_to_remove: run_outs,
        ..timed(job, wanted.name.clone(), disc, set_out, passes)
    })
}

/// The run-outs at the stopped ends: where each ends in the face, and what core holes leave of it.
fn run_outs(
    wanted: &WantedStopped<'_>,
    middle: &Line,
    ends: [f64; 2],
    stops: [bool; 2],
    sunk: &Sunk,
) -> Vec<LeftOver> {
    let along = wanted.face.along;
    let each = [(0, -along), (1, along)].into_iter();
    each.filter(|(end, _)| stops[*end])
        .map(|(end, heading)| {
            let at = middle.at(ends[end]);
            let under = at - heading * sunk.run_out_mm();
            let reach = |hole: &Hole| hole_reach(hole, under, heading);
            let left = wanted.holes.iter().filter_map(reach);
            let left = left.fold(sunk.run_out_mm(), f64::min).max(0.0);
            let in_hole = left < sunk.run_out_mm();
            LeftOver {
                why: Remains::RunOut,
                at,
                length: sunk.run_out_mm(),
                heading: Some(heading.angle().to_degrees()),
                left,
                by: if in_hole {
                    Removal::FromCoreHole
                } else {
                    Removal::FromBelow
                },
            }
        })
        .collect()
}

/// How far a hole begins along a heading from a point, mm; nothing when the line misses it or it lies
/// behind.
fn hole_reach(hole: &Hole, from: Point, heading: Vector) -> Option<f64> {
    let to = hole.at - from;
    let (ahead, aside) = (to.dot(heading), to.cross(heading));
    let half = (hole.diameter / 2.0).powi(2) - aside * aside;
    (half > 0.0 && ahead + half.sqrt() > 0.0).then(|| ahead - half.sqrt())
}

fn stop_of(job: &Job, wanted: &WantedStopped<'_>, run_out: &LeftOver, sunk: &Sunk) -> Stop {
    let at = wanted.face.at(wanted.face.foot(run_out.at));
    Stop {
        at,
        ties: point_ties(&job.slab.shape, at),
        offsets: Vec::new(),
        centre_short: sunk.face_mm,
        into_hole: run_out.by == Removal::FromCoreHole,
    }
}

/// Boundaries nearer to a line than this are its own face, mm.
const OWN_FACE_MM: f64 = 0.01;

/// Stone on both sides of the line, square to it from the middle of the cut, mm.
fn room_beside(wanted: &WantedStopped<'_>, kept: &Kept, stone: &Outline, kerf: f64) -> JigRoom {
    let across = Line {
        point: wanted.middle,
        along: wanted.face.along.left(),
    };
    let base = wanted.face.left_of(wanted.middle);
    let kept_edges = kept.region().boundaries().flat_map(Outline::segs);
    let marks: Vec<f64> = kept_edges
        .chain(stone.segs())
        .flat_map(|s| s.line_crossings(&across))
        .map(|m| m + base)
        .collect();
    // The line's own face is no edge of the room beside it.
    let left = marks.iter().copied().filter(|m| *m > OWN_FACE_MM);
    let right = marks.iter().copied().filter(|m| *m < -OWN_FACE_MM - kerf);
    JigRoom {
        kept_mm: left.fold(f64::INFINITY, f64::min),
        waste_mm: -right.fold(f64::NEG_INFINITY, f64::max),
    }
}

/// At each depth one run from the end that runs off to the one that stops; a plunge where there is no
/// way to go.
fn stopped_strokes(
    passes: &[Pass],
    (from, to): (Point, Point),
    heading: f64,
    stops: [bool; 2],
    far_end: f64,
) -> Vec<Stroke> {
    if from.distance(to) <= SAME_MM {
        let plunge = |pass: &Pass| Stroke {
            pass: pass.number,
            kind: StrokeKind::Plunge,
            from,
            to: from,
            heading,
            depth: pass.depth,
        };
        return passes.iter().map(plunge).collect();
    }
    if stops[0] && !stops[1] {
        strokes(passes, to, from, 0.0)
    } else {
        strokes(passes, from, to, far_end)
    }
}

pub(crate) const TOO_SHORT: Phrase = Phrase::of_job("stopped-cut-too-short");

/// Why a cut between two ends is missing that is shorter than any disc of the kit cuts.
pub(super) fn too_short(job: &Job, room_mm: f64, choice: &Choice<'_>) -> Finding {
    let length = 2.0 * Sunk::of(job, choice.disc).face_mm;
    let bit = (room_mm / 2.0).floor().max(1.0);
    let mut values = vec![
        ("room", Value::size(room_mm)),
        ("disc", choice.disc.name.clone().into()),
        ("length", Value::size(length)),
        ("bit", Value::size(bit)),
    ];
    values.extend(that_would_fit(choice, room_mm));
    let source = "geometry: 2·√(D·h − h²) against the length between the stops";
    Finding::of(&TOO_SHORT, values, source)
}
