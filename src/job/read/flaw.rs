//! `[[slab.flaw]]`: what to keep clear of, and the question whether it lies on the stone at all.

use super::drawn;
use crate::geom::{Outline, OutlineFault, Point, Seg};
use crate::job::given::Given;
use crate::job::ledger::Ledger;
use crate::job::reader::Reader;
use crate::job::{Flaw, FlawPlace};

/// Reads one flaw.
pub(super) fn read(r: &mut Reader<'_>, slab: Option<&Outline>) -> Option<Flaw> {
    let what = r.text("what");
    let ways = ["spot", "line", "area", "shape"].map(|key| r.get(key));
    if ways[3].is_none() {
        drawn::no_drawing(r);
    }
    let clear_mm = r.length("clear");
    let (given, place) = place(r, ways)?;
    if slab.is_some_and(|slab| !touches(slab, &place)) {
        return given.fault(
            "lies wholly off the slab",
            "measure it in the slab's frame: x from corner A along AB, y square to it",
        );
    }
    let what = if what.is_empty() {
        "flaw".to_owned()
    } else {
        what
    };
    Some(Flaw {
        what,
        place,
        clear_mm,
    })
}

/// The one of `spot`, `line`, `area` and `shape` that was given.
fn place<'a>(r: &Reader<'a>, ways: [Option<Given<'a>>; 4]) -> Option<(Given<'a>, FlawPlace)> {
    match ways {
        [Some(spot), None, None, None] => {
            let place = spot.table(read_spot)??;
            Some((spot, place))
        }
        [None, Some(line), None, None] => {
            let place = FlawPlace::Line(path(&line)?);
            Some((line, place))
        }
        [None, None, Some(area), None] => {
            let place = FlawPlace::Area(area_of(&area)?);
            Some((area, place))
        }
        [None, None, None, Some(shape)] => {
            let place = FlawPlace::Area(drawn::flaw(r, &shape)?);
            Some((shape, place))
        }
        ways => {
            let count = ways.iter().flatten().count();
            let message =
                format!("a flaw is one of `spot`, `line`, `area` and `shape`; here are {count}");
            let hint = "give its place once; a flaw of several parts is several [[slab.flaw]]";
            r.ledger.fault(r.key("line"), r.span(), message, hint);
            None
        }
    }
}

fn read_spot(t: &mut Reader<'_>) -> Option<FlawPlace> {
    let at = t.need("at").and_then(|at| at.point());
    let across = t.need("across").and_then(|across| across.length());
    Some(FlawPlace::Spot {
        at: at?,
        across_mm: across?,
    })
}

/// A line of two or more points, no two in a row the same.
pub(super) fn path(given: &Given<'_>) -> Option<Vec<Point>> {
    let points = given.points()?;
    let same = points
        .windows(2)
        .position(|p| matches!(p, [a, b] if a.distance(*b) <= crate::geom::SAME_MM));
    match same {
        Some(i) => given.fault(
            &format!("has the same point twice, as entries {i} and {}", i + 1),
            "leave one of them out",
        ),
        None => Some(points),
    }
}

fn area_of(given: &Given<'_>) -> Option<Outline> {
    let points = given.points()?;
    match Outline::polygon(&points) {
        Ok(outline) => Some(outline),
        Err(fault) => given.fault(
            &area_words(given.ledger, fault),
            "list its corners in order round it",
        ),
    }
}

fn area_words(ledger: &Ledger, fault: OutlineFault) -> String {
    match fault {
        OutlineFault::Crossing { at, .. } => format!(
            "crosses itself near ({}, {})",
            ledger.length(at.x),
            ledger.length(at.y)
        ),
        OutlineFault::NoLength { piece } => {
            format!("has the same point twice, after entry {piece}")
        }
        _ => "encloses no area".to_owned(),
    }
}

/// Whether any part of a flaw lies on the stone.
fn touches(slab: &Outline, place: &FlawPlace) -> bool {
    match place {
        FlawPlace::Spot { at, across_mm } => slab.depth(*at) > -across_mm / 2.0,
        FlawPlace::Line(points) => path_touches(slab, points),
        FlawPlace::Area(area) => {
            let corner = slab.segs().first().map(Seg::start);
            let points: Vec<Point> = area.segs().iter().map(Seg::start).collect();
            let around = corner.is_some_and(|c| area.depth(c) >= 0.0);
            around || path_touches(slab, &points) || area.segs().iter().any(|s| crosses(slab, s))
        }
    }
}

/// Whether any part of a line of points lies inside or on an outline.
pub(super) fn path_touches(outline: &Outline, points: &[Point]) -> bool {
    points.iter().any(|p| outline.depth(*p) >= 0.0)
        || points.windows(2).any(|p| match p {
            [a, b] => crosses(outline, &Seg::Line(*a, *b)),
            _ => false,
        })
}

fn crosses(outline: &Outline, seg: &Seg) -> bool {
    outline.segs().iter().any(|s| !s.meets(seg).is_empty())
}
