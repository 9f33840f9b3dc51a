//! Protection of the electric supply.

use super::{Source, Sure};

/// Every kind of protection that counts.
pub static SUPPLY: Source = Source::new(
    "portable machines: RCD of 30 mA or less, or GFCI class A, or 110 V with the centre earthed",
    "BS 7671 (RCD); UL 943 (GFCI)",
    "",
    0,
    Sure::Quoted,
);
/// Residual current devices.
pub static RCD: Source = Source::new(
    "portable equipment outdoors: RCD of 30 mA or less",
    "BS 7671",
    "",
    0,
    Sure::Quoted,
);
/// Ground-fault interrupters.
pub static GFCI: Source = Source::new(
    "GFCI class A: trips at 6 mA, not below 4 mA, in about 25 ms",
    "UL 943",
    "",
    0,
    Sure::Read,
);

/// What is asked for where residual current devices are usual.
pub const RCD_30: &str = "RCD of 30 mA or less at the socket, tested with its button before use";
/// The same, with the British site supply.
pub const RCD_30_OR_110: &str = "110 V with the centre earthed (55 V to earth) on a site, otherwise an RCD of 30 mA or less at the \
     socket, tested with its button before use";
/// What is asked for where ground-fault interrupters are usual.
pub const GFCI_A: &str =
    "GFCI class A (trips at 6 mA) at the outlet, tested with its button before use";

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
