//! Assigned protection factors of respirators, by scheme.

use serde::Serialize;

use super::documents::{OSHA_MASKS, UK_MASKS};
use super::{Source, Sure};

/// Whose factors count. Two schemes are never mixed: each tests masks in its own way.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum MaskScheme {
    /// OSHA's.
    Us,
    /// The British one.
    Uk,
    /// The lower of the two, where the region has none on file.
    Strictest,
}

/// A class of respirator.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum MaskClass {
    /// Filtering half mask, European class 2.
    Ffp2,
    /// Filtering half mask, European class 3.
    Ffp3,
    /// Filtering facepiece, NIOSH N95.
    N95,
    /// Filtering facepiece or half mask, NIOSH P100.
    P100,
    /// Half mask with European P3 filters.
    HalfMaskP3,
    /// Full face mask with P3 or P100 filters.
    FullFace,
    /// Powered hood or helmet, mark not known.
    PoweredHood,
    /// Powered hood or helmet, European class 1.
    Th1,
    /// Powered hood or helmet, European class 2.
    Th2,
    /// Powered hood or helmet, European class 3.
    Th3,
    /// Powered tight mask, half or full, mark not known.
    PoweredMask,
    /// Powered tight mask, European class 1.
    Tm1,
    /// Powered tight mask, European class 2.
    Tm2,
    /// Powered tight mask, European class 3.
    Tm3,
    /// Powered tight half mask.
    PoweredHalfMask,
    /// Powered tight full face mask.
    PoweredFullFace,
}

impl MaskClass {
    /// Every class, from the lightest to the heaviest.
    pub const ALL: [Self; 16] = [
        Self::N95,
        Self::P100,
        Self::Ffp2,
        Self::Ffp3,
        Self::HalfMaskP3,
        Self::FullFace,
        Self::PoweredHood,
        Self::Th1,
        Self::Th2,
        Self::Th3,
        Self::PoweredMask,
        Self::Tm1,
        Self::Tm2,
        Self::Tm3,
        Self::PoweredHalfMask,
        Self::PoweredFullFace,
    ];

    /// The name that a sheet prints.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Ffp2 => "FFP2 filtering half mask",
            Self::Ffp3 => "FFP3 filtering half mask",
            Self::N95 => "N95 filtering facepiece",
            Self::P100 => "P100 filtering facepiece or half mask",
            Self::HalfMaskP3 => "half mask with P3 filters",
            Self::FullFace => "full face mask with P3 or P100 filters",
            Self::PoweredHood => "powered hood or helmet",
            Self::Th1 => "powered hood or helmet TH1",
            Self::Th2 => "powered hood or helmet TH2",
            Self::Th3 => "powered hood or helmet TH3",
            Self::PoweredMask => "powered tight mask",
            Self::Tm1 => "powered tight mask TM1",
            Self::Tm2 => "powered tight mask TM2",
            Self::Tm3 => "powered tight mask TM3",
            Self::PoweredHalfMask => "powered tight half mask",
            Self::PoweredFullFace => "powered full face mask",
        }
    }

    /// Whether it seals against the skin: it is fit-tested on its wearer and worn clean-shaven.
    #[must_use]
    pub const fn is_tight(self) -> bool {
        !matches!(self, Self::PoweredHood | Self::Th1 | Self::Th2 | Self::Th3)
    }

    /// Whether a fan feeds it.
    #[must_use]
    pub const fn is_powered(self) -> bool {
        matches!(
            self,
            Self::PoweredHood
                | Self::Th1
                | Self::Th2
                | Self::Th3
                | Self::PoweredMask
                | Self::Tm1
                | Self::Tm2
                | Self::Tm3
                | Self::PoweredHalfMask
                | Self::PoweredFullFace
        )
    }
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

/// British factors quoted elsewhere.
pub static UK_QUOTED: Source = Source::new(
    "assigned protection factors: full face P3 40; powered hoods TH1 10, TH2 20, TH3 40",
    "HSE HSG53",
    "",
    0,
    Sure::Quoted,
);
/// British factors from memory.
pub static UK_MEMORY: Source = Source::new(
    "assigned protection factors: FFP2 10; powered masks TM1 10, TM2 20, TM3 40",
    "HSE HSG53",
    "",
    0,
    Sure::Memory,
);

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
        MaskClass::Ffp2 | MaskClass::Tm1 => one(10, &UK_MEMORY),
        MaskClass::Ffp3 | MaskClass::HalfMaskP3 => one(20, &UK_MASKS),
        MaskClass::FullFace | MaskClass::Th3 => one(40, &UK_QUOTED),
        MaskClass::PoweredHood => Assigned::ByMark {
            least: 10,
            most: 40,
            marks: "TH1 10, TH2 20, TH3 40",
            source: &UK_QUOTED,
        },
        MaskClass::Th1 => one(10, &UK_QUOTED),
        MaskClass::Th2 => one(20, &UK_QUOTED),
        MaskClass::Tm2 => one(20, &UK_MEMORY),
        MaskClass::Tm3 => one(40, &UK_MEMORY),
        MaskClass::PoweredMask | MaskClass::PoweredHalfMask | MaskClass::PoweredFullFace => {
            Assigned::ByMark {
                least: 10,
                most: 40,
                marks: "TM1 10, TM2 20, TM3 40",
                source: &UK_MEMORY,
            }
        }
        MaskClass::N95 | MaskClass::P100 => Assigned::NotInScheme,
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
