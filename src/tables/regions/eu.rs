//! European Union.

use super::base::EUROPEAN;
use crate::tables::region::RegionRecord;

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "eu",
    name: "European Union",
    authority: "the labour inspectorate of your country",
    ..EUROPEAN
};
