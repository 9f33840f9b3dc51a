//! Quebec.

use super::base::{BORROWED, half_nrr, niosh_lift, us_masks};
use crate::tables::region::{RegionRecord, Rule, SilicaLimit, Standing};
use crate::tables::{Source, Sure, supply};

/// Quebec limit.
pub static SILICA: Source = Source::new(
    "silica limit 0.05 mg/m³, 8 hours, since 28 April 2024",
    "RSST (regulation on occupational health and safety)",
    "",
    2024,
    Sure::Read,
);

/// The rules of this region.
pub static RECORD: RegionRecord = RegionRecord {
    code: "ca-qc",
    name: "Quebec",
    silica: SilicaLimit::own(0.05, &SILICA),
    masks: us_masks(Standing::Borrowed),
    hand_lift: niosh_lift(Standing::Borrowed),
    supply: Rule {
        words: supply::GFCI_A,
        standing: Standing::Borrowed,
        source: &supply::GFCI,
    },
    hearing: half_nrr(Standing::Borrowed),
    authority: "the CNESST",
    ..BORROWED
};
