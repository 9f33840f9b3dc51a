//! Straight cuts along a guide, and the trims that run off the stone.

use crate::diag::{Finding, Phrase};
use crate::geom::{Line, Outline, Point, SAME_MM};
use crate::job::{Disc, Finish, Guide, Job, Part};
use crate::place::{Placement, Trim};
use crate::words::Value;

use super::disc::full_depth;
use super::field::CLAMP_MM;
use super::set_out::edge_mark;
use super::{
    Cut, CutKind, EdgeMark, FromCorner, GuideSide, MarkedLine, Pass, RunEnd, SetOut, SetUp,
    StraightSetOut, Stroke, StrokeKind, Tool, bearer, passes,
};

/// Stone beside a line for the jig to lie on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JigRoom {
    /// Kept stone to the left of the line.
    pub kept_mm: f64,
    /// Waste to the right of it.
    pub waste_mm: f64,
}

/// Plans one trim through `stone`, the stone left by the trims before it, and gives the stone that
/// it leaves. Nothing when the line no longer meets the stone, or when the slab has no room for the
/// guide's edge on either side of it.
#[must_use]
pub fn plan(
    job: &Job,
    placement: &Placement,
    trim: &Trim,
    stone: &Outline,
    disc: &Disc,
) -> Option<(Cut, Outline)> {
    let face = stone.chord(&trim.face, trim.middle)?;
    // The disc's centre runs on the mid-plane of the kerf, wholly on the waste side.
    let middle = trim.face.shifted_right(disc.kerf / 2.0);
    let run = stone.chord(&middle, trim.middle);
    // A strip narrower than half the kerf: the centre runs beside the stone, as far as the face.
    let beside = trim.face.along.right() * (disc.kerf / 2.0);
    let (from, to) = run.map_or((face.start + beside, face.end + beside), |r| {
        (r.start, r.end)
    });
    let far_end = far_end(job, from.distance(to));
    let kept_mm = placement
        .sawn
        .flattened()
        .into_iter()
        .map(|p| trim.face.left_of(p))
        .fold(0.0, f64::max);
    let room = JigRoom {
        kept_mm,
        waste_mm: f64::INFINITY,
    };
    let guided = Guided {
        face: trim.face,
        middle: trim.middle,
        sawn: [face.start, face.end],
        stops: [false; 2],
        far_end,
        room,
    };
    let set_out = StraightSetOut {
        from_corner: from_corner(placement, trim),
        ..set_out(job, &guided, stone, disc)?
    };
    let passes = passes::depths(job.passes.score_mm, job.passes.step_mm, full_depth(job));
    let cut = Cut {
        allowance: trim.allowance_mm,
        finish: finish_of(job, trim.part),
        strokes: strokes(&passes, from, to, far_end),
        bearers: Some(bearer::along(job, stone, &trim.face, &guided.sawn)),
        ..timed(
            job,
            placement.top.part_name(trim.part),
            disc,
            set_out,
            passes,
        )
    };
    Some((cut, face.left))
}

/// A straight cut with what follows from its length.
pub(super) fn timed(
    job: &Job,
    name: String,
    disc: &Disc,
    set_out: StraightSetOut,
    passes: Vec<Pass>,
) -> Cut {
    let length = set_out.sawn[0].distance(set_out.sawn[1]);
    let face_mm2 = length * job.stone.thickness.mean;
    Cut {
        full_depth: full_depth(job),
        length,
        face_mm2,
        minutes: face_mm2 / 100.0 / job.passes.rate_cm2_per_min,
        passes,
        ..Cut::begun(
            CutKind::Straight,
            name,
            Tool::Disc(disc.clone()),
            SetOut::Guide(Box::new(set_out)),
        )
    }
}

pub(crate) const NO_ROOM: Phrase = Phrase::of_job("no-room-for-guide");

/// Why a trim is missing whose guide has no place on the slab.
pub(super) fn no_room_for_guide(job: &Job) -> Finding {
    let values = [
        ("offset", Value::fine(job.guide.offset_mm)),
        ("thick", Value::fine(job.stone.thickness.mean)),
    ];
    let source = "geometry: guide.offset against the slab's outline";
    Finding::of(&NO_ROOM, values, source)
}

/// The finish of an edge, or at a corner that of its more demanding edge.
pub(super) fn finish_of(job: &Job, part: Part) -> Finish {
    let n = job.top.shape.count();
    let of = |edge: usize| job.top.finishes[edge % n];
    match part {
        Part::Edge(i) => of(i),
        Part::Corner(i) => {
            let both = [of(i + n - 1), of(i)];
            [Finish::Polish, Finish::Ease, Finish::Saw]
                .into_iter()
                .find(|f| both.contains(f))
                .unwrap_or(Finish::Polish)
        }
    }
}

/// Length sawn from the far side first; none on a cut shorter than two of it.
pub(super) fn far_end(job: &Job, length: f64) -> f64 {
    if length > 2.0 * job.passes.far_end_mm {
        job.passes.far_end_mm
    } else {
        0.0
    }
}

/// At each depth: first the far end from outside inwards, then the run up to it.
pub(super) fn strokes(passes: &[Pass], from: Point, to: Point, far_end: f64) -> Vec<Stroke> {
    let along = (to - from).unit();
    let meet = to - along * far_end;
    let run = |pass: &Pass, from: Point, to: Point, heading: f64| Stroke {
        pass: pass.number,
        kind: StrokeKind::Run,
        from,
        to,
        heading,
        depth: pass.depth,
    };
    let mut strokes = Vec::new();
    for pass in passes {
        if far_end > 0.0 {
            strokes.push(run(pass, to, meet, (-along).angle()));
        }
        strokes.push(run(pass, from, meet, along.angle()));
    }
    strokes
}

