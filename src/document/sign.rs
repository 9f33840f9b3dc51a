//! The safety signs that a document can show.

/// A sign of ISO 7010.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// M003: wear ear protection.
    Ears,
    /// M004: wear eye protection.
    Eyes,
    /// M008: wear safety footwear.
    Feet,
    /// M009: wear protective gloves.
    Hands,
    /// M017: wear respiratory protection.
    Lungs,
    /// W001: general warning.
    Warning,
}

impl Sign {
    /// Its reference in ISO 7010.
    #[must_use]
    pub const fn reference(self) -> &'static str {
        match self {
            Self::Ears => "M003",
            Self::Eyes => "M004",
            Self::Feet => "M008",
            Self::Hands => "M009",
            Self::Lungs => "M017",
            Self::Warning => "W001",
        }
    }
}
