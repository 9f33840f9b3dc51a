//! Protection of the supply.

use kerfwright::tables::supply::{
    CENTRE_TAPPED_TO_EARTH_V, GFCI_HOLDS_MA, GFCI_TRIPS_MA, RCD_MOST_MA,
};

#[test]
fn currents_and_voltages() {
    // BS 7671 (Q): 30 mA or less for portable equipment outdoors.
    assert_eq!(RCD_MOST_MA, 30.0);
    // UL 943 class A (R): trips at 6 mA, not below 4 mA.
    assert_eq!((GFCI_HOLDS_MA, GFCI_TRIPS_MA), (4.0, 6.0));
    // 110 V with the centre earthed (Q): 55 V to earth.
    assert_eq!(CENTRE_TAPPED_TO_EARTH_V, 55.0);
}
