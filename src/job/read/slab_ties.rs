//! `slab.base_line` and `slab.ties`: two tapes to every corner from the two ends of a base line, and a
//! third from its middle as a check.

use super::slab_taped::{Corner, Taped, can_compare};
use super::slab_words as words;
use crate::geom::{Point, Pose, Vector};
use crate::job::Naming;
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::shape::corner_name;
use crate::job::survey::How;
use crate::job::survey::ties::CornerTapes;

/// A corner is told to be badly fixed when the tape's error moves it by so many times itself (judgement;
/// the two tapes then cross at less than 17°).
const BADLY_FIXED: f64 = 5.0;

/// Reads the tapes and works out the corners; nothing when one is at fault.
pub(super) fn read(
    r: &Reader<'_>,
    base_line: Option<Given<'_>>,
    ties: Option<Given<'_>>,
    tape_error: f64,
) -> Option<Taped> {
    if base_line.is_none() {
        r.missing("base_line");
    }
    if ties.is_none() {
        r.missing("ties");
    }
    let base = base_line.as_ref().and_then(Given::length);
    let corners = ties.as_ref().and_then(read_ties);
    let (base_line, ties, base, corners) = (base_line?, ties?, base?, corners?);
    if !can_compare(&base_line) {
        return None;
    }
    let points: Vec<Option<Point>> = corners
        .iter()
        .map(|corner| place(r, corner, base, tape_error))
        .collect();
    let unit = r.ledger.length_unit();
    let mut misclosures = Vec::new();
    for corner in &corners {
        let found = corner.tie.misclosure(&corner.name, base, tape_error, unit);
        if let Some(found) = found {
            words::tie(r, corner, &found, tape_error);
            misclosures.push(found);
        }
    }
    words::unchecked_ties(r, &ties, &corners, base);
    let points: Option<Vec<Point>> = points.into_iter().collect();
    let points = in_the_slabs_frame(points?);
    if is_clockwise(&points) {
        return ties.fault(
            "run clockwise round the slab",
            "list the corners counter-clockwise, seen from above with the finished face up; every \
             corner is taken to lie on the left of the base line, seen from its first mark to its second",
        );
    }
    Some(Taped {
        how: How::Ties,
        corners: points,
        misclosures,
        said: (ties.key.clone(), ties.span),
    })
}

fn read_ties<'a>(given: &Given<'a>) -> Option<Vec<Corner<'a>>> {
    let ties = given.list()?;
    let corners: Vec<_> = ties
        .into_iter()
        .enumerate()
        .map(|(i, tie)| read_tie(tie, corner_name(Naming::Letters, i)))
        .collect();
    corners.into_iter().collect()
}

fn read_tie(given: Given<'_>, name: String) -> Option<Corner<'_>> {
    let tapes = given.list()?;
    let lengths: Vec<_> = tapes.iter().map(length).collect();
    let lengths: Option<Vec<f64>> = lengths.into_iter().collect();
    let (left, right, middle) = match lengths?[..] {
        [left, right] => (left, right, None),
        [left, right, middle] => (left, right, Some(middle)),
        _ => return None,
    };
    Some(Corner {
        name,
        tie: CornerTapes {
            left,
            right,
            middle,
        },
        given,
        tapes,
    })
}

/// A tape may be 0, when the corner is the mark, but not less.
fn length(given: &Given<'_>) -> Option<f64> {
    let mm = given.length()?;
    if mm < 0.0 {
        return given.fault(
            &format!("is {}: no tape is shorter than nothing", given.ledger.length(mm)),
            "every corner lies on the left of the base line: lay the line along or beside the slab so \
             that none lies on its right",
        );
    }
    Some(mm)
}

/// Where a corner is, and what is to be said of how it is fixed.
fn place(r: &Reader<'_>, corner: &Corner<'_>, base: f64, tape_error: f64) -> Option<Point> {
    match corner.tie.corner(base, tape_error) {
        Err(missed) => {
            words::no_meeting(r, corner, base, &missed);
            None
        }
        Ok(point) => {
            let moved = corner.tie.uncertainty(base, tape_error);
            if let Some(moved) = moved.filter(|mm| *mm > BADLY_FIXED * tape_error) {
                words::badly_fixed(r, corner, moved, tape_error);
            }
            Some(point)
        }
    }
}

/// Corner A at the origin and AB along x; nothing moves when A and B are the marks.
fn in_the_slabs_frame(points: Vec<Point>) -> Vec<Point> {
    let [a, b, ..] = points[..] else {
        return points;
    };
    if a.distance(b) <= crate::geom::SAME_MM {
        return points;
    }
    let turn = Pose::new(-(b - a).angle(), Vector::default());
    let from_a = points.into_iter().map(|p| Point::ORIGIN + (p - a));
    let mut turned: Vec<Point> = from_a.map(|p| turn.apply(p)).collect();
    if let [first, second, ..] = &mut turned[..] {
        *first = Point::ORIGIN;
        second.y = 0.0;
    }
    turned
}

fn is_clockwise(points: &[Point]) -> bool {
    let next = points.iter().cycle().skip(1);
    let pairs = points.iter().zip(next);
    let doubled: f64 = pairs.map(|(p, q)| p.to_vector().cross(q.to_vector())).sum();
    doubled < 0.0
}
