//! Signs for protective equipment (ISO 7010).

/// Hearing protection.
pub const EAR: &str = "M003";
/// Eye protection.
pub const EYE: &str = "M004";
/// Safety shoes.
pub const FOOT: &str = "M008";
/// Gloves.
pub const HAND: &str = "M009";
/// Respirator.
pub const BREATHING: &str = "M017";
