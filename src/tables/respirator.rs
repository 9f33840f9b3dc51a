//! Assigned protection factors of respirators, by scheme.

use serde::{Deserialize, Serialize};

use super::Source;
use super::documents::{
    AS_NZS_1715, AS_NZS_MEMORY, DGUV_QUOTED, OSHA_MASKS, TRGS_TM1, UK_MASKS, UK_MEMORY, UK_QUOTED,
};

/// Whose factors count. Schemes are never mixed: each tests masks in its own way.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum MaskScheme {
    /// OSHA's.
    Us,
    /// The British one.
    Uk,
    /// The German one: multiples of the limit.
    De,
    /// The Australian and New Zealand one.
    AsNzs,
    /// The lower of the American and the British one, where the region has none on file.
    #[default]
    Strictest,
}

/// Defines the classes from their rows, so that each is written down once.
macro_rules! classes {
    ($($(#[$doc:meta])+ $class:ident = $word:literal, $name:literal, $seal:ident, $drive:ident;)+) => {
        /// A class of respirator.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
        #[serde(rename_all = "kebab-case")]
        pub enum MaskClass {
            $($(#[$doc])+ $class,)+
        }

        impl MaskClass {
            /// Every class, from the lightest to the heaviest.
            pub const ALL: [Self; [$($word),+].len()] = [$(Self::$class),+];

            /// The word that a job file uses.
            #[must_use]
            pub const fn word(self) -> &'static str {
                match self {
                    $(Self::$class => $word,)+
                }
            }

            /// The name that a sheet prints.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self {
                    $(Self::$class => $name,)+
                }
            }

            /// Whether it seals against the skin: it is fit-tested on its wearer and worn
            /// clean-shaven.
            #[must_use]
            pub const fn is_tight(self) -> bool {
                match self {
                    $(Self::$class => matches!(Seal::$seal, Seal::Tight),)+
                }
            }

            /// Whether a fan feeds it.
            #[must_use]
            pub const fn is_powered(self) -> bool {
                match self {
                    $(Self::$class => matches!(Drive::$drive, Drive::Fan),)+
                }
            }
        }
    };
}

/// How a mask meets the face.
#[derive(Clone, Copy)]
enum Seal {
    Tight,
    Loose,
}

/// What moves the air through the filter.
#[derive(Clone, Copy)]
enum Drive {
    Lungs,
    Fan,
}

classes! {
    /// Filtering facepiece, NIOSH N95.
    N95 = "n95", "N95 filtering facepiece", Tight, Lungs;
    /// Filtering facepiece or half mask, NIOSH P100.
    P100 = "p100", "P100 filtering facepiece or half mask", Tight, Lungs;
    /// Filtering or replaceable half mask, AS/NZS class P2.
    P2 = "p2", "half mask of class P2 (AS/NZS 1716)", Tight, Lungs;
    /// Filtering half mask, European class 2.
    Ffp2 = "ffp2", "FFP2 filtering half mask", Tight, Lungs;
    /// Filtering half mask, European class 3.
    Ffp3 = "ffp3", "FFP3 filtering half mask", Tight, Lungs;
    /// Half mask with P3 filters.
    HalfMaskP3 = "half-mask-p3", "half mask with P3 filters", Tight, Lungs;
    /// Full face mask with P3 or P100 filters.
    FullFace = "full-face", "full face mask with P3 or P100 filters", Tight, Lungs;
    /// Powered hood or helmet, mark not known.
    PoweredHood = "powered-hood", "powered hood or helmet", Loose, Fan;
    /// Powered hood or helmet, European class 1.
    Th1 = "th1", "powered hood or helmet TH1", Loose, Fan;
    /// Powered hood or helmet, European class 2.
    Th2 = "th2", "powered hood or helmet TH2", Loose, Fan;
    /// Powered hood or helmet, European class 3.
    Th3 = "th3", "powered hood or helmet TH3", Loose, Fan;
    /// Powered tight mask, half or full, mark not known.
    PoweredMask = "powered-mask", "powered tight mask", Tight, Fan;
    /// Powered tight mask, European class 1.
    Tm1 = "tm1", "powered tight mask TM1", Tight, Fan;
    /// Powered tight mask, European class 2.
    Tm2 = "tm2", "powered tight mask TM2", Tight, Fan;
    /// Powered tight mask, European class 3.
    Tm3 = "tm3", "powered tight mask TM3", Tight, Fan;
    /// Powered tight half mask.
    PoweredHalfMask = "powered-half-mask", "powered tight half mask", Tight, Fan;
    /// Powered tight full face mask.
    PoweredFullFace = "powered-full-face", "powered full face mask", Tight, Fan;
}

impl MaskScheme {
    /// What its factors must not be confused with.
    #[must_use]
    pub const fn not_to_be_confused(self) -> &'static str {
        match self {
            Self::Us => {
                "British factors (FFP3 20) do not count here, nor does a European class; a mask without \
                 NIOSH approval or without a class is no respirator"
            }
            Self::Uk => {
                "American factors (N95 10, powered masks up to 1000) do not count here; a nominal factor on \
                 a box is not the assigned one; a mask without a class is no respirator"
            }
            Self::De => {
                "British and American factors do not count here; a nominal factor on a box is not the \
                 multiple of the limit; a mask without a class is no respirator"
            }
            Self::AsNzs => {
                "European and American classes do not count here; a half mask is worth 10 with any \
                 filter; a mask without a class is no respirator"
            }
            Self::Strictest => {
                "American and British factors are never mixed: the lower of the two is taken; a mask without \
                 a class is no respirator"
            }
        }
    }
}

