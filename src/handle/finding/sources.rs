//! What the findings of handling rest on.

/// A vacuum lifter is to be rated for this many times the mass.
pub(super) const VACUUM_FACTOR: f64 = 2.0;

pub(super) const LIFT_SOURCE: &str = "HSE L23, paragraphs 119 and 120, 2016";
pub(super) const BEND_SOURCE: &str =
    "beam theory, σ = 6M/(b·t²); handling factor 1.2, PCI Journal 2010";
