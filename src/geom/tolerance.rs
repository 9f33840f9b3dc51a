//! Lengths that geometry takes as nothing.

/// Two points closer than this are the same point, mm.
///
/// Far below what a tape or a disc can tell, far above the rounding of `f64` over ten metres.
pub const SAME_MM: f64 = 1e-6;

/// Greatest distance between an arc and the chords that stand in for it in booleans, mm.
pub const FLATTEN_MM: f64 = 0.01;
