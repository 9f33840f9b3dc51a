//! Kinds of stone and what is published about each.

use std::sync::OnceLock;

use serde::{Deserialize, Serialize};

use super::{Source, documents, records};

/// Makes the enumeration of the kinds of stone, each with its file in `records/stones` and the name
/// that a job file uses and a sheet prints.
macro_rules! stones {
    ($($variant:ident in $file:literal: $name:literal;)+) => {
        /// A kind of stone.
        #[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize)]
        #[serde(rename_all = "kebab-case")]
        pub enum StoneKind {
            $(#[doc = $name] $variant,)+
            /// A kind of the user's own, without a record here.
            #[default]
            Own,
        }

        impl StoneKind {
            /// Every kind that has a record.
            pub const ALL: [Self; [$($name),+].len()] = [$(Self::$variant),+];

            /// The name that a job file uses and a sheet prints.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self {
                    $(Self::$variant => $name,)+
                    Self::Own => "own stone",
                }
            }

            const fn file(self) -> &'static str {
                match self {
                    $(Self::$variant => include_str!(concat!("records/stones/", $file, ".toml")),)+
                    Self::Own => "",
                }
            }
        }
    };
}

stones! {
    Granite in "granite": "granite";
    Gabbro in "gabbro": "gabbro";
    Basalt in "basalt": "basalt";
    Gneiss in "gneiss": "gneiss";
    Marble in "marble": "marble";
    Limestone in "limestone": "limestone";
    Travertine in "travertine": "travertine";
    Sandstone in "sandstone": "sandstone";
    Quartzite in "quartzite": "quartzite";
    Slate in "slate": "slate";
    Soapstone in "soapstone": "soapstone";
    Serpentine in "serpentine": "serpentine";
    Amphibolite in "amphibolite": "amphibolite";
    Terrazzo in "terrazzo": "terrazzo";
    EngineeredStone in "engineered-stone": "engineered stone";
    Porcelain in "porcelain": "porcelain";
    SinteredStone in "sintered-stone": "sintered stone";
}

/// A published or judged figure with the least and the most it may be.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(from = "SpreadEntry")]
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

/// A [`Spread`] as a file has it: the likely value is the middle unless the file gives one.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SpreadEntry {
    low: f64,
    likely: Option<f64>,
    high: f64,
    source: &'static Source,
    likely_source: Option<&'static Source>,
}

impl From<SpreadEntry> for Spread {
    /// The middle of a range is ours, not the source's.
    fn from(entry: SpreadEntry) -> Self {
        Self {
            low: entry.low,
            likely: entry.likely.unwrap_or(f64::midpoint(entry.low, entry.high)),
            high: entry.high,
            source: entry.source,
            likely_source: entry.likely_source.unwrap_or(&documents::MIDDLE_OF_RANGE),
        }
    }
}

/// One figure and its source.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SourcedFigure {
    /// The value, in the unit of the field that holds it.
    pub value: f64,
    /// Where it comes from.
    pub source: &'static Source,
}

/// Share of mass above which stone counts as rich in silica, 0 to 1 (California, natural stone).
pub const RICH_IN_SILICA: SourcedFigure = SourcedFigure {
    value: 0.10,
    source: &documents::US_CA_HIGH_EXPOSURE,
};

/// What is published about one kind of stone.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct StoneRecord {
    /// The kind.
    #[serde(skip_deserializing)]
    pub kind: StoneKind,
    /// Density, kg/m³.
    pub density_kg_m3: Spread,
    /// Flexural strength, `MPa`: a least value, dry, unless its source says otherwise.
    pub strength_mpa: SourcedFigure,
    /// What the strength is divided by.
    pub safety_factor: SourcedFigure,
    /// Crystalline silica, share of mass 0 to 1. It says how much silica the kerf turns to dust
    /// or slurry; it does not predict what is in the air.
    pub silica_share: Spread,
    /// Bound with resin: regional bans and stricter rules come first.
    pub engineered: bool,
    /// Whether it may hold asbestos minerals.
    pub asbestos: AsbestosQuestion,
}

/// Whether a kind of stone may hold asbestos minerals.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum AsbestosQuestion {
    /// It is not among the possible carriers.
    No,
    /// A possible carrier: the quarry's declaration is asked for.
    Ask,
    /// A usual carrier: not cut before it was tested.
    #[default]
    Test,
}

impl AsbestosQuestion {
    /// What a name of the user's own gives cause to ask: the names of usual and possible carriers in it.
    #[must_use]
    pub fn of_name(name: &str) -> Self {
        let name = name.to_lowercase();
        let holds = |words: &[&str]| words.iter().any(|word| name.contains(word));
        if holds(&USUAL_CARRIERS) {
            Self::Test
        } else if holds(&POSSIBLE_CARRIERS) {
            Self::Ask
        } else {
            Self::No
        }
    }
}

/// Names of stones that are usual carriers of asbestos minerals (TRGS 517 annex 1; "green marble" and
/// "verde" are serpentine in the trade).
const USUAL_CARRIERS: [&str; 7] = [
    "soapstone",
    "steatite",
    "talc",
    "serpentin",
    "green marble",
    "verde",
    "ophicalcite",
];
/// Names of stones that are possible carriers (TRGS 517 annex 1).
const POSSIBLE_CARRIERS: [&str; 8] = [
    "gabbro",
    "norite",
    "diabase",
    "dolerite",
    "basalt",
    "amphibolite",
    "peridotite",
    "dunite",
];

impl StoneKind {
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
            "dolerite" | "diabase" => Some(Self::Basalt),
            "norite" => Some(Self::Gabbro),
            "serpentinite" | "green marble" => Some(Self::Serpentine),
            "steatite" => Some(Self::Soapstone),
            "engineered quartz" | "resin quartz" => Some(Self::EngineeredStone),
            "sintered slab" => Some(Self::SinteredStone),
            other => Self::ALL.into_iter().find(|kind| kind.name() == other),
        }
    }

    /// What is published about it, read from its file when it is first asked for; nothing for a
    /// kind of the user's own.
    #[must_use]
    pub fn record(self) -> Option<&'static StoneRecord> {
        static ALL: [OnceLock<StoneRecord>; StoneKind::ALL.len()] =
            [const { OnceLock::new() }; StoneKind::ALL.len()];
        let cell = ALL.get(self as usize)?;
        Some(cell.get_or_init(|| StoneRecord {
            kind: self,
            ..records::read(self.file())
        }))
    }
}

#[cfg(test)]
mod tests {
    use super::{StoneKind, StoneRecord};

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
    fn every_file_is_a_whole_record_and_nothing_more() {
        for kind in StoneKind::ALL {
            let read = toml::from_str::<StoneRecord>(kind.file()).map_err(|e| e.to_string());
            assert!(read.is_ok(), "{}: {read:?}", kind.name());
        }
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
