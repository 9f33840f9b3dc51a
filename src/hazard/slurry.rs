//! What is carried away: slurry in buckets or dust in bags.

use serde::Serialize;

use super::Work;
use super::moment::Moment;
use super::notes::Notes;
use super::silica::SilicaReport;
use crate::diag::{Harm, Phrase};
use crate::job::{DustMethod, Job};
use crate::tables::documents as doc;
use crate::tables::dust_control::Control;
use crate::tables::record::{Example, Record};
use crate::words::{Unit, Value};

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

const SLURRY: Phrase = Phrase::of_every_job("slurry-clean-up").harm(Harm::KillsLater);
const BAG: Phrase = Phrase::of_every_job("dust-bags").harm(Harm::KillsLater);

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

impl Caught {
    /// Which of two message ids says it: of slurry, or of dust that is not wetted.
    #[must_use]
    pub const fn either(&self, slurry: &'static str, dust: &'static str) -> &'static str {
        match self {
            Self::Slurry { .. } => slurry,
            Self::Bags { .. } | Self::Nothing => dust,
        }
    }
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
    let stone = ("stone", Value::of(stone_g, Unit::Gram).decimals(0));
    match *caught {
        Caught::Slurry {
            water_l,
            slurry_kg,
            buckets,
            ..
        } => {
            let values = [
                stone,
                ("kilos", Value::of(slurry_kg, Unit::Mass).up()),
                ("water", Value::number(water_l, 1)),
                ("flow", Value::number(flow_l_min, 1)),
                ("buckets", Value::number(buckets, 0)),
                ("bucket", Value::number(BUCKET_L, 0)),
            ];
            notes.check(
                Moment::After,
                &SLURRY,
                &doc::COMMON_PRACTICE,
                values.clone(),
            );
        }
        Caught::Bags { bags } => {
            let values = [
                stone,
                ("bags", Value::number(bags, 0)),
                ("bag", Value::of(BAG_KG, Unit::Mass).decimals(0)),
            ];
            notes.check(Moment::After, &BAG, &doc::COMMON_PRACTICE, values.clone());
        }
        Caught::Nothing => {}
    }
}