/// What a scheme assigns to a class.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Assigned {
    /// The scheme has no row for it: it counts as nothing until somebody competent says otherwise.
    NotInScheme,
    /// One factor.
    One {
        /// The factor.
        apf: u16,
        /// Where it comes from.
        source: &'static Source,
    },
    /// The factor depends on a class marked on the device.
    ByMark {
        /// Least factor.
        least: u16,
        /// Greatest factor.
        most: u16,
        /// What the marks are and what each is worth.
        marks: &'static str,
        /// Where they come from.
        source: &'static Source,
    },
}

impl Assigned {
    /// The factor that may be counted on without looking at the marks; 0 when not in the scheme.
    #[must_use]
    pub const fn least(self) -> u16 {
        match self {
            Self::NotInScheme => 0,
            Self::One { apf, .. } => apf,
            Self::ByMark { least, .. } => least,
        }
    }

    /// The factor with the best mark; 0 when not in the scheme.
    #[must_use]
    pub const fn most(self) -> u16 {
        match self {
            Self::NotInScheme => 0,
            Self::One { apf, .. } => apf,
            Self::ByMark { most, .. } => most,
        }
    }

    /// Where it comes from.
    #[must_use]
    pub const fn source(self) -> Option<&'static Source> {
        match self {
            Self::NotInScheme => None,
            Self::One { source, .. } | Self::ByMark { source, .. } => Some(source),
        }
    }
}

/// Factor that British advice asks for on stone worktops besides water or extraction (HSE
/// stonemasonry pages, 2026, text read).
pub const HSE_WORKTOP_APF: u16 = 20;

/// The factor that a scheme assigns to a class.
///
/// A factor holds for a mask that fits its wearer, passed a fit test where it is tight, and is
/// worn over clean-shaven skin.
#[must_use]
pub const fn assigned(scheme: MaskScheme, class: MaskClass) -> Assigned {
    match scheme {
        MaskScheme::Us => us(class),
        MaskScheme::Uk => uk(class),
        MaskScheme::De => de(class),
        MaskScheme::AsNzs => as_nzs(class),
        MaskScheme::Strictest => lower(us(class), uk(class)),
    }
}

const fn one(apf: u16, source: &'static Source) -> Assigned {
    Assigned::One { apf, source }
}

