//! Protection of the electric supply.

use super::{Source, Sure};

/// Residual current devices, ground-fault interrupters, low voltage to earth.
pub static SUPPLY: Source = Source::new(
    "portable machines: RCD of 30 mA or less, or GFCI class A, or 110 V with the centre earthed",
    "BS 7671 (RCD); UL 943 (GFCI)",
    "",
    0,
    Sure::Quoted,
);

/// Greatest rated residual current of an RCD for portable machines outdoors, mA (BS 7671, quoted).
pub const RCD_MOST_MA: f64 = 30.0;
/// Leakage at which a class A GFCI must trip, mA (UL 943, text read).
pub const GFCI_TRIPS_MA: f64 = 6.0;
/// Leakage below which a class A GFCI must not trip, mA (UL 943, text read).
pub const GFCI_HOLDS_MA: f64 = 4.0;
/// Voltage of a site transformer with its centre earthed, V.
pub const CENTRE_TAPPED_V: f64 = 110.0;
/// Voltage to earth of either of its lines, V (quoted).
pub const CENTRE_TAPPED_TO_EARTH_V: f64 = CENTRE_TAPPED_V / 2.0;
