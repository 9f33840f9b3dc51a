//! `[[top.cutout]]`: the openings of the top.

use super::figure;
use crate::geom::{Point, Pose, SAME_MM};
use crate::job::given::Given;
use crate::job::ledger::{Ledger, TextRange};
use crate::job::reader::Reader;
use crate::job::{Cutout, Finish, Naming, Shape};

/// A cutout and where it was said.
struct Said {
    cutout: Cutout,
    key: String,
    span: TextRange,
}

/// Reads the cutouts; each must lie inside the top and clear of the others.
pub(super) fn read(r: &mut Reader<'_>, top: Option<&Shape>) -> Vec<Cutout> {
    let ledger = r.ledger;
    let mut number = 0;
    let said = r.each("cutout", |r| {
        number += 1;
        one(r, number)
    });
    let mut clean: Vec<Said> = Vec::new();
    for said in said {
        let inside = top.is_none_or(|top| inside(ledger, top, &said));
        if inside && clear_of(ledger, &clean, &said) {
            clean.push(said);
        }
    }
    clean.into_iter().map(|said| said.cutout).collect()
}

fn one(r: &mut Reader<'_>, number: usize) -> Option<Said> {
    let what = r.text("what");
    let shape = figure::read(r, Naming::Numbers, true);
    let at = r.need("at");
    let turn = r.quantity("turn");
    let finish = match r.get("finish") {
        Some(given) => finish(&given),
        None => Some(r.word("finish", Finish::Saw)),
    };
    let centre = at.and_then(|at| at.point());
    let shape = placed(&shape?, centre?, turn);
    let what = if what.is_empty() {
        format!("cutout {number}")
    } else {
        what
    };
    Some(Said {
        cutout: Cutout {
            what,
            shape,
            finish: finish?,
            ready: Vec::new(),
        },
        key: r.key("at"),
        span: r.span(),
    })
}

fn finish(given: &Given<'_>) -> Option<Finish> {
    match given.word()? {
        Finish::Factory => given.fault(
            "is factory, but an opening is sawn",
            "choose polish, ease or saw",
        ),
        finish => Some(finish),
    }
}

/// The figure turned about the middle of its box, and that middle laid on `centre`.
fn placed(shape: &Shape, centre: Point, turn_deg: f64) -> Shape {
    let middle = shape.outline().bounds().centre();
    let turned = shape.posed(Pose::new(0.0, Point::ORIGIN - middle));
    turned.posed(Pose::new(turn_deg.to_radians(), centre.to_vector()))
}

fn inside(ledger: &Ledger, top: &Shape, said: &Said) -> bool {
    let opening = said.cutout.shape.outline();
    let out = top.outline().deepest_breach(opening);
    let apart = opening.segs().iter().all(|a| {
        let edges = top.outline().segs().iter();
        edges.into_iter().all(|b| a.meets(b).is_empty())
    });
    if out <= SAME_MM && apart {
        return true;
    }
    let what = &said.cutout.what;
    let message = format!(
        "{}: {what} reaches {} beyond the edge of the top",
        said.key,
        ledger.length(out)
    );
    let hint =
        "`at` is its centre, measured from corner 1 of the top: x along edge 1-2, y square to it";
    ledger.fault(&said.key, said.span, message, hint);
    false
}

fn clear_of(ledger: &Ledger, others: &[Said], said: &Said) -> bool {
    let opening = said.cutout.shape.outline();
    let overlaps = |other: &&Said| {
        let other = other.cutout.shape.outline();
        let touching = |a: &crate::geom::Seg| opening.segs().iter().any(|b| !a.meets(b).is_empty());
        other.segs().iter().any(touching)
            || other.depth(opening.segs()[0].start()) >= 0.0
            || opening.depth(other.segs()[0].start()) >= 0.0
    };
    let Some(other) = others.iter().find(overlaps) else {
        return true;
    };
    let message = format!(
        "{}: {} and {} touch or overlap",
        said.key, said.cutout.what, other.cutout.what
    );
    ledger.fault(
        &said.key,
        said.span,
        message,
        "move one of them, or make one opening of the two",
    );
    false
}
