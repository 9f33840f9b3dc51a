//! Dust classes of vacuum cleaners and extractors.

use super::{Source, Sure};

/// Dust classes.
pub static EN_60335_2_69: Source = Source::new(
    "greatest share of dust let through: class L 1 %, M 0.1 %, H 0.005 %",
    "EN 60335-2-69",
    "",
    0,
    Sure::Quoted,
);

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

/// What is asked for where the dust classes are usual.
pub const M_OR_H: &str = "class M at least, class H for what lies about after the cuts";
/// The stricter of the two.
pub const H_ONLY: &str = "class H (lets through at most 0.005 %)";
/// What is asked for in the United States.
pub const HEPA: &str = "HEPA filter (99.97 % at 0.3 µm) for what lies about; an extractor's filter \
                        holds 99 % at least and is cleaned while it runs";
