//! The parts of a top or an opening that `[as_cut]` names: edges by name, corners by number.

use super::figure::{edge_hint, find_edge};
use crate::job::as_cut::DeviatingFace;
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{CornerCut, Part, Shape};

/// A part may have come out in one way only.
pub(super) fn once(
    r: &Reader<'_>,
    slips: &mut Vec<DeviatingFace>,
    slip: DeviatingFace,
    top: Option<&Shape>,
) {
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
    let items = given.list()?;
    let top = top?;
    let parts: Vec<Option<Part>> = items.iter().map(|item| named(item, top)).collect();
    parts.into_iter().collect()
}

/// An edge by its name in quotes, or a corner by its number.
pub(super) fn named(item: &Given<'_>, top: &Shape) -> Option<Part> {
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
    let number = item.whole_up_to(most)?;
    let index = usize::try_from(number - 1).ok()?;
    if top.corner_cuts().get(index) == Some(&CornerCut::Sharp) {
        return item.fault(
            &format!("is {number}, a sharp corner that no cut of its own makes"),
            "name a rounded or clipped corner, or an edge such as \"1-2\"",
        );
    }
    Some(Part::Corner(index))
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
