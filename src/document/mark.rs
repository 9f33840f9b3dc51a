//! The marks that are struck on the slab, with their names: the cut's number and a letter.
//!
//! a and b: the line to keep; c and d: the guide's edge; e and f: the ends of a chord, and with more behind
//! them the struck stations of a curve; p: a pivot; h: holes, counted; s and t: where a cut stops.

use crate::cut::{
    CurveSetOut, Cut, EdgeMark, FromCorner, GuideSide, Offset, PivotPlace, SetOut, StraightSetOut,
    StruckStation, Tie,
};
use crate::geom::Point;
use crate::words::Value;

/// A point with its name and its ties.
#[derive(Clone, Debug)]
pub(crate) struct Marked {
    /// Its name.
    pub name: String,
    /// Where it is.
    pub at: Point,
    /// What it is: the id of a message.
    pub what: &'static str,
    /// Ties from the slab's corners.
    pub ties: Vec<Tie>,
    /// In an opening, its distances from two struck lines, which find it better.
    pub offsets: Vec<Offset>,
}

/// A line with a mark at either end.
#[derive(Clone, Debug)]
pub(crate) struct Struck<'a> {
    /// Names of the marks.
    pub names: [String; 2],
    /// The marks.
    pub ends: [&'a EdgeMark; 2],
    /// Across a corner: how far along both edges from it.
    pub from_corner: Option<&'a FromCorner>,
    /// True for the guide's edge.
    pub guide: bool,
}

/// A mark's distance from the corner of its tie: never rounded into the kept stone.
pub(crate) const fn taped(mark: &EdgeMark) -> Value {
    Value::tape(mark.tie.distance).to_half(mark.kept_beyond)
}

/// A line mark's distance from the other end of its edge: to half a mark where its own is.
pub(crate) const fn checked(mark: &EdgeMark) -> Value {
    Value::tape(mark.check.distance).to_half(!mark.kept_beyond)
}

/// From the guide's edge to the line to keep: never rounded towards the kept stone.
pub(crate) fn offset(set_out: &StraightSetOut) -> Value {
    Value::tape(set_out.guide_to_face).to_half(set_out.guide_side == GuideSide::Kept)
}

/// A length about a pivot, mm: never rounded towards the kept stone.
pub(crate) const fn swung(curve: &CurveSetOut, mm: f64) -> Value {
    Value::tape(mm).to_half(curve.inside.is_some())
}

/// The name of a mark of a cut.
pub(crate) fn mark_name(cut: &Cut, letter: &str) -> String {
    format!("{}{letter}", cut.number)
}

/// The lines of a cut that are struck right across.
pub(crate) fn lines(cut: &Cut) -> Vec<Struck<'_>> {
    let SetOut::Guide(set_out) = &cut.set_out else {
        return Vec::new();
    };
    vec![
        Struck {
            names: [mark_name(cut, "a"), mark_name(cut, "b")],
            ends: [&set_out.face.start, &set_out.face.end],
            from_corner: set_out.from_corner.as_ref(),
            guide: false,
        },
        Struck {
            names: [mark_name(cut, "c"), mark_name(cut, "d")],
            ends: [&set_out.guide.start, &set_out.guide.end],
            from_corner: None,
            guide: true,
        },
    ]
}

/// The points of a cut.
pub(crate) fn points(cut: &Cut) -> Vec<Marked> {
    let measured = |letter: String, at, what, ties: &[Tie], offsets: &[Offset]| Marked {
        name: mark_name(cut, &letter),
        at,
        what,
        ties: ties.to_vec(),
        offsets: offsets.to_vec(),
    };
    let marked = |letter: String, at, what, ties: &[Tie]| measured(letter, at, what, ties, &[]);
    match &cut.set_out {
        SetOut::Guide(set_out) => {
            let letters = ["s", "t"];
            let stops = set_out.stops.iter().zip(letters);
            stops
                .map(|(s, l)| measured(l.into(), s.at, "bench-mark-stop", &s.ties, &s.offsets))
                .collect()
        }
        SetOut::Pivot(curve) => {
            let (at, ties) = (curve.pivot, &curve.pivot_ties);
            let pivot = marked("p".into(), at, "bench-mark-pivot", ties);
            let pivot = (curve.pivot_on != PivotPlace::Off).then_some(pivot);
            pivot.into_iter().collect()
        }
        SetOut::Ordinates(o) => {
            let ends = [("e", &o.from), ("f", &o.to)];
            ends.map(|(l, end)| {
                measured(
                    l.into(),
                    end.at,
                    "bench-mark-chord",
                    &end.ties,
                    &end.offsets,
                )
            })
            .to_vec()
        }
        SetOut::Centres(marks) => {
            let many = marks.len() > 1;
            let letter = |i: usize| {
                if many {
                    format!("h{}", i + 1)
                } else {
                    "h".to_owned()
                }
            };
            let each = marks.iter().enumerate();
            each.map(|(i, m)| measured(letter(i), m.at, "bench-mark-hole", &m.ties, &m.offsets))
                .collect()
        }
    }
}

/// The struck stations of a curve about a pivot, with their names.
pub(crate) fn stations(cut: &Cut) -> Vec<(String, &StruckStation)> {
    let struck = match &cut.set_out {
        SetOut::Pivot(curve) => &curve.struck[..],
        _ => &[],
    };
    let named = struck.iter().zip('e'..);
    named
        .map(|(s, letter)| (mark_name(cut, &letter.to_string()), s))
        .collect()
}

/// Points nearer to each other than this are one, mm: less than a tape shows.
const ONE_PLACE_MM: f64 = 0.5;

/// Points of all cuts; those at one place are one, with all their names.
pub(crate) fn all_points<'a>(cuts: impl IntoIterator<Item = &'a Cut>) -> Vec<Marked> {
    let mut all: Vec<Marked> = Vec::new();
    for point in cuts.into_iter().flat_map(points) {
        match all
            .iter_mut()
            .find(|p| p.at.distance(point.at) < ONE_PLACE_MM)
        {
            Some(known) => known.name = format!("{}, {}", known.name, point.name),
            None => all.push(point),
        }
    }
    all
}
