//! `[route]`: the doors and corners of the way in.

use crate::job::reader::Reader;
use crate::job::{Aid, ClearSize, Lift, Obstacle, Route};

/// How high hands carry the stone's lower edge, mm (judgement: over a threshold and toes).
const HANDS_RAISE_MM: f64 = 100.0;
/// Where an obstacle stands in the text, and what it is.
type Placed = (usize, Obstacle);

/// Reads the way in. Nothing is assumed about a way that is not given.
pub(super) fn read(r: &mut Reader<'_>, lift: &Lift) -> Route {
    let doors = numbered(r.each("door", |r| placed(r, door)), "door");
    let corners = numbered(r.each("corner", |r| placed(r, corner)), "corner");
    let mut way: Vec<Placed> = doors.chain(corners).collect();
    way.sort_by_key(|placed| placed.0);
    let obstacles: Vec<Obstacle> = way.into_iter().map(|placed| placed.1).collect();
    let size = |key| {
        if obstacles.is_empty() {
            r.usual_unless(key)
        } else {
            r.length(key)
        }
    };
    Route {
        room_mm: size("room"),
        raise_mm: raise(r, lift, obstacles.is_empty()),
        spare_mm: size("spare"),
        obstacles,
    }
}

/// How high the stone's lower edge is carried, mm.
fn raise(r: &Reader<'_>, lift: &Lift, no_way: bool) -> f64 {
    let given = r.get("raise").map(|given| given.length());
    let (usual_mm, why) = match lift.aid {
        Aid::Trolley => (lift.trolley.deck_mm, "the trolley's deck"),
        Aid::None | Aid::VacuumLifter | Aid::Gantry => (HANDS_RAISE_MM, r.why("raise")),
    };
    if let Some(given) = given {
        return given.unwrap_or(usual_mm);
    }
    if !no_way {
        r.assume_length("raise", usual_mm, why);
    }
    usual_mm
}

/// An obstacle and where it stands.
fn placed(
    r: &mut Reader<'_>,
    opening: impl FnOnce(&mut Reader<'_>) -> Option<ClearSize>,
) -> Option<Placed> {
    let what = r.text("what").trim().to_owned();
    let opening = opening(r)?;
    let at = r.span().map_or(0, |s| s.0);
    Some((at, Obstacle { what, opening }))
}

/// Those without a name are named by their kind and number.
fn numbered(way: Vec<Placed>, kind: &str) -> impl Iterator<Item = Placed> {
    way.into_iter().enumerate().map(move |(i, (at, obstacle))| {
        let what = if obstacle.what.is_empty() {
            format!("{kind} {}", i + 1)
        } else {
            obstacle.what
        };
        (at, Obstacle { what, ..obstacle })
    })
}

fn door(r: &mut Reader<'_>) -> Option<ClearSize> {
    let width = measure(r, "width");
    let height = measure(r, "height");
    Some(ClearSize::Door {
        width_mm: width?,
        height_mm: height?,
    })
}

fn corner(r: &mut Reader<'_>) -> Option<ClearSize> {
    let from = measure(r, "from");
    let to = measure(r, "to");
    let height = measure(r, "height");
    Some(ClearSize::Corner {
        from_mm: from?,
        to_mm: to?,
        height_mm: height?,
    })
}

fn measure(r: &Reader<'_>, key: &'static str) -> Option<f64> {
    r.need(key)?.length()
}
