//! Noise.

use kerfwright::hazard::noise::{
    hours_to, lex_8h, mean_level, niosh_minutes, osha_dose, osha_hours, osha_twa,
};
use kerfwright::tables::documents::BARBOSA;
use kerfwright::tables::region::{NoiseMeasure, RegionCode, RuleOrigin};
use kerfwright::tables::tool::CUTTING_NOISE_DB;

use crate::printed;

#[test]
fn action_and_limit() {
    // Directive 2003/10/EC, Art. 3 (R).
    let eu = RegionCode::Eu.record().noise;
    assert_eq!((eu.action_db, eu.duty_db, eu.limit_db), (80.0, 85.0, 87.0));
    assert_eq!(eu.measure, NoiseMeasure::EqualEnergy);
    // 29 CFR 1910.95 (R): 90 dBA for 8 hours; action at half the dose, 85 dBA.
    let us = RegionCode::Us.record().noise;
    assert_eq!((us.action_db, us.limit_db), (85.0, 90.0));
    assert_eq!(
        (us.measure, us.standing),
        (NoiseMeasure::OshaDose, RuleOrigin::Own)
    );
    printed(osha_twa(50.0), us.action_db, 0);
}

#[test]
fn iso_9612_annex_d() {
    // ISO 9612:2009 Annex D (Q).
    let planning = 70.0;
    let first = mean_level(&[80.1, 82.2, 79.6]);
    let second = mean_level(&[86.5, 92.4, 89.3, 93.2, 87.8, 86.2]);
    printed(first, 80.8, 1);
    printed(second, 90.1, 1);
    printed(
        lex_8h(&[(planning, 1.5), (first, 5.0), (second, 1.5)]),
        84.3,
        1,
    );
}

#[test]
fn iso_9612_annexes_e_and_f() {
    // ISO 9612:2009 Annex E (Q). The printed 88.1 follows from the mean rounded to 88.4 (C);
    // without rounding on the way it is 88.16.
    let e = mean_level(&[88.1, 86.1, 89.7, 86.5, 91.1, 86.7]);
    printed(e, 88.4, 1);
    printed(lex_8h(&[(88.4, 7.5)]), 88.1, 1);
    printed(lex_8h(&[(e, 7.5)]), 88.16, 2);
    // ISO 9612:2009 Annex F (Q).
    let f = mean_level(&[88.0, 91.9, 87.6, 90.4, 89.0, 88.4]);
    printed(lex_8h(&[(f, 9.25)]), 90.1, 1);
}

#[test]
fn the_level_over_eight_hours_of_eight_hours_is_itself() {
    printed(lex_8h(&[(85.0, 8.0)]), 85.0, 6);
    printed(hours_to(88.0, 85.0), 4.0, 1);
}

#[test]
fn osha_times() {
    // 29 CFR 1910.95 App. A (R).
    for (level, hours, decimals) in [
        (92.0, 6.1, 1),
        (95.0, 4.0, 1),
        (105.0, 1.0, 1),
        (113.0, 0.33, 2),
    ] {
        printed(osha_hours(level), hours, decimals);
    }
}

#[test]
fn osha_dose_and_average() {
    // 29 CFR 1910.95 App. A (R).
    let dose = osha_dose(&[(90.0, 4.0), (95.0, 2.0), (85.0, 2.0)]);
    printed(dose, 112.5, 1);
    printed(osha_twa(dose), 90.85, 2);
    printed(osha_twa(100.0), 90.0, 6);
}

#[test]
fn niosh_times() {
    // NIOSH (R).
    for (level, minutes) in [
        (88.0, 240.0),
        (91.0, 120.0),
        (94.0, 60.0),
        (97.0, 30.0),
        (100.0, 15.0),
    ] {
        printed(niosh_minutes(level), minutes, 0);
    }
}

#[test]
fn levels_of_machines_on_stone() {
    // IFA 4214 (R): 350 mm blade 105 to 107; Barbosa and Bertoli (R): up to 106.9 dB(A).
    assert_eq!(CUTTING_NOISE_DB.value, 107.0);
    assert!(BARBOSA.what.contains("106.9"));
}
