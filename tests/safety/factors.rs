//! The factors that each scheme gives a kind of mask, least and most, where its mark is not known.

use kerfwright::tables::respirator::MaskClass;

/// 29 CFR 1910.134 Table 1.
pub(crate) fn american(class: MaskClass) -> Option<(u16, u16)> {
    match class {
        MaskClass::N95 | MaskClass::P100 => Some((10, 10)),
        MaskClass::FullFace => Some((50, 50)),
        MaskClass::PoweredHood => Some((25, 25)),
        MaskClass::PoweredFullFace => Some((1000, 1000)),
        _ => None,
    }
}

/// HSG53; FFP2 and the powered masks from memory.
pub(crate) fn british(class: MaskClass) -> Option<(u16, u16)> {
    match class {
        MaskClass::Ffp2 | MaskClass::Th1 => Some((10, 10)),
        MaskClass::Ffp3 | MaskClass::Th2 => Some((20, 20)),
        MaskClass::FullFace | MaskClass::Th3 => Some((40, 40)),
        MaskClass::PoweredHood | MaskClass::PoweredFullFace => Some((10, 40)),
        _ => None,
    }
}

/// DGUV Regel 112-190; TH2P, TH3P and the powered masks from memory.
pub(crate) fn german(class: MaskClass) -> Option<(u16, u16)> {
    match class {
        MaskClass::Ffp2 => Some((10, 10)),
        MaskClass::Ffp3 => Some((30, 30)),
        MaskClass::FullFace => Some((400, 400)),
        MaskClass::Th1 => Some((5, 5)),
        MaskClass::Th2 => Some((20, 20)),
        MaskClass::Th3 => Some((100, 100)),
        MaskClass::PoweredHood => Some((5, 100)),
        MaskClass::PoweredFullFace => Some((10, 500)),
        _ => None,
    }
}

/// AS/NZS 1715; the powered ones from memory.
pub(crate) fn australian(class: MaskClass) -> Option<(u16, u16)> {
    match class {
        MaskClass::P2 => Some((10, 10)),
        MaskClass::FullFace | MaskClass::PoweredFullFace => Some((100, 100)),
        MaskClass::PoweredHood => Some((50, 100)),
        _ => None,
    }
}
