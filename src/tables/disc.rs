//! Marks and mountings of cutting discs.

/// Rim speed that hand machines and their discs are built for, m/s: the red stripe.
pub const HAND_RIM_SPEED_M_S: f64 = 80.0;
/// Highest rim speed that a stripe stands for, m/s: the green stripe.
pub const HIGHEST_RIM_SPEED_M_S: f64 = 100.0;
/// Widest gap in the rim of a segmented disc, mm (IEC 62841-2-3).
pub const WIDEST_RIM_GAP_MM: f64 = 10.0;
/// Bore of discs for hand machines and of the seat that carries them, mm.
pub const BORE_MM: f64 = 22.23;
/// How far bore and seat may differ, mm (judgement: 22.2 rubs, 22 does not go on).
pub const BORE_PLAY_MM: f64 = 0.05;
/// Longest life of a resin-bonded disc, years (EN 12413, quoted).
pub const RESIN_YEARS: f64 = 3.0;
/// Run of a new disc without load, minutes (IEC 62841-2-3, text read).
pub const TRIAL_RUN_MIN: f64 = 1.0;
