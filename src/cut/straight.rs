//! Straight run-off trims.

use serde::Serialize;

use crate::diag::Finding;
use crate::geom::split::Chord;
use crate::geom::{Line, Outline, Point, SAME_MM};
use crate::job::{Disc, Finish, Guide, Job, Part};
use crate::place::{Placement, Trim};

use super::set_out::{EdgeMark, Tie, check_tie, edge_mark};
use super::{Cut, CutKind, Pass, SetOut, Stroke, StrokeKind, passes};

/// A line marked on the slab by a mark on its edge at each end.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct MarkedLine {
    /// The mark where the line enters the slab.
    pub start: EdgeMark,
    /// The mark where it leaves.
    pub end: EdgeMark,
    /// A diagonal tie to the start mark, as a check.
    pub check: Tie,
}

/// On which stone the guide lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum GuideSide {
    /// On the stone that is kept.
    Kept,
    /// On the waste, because the kept stone is too narrow for the jig.
    Waste,
}

/// One setting of a guide that is shorter than the cut.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct SetUp {
    /// Beginning of the guide, mm along the cut from the end it is taped from.
    pub from: f64,
    /// End of the guide, mm along the cut from the same end.
    pub to: f64,
}

/// Where the settings of a short guide are taped from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum RunEnd {
    /// From the mark where the line to keep enters the slab.
    Start,
    /// From the mark where it leaves.
    End,
    /// From the end of the stone on the entering side: both marks are on stone that has gone.
    StoneAtStart,
}

/// How a straight trim is set out.
#[derive(Clone, Debug, Serialize)]
pub struct StraightSetOut {
    /// The near face of the kerf: the line to mark and to keep.
    pub face: MarkedLine,
    /// The guide's edge.
    pub guide: MarkedLine,
    /// Where the guide lies.
    pub guide_side: GuideSide,
    /// From the guide's edge to the near face, mm.
    pub guide_to_face: f64,
    /// Where the settings are taped from.
    pub set_ups_from: RunEnd,
    /// Settings of the guide.
    pub set_ups: Vec<SetUp>,
    /// Length sawn from the far side first, mm; 0 when the cut is too short to need it.
    pub far_end: f64,
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
    let (from, to) = run.map_or((face.start, face.end), |r| (r.start, r.end));
    let full_depth = job.stone.thickness.most + job.passes.through_mm;
    let passes = passes::depths(job.passes.score_mm, job.passes.step_mm, full_depth);
    let length = face.length();
    let far_end = far_end(job, from.distance(to));
    let face_mm2 = length * job.stone.thickness.mean;
    let cut = Cut {
        number: 0,
        kind: CutKind::Straight,
        edge: placement.top.part_name(trim.part),
        run_off: true,
        disc: disc.clone(),
        full_depth,
        allowance: trim.allowance_mm,
        finish: finish_of(job, trim.part),
        length,
        face_mm2,
        minutes: face_mm2 / 100.0 / job.passes.rate_cm2_per_min,
        set_out: SetOut::Guide(Box::new(set_out(
            job, placement, trim, stone, &face, far_end, disc,
        )?)),
        tail: 0.0,
        cusp: 0.0,
        strokes: strokes(&passes, from, to, far_end),
        passes,
        frees: Vec::new(),
        left_to_remove: Vec::new(),
    };
    Some((cut, face.left))
}

/// The stop for a trim whose guide has no place on the slab.
pub(super) fn no_room_for_guide(job: &Job, placement: &Placement, trim: &Trim) -> Finding {
    let edge = placement.top.part_name(trim.part);
    Finding {
        id: "no-room-for-guide",
        title: format!("The guide for trim {edge} has no place on the slab"),
        detail: format!(
            "The guide's edge is {:.1} mm from the cut; the slab is narrower than that on both \
             sides of trim {edge}, so the cut is not planned. Use a jig with a smaller offset \
             (guide.offset).",
            job.guide.offset_mm
        ),
        source: "geometry: guide.offset against the slab's outline".into(),
    }
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
fn far_end(job: &Job, length: f64) -> f64 {
    if length > 2.0 * job.passes.far_end_mm {
        job.passes.far_end_mm
    } else {
        0.0
    }
}

/// At each depth: first the far end from outside inwards, then the run up to it.
fn strokes(passes: &[Pass], from: Point, to: Point, far_end: f64) -> Vec<Stroke> {
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

fn set_out(
    job: &Job,
    placement: &Placement,
    trim: &Trim,
    stone: &Outline,
    run: &Chord,
    far_end: f64,
    disc: &Disc,
) -> Option<StraightSetOut> {
    let offset = job.guide.offset_mm;
    let kept_width = placement
        .sawn
        .flattened()
        .into_iter()
        .map(|p| trim.face.left_of(p))
        .fold(0.0, f64::max);
    // Turned round on the waste side, the jig has the whole kerf between guide and near face.
    let kept = (GuideSide::Kept, offset, -offset);
    let over = offset + disc.kerf;
    let waste = (GuideSide::Waste, over, over);
    let sides = if kept_width >= offset {
        [kept, waste]
    } else {
        [waste, kept]
    };
    // A guide's edge that misses the slab altogether cannot be marked there: the other side then.
    let (guide_side, guide_to_face, guide) =
        sides.into_iter().find_map(|(side, to_face, by)| {
            let line = trim.face.shifted_right(by);
            Some((side, to_face, marked(job, &line, trim.middle, stone)?))
        })?;
    let face = marked(job, &trim.face, trim.middle, stone)?;
    Some(StraightSetOut {
        set_ups_from: set_ups_from(&face),
        face,
        guide,
        guide_side,
        guide_to_face,
        set_ups: set_ups(&job.guide, run.length()),
        far_end,
    })
}

/// The end that can be taped from: one whose mark is still on the stone.
fn set_ups_from(face: &MarkedLine) -> RunEnd {
    if face.start.still_there {
        RunEnd::Start
    } else if face.end.still_there {
        RunEnd::End
    } else {
        RunEnd::StoneAtStart
    }
}

/// A line's marks on the edges of the whole slab: they are made before the first cut.
/// `stone` is what is left when the cut is made.
fn marked(job: &Job, line: &Line, near: Point, stone: &Outline) -> Option<MarkedLine> {
    let slab = &job.slab.shape;
    let chord = slab.outline().chord(line, near)?;
    let mark = |at: Point| EdgeMark {
        still_there: stone.distance(at) <= SAME_MM,
        ..edge_mark(slab, at)
    };
    let start = mark(chord.start);
    Some(MarkedLine {
        check: check_tie(slab, &start),
        end: mark(chord.end),
        start,
    })
}

/// Settings of the guide along a cut: one when it is long enough, otherwise as few as overlap
/// enough, spread evenly.
#[must_use]
pub fn set_ups(guide: &Guide, length: f64) -> Vec<SetUp> {
    let each = guide.length_mm;
    if each >= length {
        return vec![SetUp {
            from: 0.0,
            to: length,
        }];
    }
    let gain = (each - guide.overlap_mm).max(each / 10.0);
    let count = ((length - each) / gain - 1e-9).ceil().clamp(1.0, 200.0) + 1.0;
    let step = (length - each) / (count - 1.0);
    let mut settings = Vec::new();
    let mut from = 0.0;
    while from + each <= length + 1e-6 {
        settings.push(SetUp {
            from,
            to: from + each,
        });
        from += step;
    }
    settings
}
