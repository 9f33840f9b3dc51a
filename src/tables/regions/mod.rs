//! One record for each region; what several of them share is in [`base`].
//!
//! Adding a region is adding its file and one line to the list below.

pub mod base;

use serde::Serialize;

use super::region::RegionRecord;

/// Makes the modules, the enumeration and the look-up of the regions.
macro_rules! regions {
    ($($variant:ident in $module:ident: $name:literal;)+) => {
        $(pub mod $module;)+

        /// A region with a record of its own.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
        #[serde(rename_all = "kebab-case")]
        pub enum RegionCode {
            $(#[doc = $name] $variant,)+
        }

        impl RegionCode {
            /// Every region.
            pub const ALL: [Self; [$($name),+].len()] = [$(Self::$variant),+];

            /// The rules of the region.
            #[must_use]
            pub const fn record(self) -> &'static RegionRecord {
                match self {
                    $(Self::$variant => &$module::RECORD,)+
                }
            }
        }
    };
}

regions! {
    Eu in eu: "European Union.";
    De in de: "Germany.";
    Nl in nl: "Netherlands.";
    No in no: "Norway.";
    Uk in uk: "United Kingdom.";
    Us in us: "United States.";
    UsCa in us_ca: "California.";
    CaQc in ca_qc: "Quebec.";
    Au in au: "Australia.";
    Nz in nz: "New Zealand.";
    Other in other: "Anywhere else.";
}
