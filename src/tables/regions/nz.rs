//! New Zealand.

use super::base::BORROWED;
use crate::tables::region::{RegionRecord, SilicaLimit};
use crate::tables::{Source, Sure};

/// New Zealand limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.025 mg/m³, 8 hours, advisory",
    "WorkSafe NZ, workplace exposure standards",
    "",
    2023,
    Sure::Read,
);

/// The limit, which a region without one of its own may borrow.
pub const LIMIT: SilicaLimit = SilicaLimit::own(0.025, &SILICA);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "nz",
    name: "New Zealand",
    silica: LIMIT,
    authority: "WorkSafe New Zealand",
    ..BORROWED
};
