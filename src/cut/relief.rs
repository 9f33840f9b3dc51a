//! Straight cuts through a curve's waste, so that it falls in pieces a person can hold.
//!
//! A plunged curve gives no warning before its waste drops. What it would free in one heavy piece is parted
//! beforehand by straight cuts that run off the stone at both ends, tangent to the sawn arc and a little way
//! off it: they never come near kept stone, and the little that is left between them and the arc is what
//! the last ring frees. What such a cut frees lies on bearers like the waste of any trim; while it is
//! little too heavy to be held, it is parted again by parallel cuts.

use crate::diag::Finding;
use crate::geom::{Arc, Line, Outline, Point, Region, Side, Vector, boolean};
use crate::job::{Disc, Finish, Job, Part};
use crate::place::{Trim, TrimEnd};

use super::course::Course;
use super::disc::{self, Task};
use super::{Because, Cut, CutKind, curve, straight};

/// From the sawn arc to the near face of a relief cut, mm (judgement: the guide's error and a little
/// more).
pub const CLEAR_MM: f64 = 5.0;
/// Most relief cuts for one curve (judgement: more sawing than it saves lifting).
const MOST_CUTS: usize = 8;
/// What one tangent cut frees is parted by parallel cuts into at most so many pieces (judgement: what is
/// heavier lies on bearers anyway).
const MOST_STRIPS: f64 = 3.0;
/// Places tried along an arc for a tangent cut.
const TRIED: u32 = 24;
/// A relief cut that takes off less than this share of the heaviest piece is not worth making (judgement).
const LEAST_SHARE: f64 = 0.1;
/// Halvings of a stand-off: 10 m come down to a hundredth of a micrometre.
const HALVINGS: u32 = 40;

/// The curve whose waste is parted.
struct Beside<'a> {
    part: Part,
    name: &'a str,
    arc: &'a Arc,
}

/// Makes the relief cuts that a curve needs, through the stone there is now; `disc` is the curve's own.
pub(super) fn before(course: &mut Course<'_>, wanted: &curve::Wanted<'_>, part: Part, disc: &Disc) {
    let beside = Beside {
        part,
        name: &wanted.name,
        arc: wanted.arc,
    };
    let most = most_mm2(course.job);
    for _ in 0..MOST_CUTS {
        let planned = curve::plan(course.job, wanted, &course.kept, &course.stone, disc);
        let Some(heaviest) = planned.and_then(|curve| heaviest(course, &curve)) else {
            return;
        };
        if heaviest <= most {
            return;
        }
        let before = course.cuts.len();
        for line in lines(course, &beside, heaviest, most) {
            cut(course, &beside, line);
        }
        if course.cuts.len() == before {
            break;
        }
    }
    let caution = too_heavy(course.job, beside.name);
    course.findings.cautions.push(caution);
}

/// The caution for a curve whose waste cannot be parted far enough.
fn too_heavy(job: &Job, name: &str) -> Finding {
    Finding {
        id: "curve-waste-heavy",
        title: format!("The waste of the curve at {name} drops in a piece too heavy to hold"),
        detail: format!(
            "No straight cuts clear of the kept stone part it into pieces of {:.1} kg (passes.waste_piece). \
             Bear it from below over its whole length before the last ring; nobody holds it, no foot \
             under it.",
            job.passes.waste_piece.kg()
        ),
        source: "judgement: 5 kg".into(),
    }
}

/// Area of the heaviest piece a person can hold, mm²: of the densest stone of the kind at the thickest
/// reading.
#[must_use]
pub fn most_mm2(job: &Job) -> f64 {
    job.passes.waste_piece.kg() / (job.stone.thickness.most * job.stone.density.high * 1e-9)
}

/// The area of the heaviest part of the waste that a curve would free, mm²: parts joined at the underside
/// are one.
fn heaviest(course: &Course<'_>, curve: &Cut) -> Option<f64> {
    let inside = course.kept.inner_point()?;
    let below = course.job.stone.thickness.most;
    let stone = [Region::solid(course.stone.clone())];
    let parts = boolean::difference(&stone, &curve.slots_at(below));
    let free = parts.into_iter().filter(|p| p.side(inside) != Side::Inside);
    free.map(|p| p.area()).max_by(f64::total_cmp)
}

