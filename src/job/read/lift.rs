//! `[lift]`: the people and what helps them.

use crate::geom::Point;
use crate::job::given::Given;
use crate::job::ledger::short;
use crate::job::quantity::{Limits, from_to};
use crate::job::reader::Reader;
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
const MOST_PEOPLE: usize = 20;
/// What one person may be said to lift, kg (judgement).
const EACH_KG: Limits = from_to(1.0, 80.0);
/// One man, load close, between elbow and knuckle, kg (HSE L23 and INDG143, as quoted).
const GUIDELINE_KG: f64 = 25.0;
/// Load constant of the NIOSH lifting equation, kg (NIOSH 94-110, rev. 9/2021).
const GUIDELINE_US_KG: f64 = 23.0;

/// Reads the lifting.
pub(super) fn read(r: &mut Reader<'_>, region: RegionCode) -> Lift {
    let people = people(r);
    let each_given = r.get("each");
    let each_is_guideline = each_given.is_none();
    let each = match each_given {
        Some(given) => each(&given, people),
        None => guideline(r, region).map(|mass| vec![mass; people]),
    };
    let stand = r.get("stand").and_then(|given| stand(&given, people));
    Lift {
        people,
        each: each.unwrap_or_default(),
        each_is_guideline,
        stand: stand.unwrap_or_default(),
        aid: r.choice_or("aid", &AIDS, Aid::None, "no lifting aid was said to be at hand"),
    }
}

fn people(r: &mut Reader<'_>) -> usize {
    let Some(given) = r.get("people") else {
        r.ledger.assume(r.key("people"), "1", "nobody else was said to be there");
        return 1;
    };
    let people = given.whole(1, MOST_PEOPLE as i64);
    people.and_then(|p| usize::try_from(p).ok()).unwrap_or(1)
}

fn each(given: &Given<'_>, people: usize) -> Option<Vec<Mass>> {
    if !given.is_list() {
        return Some(vec![given.mass(EACH_KG)?; people]);
    }
    let list = given.list(1, MOST_PEOPLE)?;
    if list.len() != people {
        let message = format!("has {} entries for {people} people", list.len());
        return given.fault(&message, "give one entry for each of lift.people, or one mass for all");
    }
    let masses: Vec<_> = list.iter().map(|m| m.mass(EACH_KG)).collect();
    masses.into_iter().collect()
}

/// The guideline of the region, which is an upper reference and not a safe load for everybody.
fn guideline(r: &Reader<'_>, region: RegionCode) -> Option<Mass> {
    let (kg, why) = match region {
        RegionCode::Us | RegionCode::UsCa => (
            GUIDELINE_US_KG,
            "load constant of the NIOSH lifting equation (94-110, rev. 2021): ideal conditions only",
        ),
        _ => (
            GUIDELINE_KG,
            "HSE L23 guideline for a man, load close to the body at elbow to knuckle height; 16 kg for a woman",
        ),
    };
    r.ledger.assume(r.key("each"), format!("{} kg", short(kg)), why);
    Some(Mass::from_kg(kg))
}

fn stand(given: &Given<'_>, people: usize) -> Option<Vec<Point>> {
    let points = given.points(1, MOST_PEOPLE)?;
    if points.len() != people {
        let message = format!("has {} places for {people} people", points.len());
        return given.fault(&message, "give one place for each of lift.people, or leave it out");
    }
    Some(points)
}
