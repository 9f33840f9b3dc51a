//! Protection of the electric supply.

/// Greatest rated residual current of an RCD for portable machines outdoors, mA (BS 7671, quoted).
pub const RCD_MOST_MA: f64 = 30.0;
/// Leakage at which a class A GFCI must trip, mA (UL 943, text read).
pub const GFCI_TRIPS_MA: f64 = 6.0;
/// Leakage below which a class A GFCI must not trip, mA (UL 943, text read).
pub const GFCI_HOLDS_MA: f64 = 4.0;
/// Time in which it trips, about, ms (UL 943, text read).
pub const GFCI_TRIP_MS: f64 = 25.0;
/// Voltage of a site transformer with its centre earthed, V.
pub const CENTRE_TAPPED_V: f64 = 110.0;
/// Voltage to earth of either of its lines, V (quoted).
pub const CENTRE_TAPPED_TO_EARTH_V: f64 = CENTRE_TAPPED_V / 2.0;
