//! Every source by its name, and the file of `records/sources` that has its citation.
//!
//! Adding a source is adding its entry to a file and its name to that file's list.

use std::sync::LazyLock;

use super::source::{Shelf, Source};

/// A file of sources.
#[derive(Debug)]
pub(super) struct File {
    #[cfg(test)]
    text: &'static str,
    pub(super) sources: &'static [&'static Source],
}

/// Every source.
pub fn all() -> impl Iterator<Item = &'static Source> {
    ALL.iter().flat_map(|file| file.sources).copied()
}

impl Source {
    /// The source of a name, among those of every file.
    #[must_use]
    pub fn find(name: &str) -> Option<&'static Self> {
        all().find(|s| s.name == name)
    }
}

impl Default for &'static Source {
    fn default() -> Self {
        &NOT_FOUND
    }
}

/// Makes a [`Source`] of every name.
macro_rules! sources {
    ($($file:ident in $path:literal: $($name:ident)+;)+) => {
        /// Every file of sources.
        pub(super) const ALL: &[File] = &[$(File {
            #[cfg(test)]
            text: include_str!(concat!("records/", $path)),
            sources: &[$(&$name),+],
        }),+];
        $(
            static $file: LazyLock<Shelf> =
                LazyLock::new(|| super::records::read(include_str!(concat!("records/", $path))));
            $(
                #[doc = concat!("`", stringify!($name), "` in `", $path, "`.")]
                pub static $name: Source = Source { name: stringify!($name), shelf: || &$file };
            )+
        )+
    };
}

sources! {
    GENERAL in "sources/general.toml":
        MIDDLE_OF_RANGE COMPUTED NOT_FOUND COMMON_PRACTICE OUR_JUDGEMENT GRINDER_WARNINGS
        ISO_7010 OSHA_WORKTOPS OSHA_TWO_RULES HSE_STONEMASONRY;
    DUST in "sources/dust.toml":
        OSHA_MEANS OSHA_SILICA NIOSH_SILICA ACGIH_SILICA EU_SILICA OSHA_TABLE_1 OSHA_AIRFLOW
        OSHA_HOUSEKEEPING NIOSH_WATER EN_60335_2_69 QI_ECHT COOPER_2015 AKBAR_2007 HEALY_2014
        TRGS_517;
    RESPIRATORS in "sources/respirators.toml":
        OSHA_MASKS UK_MASKS UK_QUOTED UK_MEMORY DGUV_QUOTED TRGS_TM1 AS_NZS_1715 AS_NZS_MEMORY;
    NOISE_AND_VIBRATION in "sources/noise-and-vibration.toml":
        EU_VIBRATION HSE_TABLE_1 HSE_POINTS HSE_UNCERTAINTY EU_NOISE OSHA_NOISE OSHA_PROTECTOR
        NIOSH_PROTECTOR NIOSH_NOISE EN_ISO_4869_2 HSE_REAL_WORLD EN_458 BARBOSA IFA_4214;
    MACHINES in "sources/machines.toml":
        SUPPLY_PROTECTION RCD GFCI EN_12413 EN_12413_EXPIRY OSA_BORE;
    HANDLING in "sources/handling.toml":
        GERE MIA_RAILS VACUUM_FACTOR REACH_LIMITS
        PERSON_ON_EDGE RAIL_WIDTHS HANDLING_FACTOR EN_338 L23_CARRY L23_FIGURES L23_TEAM L23_PUSH
        ISO_11228 NIOSH_EQUATION TEAM_OF_FOUR AID_PRACTICE FALL_ZONE;
    EUROPE in "sources/europe.toml":
        EU_112 NL_SILICA NO_SILICA NO_NOISE NO_EMERGENCY DE_SILICA DE_NOISE DE_RESPIRATORS;
    UK in "sources/uk.toml":
        UK_SILICA UK_VIBRATION UK_NOISE UK_ENGINEERED UK_EMERGENCY;
    AMERICA in "sources/america.toml":
        US_911 CA_QC_SILICA CA_QC_RESPIRATORS CA_QC_NOISE US_CA_SILICA US_CA_HIGH_EXPOSURE;
    AUSTRALASIA in "sources/australasia.toml":
        NZ_SILICA NZ_EMERGENCY AU_SILICA AU_BAN AU_CONTROLLED_PROCESSING AU_NOISE AU_RESPIRATORS
        AU_EMERGENCY;
    NATURAL_STONE in "sources/natural-stone.toml":
        CEN_DENSITY TRADE_DENSITY TRAVERTINE_DENSITY SOAPSTONE_DENSITY SOAPSTONE_PRODUCER
        ASTM_C615 FACTOR_AS_GRANITE AS_GRANITE ASTM_C503 ASTM_C568 ASTM_C1527 ASTM_C616
        QUARTZITE_STRENGTH ASTM_C629 BEALL HIGHEST_FACTOR HSG201 GRANITE_SILICA SWA_SILICA
        QUARTZITE_SILICA GNEISS_SILICA GABBRO_SILICA TRAVERTINE_SILICA SOAPSTONE_SILICA
        HSE_MARBLE AMPHIBOLITE_FIGURES SERPENTINE_FIGURES;
    MADE_STONE in "sources/made-stone.toml":
        RESIN_QUARTZ_PRODUCER MADE_DENSITY SINTERED_AS_PORCELAIN PORCELAIN_STRENGTH
        TERRAZZO_STRENGTH TERRAZZO_SILICA ENGINEERED_SILICA ENGINEERED_LIKELY PORCELAIN_SILICA;
}

#[cfg(test)]
mod tests {
    use super::super::source::Shelf;
    use super::ALL;

    #[test]
    fn every_file_has_its_sources_whole_and_no_others() {
        for file in ALL {
            let shelf: Shelf = match toml::from_str(file.text) {
                Ok(shelf) => shelf,
                Err(fault) => panic!("{fault}"),
            };
            let mut listed: Vec<_> = file.sources.iter().map(|source| source.name).collect();
            listed.sort_unstable();
            assert_eq!(shelf.into_keys().collect::<Vec<_>>(), listed);
        }
    }
}
