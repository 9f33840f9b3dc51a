//! What is carried away: slurry in buckets or dust in bags.

use serde::Serialize;

use super::Work;
use super::notes::Notes;
use super::silica::SilicaReport;
use crate::diag::{Phrase, number};
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::dust_control::Control;
use crate::tables::record::{Example, Record};

/// The record.
pub static RECORD: Record = Record {
    id: "slurry-clean-up",
    title: "Slurry is collected before it dries",
    what: "The water and the stone in it: litres a minute times the minutes of cutting, and the stone \
           of the kerf.",
    why: "Dried slurry is the dust that was kept down. In a drain it sets like mortar.",
    what_to_do: "Sheet under the trestles, scrape and wet-vacuum while wet, let it settle in buckets, \
                 pour the clear water off, take the stone away in a closed bag.",
    sources: &[&doc::NIOSH_WATER, &doc::COMMON_PRACTICE],
    formula: "slurry, kg = litres a minute × minutes + stone, kg; buckets = litres / 10, bags = kg / \
              5, each counted up",
    example: Some(example),
    phrases: &[SLURRY, BAG],
    ..Record::HAZARD
};

const SLURRY: Phrase = Phrase {
    id: "slurry-clean-up",
    title: "slurry is collected before it dries: about {buckets} buckets",
    detail: "About {kilos} kg: {water} l of water ({flow} l/min while the disc cuts) and {stone} g of \
             stone, {buckets} buckets of {bucket} l. Dry, it is the dust you kept down. Sheet under \
             the trestles, scrape and wet-vacuum while wet, rinse clothes, boots and machine, let the \
             rest settle; none into drains.",
};
const BAG: Phrase = Phrase {
    id: "dust-bags",
    title: "the dust in the extractor: about {bags} bags",
    detail: "About {stone} g of stone if the shroud caught all of it, {bags} bags of {bag} kg at most. \
             Change the bag with the respirator on, outdoors, closed before it leaves the extractor, \
             never shaken out or emptied for another use.",
};

/// A bucket as it is carried, litres (judgement: twelve hold ten without spilling).
pub const BUCKET_L: f64 = 10.0;
/// Stone in one bag of an extractor, kg (judgement: heavier bags tear when they are lifted out).
pub const BAG_KG: f64 = 5.0;

fn example() -> Example {
    let caught = slurry(0.5, 60.0, 810.0, 2700.0);
    Example {
        given: "60 minutes at 0.5 litres a minute, 810 g of stone of 2700 kg/m³".into(),
        result: match caught {
            Caught::Slurry {
                water_l,
                slurry_kg,
                slurry_l,
                buckets,
            } => format!(
                "{water_l:.0} l of water, {slurry_kg:.1} kg and {slurry_l:.1} l of slurry, \
                 {buckets:.0} buckets"
            ),
            Caught::Bags { .. } | Caught::Nothing => String::new(),
        },
    }
}

/// What holds the stone afterwards.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Caught {
    /// Slurry in buckets.
    Slurry {
        /// Water fed to the disc, litres.
        water_l: f64,
        /// Water and stone, kg.
        slurry_kg: f64,
        /// Water and stone, litres.
        slurry_l: f64,
        /// Buckets of [`BUCKET_L`].
        buckets: f64,
    },
    /// Dust in the extractor's bags.
    Bags {
        /// Bags of [`BAG_KG`].
        bags: f64,
    },
    /// Nothing holds it.
    Nothing,
}

/// Slurry of a flow in litres a minute over minutes, with stone in g and its density in kg/m³.
///
/// What evaporates, splashes away or stays on the floor is not taken off.
#[must_use]
pub fn slurry(flow_l_min: f64, minutes: f64, stone_g: f64, density_kg_m3: f64) -> Caught {
    let water_l = flow_l_min * minutes;
    // A litre of water is a kilogram; 1000 g to a kilogram; g over kg/m³ is litres.
    let slurry_l = water_l + stone_g / density_kg_m3;
    Caught::Slurry {
        water_l,
        slurry_kg: water_l + stone_g / 1000.0,
        slurry_l,
        buckets: (slurry_l / BUCKET_L).ceil(),
    }
}

/// What must be carried away.
pub(super) fn assess(
    job: &Job,
    work: &Work,
    control: Control,
    silica: &SilicaReport,
    notes: &mut Notes,
) -> Caught {
    let (stone, density) = (silica.dust_g.likely, job.stone.density.likely);
    let caught = match (job.dust.method, control) {
        (DustMethod::Water, _) => {
            slurry(job.dust.water_l_min, work.trigger_minutes, stone, density)
        }
        (_, Control::Extraction) => Caught::Bags {
            bags: (stone / 1000.0 / BAG_KG).ceil(),
        },
        _ => Caught::Nothing,
    };
    say(&caught, job.dust.water_l_min, stone, notes);
    caught
}

fn say(caught: &Caught, flow_l_min: f64, stone_g: f64, notes: &mut Notes) {
    let stone = ("stone", number(stone_g, 0));
    match *caught {
        Caught::Slurry {
            water_l,
            slurry_kg,
            buckets,
            ..
        } => {
            let values = [
                stone,
                ("kilos", number(slurry_kg, 1)),
                ("water", number(water_l, 1)),
                ("flow", number(flow_l_min, 1)),
                ("buckets", number(buckets, 0)),
                ("bucket", number(BUCKET_L, 0)),
            ];
            notes.caution_on(&SLURRY, &doc::COMMON_PRACTICE, &values);
        }
        Caught::Bags { bags } => {
            let values = [stone, ("bags", number(bags, 0)), ("bag", number(BAG_KG, 0))];
            notes.caution_on(&BAG, &doc::COMMON_PRACTICE, &values);
        }
        Caught::Nothing => {}
    }
}
