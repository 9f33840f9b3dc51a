//! `[lift]`: the people and what helps them.

use crate::geom::Point;
use crate::job::given::Given;
use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;
use crate::job::words::short;
use crate::job::{Aid, Lift};
use crate::tables::region::RegionCode;
use crate::units::Mass;

const AIDS: [(&str, Aid); 4] = [
    ("none", Aid::None),
    ("trolley", Aid::Trolley),
    ("vacuum lifter", Aid::VacuumLifter),
    ("gantry", Aid::Gantry),
];
/// The most people that are reckoned with (judgement: more than four hardly work as a team).
const MOST_PEOPLE: u8 = 20;
/// What one person may be said to lift, kg (judgement).
const EACH_KG: Limits = from_to(1.0, 80.0);
/// Height of the hands, mm: a person's reach (judgement).
const HANDS_MM: Limits = from_to(0.0, 1750.0);
/// How far the stone may be said to be carried, mm (judgement: a kilometre).
const CARRY_MM: Limits = from_to(0.0, 1e6);
/// Where a trestle may stand, mm from the slab's end (judgement).
const TRESTLE_MM: Limits = from_to(0.0, 10_000.0);

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
    let trestles = r.get("trestles").and_then(|given| trestles(&given));
    Lift {
        people,
        each: each.unwrap_or_default(),
        each_is_guideline,
        stand: stand.unwrap_or_default(),
        trestles: trestles.unwrap_or_default(),
        hands_mm: r.length_or(
            "hands",
            HANDS_MM,
            750.0,
            "hands at the height that the lifting equation takes as the best",
        ),
        carry_mm: r.length_or(
            "carry",
            CARRY_MM,
            10_000.0,
            "the farthest that is carried without a rest, HSE L23",
        ),
        aid: r.choice_or(
            "aid",
            &AIDS,
            Aid::None,
            "no lifting aid was said to be at hand",
        ),
    }
}

fn people(r: &mut Reader<'_>) -> usize {
    let Some(given) = r.get("people") else {
        r.ledger
            .assume(r.key("people"), "1", "nobody else was said to be there");
        return 1;
    };
    let people = given.whole(1, MOST_PEOPLE.into());
    people.and_then(|p| usize::try_from(p).ok()).unwrap_or(1)
}

fn each(given: &Given<'_>, people: usize) -> Option<Vec<Mass>> {
    if !given.is_list() {
        return Some(vec![given.mass(EACH_KG)?; people]);
    }
    let list = given.list(1, MOST_PEOPLE.into())?;
    if list.len() != people {
        let message = format!("has {} entries for {people} people", list.len());
        return given.fault(
            &message,
            "give one entry for each of lift.people, or one mass for all",
        );
    }
    let masses: Vec<_> = list.iter().map(|m| m.mass(EACH_KG)).collect();
    masses.into_iter().collect()
}

/// The guideline of the region, which is a reference for good conditions and not a safe load for
/// everybody.
fn guideline(r: &Reader<'_>, region: RegionCode) -> Mass {
    let lift = &region.record().hand_lift;
    let value = format!("{} kg", short(lift.one_person_kg));
    let why = format!("guideline for good conditions: {}", lift.source.cite());
    r.ledger.assume(r.key("each"), value, why);
    Mass::from_kg(lift.one_person_kg)
}

/// Two places along the slab, the nearer first.
fn trestles(given: &Given<'_>) -> Option<Vec<f64>> {
    let places = given.list(2, 2)?;
    let places: Vec<Option<f64>> = places.iter().map(|p| p.length(TRESTLE_MM)).collect();
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
    let points = given.points(1, MOST_PEOPLE.into())?;
    if points.len() != people {
        let message = format!("has {} places for {people} people", points.len());
        return given.fault(
            &message,
            "give one place for each of lift.people, or leave it out",
        );
    }
    Some(points)
}
