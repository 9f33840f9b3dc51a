//! Speeds of discs.

use kerfwright::hazard::disc::{rim_speed_m_s, rpm_at};
use kerfwright::tables::disc::{
    BORE_MM, HAND_RIM_SPEED_M_S, HIGHEST_RIM_SPEED_M_S, RESIN_YEARS, TRIAL_RUN_MIN,
    WIDEST_RIM_GAP_MM,
};
use kerfwright::tables::documents::EN_12413;

use crate::printed;

#[test]
fn turns_a_minute_at_eighty_metres_a_second() {
    // v = πDn/60000 (C).
    for (diameter, rpm) in [
        (115.0, 13_286.0),
        (125.0, 12_223.0),
        (150.0, 10_186.0),
        (180.0, 8_488.0),
        (230.0, 6_643.0),
        (300.0, 5_093.0),
        (350.0, 4_365.0),
    ] {
        printed(rpm_at(diameter, 80.0), rpm, 0);
        // Half a turn a minute is less than 0.01 m/s on the largest disc.
        printed(rim_speed_m_s(diameter, rpm), 80.0, 1);
    }
}

#[test]
fn marks_printed_on_discs_are_the_formula_rounded() {
    // Printed marks: 125 mm 12 200; 230 mm 6 600 or 6 650.
    for (diameter, mark) in [(125.0, 12_200.0), (230.0, 6_600.0), (230.0, 6_650.0)] {
        // Rounded by the makers: within one part in a hundred.
        assert!((rim_speed_m_s(diameter, mark) - 80.0).abs() < 0.8);
    }
}

#[test]
fn stripes_and_gaps() {
    // EN 12413 (Q): blue 50, yellow 63, red 80, green 100 m/s.
    assert_eq!((HAND_RIM_SPEED_M_S, HIGHEST_RIM_SPEED_M_S), (80.0, 100.0));
    for stripe in ["blue 50", "yellow 63", "red 80", "green 100"] {
        assert!(EN_12413.what.contains(stripe));
    }
    // IEC 62841-2-3 (R): gap of a segmented rim at most 10 mm.
    assert_eq!(WIDEST_RIM_GAP_MM, 10.0);
}

#[test]
fn bore_age_and_trial_run() {
    // oSa marking guide (Q): 7/8 in is 22.23 mm, not 22 or 22.2.
    printed(7.0 / 8.0 * 25.4, BORE_MM, 2);
    // EN 12413, as several sellers quote it (Q): three years from making.
    assert_eq!(RESIN_YEARS, 3.0);
    // IEC 62841-2-3 (R): a new disc runs one minute without load.
    assert_eq!(TRIAL_RUN_MIN, 1.0);
}
