//! Shares, places and verdicts.

use kerfwright::geom::Vector;
use kerfwright::handle::Verdict;
use kerfwright::handle::bend::{Beam, Orientation};
use kerfwright::handle::guideline::guideline;
use kerfwright::handle::lift::{self};
use kerfwright::handle::plate::{Spring, unilateral};
use kerfwright::tables::region::RegionCode;
use kerfwright::units::GRAVITY;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;

#[test]
fn shares_balance_the_load_and_nobody_pulls() {
    let mut spread = Spread(20_261_130);
    for round in 0..2000 {
        let count = 3 + round % 6;
        let held: Vec<Spring> = (0..count)
            .map(|_| Spring {
                at: spread.point(),
                stiffness: 0.2 + spread.next(),
            })
            .collect();
        // A load inside the triangle of the first three can always be held.
        let (a, b, c) = (held[0].at, held[1].at, held[2].at);
        let inner = a.midpoint(b).midpoint(c);
        if (b - a).cross(c - a).abs() < 1000.0 {
            continue;
        }
        let rest = unilateral(&held, 1.0, inner);
        let forces: Vec<f64> = rest.forces.iter().map(|f| f.unwrap_or(0.0)).collect();
        let about = |arm: fn(Vector) -> f64| -> f64 {
            let turns = held.iter().zip(&forces).map(|(s, f)| f * arm(s.at - inner));
            turns.sum()
        };
        close(forces.iter().sum(), 1.0, 1e-9);
        close(about(|v| v.x) / 2600.0, 0.0, 1e-9);
        close(about(|v| v.y) / 2600.0, 0.0, 1e-9);
        assert!(forces.iter().all(|f| *f >= -1e-12), "{forces:?}");
    }
}

#[test]
fn people_on_one_line_share_by_the_lever_and_tip_when_off_it() {
    let two = springs(&[(0.0, 0.0), (1000.0, 0.0)]);
    let level = unilateral(&two, 90.0, p(300.0, 0.0));
    close(level.forces[0].unwrap(), 63.0, 1e-9);
    close(level.off_balance_mm, 0.0, 1e-9);
    close(
        unilateral(&two, 90.0, p(300.0, 70.0)).off_balance_mm,
        70.0,
        1e-9,
    );
    // A load beyond the last of them cannot be held.
    close(
        unilateral(&two, 90.0, p(1200.0, 0.0)).off_balance_mm,
        200.0,
        1e-9,
    );
    assert!(
        unilateral(&[], 90.0, p(0.0, 0.0))
            .off_balance_mm
            .is_infinite()
    );
}

#[test]
fn proposed_places_are_on_the_edge_and_hold_the_stone() {
    for region in [rectangle(2400.0, 600.0), counter()] {
        for people in 2..=5 {
            let stone = load(region.clone(), 45.0);
            let lift = lifted(&stone, people, 25.0);
            assert_eq!(
                (lift.lifters.len(), lift.orientation),
                (people, Orientation::Flat)
            );
            close(lift.off_balance_mm, 0.0, 1e-6);
            for l in &lift.lifters {
                close(region.outer.distance(l.point), 0.0, 1e-6);
            }
        }
    }
    let even = lifted(&load(rectangle(2400.0, 600.0), 45.0), 3, 25.0);
    for l in &even.lifters {
        close(l.share.mass().kg(), 15.0, 1e-9);
    }
}

/// One person, and two at a stone too weak to hang from its ends, hold it on edge, apart from its middle.
#[test]
fn hands_ask_for_nothing_that_bending_forbids() {
    let stone = load(rectangle(2400.0, 600.0), 20.0);
    let one = lifted(&stone, 1, 25.0);
    assert_eq!(
        (one.orientation, one.lifters.len()),
        (Orientation::OnEdge, 1)
    );
    close(stone.region.outer.distance(one.lifters[0].point), 0.0, 1e-9);
    let strip = strip(&stone.region);
    let weight = 1.2 * GRAVITY * 20.0 / stone.region.area();
    let beam = Beam::new(&strip, slice(weight, 20.0));
    let ends = beam.worst(Orientation::Flat, [0.0, 2400.0]).stress_mpa;
    let rule = guideline(RegionCode::Eu);
    let lift = |allowed| lift::plan(&stone, &beam, allowed, &crew(2, 25.0), &[], &rule);
    // At the ends while they may be; then turned off them, nearer to a quarter of the length; then on edge.
    close(lift(1.001 * ends).lifters[0].from_end_mm, 0.0, 1e-6);
    for share in [0.9, 0.5, 0.3] {
        let two = lift(share * ends);
        let props = two.props(&beam, &stone.region).unwrap();
        let bent = beam.worst_held(two.orientation, &props).stress_mpa;
        assert!(two.orientation == Orientation::Flat && bent <= share * ends);
    }
    assert_eq!(lift(0.05 * ends).orientation, Orientation::OnEdge);
    // Too weak for anything: nobody is shown.
    let none = lift(1e-6 * ends);
    assert!(none.lifters.is_empty() && none.verdict == Verdict::Breaks);
}

#[test]
fn verdicts_name_what_is_wrong() {
    let verdict =
        |kg: f64, people| lifted(&load(rectangle(2400.0, 600.0), kg), people, 25.0).verdict;
    // Two people of 25 kg count on 2/3 of 50 kg; the figure is a filter to about twice.
    assert!(matches!(verdict(30.0, 2), Verdict::Within { utilisation } if utilisation < 1.0));
    assert!(matches!(verdict(35.0, 2), Verdict::Over { .. }));
    assert!(matches!(verdict(66.0, 2), Verdict::Over { .. }));
    assert!(
        matches!(verdict(67.0, 2), Verdict::NotAHandLift { team_limit } if (team_limit.kg() - 100.0 / 3.0).abs() < 1e-9)
    );
    assert!(matches!(
        verdict(40.0, 6),
        Verdict::TooManyHands { people: 6 }
    ));
    assert!(
        matches!(verdict(120.0, 4), Verdict::NotAHandLift { team_limit } if team_limit.kg() == 50.0)
    );
    assert!(matches!(verdict(120.0, 0), Verdict::NotAHandLift { .. }));
    // One long side given only: it tips.
    let stone = load(rectangle(2400.0, 600.0), 30.0);
    let places = [p(400.0, 0.0), p(2000.0, 0.0)];
    let one_side = held(&stone, &crew(2, 25.0), &places, &guideline(RegionCode::Eu));
    close(one_side.off_balance_mm, 300.0, 1e-9);
    assert!(matches!(one_side.verdict, Verdict::Tips { .. }));
}
