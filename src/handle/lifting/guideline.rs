//! Published guideline weights for lifting by hand, and what a team may count on.
//!
//! None of them is a limit below which lifting is safe; the sheet says so wherever it prints one.

use serde::Serialize;

use crate::tables::Source;
use crate::tables::documents::L23_FIGURES;
use crate::tables::region::RegionCode;
use crate::units::Mass;

/// The largest team that is likely to lift as one (HSE L23, paragraphs 119 and 120).
pub const LARGEST_TEAM: usize = 4;

/// What one person is taken to lift in good conditions, and who says so.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Guideline {
    /// Guideline weight for one person: close to the body, about waist height, not turning.
    #[serde(rename = "each_kg")]
    pub each: Mass,
    /// The document.
    pub source: Source,
}

impl Guideline {
    /// The same with the hands at a height in mm, where the region's document gives one.
    ///
    /// Heights of the zones are those of a person of middling size (judgement).
    #[must_use]
    pub fn at_height(&self, hands_mm: f64) -> Mass {
        if self.source != L23_FIGURES {
            return self.each;
        }
        let mut zones = ZONES_FROM_MM.iter().zip(&L23_TABLE);
        let zone = zones.find(|(from, _)| hands_mm >= **from);
        // The stricter column is taken where the guideline is below the other's.
        let strict = self.each.kg() < L23_TABLE[2].men_kg.0;
        zone.map_or(self.each, |(_, zone)| {
            let (men, women) = (zone.men_kg.0, zone.women_kg.0);
            Mass::from_kg(if strict { women } else { men })
        })
    }
}

/// Where each height of [`L23_TABLE`] begins, mm above the floor: shoulder, elbow, knuckle, lower
/// leg, floor (judgement: a person of middling size).
const ZONES_FROM_MM: [f64; 5] = [1400.0, 1050.0, 730.0, 350.0, 0.0];

/// The farthest a load is carried against the body without a rest, mm.
pub const CARRY_MM: f64 = 10_000.0;

/// The guideline of a region, from its record.
#[must_use]
pub fn guideline(region: RegionCode) -> Guideline {
    let rule = &region.record().hand_lift;
    Guideline {
        each: Mass::from_kg(rule.one_person_kg),
        source: *rule.source,
    }
}

/// The share of the sum of their own limits that people lifting together may count on.
///
/// Nothing for no people and for more than [`LARGEST_TEAM`]. The document gives two and three
/// people; four are taken to do no better than three (judgement).
#[must_use]
pub const fn team_factor(people: usize) -> Option<f64> {
    match people {
        1 => Some(1.0),
        2 => Some(2.0 / 3.0),
        3 | LARGEST_TEAM => Some(0.5),
        _ => None,
    }
}

/// One height of the hands in the guideline figures of HSE L23, kg.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Height {
    /// Where the hands are.
    pub hands: &'static str,
    /// Men: load close to the body, load at arm's length.
    pub men_kg: (f64, f64),
    /// Women: load close to the body, load at arm's length.
    pub women_kg: (f64, f64),
}

/// The guideline figures of HSE L23 and INDG143, from the highest hands to the lowest.
pub const L23_TABLE: [Height; 5] = [
    height("above the shoulder", (10.0, 5.0), (7.0, 3.0)),
    height("shoulder to elbow", (20.0, 10.0), (13.0, 7.0)),
    height("elbow to knuckle", (25.0, 15.0), (16.0, 10.0)),
    height("knuckle to lower leg", (20.0, 10.0), (13.0, 7.0)),
    height("below the lower leg", (10.0, 5.0), (7.0, 3.0)),
];

const fn height(hands: &'static str, men_kg: (f64, f64), women_kg: (f64, f64)) -> Height {
    Height {
        hands,
        men_kg,
        women_kg,
    }
}

/// Least force to push a load on wheels over a level floor, as a share of its weight.
pub const LEVEL_PUSH: f64 = 0.02;
