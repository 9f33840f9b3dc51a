//! `[place]`: where the top should lie on the slab.

use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::{PlaceHow, PlaceWish};

/// Reads the wish for a place.
pub(super) fn read(r: &mut Reader<'_>) -> PlaceWish {
    let at = r.get("at");
    let turn = r.get("turn");
    let how = match (&at, &turn) {
        (None, None) => Some(PlaceHow::Search),
        (None, Some(turn)) => turn.fault(
            "fixes a turn without a place",
            "give place.at as well, or leave both out to have the best place searched",
        ),
        (Some(at), turn) => {
            if turn.is_none() {
                r.assume("turn", "0 °");
            }
            let turn_deg = turn.as_ref().map_or(Some(0.0), Given::quantity);
            at.point()
                .zip(turn_deg)
                .map(|(at, turn_deg)| PlaceHow::Fixed { at, turn_deg })
        }
    };
    PlaceWish {
        how: how.unwrap_or(PlaceHow::Search),
        least_strip_mm: r.length("least_strip"),
    }
}