const fn us(class: MaskClass) -> Assigned {
    let source = &OSHA_MASKS;
    match class {
        MaskClass::N95 | MaskClass::P100 => one(10, source),
        MaskClass::FullFace | MaskClass::PoweredHalfMask => one(50, source),
        MaskClass::PoweredFullFace => one(1000, source),
        MaskClass::PoweredHood => one(25, source),
        MaskClass::PoweredMask => Assigned::ByMark {
            least: 50,
            most: 1000,
            marks: "half mask 50, full face 1000",
            source,
        },
        MaskClass::Ffp2
        | MaskClass::Ffp3
        | MaskClass::P2
        | MaskClass::HalfMaskP3
        | MaskClass::Th1
        | MaskClass::Th2
        | MaskClass::Th3
        | MaskClass::Tm1
        | MaskClass::Tm2
        | MaskClass::Tm3 => Assigned::NotInScheme,
    }
}

const fn uk(class: MaskClass) -> Assigned {
    match class {
        MaskClass::Tm1 => one(10, &UK_MEMORY),
        MaskClass::Ffp3 | MaskClass::HalfMaskP3 => one(20, &UK_MASKS),
        MaskClass::FullFace | MaskClass::Th3 | MaskClass::Tm3 => one(40, &UK_QUOTED),
        MaskClass::PoweredHood => Assigned::ByMark {
            least: 10,
            most: 40,
            marks: "TH1 10, TH2 20, TH3 40",
            source: &UK_QUOTED,
        },
        MaskClass::Ffp2 | MaskClass::Th1 => one(10, &UK_QUOTED),
        MaskClass::Th2 => one(20, &UK_QUOTED),
        MaskClass::Tm2 => one(20, &UK_MEMORY),
        MaskClass::PoweredMask | MaskClass::PoweredHalfMask | MaskClass::PoweredFullFace => {
            Assigned::ByMark {
                least: 10,
                most: 40,
                marks: "TM1 10, TM2 20, TM3 40",
                source: &UK_MEMORY,
            }
        }
        MaskClass::N95 | MaskClass::P100 | MaskClass::P2 => Assigned::NotInScheme,
    }
}

/// German multiples of the limit.
const fn de(class: MaskClass) -> Assigned {
    match class {
        MaskClass::Ffp2 => one(10, &DGUV_QUOTED),
        MaskClass::Ffp3 | MaskClass::HalfMaskP3 => one(30, &DGUV_QUOTED),
        MaskClass::FullFace => one(400, &DGUV_QUOTED),
        MaskClass::Th1 => one(5, &DGUV_QUOTED),
        MaskClass::Th2 => one(20, &DGUV_QUOTED),
        MaskClass::Th3 | MaskClass::Tm2 => one(100, &DGUV_QUOTED),
        MaskClass::Tm1 => one(10, &TRGS_TM1),
        MaskClass::Tm3 => one(500, &DGUV_QUOTED),
        MaskClass::PoweredHood => Assigned::ByMark {
            least: 5,
            most: 100,
            marks: "TH1P 5, TH2P 20, TH3P 100",
            source: &DGUV_QUOTED,
        },
        MaskClass::PoweredMask | MaskClass::PoweredHalfMask | MaskClass::PoweredFullFace => {
            Assigned::ByMark {
                least: 10,
                most: 500,
                marks: "TM1P 10, TM2P 100, TM3P 500",
                source: &TRGS_TM1,
            }
        }
        MaskClass::N95 | MaskClass::P100 | MaskClass::P2 => Assigned::NotInScheme,
    }
}

/// Australian and New Zealand factors: a half mask is worth 10 with any filter.
const fn as_nzs(class: MaskClass) -> Assigned {
    match class {
        MaskClass::P2 | MaskClass::HalfMaskP3 => one(10, &AS_NZS_1715),
        MaskClass::FullFace => one(100, &AS_NZS_1715),
        MaskClass::PoweredHood => Assigned::ByMark {
            least: 50,
            most: 100,
            marks: "P2 50, P3 100",
            source: &AS_NZS_MEMORY,
        },
        MaskClass::PoweredFullFace => one(100, &AS_NZS_MEMORY),
        _ => Assigned::NotInScheme,
    }
}

/// The lower of two; a scheme without a row is passed over.
const fn lower(a: Assigned, b: Assigned) -> Assigned {
    match (a, b) {
        (Assigned::NotInScheme, known) | (known, Assigned::NotInScheme) => known,
        (a, b) if a.most() < b.most() => a,
        (_, b) => b,
    }
}
