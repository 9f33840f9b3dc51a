//! What must give where a stone does not go through on edge.

use serde::Serialize;

use super::attempt::{Attempt, Carried, Measure, Need};
use super::corner::Corner;

/// One way of getting through. Each is enough by itself unless the same pose is short in more than
/// one measure: then all of that pose's together.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Remedy {
    /// Take it upright: the place has the room.
    TakeUpright {
        /// Height it needs, mm.
        needs_mm: f64,
        /// Height that is there, mm.
        has_mm: f64,
    },
    /// Cut it before this place to at most this length, mm, and carry it on edge.
    #[serde(rename = "cut-to-mm")]
    CutTo(f64),
    /// Widen the way before the corner to at least this, mm.
    #[serde(rename = "widen-from-mm")]
    WidenFrom(f64),
    /// Widen the way after the corner to at least this, mm.
    #[serde(rename = "widen-to-mm")]
    WidenTo(f64),
    /// Widen the door or the whole way to at least this, mm: take off the leaf, its stops, a frame.
    #[serde(rename = "widen-mm")]
    Widen(f64),
    /// Make more height.
    Raise {
        /// In which pose.
        carried: Carried,
        /// Height it needs, mm.
        needs_mm: f64,
    },
}

/// The ways of getting through where it does not go on edge; none where it does.
pub(super) fn remedies(
    on_edge: &Attempt,
    upright: &Attempt,
    plank: Option<&Corner>,
) -> Vec<Remedy> {
    if on_edge.fit.passes() {
        return Vec::new();
    }
    let mut remedies = Vec::new();
    let height = upright.needs.iter().find(|n| n.measure == Measure::Height);
    if let (true, Some(height)) = (upright.fit.passes(), height) {
        remedies.push(Remedy::TakeUpright {
            needs_mm: height.needs_mm,
            has_mm: height.has_mm,
        });
    }
    for need in on_edge.needs.iter().filter(|n| n.spare_mm() < 0.0) {
        match (need.measure, plank) {
            (Measure::Turn, Some(corner)) => {
                remedies.extend(turn(corner, need.needs_mm, upright.length_mm));
            }
            (Measure::Turn, None) => {}
            (Measure::Width, Some(corner)) => remedies.extend(narrow(corner, on_edge, need)),
            (Measure::Width, None) => remedies.push(Remedy::Widen(need.needs_mm)),
            (Measure::Height, _) => remedies.push(Remedy::Raise {
                carried: Carried::OnEdge,
                needs_mm: need.needs_mm,
            }),
        }
    }
    remedies.extend(higher(upright));
    remedies
}

/// What lets a plank that is too long turn in a corner. Cut shorter than it is wide, its width would
/// be its length: that is not told.
fn turn(corner: &Corner, length_mm: f64, width_mm: f64) -> impl Iterator<Item = Remedy> {
    let cut = corner.longest_mm().filter(|longest| *longest >= width_mm);
    let cut = cut.map(Remedy::CutTo);
    let before = corner.least_from_mm(length_mm).map(Remedy::WidenFrom);
    let after = corner.least_to_mm(length_mm).map(Remedy::WidenTo);
    [cut, before, after].into_iter().flatten()
}

/// What lets it into a corner one of whose ways is too narrow for it.
fn narrow(corner: &Corner, on_edge: &Attempt, need: &Need) -> Vec<Remedy> {
    let length_mm = on_edge.length_mm;
    let wide = |mm: f64| mm.max(need.needs_mm);
    let before = corner.from_mm < need.needs_mm;
    let after = corner.to_mm < need.needs_mm;
    let both = Remedy::Widen(wide(corner.least_both_mm(length_mm)));
    let one = match (before, after) {
        (true, false) => corner
            .least_from_mm(length_mm)
            .map(wide)
            .map(Remedy::WidenFrom),
        (false, true) => corner.least_to_mm(length_mm).map(wide).map(Remedy::WidenTo),
        _ => None,
    };
    vec![one.unwrap_or(both)]
}

/// The height that would let it pass upright, when nothing else stands against that.
fn higher(upright: &Attempt) -> Option<Remedy> {
    let short = upright.needs.iter().filter(|n| n.spare_mm() < 0.0);
    let short: Vec<_> = short.collect();
    match short[..] {
        [need] if need.measure == Measure::Height => Some(Remedy::Raise {
            carried: Carried::Upright,
            needs_mm: need.needs_mm,
        }),
        _ => None,
    }
}
