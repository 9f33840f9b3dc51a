//! Discs and core bits.

use serde::Serialize;

/// A cutting disc.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Disc {
    /// Name as printed.
    pub name: String,
    /// Diameter, mm.
    pub diameter: f64,
    /// Width of the cut, mm.
    pub kerf: f64,
    /// The wider of flange and gear head, mm.
    #[serde(rename = "obstruction_mm")]
    pub obstruction: f64,
    /// Highest speed marked on the disc, turns per minute.
    pub max_rpm: f64,
    /// Diameter of the hole in its middle, mm.
    #[serde(rename = "bore_mm")]
    pub bore: f64,
    /// What holds it together.
    pub bond: Bond,
    /// What it is kept for.
    #[serde(rename = "for")]
    pub usage: DiscUse,
}

/// What a disc is kept for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum DiscUse {
    /// Every cut.
    All,
    /// Straight cuts only.
    Straights,
    /// Curves only.
    Curves,
}

/// What holds a disc together.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Bond {
    /// Diamond on a steel body: it does not age.
    Diamond,
    /// Resin with fibre: it ages. Its last day as `YYYY-MM-DD`, empty when not known.
    Resin {
        /// The last day it may be used on.
        expires: String,
    },
}

/// A diamond hole saw.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct CoreBit {
    /// Outer diameter: that of the hole, mm.
    pub diameter: f64,
    /// Time for one hole, minutes.
    pub minutes: f64,
}
