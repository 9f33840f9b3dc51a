//! Whose rules apply.

use serde::Serialize;

/// A region with rules of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum RegionCode {
    /// European Union.
    Eu,
    /// Germany.
    De,
    /// Netherlands.
    Nl,
    /// Norway.
    No,
    /// United Kingdom.
    Uk,
    /// United States.
    Us,
    /// California.
    UsCa,
    /// Quebec.
    CaQc,
    /// Australia.
    Au,
    /// New Zealand.
    Nz,
    /// Anywhere else.
    Other,
}