/// The tangent line that takes most waste off, and lines parallel to it farther out when what it takes is
/// itself too heavy: the outermost first.
fn lines(course: &Course<'_>, beside: &Beside<'_>, heaviest: f64, most: f64) -> Vec<Line> {
    let tangents = (0..=TRIED).map(|i| {
        let share = f64::from(i) / f64::from(TRIED);
        tangent(beside.arc, beside.arc.start + beside.arc.sweep * share)
    });
    let taken = tangents.filter_map(|line| Some((waste(course, beside, line)?, line)));
    let Some((area, line)) = taken.max_by(|a, b| a.0.total_cmp(&b.0)) else {
        return Vec::new();
    };
    if area < LEAST_SHARE * heaviest {
        return Vec::new();
    }
    let strips = (area / most).ceil();
    if !(2.0..=MOST_STRIPS).contains(&strips) {
        return vec![line];
    }
    let mut lines = Vec::new();
    let mut share = 1.0;
    while share < strips {
        lines.extend(farther_out(course, beside, line, area * share / strips));
        share += 1.0;
    }
    lines.push(line);
    lines
}

/// The line that runs along the arc at an angle, its near face the given way off the sawn arc, kept stone
/// to its left.
fn tangent(arc: &Arc, angle: f64) -> Line {
    let out = Vector::at_angle(angle);
    Line {
        point: arc.at_angle(angle) + out * CLEAR_MM,
        along: out.left(),
    }
}

/// The waste beyond a line, mm²; nothing when its cut would not run off clear of kept stone.
fn waste(course: &Course<'_>, beside: &Beside<'_>, line: Line) -> Option<f64> {
    let trim = trim(beside, line);
    let chord = course.stone.chord(&line, trim.middle)?;
    let clear = course.runs_off(&trim) && stays_clear(course, chord.start, chord.end);
    clear.then(|| chord.right.area())
}

/// Whether a stretch keeps its distance from all kept stone.
fn stays_clear(course: &Course<'_>, from: Point, to: Point) -> bool {
    let kept = course.kept.region();
    let out = |p: Point| kept.side(p) == Side::Outside;
    // The nearest point of a straight stretch to a boundary is found among its ends, the feet of the
    // boundary's corners, and where an arc runs along it.
    let stretch = Line::through(from, to);
    let length = from.distance(to);
    let feet = kept
        .boundaries()
        .flat_map(Outline::flattened)
        .map(|p| stretch.foot(p));
    let mut probes = feet
        .filter(|d| (0.0..=length).contains(d))
        .chain([0.0, length])
        .map(|d| stretch.at(d));
    probes.all(|p| {
        let near = kept
            .boundaries()
            .map(|b| b.distance(p))
            .fold(f64::INFINITY, f64::min);
        out(p) && near >= CLEAR_MM - crate::geom::FLATTEN_MM
    })
}

/// The line parallel to another and farther out beyond which there is so much waste.
fn farther_out(course: &Course<'_>, beside: &Beside<'_>, line: Line, area: f64) -> Option<Line> {
    let beyond = |by: f64| waste(course, beside, line.shifted_right(by)).unwrap_or(0.0);
    let bounds = course.stone.bounds();
    let (mut near, mut far) = (0.0, bounds.width() + bounds.height());
    for _ in 0..HALVINGS {
        let middle = f64::midpoint(near, far);
        if beyond(middle) > area {
            near = middle;
        } else {
            far = middle;
        }
    }
    (beyond(far) > 0.0).then(|| line.shifted_right(far))
}

fn trim(beside: &Beside<'_>, face: Line) -> Trim {
    Trim {
        part: beside.part,
        face,
        middle: face.point,
        allowance_mm: CLEAR_MM,
        ends: [TrimEnd::RunOff; 2],
        length_mm: 0.0,
    }
}

fn cut(course: &mut Course<'_>, beside: &Beside<'_>, line: Line) {
    let choice = disc::choose(course.job, Task::RunOff);
    let trim = trim(beside, line);
    let planned = straight::plan(
        course.job,
        course.placement,
        &trim,
        &course.stone,
        choice.disc,
    );
    if let Some((cut, left)) = planned {
        course.push(Cut {
            kind: CutKind::Relief,
            edge: beside.name.into(),
            because: Because::WasteInHand,
            finish: Finish::Saw,
            ..cut
        });
        course.stone = left;
    }
}
