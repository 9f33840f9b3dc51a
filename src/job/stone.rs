//! The stone, and what may be in it.

use serde::Serialize;

use crate::tables::stone::StoneKind;
use crate::units::Mass;

/// A value with the least and the most it may be.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Range {
    /// Least.
    pub low: f64,
    /// Likely.
    pub likely: f64,
    /// Most.
    pub high: f64,
}

/// The stone.
#[derive(Clone, Debug)]
pub struct Stone {
    /// The kind from the table, or a kind of the user's own.
    pub kind: StoneKind,
    /// Name as printed.
    pub name: String,
    /// Thickness readings, mm.
    pub thickness: Thickness,
    /// Density, kg/m³. When the slab was weighed the three are equal.
    pub density: Range,
    /// Flexural strength, `MPa`.
    pub strength_mpa: f64,
    /// Where the strength comes from, for the sheet.
    pub strength_source: String,
    /// The strength is divided by this.
    pub safety_factor: f64,
    /// Crystalline silica, share of mass 0 to 1.
    pub silica: Range,
    /// Whether rods, dowels or mesh of steel are in it.
    pub steel: Steel,
    /// What binds it.
    pub binder: Binder,
    /// What is known of asbestos minerals in it.
    pub asbestos: Asbestos,
    /// Weight of the whole slab on a scale.
    pub weighed: Option<Mass>,
    /// Weight of the whole slab by the seller's word.
    pub said: Option<Mass>,
}

/// Thickness readings, mm.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Thickness {
    /// Thinnest reading: decides bending.
    pub least: f64,
    /// Mean reading: decides weight.
    pub mean: f64,
    /// Thickest reading: decides whether the disc gets through.
    pub most: f64,
}

/// Steel in the stone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Steel {
    /// Not said.
    Unknown,
    /// Looked for and not there.
    None,
    /// Rods, dowels, mesh or screws.
    Some,
}

/// What binds the stone together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Binder {
    /// Not said.
    Unknown,
    /// Nothing: it grew so, a natural stone.
    Natural,
    /// Cement.
    Cement,
    /// Resin.
    Resin,
    /// Nothing but heat: fired or sintered, free of resin.
    Fired,
}

/// What is known of asbestos minerals in this slab.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Asbestos {
    /// Nobody tested it.
    NotTested,
    /// A laboratory or the quarry found none.
    TestedFree {
        /// Name or number of the report.
        report: String,
        /// Its date, `YYYY-MM-DD`.
        date: String,
    },
}
