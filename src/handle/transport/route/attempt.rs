//! One pose of a stone at one place: what it needs, what is there.

use serde::Serialize;

/// How a stone is carried.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Carried {
    /// Standing on a long side.
    OnEdge,
    /// Standing on a short side.
    Upright,
    /// Lying flat: the last resort, and not advised.
    Flat,
}

impl Carried {
    /// Every pose, the best first.
    pub const ALL: [Self; 3] = [Self::OnEdge, Self::Upright, Self::Flat];

    /// The pose in words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::OnEdge => "on edge",
            Self::Upright => "upright",
            Self::Flat => "flat",
        }
    }
}

/// What is measured at a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Measure {
    /// Clear width.
    Width,
    /// Clear height.
    Height,
    /// Length that turns in the corner.
    Turn,
}

/// One measure of a pose at a place.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Need {
    /// What is measured.
    pub measure: Measure,
    /// What the stone needs, mm.
    pub needs_mm: f64,
    /// What is there, mm.
    pub has_mm: f64,
}

impl Need {
    pub(super) const fn new(measure: Measure, needs_mm: f64, has_mm: f64) -> Self {
        Self {
            measure,
            needs_mm,
            has_mm,
        }
    }

    /// To spare, mm; negative when it is short.
    #[must_use]
    pub fn spare_mm(&self) -> f64 {
        self.has_mm - self.needs_mm
    }
}

/// Whether a pose goes through.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Fit {
    /// With this much to spare, mm.
    #[serde(rename = "clears-mm")]
    Clears(f64),
    /// With this much to spare, mm: less than what counts as enough.
    #[serde(rename = "tight-mm")]
    Tight(f64),
    /// Short by this much, mm.
    #[serde(rename = "short-mm")]
    Short(f64),
}

impl Fit {
    /// To spare, mm; negative when it is short.
    #[must_use]
    pub const fn spare_mm(self) -> f64 {
        match self {
            Self::Clears(mm) | Self::Tight(mm) => mm,
            Self::Short(mm) => -mm,
        }
    }

    /// Whether the stone goes through at all.
    #[must_use]
    pub const fn passes(self) -> bool {
        matches!(self, Self::Clears(_) | Self::Tight(_))
    }
}

/// One pose at one place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Attempt {
    /// The pose.
    pub carried: Carried,
    /// The longer side seen from above, mm.
    pub length_mm: f64,
    /// Every measure.
    pub needs: Vec<Need>,
    /// The measure with the least to spare.
    pub binds: Need,
    /// Whether it goes through.
    pub fit: Fit,
}
