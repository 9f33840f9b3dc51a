//! `[lift]`: the people and what helps them.

use crate::geom::Point;
use crate::job::given::Given;
use crate::job::reader::Reader;
use crate::job::words::short;
use crate::job::{Aid, Lift, Trolley};
use crate::tables::region::RegionCode;
use crate::units::Mass;

/// Reads the lifting.
pub(super) fn read(r: &mut Reader<'_>, region: RegionCode) -> Lift {
    let people = people(r);
    let each_given = r.get("each");
    let each_is_guideline = each_given.is_none();
    let each = match each_given {
        Some(given) => each(&given, people),
        None => Some(vec![guideline(r, region); people]),
    };
    let stand = r.get("stand").and_then(|given| stand(&given, people));
    let aid = r.word("aid", Aid::None);
    let trestles = r.get("trestles").and_then(|given| trestles(&given));
    Lift {
        people,
        each: each.unwrap_or_default(),
        each_is_guideline,
        stand: stand.unwrap_or_default(),
        trestles: trestles.unwrap_or_default(),
        hands_mm: r.length("hands"),
        carry_mm: r.length("carry"),
        aid,
        rated: rated(r, aid),
        trolley: trolley(r, aid),
        check_call: r.text("check_call"),
    }
}

/// The load marked on the aid.
fn rated(r: &mut Reader<'_>, aid: Aid) -> Option<Mass> {
    let given = r.get("rated")?;
    if aid == Aid::None {
        let message = format!("{} is given, but lift.aid names no aid", given.key);
        let hint = "name the aid, or leave it out";
        r.ledger.remark(&given.key, given.span, message, hint);
    }
    given.mass()
}

/// The trolley's sizes; they are assumed only when there is one.
fn trolley(r: &mut Reader<'_>, aid: Aid) -> Trolley {
    let size = |key| match aid {
        Aid::Trolley => r.length(key),
        Aid::None | Aid::VacuumLifter | Aid::Gantry => r.usual_unless(key),
    };
    Trolley {
        track_mm: size("trolley_track"),
        deck_mm: size("trolley_deck"),
    }
}

fn people(r: &mut Reader<'_>) -> usize {
    let Some(given) = r.get("people") else {
        r.assume("people", "1");
        return 1;
    };
    let people = given.whole();
    people.and_then(|p| usize::try_from(p).ok()).unwrap_or(1)
}

fn each(given: &Given<'_>, people: usize) -> Option<Vec<Mass>> {
    if !given.is_list() {
        return Some(vec![given.mass()?; people]);
    }
    let list = given.list()?;
    if list.len() != people {
        let message = format!("has {} entries for {people} people", list.len());
        return given.fault(
            &message,
            "give one entry for each of lift.people, or one mass for all",
        );
    }
    let masses: Vec<_> = list.iter().map(Given::mass).collect();
    masses.into_iter().collect()
}

/// The guideline of the region, which is a reference for good conditions and not a safe load for
/// everybody.
fn guideline(r: &Reader<'_>, region: RegionCode) -> Mass {
    let lift = &region.record().hand_lift;
    let value = format!("{} kg", short(lift.one_person_kg));
    let why = format!("guideline for good conditions: {}", lift.source.cite());
    r.assume_because("each", value, &why);
    Mass::from_kg(lift.one_person_kg)
}

/// Two places along the slab, the nearer first.
fn trestles(given: &Given<'_>) -> Option<Vec<f64>> {
    let places = given.list()?;
    let places: Vec<Option<f64>> = places.iter().map(Given::length).collect();
    let mut places: Vec<f64> = places.into_iter().collect::<Option<_>>()?;
    places.sort_by(f64::total_cmp);
    if places.windows(2).any(|w| w[1] - w[0] < APART_MM) {
        return given.fault(
            "puts both trestles in one place",
            "give two distances from the end of the slab along its length",
        );
    }
    Some(places)
}

/// Trestles nearer than this to each other are one, mm (judgement: the width of a trestle).
const APART_MM: f64 = 50.0;

fn stand(given: &Given<'_>, people: usize) -> Option<Vec<Point>> {
    let points = given.points()?;
    if points.len() != people {
        let message = format!("has {} places for {people} people", points.len());
        return given.fault(
            &message,
            "give one place for each of lift.people, or leave it out",
        );
    }
    Some(points)
}