/// Stone that a guide wants under it behind its edge to lie and be clamped on, mm (judgement: half the width of a
/// common guide).
const REST_MM: f64 = 40.0;

/// A line to be sawn along a guide.
pub(super) struct Guided {
    pub(super) face: Line,
    pub(super) middle: Point,
    pub(super) sawn: [Point; 2],
    /// Whether it stops inside the stone at its start and at its end.
    pub(super) stops: [bool; 2],
    pub(super) far_end: f64,
    pub(super) room: JigRoom,
}

pub(super) fn set_out(
    job: &Job,
    guided: &Guided,
    stone: &Outline,
    disc: &Disc,
) -> Option<StraightSetOut> {
    let offset = job.guide.offset_mm;
    // Turned round on the waste side, the jig has the whole kerf between guide and near face.
    let kept = (GuideSide::Kept, offset, -offset);
    let over = offset + disc.kerf;
    let waste = (GuideSide::Waste, over, over);
    let room = guided.room;
    let narrow = room.kept_mm < offset + REST_MM;
    let on_waste = narrow && room.waste_mm - disc.kerf > room.kept_mm;
    let sides = if on_waste {
        [waste, kept]
    } else {
        [kept, waste]
    };
    // A guide's edge that misses the slab altogether cannot be marked there: the other side then.
    let (guide_side, guide_to_face, guide) =
        sides.into_iter().find_map(|(side, to_face, by)| {
            let line = guided.face.shifted_right(by);
            Some((side, to_face, marked(job, &line, guided.middle, stone)?))
        })?;
    let face = marked(job, &guided.face, guided.middle, stone)?;
    let [from, to] = guided.sawn;
    let set_ups = set_ups(&job.guide, from.distance(to));
    let set_ups_from = set_ups_from(&face, guided, disc.kerf);
    let beside = |p: Point| guide.line().at(guide.line().foot(p));
    let (base, other) = if set_ups_from.is_leaving() {
        (beside(to), beside(from))
    } else {
        (beside(from), beside(to))
    };
    let place = |mm: f64| base + (other - base).unit() * mm;
    let mut ends = set_ups.iter().flat_map(|s| [s.from, s.to]).map(place);
    Some(StraightSetOut {
        out_of_reach: ends.any(|end| stone.distance(end) > CLAMP_MM),
        set_ups,
        set_ups_from,
        face,
        guide,
        guide_side,
        guide_to_face,
        far_end: guided.far_end,
        sawn: guided.sawn,
        stops: Vec::new(),
        from_corner: None,
    })
}

/// For the flat of a clipped corner, where it meets the lines to keep of the edges beside it.
fn from_corner(placement: &Placement, trim: &Trim) -> Option<FromCorner> {
    let Part::Corner(corner) = trim.part else {
        return None;
    };
    let top = &placement.top;
    let line = |edge: usize| {
        let sawn = placement.trims.iter().find(|t| t.part == Part::Edge(edge));
        sawn.map_or_else(|| top.edge_line(edge), |t| t.face)
    };
    let beside = [(corner + top.count() - 1) % top.count(), corner].map(line);
    let at = beside[0].meet(&beside[1])?;
    let [before, after] = beside.map(|b| b.meet(&trim.face).map(|p| p.distance(at)));
    Some(FromCorner {
        corner: top.corner_name(corner),
        along: [before?, after?],
    })
}

/// Whether a cut ends at a mark that is still on the stone: across a slanted edge the sawn end lies up
/// to the kerf beside it. Lengths in mm.
#[must_use]
pub fn ends_at(mark: &EdgeMark, sawn: Point, kerf: f64) -> bool {
    mark.still_there && mark.at.distance(sawn) <= kerf
}

/// The end that can be taped from: one where the cut begins at a mark that is still on the stone, or
/// else where it runs off the stone.
fn set_ups_from(face: &MarkedLine, guided: &Guided, kerf: f64) -> RunEnd {
    let [start, end] = guided.sawn;
    let [stops_at_start, stops_at_end] = guided.stops;
    if ends_at(&face.start, start, kerf) {
        RunEnd::Start
    } else if ends_at(&face.end, end, kerf) {
        RunEnd::End
    } else if !stops_at_start {
        RunEnd::StoneAtStart
    } else if !stops_at_end {
        RunEnd::StoneAtEnd
    } else {
        RunEnd::StopAtStart
    }
}

/// A line's marks on the edges of the whole slab: they are made before the first cut.
/// `stone` is what is left when the cut is made.
fn marked(job: &Job, line: &Line, near: Point, stone: &Outline) -> Option<MarkedLine> {
    let slab = &job.slab.shape;
    let chord = slab.outline().chord(line, near)?;
    let mark = |at: Point| EdgeMark {
        still_there: stone.distance(at) <= SAME_MM,
        ..edge_mark(slab, at, line.along.left())
    };
    Some(MarkedLine {
        start: mark(chord.start),
        end: mark(chord.end),
    })
}

/// Settings of the guide along a cut: one when it is long enough, otherwise as few as overlap
/// enough, spread evenly.
#[must_use]
pub fn set_ups(guide: &Guide, length: f64) -> Vec<SetUp> {
    let each = guide.length_mm;
    if each >= length - SAME_MM {
        return vec![SetUp {
            from: 0.0,
            to: length,
        }];
    }
    let gain = (each - guide.overlap_mm).max(each / 10.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let moves = ((length - each) / gain - 1e-9).ceil().clamp(1.0, 200.0) as u32;
    let step = (length - each) / f64::from(moves);
    let from = (0..=moves).map(|i| step * f64::from(i));
    from.map(|from| SetUp {
        from,
        to: from + each,
    })
    .collect()
}
