//! Norway.

use super::base::EUROPEAN;
use crate::tables::region::{RegionRecord, SilicaLimit};
use crate::tables::{Source, Sure};

/// Norwegian limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, 8 hours: halved in July 2021, the number is from memory",
    "Norwegian regulation on action and limit values",
    "",
    2021,
    Sure::Memory,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "no",
    name: "Norway",
    silica: SilicaLimit::own(0.05, &SILICA),
    authority: "the Norwegian labour inspection authority",
    ..EUROPEAN
};
