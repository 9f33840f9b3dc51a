//! Slabs made in a works.

use super::sources as from;
use crate::tables::stone::{Figure, Spread, StoneKind, StoneRecord};

/// Factor of kinds without a row.
const HIGHEST: Figure = Figure {
    value: 8.0,
    source: &from::HIGHEST_FACTOR,
};

/// Terrazzo. Resin-bound terrazzo may be engineered stone in law: ask what binds it.
pub static TERRAZZO: StoneRecord = StoneRecord {
    kind: StoneKind::Terrazzo,
    density_kg_m3: Spread::middle(2300.0, 2500.0, &from::MADE_DENSITY),
    strength_mpa: Figure {
        value: 4.0,
        source: &from::TERRAZZO_STRENGTH,
    },
    safety_factor: HIGHEST,
    silica_share: Spread::middle(0.0, 0.70, &from::TERRAZZO_SILICA),
    engineered: false,
    asbestos_question: false,
};

/// Engineered stone.
pub static ENGINEERED_STONE: StoneRecord = StoneRecord {
    kind: StoneKind::EngineeredStone,
    density_kg_m3: Spread::middle(2320.0, 2480.0, &from::RESIN_QUARTZ_PRODUCER),
    strength_mpa: Figure {
        value: 42.0,
        source: &from::RESIN_QUARTZ_PRODUCER,
    },
    safety_factor: HIGHEST,
    silica_share: Spread::given(
        [0.01, 0.90, 0.97],
        &from::ENGINEERED_SILICA,
        &from::ENGINEERED_LIKELY,
    ),
    engineered: true,
    asbestos_question: false,
};

/// Porcelain slab.
pub static PORCELAIN: StoneRecord = StoneRecord {
    kind: StoneKind::Porcelain,
    density_kg_m3: Spread::middle(2400.0, 2600.0, &from::MADE_DENSITY),
    strength_mpa: Figure {
        value: 35.0,
        source: &from::PORCELAIN_STRENGTH,
    },
    safety_factor: HIGHEST,
    silica_share: Spread::given(
        [0.14, 0.21, 0.26],
        &from::PORCELAIN_SILICA,
        &from::PORCELAIN_SILICA,
    ),
    engineered: false,
    asbestos_question: false,
};

/// Sintered slab: no figure of its own was found.
pub static SINTERED_STONE: StoneRecord = StoneRecord {
    kind: StoneKind::SinteredStone,
    density_kg_m3: Spread::middle(2400.0, 2600.0, &from::SINTERED_AS_PORCELAIN),
    strength_mpa: Figure {
        value: 35.0,
        source: &from::SINTERED_AS_PORCELAIN,
    },
    safety_factor: HIGHEST,
    silica_share: Spread::given(
        [0.14, 0.21, 0.26],
        &from::SINTERED_AS_PORCELAIN,
        &from::SINTERED_AS_PORCELAIN,
    ),
    engineered: false,
    asbestos_question: false,
};
