//! Kinds of stone and what is published about each.

use serde::Serialize;

use super::Source;
use super::stones::{made, natural};

/// A kind of stone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum StoneKind {
    /// Granite.
    Granite,
    /// Gabbro, sold as black granite.
    Gabbro,
    /// Basalt or dolerite.
    Basalt,
    /// Gneiss.
    Gneiss,
    /// Marble.
    Marble,
    /// Limestone.
    Limestone,
    /// Travertine.
    Travertine,
    /// Sandstone.
    Sandstone,
    /// Quartzite.
    Quartzite,
    /// Slate.
    Slate,
    /// Soapstone.
    Soapstone,
    /// Terrazzo: chips of stone in cement or resin.
    Terrazzo,
    /// Engineered stone: ground stone bound with resin.
    EngineeredStone,
    /// Porcelain slab.
    Porcelain,
    /// Sintered slab.
    SinteredStone,
    /// A kind of the user's own, without a record here.
    Own,
}

/// A published or judged figure with the least and the most it may be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Spread {
    /// Least.
    pub low: f64,
    /// Likely.
    pub likely: f64,
    /// Most.
    pub high: f64,
    /// Where the two ends come from.
    pub source: &'static Source,
    /// Where the likely value comes from.
    pub likely_source: &'static Source,
}

impl Spread {
    /// A range whose likely value is its middle; the middle is ours, not the source's.
    #[must_use]
    pub const fn middle(low: f64, high: f64, source: &'static Source) -> Self {
        Self {
            low,
            likely: f64::midpoint(low, high),
            high,
            source,
            likely_source: &super::documents::MIDDLE_OF_RANGE,
        }
    }

    /// A range whose likely value has a source of its own.
    #[must_use]
    pub const fn given(
        [low, likely, high]: [f64; 3],
        source: &'static Source,
        likely_source: &'static Source,
    ) -> Self {
        Self {
            low,
            likely,
            high,
            source,
            likely_source,
        }
    }
}

/// One figure and its source.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Figure {
    /// The value, in the unit of the field that holds it.
    pub value: f64,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Share of mass above which stone counts as rich in silica, 0 to 1 (California, natural stone).
pub const RICH_IN_SILICA: Figure = Figure {
    value: 0.10,
    source: &super::regions::us_ca::WET_METHODS,
};

/// What is published about one kind of stone.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct StoneRecord {
    /// The kind.
    pub kind: StoneKind,
    /// Density, kg/m³.
    pub density_kg_m3: Spread,
    /// Flexural strength, `MPa`: a least value, dry, unless its source says otherwise.
    pub strength_mpa: Figure,
    /// What the strength is divided by.
    pub safety_factor: Figure,
    /// Crystalline silica, share of mass 0 to 1. It says how much silica the kerf turns to dust
    /// or slurry; it does not predict what is in the air.
    pub silica_share: Spread,
    /// Bound with resin: regional bans and stricter rules come first.
    pub engineered: bool,
    /// May hold asbestos minerals: to be tested before it is cut.
    pub asbestos_question: bool,
}

impl StoneKind {
    /// Every kind that has a record.
    pub const ALL: [Self; 15] = [
        Self::Granite,
        Self::Gabbro,
        Self::Basalt,
        Self::Gneiss,
        Self::Marble,
        Self::Limestone,
        Self::Travertine,
        Self::Sandstone,
        Self::Quartzite,
        Self::Slate,
        Self::Soapstone,
        Self::Terrazzo,
        Self::EngineeredStone,
        Self::Porcelain,
        Self::SinteredStone,
    ];

    /// The name that a job file uses and a sheet prints.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Granite => "granite",
            Self::Gabbro => "gabbro",
            Self::Basalt => "basalt",
            Self::Gneiss => "gneiss",
            Self::Marble => "marble",
            Self::Limestone => "limestone",
            Self::Travertine => "travertine",
            Self::Sandstone => "sandstone",
            Self::Quartzite => "quartzite",
            Self::Slate => "slate",
            Self::Soapstone => "soapstone",
            Self::Terrazzo => "terrazzo",
            Self::EngineeredStone => "engineered stone",
            Self::Porcelain => "porcelain",
            Self::SinteredStone => "sintered stone",
            Self::Own => "own stone",
        }
    }

    /// Reads the name of a kind that has a record; capitals, hyphens and underscores do not matter.
    ///
    /// ```
    /// use kerfwright::tables::stone::StoneKind;
    /// assert_eq!(StoneKind::parse("Engineered-Stone"), Some(StoneKind::EngineeredStone));
    /// assert_eq!(StoneKind::parse("own stone"), None);
    /// ```
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let name = text.trim().to_lowercase().replace(['-', '_'], " ");
        match name.as_str() {
            "dolerite" => Some(Self::Basalt),
            "engineered quartz" | "resin quartz" => Some(Self::EngineeredStone),
            "sintered slab" => Some(Self::SinteredStone),
            other => Self::ALL.into_iter().find(|kind| kind.name() == other),
        }
    }

    /// What is published about it; nothing for a kind of the user's own.
    #[must_use]
    pub const fn record(self) -> Option<&'static StoneRecord> {
        Some(match self {
            Self::Granite => &natural::GRANITE,
            Self::Gabbro => &natural::GABBRO,
            Self::Basalt => &natural::BASALT,
            Self::Gneiss => &natural::GNEISS,
            Self::Marble => &natural::MARBLE,
            Self::Limestone => &natural::LIMESTONE,
            Self::Travertine => &natural::TRAVERTINE,
            Self::Sandstone => &natural::SANDSTONE,
            Self::Quartzite => &natural::QUARTZITE,
            Self::Slate => &natural::SLATE,
            Self::Soapstone => &natural::SOAPSTONE,
            Self::Terrazzo => &made::TERRAZZO,
            Self::EngineeredStone => &made::ENGINEERED_STONE,
            Self::Porcelain => &made::PORCELAIN,
            Self::SinteredStone => &made::SINTERED_STONE,
            Self::Own => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::StoneKind;

    #[test]
    fn every_name_reads_back_and_every_record_is_its_own() {
        for kind in StoneKind::ALL {
            assert_eq!(StoneKind::parse(kind.name()), Some(kind));
            assert_eq!(kind.record().map(|record| record.kind), Some(kind));
        }
        assert_eq!(StoneKind::Own.record(), None);
        assert_eq!(StoneKind::parse("cheese"), None);
    }

    #[test]
    fn every_range_is_in_order() {
        for record in StoneKind::ALL.into_iter().filter_map(StoneKind::record) {
            for range in [record.density_kg_m3, record.silica_share] {
                assert!(range.low <= range.likely && range.likely <= range.high);
            }
            let silica = record.silica_share;
            assert!((0.0..=1.0).contains(&silica.low) && (0.0..=1.0).contains(&silica.high));
            assert!(record.strength_mpa.value > 0.0 && record.safety_factor.value >= 3.0);
        }
    }
}
