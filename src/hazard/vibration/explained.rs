//! The formulas of vibration, explained.

use super::{a8, minutes_to, points};
use crate::tables::documents as doc;
use crate::tables::record::{Example, Record};

/// Daily exposure.
pub static A8: Record = Record {
    id: "a8",
    title: "Daily vibration exposure A(8)",
    what: "The vibration that, over 8 hours, would carry the same energy as the day's machines.",
    why: "Action and limit values are values of A(8): a strong machine for minutes can equal a weak \
          one for hours.",
    what_to_do: "Reckon with a + K; 40 % of a where the maker states no K. Trigger time only, not the \
                 time at work.",
    sources: &[&doc::EU_VIBRATION, &doc::HSE_UNCERTAINTY],
    formula: "A(8) = √(Σ a²·T / 8 h), m/s²",
    example: Some(day),
    ..Record::FORMULA
};
/// Exposure points.
pub static POINTS: Record = Record {
    id: "vibration-points",
    title: "Vibration exposure points",
    what: "A(8) squared and scaled, so that the machines of a day can be added in the head.",
    why: "100 points are the action value, 400 the limit value.",
    what_to_do: "Add the points of every machine used that day.",
    sources: &[&doc::HSE_POINTS],
    formula: "points = 2·a²·T, a in m/s², T in hours",
    example: Some(reckoner),
    ..Record::FORMULA
};
/// Time to a value.
pub static TIME: Record = Record {
    id: "vibration-time",
    title: "Minutes with a machine until a vibration value is reached",
    what: "How long one machine may be held in a day until A(8) reaches the action or the limit value.",
    why: "It tells how the work must be split over people or days.",
    what_to_do: "Never round it up. Other machines of the day take their share of it.",
    sources: &[&doc::EU_VIBRATION, &doc::HSE_TABLE_1],
    formula: "T = 480 min × (value / a)²",
    example: Some(grinder),
    ..Record::FORMULA
};

fn day() -> Example {
    let spells = [(4.6, 2.0), (6.0, 1.0), (3.6, 2.0)];
    Example {
        given: "4.6 m/s² for 2 h, 6.0 for 1 h, 3.6 for 2 h (ISO 5349-2, E.3)".into(),
        result: format!("A(8) = {:.1} m/s²", a8(&spells)),
    }
}

fn reckoner() -> Example {
    Example {
        given: "5 m/s² for 3 h (HSE ready-reckoner)".into(),
        result: format!("{:.0} points", points(5.0, 3.0)),
    }
}

fn grinder() -> Example {
    let to = |value| minutes_to(9.0, value).unwrap_or(0.0).floor();
    Example {
        given: "a grinder on stone, 9 m/s² (HSE stonemasonry Table 1)".into(),
        result: format!(
            "action value after {} min, limit after {} min",
            to(2.5),
            to(5.0)
        ),
    }
}
