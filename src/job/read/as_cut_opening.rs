//! `[[as_cut.cutout]]`: what really happened at an opening.

use super::as_cut_part::{self, once};
use super::figure::{edge_hint, find_edge};
use crate::job::as_cut::{DeviatingFace, Deviation, OpeningCut};
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{Part, Shape, Top};

/// Reads the openings that have been begun.
pub(super) fn read(r: &mut Reader<'_>, top: Option<&Top>) -> Vec<OpeningCut> {
    let mut seen: Vec<usize> = Vec::new();
    r.each("cutout", |r| {
        let opening = one(r, top)?;
        if seen.contains(&opening.cutout) {
            let key = r.key("cutout");
            let message = format!("{key}: cutout {} is told of twice", opening.cutout + 1);
            let hint = "put both into one [[as_cut.cutout]]";
            r.ledger.fault(key, r.span(), message, hint);
            return None;
        }
        seen.push(opening.cutout);
        Some(opening)
    })
}

fn one(r: &mut Reader<'_>, top: Option<&Top>) -> Option<OpeningCut> {
    let which = r.need("cutout");
    let cutout = which.and_then(|given| number(&given, top?));
    let shape = cutout.and_then(|i| Some(&top?.cutouts.get(i)?.shape));
    let done = r.get("done").map(|given| done(&given, shape));
    let mut slips: Vec<DeviatingFace> = Vec::new();
    for slip in r.each("edge", |r| side(r, shape)) {
        once(r, &mut slips, slip, shape);
    }
    for arcs in r.each("arc", |r| arc(r, shape)) {
        for slip in arcs {
            once(r, &mut slips, slip, shape);
        }
    }
    let mut done = match done {
        Some(done) => done?,
        None => Vec::new(),
    };
    let cut = slips.iter().map(|s| s.part).filter(|p| !done.contains(p));
    let cut: Vec<Part> = cut.collect();
    done.extend(cut);
    Some(OpeningCut {
        cutout: cutout?,
        done,
        slips,
    })
}

/// Which cutout: by its number, or by what it is.
fn number(given: &Given<'_>, top: &Top) -> Option<usize> {
    if given.bare_number().is_some() {
        let most = i64::try_from(top.cutouts.len()).unwrap_or(i64::MAX);
        return usize::try_from(given.whole_up_to(most)? - 1).ok();
    }
    let name = given.text()?;
    let found = top.cutouts.iter().position(|c| c.what == name);
    found.or_else(|| {
        let names: Vec<&str> = top.cutouts.iter().map(|c| c.what.as_str()).collect();
        given.fault(
            &format!("is \"{name}\": there is no such cutout"),
            format!("the cutouts of the top are: {}", names.join(", ")),
        )
    })
}

/// The cuts made: `"all"`, or sides by name and corners by number.
fn done(given: &Given<'_>, shape: Option<&Shape>) -> Option<Vec<Part>> {
    if given.is_list() {
        return as_cut_part::done(given, shape);
    }
    match given.text()? {
        "all" => Some(shape?.parts().to_vec()),
        other => given.fault(
            &format!("is \"{other}\""),
            "write \"all\", or the sides that are cut, such as [\"1-2\", \"2-3\"]",
        ),
    }
}

fn side(r: &mut Reader<'_>, shape: Option<&Shape>) -> Option<DeviatingFace> {
    let edge = r.need("edge");
    let (larger, smaller) = (r.get("larger"), r.get("smaller"));
    let came = match (larger, smaller) {
        (Some(larger), None) => Deviation::Short(larger.length()?),
        (None, Some(smaller)) => Deviation::Over(smaller.length()?),
        (Some(_), Some(smaller)) => {
            return smaller.fault(
                "stands beside `larger`: the opening is too large at this side or too small",
                "keep one of `larger` and `smaller`",
            );
        }
        (None, None) => {
            r.none_of("larger");
            return None;
        }
    };
    let (edge, shape) = (edge?, shape?);
    let name = edge.text()?;
    let part = match find_edge(shape, name).filter(|e| shape.edge_seg(*e).is_some()) {
        Some(edge) => Part::Edge(edge),
        None => {
            return edge.fault(
                &format!("is \"{name}\": there is no such side"),
                edge_hint(shape, name),
            );
        }
    };
    Some(DeviatingFace { part, came })
}

/// An arc's radius; of a circle, all round.
fn arc(r: &mut Reader<'_>, shape: Option<&Shape>) -> Option<Vec<DeviatingFace>> {
    let at = r.get("corner");
    let radius = r.need("radius");
    let radius = radius.and_then(|given| given.length());
    let shape = shape?;
    let parts = match at {
        Some(at) => vec![as_cut_part::rounded(&at, shape)?],
        None if shape.as_circle().is_some() => shape.parts().to_vec(),
        None => {
            r.missing("corner");
            return None;
        }
    };
    let came = Deviation::Radius(radius?);
    Some(
        parts
            .into_iter()
            .map(|part| DeviatingFace { part, came })
            .collect(),
    )
}
