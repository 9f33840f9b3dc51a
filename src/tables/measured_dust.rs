//! Quartz in the air as measured in studies. Quoted as measured: none of it predicts this job.

use serde::Serialize;

use super::{Source, Sure};

/// One measured row.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct MeasuredDust {
    /// Tool and stone.
    pub work: &'static str,
    /// How the dust was held down.
    pub control: &'static str,
    /// What was found, in the study's own measure.
    pub found: &'static str,
    /// The study.
    pub source: &'static Source,
}

/// Hand saw in engineered quartz.
pub static COOPER_2015: Source = Source::new(
    "quartz in the air beside a hand saw, tasks of 30 minutes",
    "Cooper, Johnson, Phillips, Ann Occup Hyg 59",
    "p. 51",
    2015,
    Sure::Read,
);
/// Grinder on concrete.
pub static AKBAR_2007: Source = Source::new(
    "quartz in the air beside a grinder",
    "Akbar-Khanzadeh et al., JOEH 4",
    "p. 770",
    2007,
    Sure::Read,
);
/// Shrouds on sandstone.
pub static HEALY_2014: Source = Source::new(
    "what shrouds hold back",
    "Healy et al., Ann Occup Hyg 58",
    "p. 1155",
    2014,
    Sure::Read,
);

const fn row(
    work: &'static str,
    control: &'static str,
    found: &'static str,
    source: &'static Source,
) -> MeasuredDust {
    MeasuredDust {
        work,
        control,
        found,
        source,
    }
}

const QUARTZ_SAW: &str = "hand saw in engineered quartz, 30 minutes";
const CONCRETE_GRINDER: &str = "grinder on concrete";

/// Every measured row.
pub static MEASURED_DUST: [MeasuredDust; 7] = [
    row(QUARTZ_SAW, "dry", "44.6 mg/m³", &COOPER_2015),
    row(QUARTZ_SAW, "wet blade", "1.87 to 4.85 mg/m³", &COOPER_2015),
    row(
        QUARTZ_SAW,
        "wet blade and extraction",
        "below 0.12 to 0.20 mg/m³",
        &COOPER_2015,
    ),
    row(CONCRETE_GRINDER, "dry", "61.7 mg/m³", &AKBAR_2007),
    row(CONCRETE_GRINDER, "wet", "0.896 mg/m³", &AKBAR_2007),
    row(CONCRETE_GRINDER, "extraction", "0.155 mg/m³", &AKBAR_2007),
    row(
        "grinder on sandstone",
        "shroud",
        "99 % less respirable silica than without",
        &HEALY_2014,
    ),
];
