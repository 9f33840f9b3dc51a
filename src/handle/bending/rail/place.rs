//! What a rail is called, in parts that another language can put together.

use serde::Serialize;

use crate::cut::rail::TAP_HOLE_MM;
use crate::geom::{Outline, SAME_MM, Seg};
use crate::handle::loads::Marks;

/// A side of the top, seen from edge 1-2.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::handle::bending) enum TopSide {
    Front,
    Right,
    Back,
    Left,
}

/// What a rail is and what it lies beside.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct RailPlace {
    /// "front rail", or "bridge between cutouts".
    pub kind: &'static str,
    /// The cutout, or the two that it lies between.
    pub cutouts: Vec<String>,
    /// The smallest opening that it lies beside.
    #[serde(skip)]
    pub opening: OpeningSize,
}

/// How large an opening is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OpeningSize {
    /// Round and no wider than a tap hole.
    TapHole,
    /// Anything else.
    Large,
}

impl RailPlace {
    pub(in crate::handle::bending) fn of(
        hole: &Outline,
        other: Option<&Outline>,
        side: TopSide,
        marks: &Marks,
    ) -> Self {
        let kind = match (other, side) {
            (Some(_), _) => "bridge between cutouts",
            (None, TopSide::Front) => "front rail",
            (None, TopSide::Right) => "right rail",
            (None, TopSide::Back) => "back rail",
            (None, TopSide::Left) => "left rail",
        };
        let beside = || std::iter::once(hole).chain(other);
        Self {
            kind,
            cutouts: beside().map(|h| marks.cutout(h).to_owned()).collect(),
            opening: if beside().any(is_tap_hole) {
                OpeningSize::TapHole
            } else {
                OpeningSize::Large
            },
        }
    }

    pub(super) fn name(&self) -> String {
        match &self.cutouts[..] {
            [one, other] => format!("bridge between {one} and {other}"),
            cutouts => format!("{} of {}", self.kind, cutouts.join(", ")),
        }
    }
}

fn is_tap_hole(hole: &Outline) -> bool {
    let bounds = hole.bounds();
    let round = hole.segs().iter().all(|s| matches!(s, Seg::Arc(_)));
    round && bounds.width().max(bounds.height()) <= TAP_HOLE_MM + SAME_MM
}
