//! United States.

use super::base::AMERICAN;
use crate::tables::region::RegionRecord;

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "us",
    name: "United States",
    authority: "OSHA, or your state's plan",
    ..AMERICAN
};
