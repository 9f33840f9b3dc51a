//! Where a figure comes from and how sure it is.

use serde::Serialize;

/// How sure a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Sure {
    /// The source's own text was read.
    Read,
    /// Quoted by another document.
    Quoted,
    /// Computed from a published figure.
    Computed,
    /// From memory, not confirmed.
    Memory,
    /// Common practice without a published source.
    Practice,
    /// Our own judgement; the job file can change it.
    Judgement,
}

/// A source as it is printed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Source {
    /// What figure or rule it gives.
    pub what: &'static str,
    /// The document.
    pub document: &'static str,
    /// Clause, table or row; empty when the document is one page.
    pub clause: &'static str,
    /// Year of the edition; 0 when it has none.
    pub year: u16,
    /// How sure.
    pub sure: Sure,
}
