//! `[as_cut]`: what really happened, so that the rest can be planned again.

use super::as_cut_opening;
use super::figure::{edge_hint, find_edge};
use crate::job::as_cut::{AsCut, Came, Chip, Slip};
use crate::job::given::Given;
use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;
use crate::job::{CornerCut, Part, Shape, Top};

/// How far a face may have come out from its line, mm (judgement: more is another top).
pub(super) const SLIP: Limits = from_to(0.0, 200.0);
/// Radii that may have come out, mm.
pub(super) const RADIUS: Limits = from_to(1.0, 20_000.0);
/// Depth and length of a chip, mm (judgement).
const CHIP: Limits = from_to(0.1, 500.0);
/// Slips and chips of one job (judgement).
pub(super) const MOST: usize = 64;
/// A chip farther than this from the edge is not on it, mm (judgement: a tape held to a rough edge).
const ON_EDGE_MM: f64 = 25.0;

/// Reads what happened, if the section is there.
pub(super) fn read(root: &mut Reader<'_>, whole: Option<&Top>) -> Option<AsCut> {
    root.get("as_cut")?;
    let top = whole.map(|t| &t.shape);
    root.section("as_cut", |r| {
        let grind_mm = r.length_or(
            "grind",
            from_to(0.0, 50.0),
            3.0,
            "judgement: more is slower to grind off a whole edge than to saw",
        );
        let done = r.get("done").map(|given| done(&given, top));
        let mut slips: Vec<Slip> = Vec::new();
        for slip in r.each("edge", MOST, |r| edge(r, top)) {
            once(r, &mut slips, slip, top);
        }
        for slip in r.each("arc", MOST, |r| arc(r, top)) {
            once(r, &mut slips, slip, top);
        }
        let openings = as_cut_opening::read(r, whole);
        let chips = r.each("chip", MOST, |r| chip(r, whole));
        let mut done = done.flatten().unwrap_or_default();
        let cut = slips.iter().map(|s| s.part).filter(|p| !done.contains(p));
        let cut: Vec<Part> = cut.collect();
        done.extend(cut);
        Some(AsCut {
            done,
            slips,
            openings,
            chips,
            grind_mm,
        })
    })
}

/// A part may have come out in one way only.
pub(super) fn once(r: &Reader<'_>, slips: &mut Vec<Slip>, slip: Slip, top: Option<&Shape>) {
    if slips.iter().any(|s| s.part == slip.part) {
        let name = top.map_or_else(String::new, |t| t.part_name(slip.part));
        let key = r.key("edge");
        let message = format!("{key}: {name} came out in two ways");
        r.ledger
            .fault(key, r.span(), message, "keep one of the two");
        return;
    }
    slips.push(slip);
}

/// The cuts made: `["1-2", 2]`.
pub(super) fn done(given: &Given<'_>, top: Option<&Shape>) -> Option<Vec<Part>> {
    let items = given.list(0, MOST)?;
    let top = top?;
    let parts: Vec<Option<Part>> = items.iter().map(|item| named(item, top)).collect();
    parts.into_iter().collect()
}

/// An edge by its name in quotes, or a corner by its number.
fn named(item: &Given<'_>, top: &Shape) -> Option<Part> {
    if item.bare_number().is_some() {
        return corner(item, top);
    }
    let name = item.text()?;
    match find_edge(top, name) {
        Some(edge) => Some(Part::Edge(edge)),
        None => item.fault(
            &format!("is \"{name}\": there is no such edge"),
            edge_hint(top, name),
        ),
    }
}

/// A corner with something made of it, by its number.
pub(super) fn corner(item: &Given<'_>, top: &Shape) -> Option<Part> {
    let most = i64::try_from(top.count()).unwrap_or(i64::MAX);
    let number = item.whole(1, most)?;
    let index = usize::try_from(number - 1).ok()?;
    if top.corner_cuts().get(index) == Some(&CornerCut::Sharp) {
        return item.fault(
            &format!("is {number}, a sharp corner that no cut of its own makes"),
            "name a rounded or clipped corner, or an edge such as \"1-2\"",
        );
    }
    Some(Part::Corner(index))
}

fn edge(r: &mut Reader<'_>, top: Option<&Shape>) -> Option<Slip> {
    let edge = r.need("edge", "the edge's name, such as \"1-2\"");
    let (short, over) = (r.get("short"), r.get("over"));
    let came = match (short, over) {
        (Some(short), None) => Came::Short(short.length(SLIP)?),
        (None, Some(over)) => Came::Over(over.length(SLIP)?),
        (Some(_), Some(over)) => {
            return over.fault(
                "stands beside `short`: the face lies either inside or outside the line to keep",
                "keep one of `short` and `over`",
            );
        }
        (None, None) => {
            r.missing(
                "short",
                "how far inside the line to keep, or `over`, how far outside",
            );
            return None;
        }
    };
    let part = named(&edge?, top?)?;
    Some(Slip { part, came })
}

fn arc(r: &mut Reader<'_>, top: Option<&Shape>) -> Option<Slip> {
    let (at, edge) = (r.get("corner"), r.get("edge"));
    let radius = r.need("radius", "the radius it has on the stone now");
    let radius = radius.and_then(|given| given.length(RADIUS));
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
            r.missing(
                "corner",
                "the corner's number, or `edge`, a bowed edge's name",
            );
            return None;
        }
    };
    Some(Slip {
        part,
        came: Came::Radius(radius?),
    })
}

/// A rounded or scooped corner.
pub(super) fn rounded(at: &Given<'_>, shape: &Shape) -> Option<Part> {
    let part = corner(at, shape)?;
    let arc = matches!(part, Part::Corner(i) if matches!(
        shape.corner_cuts().get(i),
        Some(CornerCut::Round(_) | CornerCut::Scoop(_))
    ));
    if arc {
        return Some(part);
    }
    at.fault(
        "is not a rounded corner",
        "for a flat say how far it came out with [[as_cut.edge]]",
    )
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
    let at = r.need("at", "its middle on the edge, [x, y], in the top's frame");
    let deep = r.need("deep", "how far it reaches in from the edge");
    let across = r.need("across", "how long it is along the edge");
    let deep_mm = deep.and_then(|given| given.length(CHIP));
    let across_mm = across.and_then(|given| given.length(CHIP));
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
