//! `[as_cut]`: what really happened, so that the rest can be planned again.

use super::as_cut_opening;
use super::as_cut_part::{done, named, once, rounded};
use crate::job::as_cut::{AsCut, Chip, DeviatingFace, Deviation};
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{Part, Shape, Top};

/// A chip farther than this from the edge is not on it, mm (judgement: a tape held to a rough edge).
const ON_EDGE_MM: f64 = 25.0;

/// Reads what happened, if the section is there.
pub(super) fn read(root: &mut Reader<'_>, whole: Option<&Top>) -> Option<AsCut> {
    root.get("as_cut")?;
    let top = whole.map(|t| &t.shape);
    root.section("as_cut", |r| {
        let grind_mm = r.length("grind");
        let done = r.get("done").map(|given| done(&given, top));
        let cuts = r.get("cuts").and_then(|given| numbers(&given));
        let mut slips: Vec<DeviatingFace> = Vec::new();
        for slip in r.each("edge", |r| edge(r, top)) {
            once(r, &mut slips, slip, top);
        }
        for slip in r.each("arc", |r| arc(r, top)) {
            once(r, &mut slips, slip, top);
        }
        let openings = as_cut_opening::read(r, whole);
        let chips = r.each("chip", |r| chip(r, whole));
        let mut done = done.flatten().unwrap_or_default();
        let cut = slips.iter().map(|s| s.part).filter(|p| !done.contains(p));
        let cut: Vec<Part> = cut.collect();
        done.extend(cut);
        Some(AsCut {
            done,
            cuts: cuts.unwrap_or_default(),
            slips,
            openings,
            chips,
            grind_mm,
        })
    })
}

fn edge(r: &mut Reader<'_>, top: Option<&Shape>) -> Option<DeviatingFace> {
    let edge = r.need("edge");
    let (short, over) = (r.get("short"), r.get("over"));
    let came = match (short, over) {
        (Some(short), None) => slip(&short, -1.0)?,
        (None, Some(over)) => slip(&over, 1.0)?,
        (Some(_), Some(over)) => {
            return over.fault(
                "stands beside `short`: the face lies either inside or outside the line to keep",
                "keep one of `short` and `over`",
            );
        }
        (None, None) => {
            r.none_of("short");
            return None;
        }
    };
    let edge = edge?;
    let part = named(&edge, top?)?;
    let bowed = matches!(part, Part::Edge(i) if !top?.is_straight(i));
    if bowed && matches!(came, Deviation::Taper(_)) {
        return edge.fault(
            "is bowed: only a straight edge comes out slanting",
            "say the radius it has now with [[as_cut.arc]]",
        );
    }
    Some(DeviatingFace { part, came })
}

/// A slip: one distance, or those at the start of the edge and at its end; `out` is 1 outwards, −1 inwards.
fn slip(given: &Given<'_>, out: f64) -> Option<Deviation> {
    if !given.is_list() {
        let by = given.length()?;
        return Some(if out < 0.0 {
            Deviation::Short(by)
        } else {
            Deviation::Over(by)
        });
    }
    let [start, end] = &given.list()?[..] else {
        return None;
    };
    Some(Deviation::Taper([
        start.length()? * out,
        end.length()? * out,
    ]))
}

/// The numbers of cuts.
fn numbers(given: &Given<'_>) -> Option<Vec<usize>> {
    let each = given.list()?;
    let each = each
        .iter()
        .map(|n| usize::try_from(n.whole_up_to(i64::MAX)?).ok());
    each.collect()
}

fn arc(r: &mut Reader<'_>, top: Option<&Shape>) -> Option<DeviatingFace> {
    let (at, edge) = (r.get("corner"), r.get("edge"));
    let radius = r.need("radius");
    let radius = radius.and_then(|given| given.length());
    let part = match (at, edge) {
        (Some(at), None) => rounded(&at, top?)?,
        (None, Some(edge)) => bowed(&edge, top?)?,
        (Some(_), Some(edge)) => {
            return edge.fault(
                "stands beside `corner`: one arc is at a corner or along a bowed edge",
                "keep one of `corner` and `edge`",
            );
        }
        (None, None) => {
            r.none_of("corner");
            return None;
        }
    };
    Some(DeviatingFace {
        part,
        came: Deviation::Radius(radius?),
    })
}

fn bowed(edge: &Given<'_>, top: &Shape) -> Option<Part> {
    match named(edge, top)? {
        part @ Part::Edge(i) if !top.is_straight(i) => Some(part),
        _ => edge.fault(
            "is not a bowed edge: it has no radius",
            "say how far a straight edge came out with [[as_cut.edge]]",
        ),
    }
}

fn chip(r: &mut Reader<'_>, top: Option<&Top>) -> Option<Chip> {
    let at = r.need("at");
    let deep = r.need("deep");
    let across = r.need("across");
    let deep_mm = deep.and_then(|given| given.length());
    let across_mm = across.and_then(|given| given.length());
    let given = at?;
    let (at, deep_mm, across_mm) = (given.point()?, deep_mm?, across_mm?);
    if let Some(top) = top {
        let openings = top.cutouts.iter().map(|c| c.shape.outline().distance(at));
        let off = openings.fold(top.shape.outline().distance(at), f64::min);
        if off > ON_EDGE_MM + deep_mm {
            let off = r.ledger.length(off);
            return given.fault(
                &format!("lies {off} from the nearest edge of the top or of an opening"),
                "measure it in the top's frame: x from corner 1 along edge 1-2, y square to it",
            );
        }
    }
    Some(Chip {
        at,
        deep_mm,
        across_mm,
    })
}
