//! `[[support]]`: what the top stands on.

use super::flaw;
use crate::geom::Outline;
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{Support, SupportPlace};

/// Reads one support.
pub(super) fn read(r: &mut Reader<'_>, top: Option<&Outline>) -> Option<Support> {
    let what = r.text("what");
    let (line, pad) = (r.get("line"), r.get("pad"));
    let limit = r.get("limit").map(|l| l.mass());
    let stiffness = r.get("stiffness");
    let stiffness = stiffness.map(|s| s.quantity());
    let (given, place) = place(r, line, pad)?;
    if top.is_some_and(|top| !touches(top, &place)) {
        return given.fault(
            "lies wholly outside the top",
            "measure it in the top's frame: x from corner 1 along edge 1-2, y square to it",
        );
    }
    let what = if what.is_empty() {
        "support".to_owned()
    } else {
        what
    };
    let limit = match limit {
        Some(limit) => Some(limit?),
        None => None,
    };
    Some(Support {
        what,
        place,
        limit,
        stiffness: stiffness.unwrap_or(Some(1.0))?,
    })
}

/// The one of `line` and `pad` that was given.
fn place<'a>(
    r: &Reader<'a>,
    line: Option<Given<'a>>,
    pad: Option<Given<'a>>,
) -> Option<(Given<'a>, SupportPlace)> {
    match (line, pad) {
        (Some(line), None) => {
            let [a, b] = flaw::path(&line)?[..] else {
                return line.fault(
                    "has more than two points: a support is straight",
                    "give its two ends; a support of several parts is several [[support]]",
                );
            };
            Some((line, SupportPlace::Line(a, b)))
        }
        (None, Some(pad)) => {
            let place = pad.table(read_pad)??;
            Some((pad, place))
        }
        (line, _) => {
            let count = if line.is_some() { 2 } else { 0 };
            let message = format!("a support is one of `line` and `pad`; here are {count}");
            let hint = "line = [[x, y], [x, y]], or pad = { at = [x, y], across = 60 }";
            r.ledger.fault(r.key("line"), r.span(), message, hint);
            None
        }
    }
}

fn read_pad(t: &mut Reader<'_>) -> Option<SupportPlace> {
    let at = t.need("at").and_then(|at| at.point());
    let across = t.need("across").and_then(|across| across.length());
    Some(SupportPlace::Pad(at?, across?))
}

fn touches(top: &Outline, place: &SupportPlace) -> bool {
    match place {
        SupportPlace::Line(a, b) => flaw::path_touches(top, &[*a, *b]),
        SupportPlace::Pad(at, across) => top.depth(*at) > -across / 2.0,
    }
}
