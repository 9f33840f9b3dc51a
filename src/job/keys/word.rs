//! The words that the job file has for one of several things.

use crate::job::{
    Aid, Binder, DiscUse, DustMethod, EarKind, Finish, MachineKind, Power, Protection, Respirator,
    Steel, VeinWish, Workplace,
};
use crate::tables::region::RegionCode;
use crate::tables::respirator::MaskClass;
use crate::tables::stone::StoneKind;
use crate::units::LengthUnit;
use crate::words::Language;

/// A thing of which the job file names one.
pub(in crate::job) trait Word: Copy + PartialEq + Sized {
    /// Each with its word, in the order in which they are offered.
    fn all() -> Vec<(&'static str, Self)>;
}

/// The words of a type.
pub(super) fn words<T: Word>() -> Vec<&'static str> {
    T::all().into_iter().map(|(word, _)| word).collect()
}

/// The stones of the table.
pub(super) fn stones() -> Vec<&'static str> {
    StoneKind::ALL.map(StoneKind::name).to_vec()
}

/// Gives a type its words.
macro_rules! words {
    ($($kind:ty: $($word:literal $one:expr),+;)+) => { $(
        impl Word for $kind {
            fn all() -> Vec<(&'static str, Self)> {
                vec![$(($word, $one)),+]
            }
        }
    )+ };
}

/// Whether a stone was tested for asbestos minerals.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::job) enum Tested {
    /// It was not.
    Not,
    /// It was, and none were found.
    Free,
}

/// What carries the grains of a disc.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::job) enum Carrier {
    /// A steel body.
    Diamond,
    /// Resin and fibre.
    Resin,
}

/// The unit of a drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(in crate::job) enum DrawnUnit {
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
    /// Metres.
    Metre,
    /// Inches.
    Inch,
}

impl DrawnUnit {
    /// Millimetres in it.
    pub(in crate::job) const fn mm(self) -> f64 {
        match self {
            Self::Millimetre => 1.0,
            Self::Centimetre => 10.0,
            Self::Metre => 1000.0,
            Self::Inch => 25.4,
        }
    }
}

words! {
    DrawnUnit: "mm" Self::Millimetre, "cm" Self::Centimetre, "m" Self::Metre, "in" Self::Inch;
    LengthUnit: "mm" Self::Millimetre, "in" Self::Inch;
    Binder: "not known" Self::Unknown, "none" Self::Natural, "cement" Self::Cement,
        "resin" Self::Resin, "fired" Self::Fired;
    Tested: "not tested" Self::Not, "tested free" Self::Free;
    Steel: "not known" Self::Unknown, "none" Self::None, "some" Self::Some;
    Finish: "factory" Self::Factory, "polish" Self::Polish, "ease" Self::Ease, "saw" Self::Saw;
    VeinWish: "along" Self::Along, "across" Self::Across, "any" Self::Any;
    MachineKind: "angle grinder" Self::AngleGrinder, "hand saw" Self::HandSaw;
    Power: "mains" Self::Mains, "battery" Self::Battery, "air" Self::Air, "engine" Self::Engine;
    Protection: "rcd" Self::Rcd, "gfci" Self::Gfci, "110v-cte" Self::CentreTapped110V,
        "battery" Self::Battery, "none" Self::None;
    DiscUse: "all" Self::All, "straights" Self::Straights, "curves" Self::Curves;
    Carrier: "diamond" Self::Diamond, "resin" Self::Resin;
    Workplace: "outdoors" Self::Outdoors, "indoors" Self::Indoors;
    DustMethod: "water" Self::Water, "shroud" Self::Shroud, "none" Self::None;
    EarKind: "muffs" Self::Muffs, "formable plugs" Self::FormablePlugs,
        "other plugs" Self::OtherPlugs;
    Aid: "none" Self::None, "trolley" Self::Trolley, "vacuum lifter" Self::VacuumLifter,
        "gantry" Self::Gantry;
}

impl Word for Respirator {
    fn all() -> Vec<(&'static str, Self)> {
        let without = [("none", Self::None), ("nuisance-mask", Self::Nuisance)];
        let masks = MaskClass::ALL.map(|class| (class.word(), Self::Mask(class)));
        without.into_iter().chain(masks).collect()
    }
}

impl Word for RegionCode {
    fn all() -> Vec<(&'static str, Self)> {
        Self::ALL.map(|region| (region.code(), region)).to_vec()
    }
}

impl Word for Language {
    fn all() -> Vec<(&'static str, Self)> {
        Self::ALL
            .map(|language| (language.code(), language))
            .to_vec()
    }
}
