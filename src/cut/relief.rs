//! Straight cuts through a curve's waste, so that it falls in pieces a person can hold.
//!
//! A plunged curve gives no warning before its waste drops. What it would free in one heavy piece is parted
//! beforehand by straight cuts that run off the stone at both ends, tangent to the sawn arc and a little way
//! off it: they never come near kept stone, and the little that is left between them and the arc is what
//! the last ring frees. What such a cut frees lies on bearers like the waste of any trim; while it is
//! little too heavy to be held, it is parted again by parallel cuts.

use std::f64::consts::FRAC_PI_2;

use crate::geom::{Arc, Line, Outline, Point, Region, Seg, Side, Vector, boolean};
use crate::job::{Disc, Finish, Job, Part};
use crate::place::{Trim, TrimEnd};

use super::course::Course;
use super::disc::{self, Task};
use super::{Because, Cut, CutKind, Station, curve, straight};

/// From the sawn arc to the near face of a relief cut, mm (judgement: the guide's error and a little
/// more).
pub const CLEAR_MM: f64 = 5.0;
/// Most relief cuts for each quarter circle of a curve (judgement: more sawing than it saves lifting).
const MOST_CUTS: usize = 8;
/// What one tangent cut frees is parted by parallel cuts into at most so many pieces (judgement: what is
/// heavier lies on bearers anyway).
const MOST_STRIPS: f64 = 3.0;
/// Places tried along each quarter circle of an arc for a tangent cut.
const TRIED: u32 = 24;
/// A relief cut that takes off less than this share of the heaviest piece is not worth making (judgement).
const LEAST_SHARE: f64 = 0.1;
/// Halvings of a stand-off: 10 m come down to a hundredth of a micrometre.
const HALVINGS: u32 = 40;

/// A curve whose waste may have to be parted.
pub(super) struct Beside<'a> {
    pub(super) part: Part,
    pub(super) wanted: curve::WantedCurve<'a>,
}

/// Makes the relief cuts that the curves of the top need, through the stone there is now; `disc` is the
/// curves' own.
pub(super) fn before(course: &mut Course<'_>, curves: &[Beside<'_>], disc: &Disc) {
    let most = most_mm2(course.job);
    let quarters: u32 = curves.iter().map(|c| quarters(c.wanted.arc)).sum();
    let enough = MOST_CUTS * quarters as usize;
    let first = course.cuts.len();
    loop {
        let heaviest = heaviest(course, curves, disc);
        if heaviest <= most {
            return;
        }
        let made = course.cuts.len();
        for (beside, line) in lines(course, curves, heaviest, most) {
            cut(course, beside, line);
        }
        if course.cuts.len() == made || made - first >= enough {
            return;
        }
    }
}

/// Quarter circles that an arc goes through, begun ones included.
fn quarters(arc: &Arc) -> u32 {
    let quarters = (arc.sweep / FRAC_PI_2 - 1e-9).ceil().clamp(1.0, 4.0);
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let quarters = quarters as u32;
    quarters
}

/// Area of the heaviest piece a person can hold, mm²: of the densest stone of the kind at the thickest
/// reading.
#[must_use]
pub fn most_mm2(job: &Job) -> f64 {
    job.passes.waste_piece.kg() / (job.stone.thickness.most * job.stone.density.high * 1e-9)
}

/// The area of the heaviest piece that any of the curves would free, one after the other, mm²: parts joined
/// at the underside are one.
fn heaviest(course: &Course<'_>, curves: &[Beside<'_>], disc: &Disc) -> f64 {
    let waste = course.stone.area() - course.kept.region().outer.area();
    let Some(inside) = course
        .kept
        .inner_point()
        .filter(|_| waste > most_mm2(course.job))
    else {
        return 0.0;
    };
    let mut stone = vec![Region::solid(course.stone.clone())];
    let mut heaviest = 0.0_f64;
    for beside in curves {
        let planned = curve::plan(
            course.job,
            &beside.wanted,
            &course.kept,
            &course.stone,
            disc,
        );
        let Some(planned) = planned else { continue };
        let parts = boolean::difference(&stone, &rings(&planned, disc));
        let (kept, free): (Vec<Region>, Vec<Region>) = parts
            .into_iter()
            .partition(|p| p.side(inside) == Side::Inside);
        heaviest = free.iter().map(Region::area).fold(heaviest, f64::max);
        stone = kept;
    }
    heaviest
}

