//! Dust classes of vacuum cleaners and extractors.

/// Greatest share let through by a class L machine, 0 to 1.
pub const CLASS_L_PASSES: f64 = 0.01;
/// Greatest share let through by a class M machine, 0 to 1.
pub const CLASS_M_PASSES: f64 = 0.001;
/// Greatest share let through by a class H machine, 0 to 1.
pub const CLASS_H_PASSES: f64 = 0.000_05;
/// Share of particles of 0.3 µm held by a HEPA filter, 0 to 1 (text read).
pub const HEPA_HOLDS: f64 = 0.9997;
/// Share that OSHA's Table 1 asks an extractor's filter to hold, 0 to 1 (text read).
pub const OSHA_FILTER_HOLDS: f64 = 0.99;
