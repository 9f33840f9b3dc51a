//! Hand-arm vibration.

use kerfwright::hazard::vibration::{a8, minutes_to, points, shares};
use kerfwright::tables::region::{RegionCode, RuleOrigin};
use kerfwright::tables::tool::{CUTTING_VIBRATION_M_S2, VIBRATION_UNCERTAINTY};

use crate::printed;

#[test]
fn action_and_limit() {
    // Directive 2002/44/EC, Art. 3 (R).
    for region in RegionCode::ALL {
        let values = region.record().vibration;
        assert_eq!((values.action_m_s2, values.limit_m_s2), (2.5, 5.0));
    }
    assert_eq!(
        RegionCode::Us.record().vibration.standing,
        RuleOrigin::Borrowed
    );
    assert_eq!(RegionCode::Eu.record().vibration.standing, RuleOrigin::Own);
}

#[test]
fn points_at_action_and_limit() {
    // HSE (R): 100 points are the action value, 400 the limit value, over 8 h.
    printed(points(2.5, 8.0), 100.0, 0);
    printed(points(5.0, 8.0), 400.0, 0);
    // HSE ready-reckoner, cell 5 m/s² and 3 h (R).
    printed(points(5.0, 3.0), 150.0, 0);
}

#[test]
fn five_reaches_action_after_two_hours_and_limit_after_eight() {
    // R.
    printed(minutes_to(5.0, 2.5).unwrap(), 120.0, 1);
    printed(minutes_to(5.0, 5.0).unwrap(), 480.0, 1);
    assert_eq!(minutes_to(0.0, 2.5), None);
}

#[test]
fn one_tool() {
    // ISO 5349-2:2001 E.2.1 (Q).
    printed(a8(&[(7.4, 2.5)]), 4.1, 1);
    printed(a8(&[(7.4, 2.5)]), 4.137, 3);
    // ISO 5349-2:2001 E.2.4 (Q): 4000 s.
    let hours = 4000.0 / 3600.0;
    printed(a8(&[(14.6, hours)]), 5.4, 1);
    printed(a8(&[(14.6, hours)]), 5.441, 3);
}

#[test]
fn three_tools() {
    // ISO 5349-2:2001 E.3 (Q).
    let spells = [(4.6, 2.0), (6.0, 1.0), (3.6, 2.0)];
    for (spell, part) in spells.iter().zip([2.3, 2.1, 1.8]) {
        printed(a8(&[*spell]), part, 1);
    }
    printed(a8(&spells), 3.6, 1);
    printed(a8(&spells), 3.610, 3);
    // ISO 5349-1:2001 5.3 (Q).
    let spells = [(2.0, 1.0), (3.5, 3.0), (10.0, 0.5)];
    printed(a8(&spells), 3.4, 1);
    printed(a8(&spells), 3.368, 3);
}

#[test]
fn the_european_guide() {
    // EU good practice guide (M).
    let spells = [(4.0, 2.5), (3.0, 1.0), (20.0, 0.25)];
    for (spell, (part, its_points)) in spells.iter().zip([(2.2, 80.0), (1.1, 18.0), (3.5, 200.0)]) {
        printed(a8(&[*spell]), part, 1);
        printed(points(spell.0, spell.1), its_points, 0);
    }
    printed(a8(&spells), 4.3, 1);
    printed(
        spells.iter().map(|(a, hours)| points(*a, *hours)).sum(),
        298.0,
        0,
    );
}

#[test]
fn a_grinder_on_stone() {
    // HSE stonemasonry Table 1 (R): 4 to 13, use 9 m/s².
    let a = CUTTING_VIBRATION_M_S2;
    assert_eq!((a.low, a.likely, a.high), (4.0, 9.0, 13.0));
    // C.
    printed(points(a.likely, 1.0), 162.0, 0);
    printed(minutes_to(a.likely, 2.5).unwrap(), 37.0, 1);
    printed(minutes_to(a.likely, 5.0).unwrap(), 148.1, 1);
    // HSE OC 246/31 (R): 40 % when none is stated.
    assert_eq!(VIBRATION_UNCERTAINTY.value, 0.4);
}

#[test]
fn work_is_split_so_that_none_is_over() {
    // 400 points are the limit, 100 the action value (R); computed (C).
    assert_eq!(shares(298.0, 2.5), 3.0);
    assert_eq!(shares(298.0, 5.0), 1.0);
    assert_eq!(shares(400.0, 5.0), 1.0);
    assert_eq!(shares(401.0, 5.0), 2.0);
    assert_eq!(shares(0.0, 2.5), 1.0);
}
