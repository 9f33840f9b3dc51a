//! Netherlands.

use super::base::EUROPEAN;
use crate::tables::region::{RegionRecord, SilicaLimit};
use crate::tables::{Source, Sure};

/// Dutch limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.075 mg/m³, 8 hours",
    "national list of limit values",
    "",
    0,
    Sure::Quoted,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "nl",
    name: "Netherlands",
    silica: SilicaLimit::own(0.075, &SILICA),
    authority: "the Dutch labour inspectorate",
    ..EUROPEAN
};
