//! `[route]`: the doors and corners of the way in.

use crate::job::kit::{Aid, Lift};
use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;
use crate::job::{Obstacle, Opening, Route};

/// Door or corridor, mm (judgement).
const WAY: Limits = from_to(100.0, 20_000.0);
/// Most doors, and most corners (judgement).
const MOST: usize = 64;
/// Hands on both faces of the stone, mm (judgement: knuckles stand off about 40 mm on each side).
const ROOM_MM: f64 = 80.0;
/// Room beside the stone and how high it is carried, mm (judgement).
const ROOM: Limits = from_to(0.0, 1000.0);
/// How high hands carry the stone's lower edge, mm (judgement: over a threshold and toes).
const HANDS_RAISE_MM: f64 = 100.0;
/// Less to spare is tight, mm (judgement: a hand's unsteadiness and the error of the tape).
const SPARE_MM: f64 = 20.0;
/// What may be called tight, mm (judgement).
const SPARE: Limits = from_to(0.0, 500.0);

/// Where an obstacle stands in the text, and what it is.
type Placed = (usize, Obstacle);

/// Reads the way in. Nothing is assumed about a way that is not given.
pub(super) fn read(r: &mut Reader<'_>, lift: &Lift) -> Route {
    let doors = numbered(r.each("door", MOST, |r| placed(r, door)), "door");
    let corners = numbered(r.each("corner", MOST, |r| placed(r, corner)), "corner");
    let mut way: Vec<Placed> = doors.chain(corners).collect();
    way.sort_by_key(|placed| placed.0);
    let obstacles: Vec<Obstacle> = way.into_iter().map(|placed| placed.1).collect();
    let (raise_mm, why) = match lift.aid {
        Aid::Trolley => (lift.trolley.deck_mm, "the trolley's deck"),
        Aid::None | Aid::VacuumLifter | Aid::Gantry => {
            (HANDS_RAISE_MM, "judgement: over a threshold and toes")
        }
    };
    let mut size = |key, limits, default_mm, why| {
        if obstacles.is_empty() {
            let given = r.get(key).and_then(|given| given.length(limits));
            return given.unwrap_or(default_mm);
        }
        r.length_or(key, limits, default_mm, why)
    };
    let hands = "judgement: hands on both faces of the stone";
    let unsteady = "judgement: a hand's unsteadiness and the error of the tape";
    let (room_mm, raise_mm, spare_mm) = (
        size("room", ROOM, ROOM_MM, hands),
        size("raise", ROOM, raise_mm, why),
        size("spare", SPARE, SPARE_MM, unsteady),
    );
    Route {
        obstacles,
        room_mm,
        raise_mm,
        spare_mm,
    }
}

/// An obstacle and where it stands.
fn placed(
    r: &mut Reader<'_>,
    opening: impl FnOnce(&mut Reader<'_>) -> Option<Opening>,
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

fn door(r: &mut Reader<'_>) -> Option<Opening> {
    let width = measure(r, "width", "the clear width");
    let height = measure(r, "height", "the clear height");
    Some(Opening::Door {
        width_mm: width?,
        height_mm: height?,
    })
}

fn corner(r: &mut Reader<'_>) -> Option<Opening> {
    let from = measure(r, "from", "the width of the way before the corner");
    let to = measure(r, "to", "the width of the way after it");
    let height = measure(r, "height", "the clear height");
    Some(Opening::Corner {
        from_mm: from?,
        to_mm: to?,
        height_mm: height?,
    })
}

fn measure(r: &mut Reader<'_>, key: &'static str, what: &str) -> Option<f64> {
    r.need(key, what)?.length(WAY)
}
