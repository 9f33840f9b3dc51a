//! Germany.

use super::base::EUROPEAN;
use crate::tables::region::{RegionRecord, SilicaLimit};
use crate::tables::{Source, Sure};

/// German assessment criterion.
pub static SILICA: Source = Source::new(
    "silica assessment criterion 0.05 mg/m³, 8 hours",
    "BMAS notice; TRGS 559",
    "",
    2016,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "de",
    name: "Germany",
    silica: SilicaLimit::own(0.05, &SILICA),
    authority: "the Berufsgenossenschaft or the labour inspectorate of your state",
    ..EUROPEAN
};
