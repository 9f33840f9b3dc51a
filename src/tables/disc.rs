//! Speeds marked on cutting discs.

use super::{Source, Sure};

/// Colour stripes for the highest rim speed.
pub static EN_12413: Source = Source::new(
    "stripes for the highest rim speed: blue 50, yellow 63, red 80, green 100 m/s",
    "EN 12413",
    "",
    0,
    Sure::Quoted,
);

/// Rim speed that hand machines and their discs are built for, m/s: the red stripe.
pub const HAND_RIM_SPEED_M_S: f64 = 80.0;
/// Highest rim speed that a stripe stands for, m/s: the green stripe.
pub const HIGHEST_RIM_SPEED_M_S: f64 = 100.0;
/// Widest gap in the rim of a segmented disc, mm (IEC 62841-2-3).
pub const WIDEST_RIM_GAP_MM: f64 = 10.0;
