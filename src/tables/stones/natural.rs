//! Stone out of the ground.

use super::sources as from;
use crate::tables::stone::{Figure, Spread, StoneKind, StoneRecord};

/// A natural stone that raises no asbestos question.
const fn natural(
    kind: StoneKind,
    density_kg_m3: Spread,
    strength_mpa: Figure,
    safety_factor: Figure,
    silica_share: Spread,
) -> StoneRecord {
    StoneRecord {
        kind,
        density_kg_m3,
        strength_mpa,
        safety_factor,
        silica_share,
        engineered: false,
        asbestos_question: false,
    }
}

/// Strength of rocks that are sold as granite and have no minimum of their own.
const AS_GRANITE: Figure = Figure {
    value: 8.27,
    source: &from::AS_GRANITE,
};
/// Factor of rocks that are sold as granite: the specification that gives their strength is
/// granite's.
const FACTOR_AS_GRANITE: Figure = Figure {
    value: 3.0,
    source: &from::FACTOR_AS_GRANITE,
};
/// Factor of kinds without a row.
const HIGHEST: Figure = Figure {
    value: 8.0,
    source: &from::HIGHEST_FACTOR,
};

/// Granite.
pub static GRANITE: StoneRecord = natural(
    StoneKind::Granite,
    Spread::middle(2400.0, 3000.0, &from::CEN_DENSITY),
    Figure {
        value: 8.27,
        source: &from::ASTM_C615,
    },
    Figure {
        value: 3.0,
        source: &from::BEALL,
    },
    Spread::given([0.20, 0.30, 0.60], &from::GRANITE_SILICA, &from::HSG201),
);

/// Gabbro.
pub static GABBRO: StoneRecord = natural(
    StoneKind::Gabbro,
    Spread::middle(2700.0, 3300.0, &from::TRADE_DENSITY),
    AS_GRANITE,
    FACTOR_AS_GRANITE,
    Spread::middle(0.0, 0.05, &from::GABBRO_SILICA),
);

/// Basalt.
pub static BASALT: StoneRecord = natural(
    StoneKind::Basalt,
    Spread::middle(2550.0, 3000.0, &from::CEN_DENSITY),
    AS_GRANITE,
    FACTOR_AS_GRANITE,
    Spread::middle(0.0, 0.05, &from::HSG201),
);

/// Gneiss.
pub static GNEISS: StoneRecord = natural(
    StoneKind::Gneiss,
    Spread::middle(2400.0, 2700.0, &from::CEN_DENSITY),
    AS_GRANITE,
    FACTOR_AS_GRANITE,
    Spread::given(
        [0.20, 0.30, 0.60],
        &from::GNEISS_SILICA,
        &from::GNEISS_SILICA,
    ),
);

/// Marble. Its veins can hold far more silica than the stone around them.
pub static MARBLE: StoneRecord = natural(
    StoneKind::Marble,
    Spread::middle(2600.0, 2900.0, &from::CEN_DENSITY),
    Figure {
        value: 6.89,
        source: &from::ASTM_C503,
    },
    Figure {
        value: 5.0,
        source: &from::BEALL,
    },
    Spread::middle(0.0, 0.07, &from::SWA_SILICA),
);

/// Limestone.
pub static LIMESTONE: StoneRecord = natural(
    StoneKind::Limestone,
    Spread::middle(2300.0, 2700.0, &from::TRADE_DENSITY),
    Figure {
        value: 3.45,
        source: &from::ASTM_C568,
    },
    Figure {
        value: 8.0,
        source: &from::BEALL,
    },
    Spread::given([0.0, 0.02, 0.05], &from::HSG201, &from::HSG201),
);

/// Travertine.
pub static TRAVERTINE: StoneRecord = natural(
    StoneKind::Travertine,
    Spread::middle(2305.0, 2700.0, &from::TRAVERTINE_DENSITY),
    Figure {
        value: 4.8,
        source: &from::ASTM_C1527,
    },
    HIGHEST,
    Spread::given(
        [0.0, 0.02, 0.05],
        &from::TRAVERTINE_SILICA,
        &from::TRAVERTINE_SILICA,
    ),
);

/// Sandstone.
pub static SANDSTONE: StoneRecord = natural(
    StoneKind::Sandstone,
    Spread::middle(1900.0, 2700.0, &from::CEN_DENSITY),
    Figure {
        value: 2.41,
        source: &from::ASTM_C616,
    },
    HIGHEST,
    Spread::middle(0.52, 0.95, &from::SWA_SILICA),
);

/// Quartzite.
pub static QUARTZITE: StoneRecord = natural(
    StoneKind::Quartzite,
    Spread::middle(2600.0, 2800.0, &from::TRADE_DENSITY),
    Figure {
        value: 6.89,
        source: &from::QUARTZITE_STRENGTH,
    },
    HIGHEST,
    Spread::middle(0.70, 1.0, &from::QUARTZITE_SILICA),
);

/// Slate.
pub static SLATE: StoneRecord = natural(
    StoneKind::Slate,
    Spread::middle(2600.0, 3000.0, &from::CEN_DENSITY),
    Figure {
        value: 49.64,
        source: &from::ASTM_C629,
    },
    HIGHEST,
    Spread::middle(0.20, 0.40, &from::HSG201),
);

/// Soapstone.
pub static SOAPSTONE: StoneRecord = StoneRecord {
    asbestos_question: true,
    ..natural(
        StoneKind::Soapstone,
        // 2980 kg/m³ ± 3 %.
        Spread::given(
            [2980.0 * 0.97, 2980.0, 2980.0 * 1.03],
            &from::SOAPSTONE_DENSITY,
            &from::SOAPSTONE_PRODUCER,
        ),
        Figure {
            value: 15.7,
            source: &from::SOAPSTONE_PRODUCER,
        },
        HIGHEST,
        Spread::middle(0.0, 0.01, &from::SOAPSTONE_SILICA),
    )
};
