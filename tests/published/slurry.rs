//! Water and what is carried away.

use kerfwright::hazard::dust::water::ADVISED_L_MIN;
use kerfwright::hazard::slurry::{Caught, slurry};

use crate::printed;

#[test]
fn water_for_a_cut_off_saw() {
    // NIOSH, engineering controls for silica, cut-off saws (R): 0.5 litres (17 ounces) a minute.
    assert_eq!(ADVISED_L_MIN, 0.5);
    // 17 US fluid ounces of 29.5735 ml (C).
    printed(17.0 * 0.029_573_5, ADVISED_L_MIN, 1);
}

#[test]
fn slurry_is_water_and_stone() {
    // Half an hour at 0.5 l/min and a kilogram of stone of 2500 kg/m³ (C).
    let Caught::Slurry {
        water_l,
        slurry_kg,
        slurry_l,
        buckets,
    } = slurry(0.5, 30.0, 1000.0, 2500.0)
    else {
        panic!("it is slurry")
    };
    printed(water_l, 15.0, 1);
    printed(slurry_kg, 16.0, 1);
    printed(slurry_l, 15.4, 1);
    assert_eq!(buckets, 2.0);
}