/// What a curve's plunges take out at the underside, as a ring one kerf wide and a slot at each end.
fn rings(curve: &Cut, disc: &Disc) -> Vec<Outline> {
    let Some(set_out) = curve.set_out.curve() else {
        return Vec::new();
    };
    let ends = [set_out.stations.first(), set_out.stations.last()];
    let [Some(first), Some(last)] = ends else {
        return Vec::new();
    };
    let near = Arc {
        centre: set_out.pivot,
        radius: set_out.sawn_radius,
        start: first.angle,
        sweep: last.angle - first.angle,
    };
    let far = Arc {
        radius: near.radius + disc.kerf,
        ..near
    };
    let (near, far) = (Seg::Arc(near), Seg::Arc(far));
    let half = |from: f64, to: f64| {
        let (near, far) = (near.part(from, to), far.part(from, to));
        Outline::new(vec![
            Seg::Line(near.start(), far.start()),
            far,
            Seg::Line(far.end(), near.end()),
            near.reversed(),
        ])
    };
    let slot = |station: &Station| {
        let out = Vector::at_angle(station.angle);
        let half = out.left() * set_out.slot_half_under;
        let (a, b) = (station.touch - half, station.touch + half);
        Outline::polygon(&[a, a + out * disc.kerf, b + out * disc.kerf, b])
    };
    let all = [half(0.0, 0.5), half(0.5, 1.0), slot(first), slot(last)];
    all.into_iter().filter_map(Result::ok).collect()
}

/// The tangent line that takes most waste off, and lines parallel to it farther out when what it takes is
/// itself too heavy: the outermost first.
fn lines<'c>(
    course: &Course<'_>,
    curves: &'c [Beside<'c>],
    heaviest: f64,
    most: f64,
) -> Vec<(&'c Beside<'c>, Line)> {
    let tangents = curves.iter().flat_map(|beside| {
        let arc = beside.wanted.arc;
        let tried = TRIED * quarters(arc);
        (0..=tried).map(move |i| {
            let share = f64::from(i) / f64::from(tried);
            (beside, tangent(arc, arc.start + arc.sweep * share))
        })
    });
    let mut taken: Vec<(f64, &Beside<'_>, Line)> = tangents
        .filter_map(|(beside, line)| {
            let chord = course.stone.chord(&line, line.point)?;
            Some((chord.right.area(), beside, line))
        })
        .filter(|(area, ..)| *area >= LEAST_SHARE * heaviest)
        .collect();
    taken.sort_by(|a, b| b.0.total_cmp(&a.0));
    let clear = taken
        .into_iter()
        .find(|(_, b, line)| waste(course, b.part, *line).is_some());
    let Some((area, beside, line)) = clear else {
        return Vec::new();
    };
    let strips = (area / most).ceil();
    if !(2.0..=MOST_STRIPS).contains(&strips) {
        return vec![(beside, line)];
    }
    let mut lines = Vec::new();
    let mut share = 1.0;
    while share < strips {
        let outer = farther_out(course, beside.part, line, area * share / strips);
        lines.extend(outer.map(|line| (beside, line)));
        share += 1.0;
    }
    lines.push((beside, line));
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
fn waste(course: &Course<'_>, part: Part, line: Line) -> Option<f64> {
    let trim = trim(part, line);
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
fn farther_out(course: &Course<'_>, part: Part, line: Line, area: f64) -> Option<Line> {
    let beyond = |by: f64| waste(course, part, line.shifted_right(by)).unwrap_or(0.0);
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

fn trim(part: Part, face: Line) -> Trim {
    Trim {
        part,
        face,
        middle: face.point,
        allowance_mm: CLEAR_MM,
        ends: [TrimEnd::RunOff; 2],
        span: (0.0, 0.0),
        length_mm: 0.0,
    }
}

fn cut(course: &mut Course<'_>, beside: &Beside<'_>, line: Line) {
    let choice = disc::choose(course.job, Task::RunOff);
    let trim = trim(beside.part, line);
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
            edge: beside.wanted.name.clone(),
            because: Because::WasteInHand,
            finish: Finish::Saw,
            ..cut
        });
        course.stone = left;
    }
}
