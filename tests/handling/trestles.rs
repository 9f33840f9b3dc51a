//! Trestles under every state of the stone while it is cut.

use kerfwright::geom::{Pose, Vector};
use kerfwright::handle::bench::{Lies, Places};
use kerfwright::handle::{Handling, Load, Loads, Marks, assess};
use kerfwright::job::Aid;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;
use crate::whole_job::whole_job;

fn stone(name: &str, from: f64, to: f64, width: f64) -> Load {
    let corners = [(from, 0.0), (to, 0.0), (to, width), (from, width)];
    let kg = (to - from) * width * 30.0 * 2900e-9;
    Load {
        name: name.to_owned(),
        after_cut: name.rsplit(' ').next().and_then(|n| n.parse().ok()),
        ..load(plate(&corners), kg)
    }
}

fn handled(states: Vec<Load>, trestles: &[f64]) -> (Handling, Vec<&'static str>) {
    let mut job = whole_job(Aid::Trolley);
    job.lift.trestles = trestles.to_vec();
    let top = states.last().cloned().unwrap();
    let loads = Loads {
        slab: stone("slab as delivered", 0.0, 2600.0, 900.0),
        states,
        top,
        waste: Vec::new(),
        marks: Marks::default(),
    };
    let (handling, findings) = assess(&job, &loads, Pose::new(0.0, Vector::default()));
    (
        handling,
        findings
            .stops
            .iter()
            .map(kerfwright::diag::Finding::id)
            .collect(),
    )
}

#[test]
fn one_place_serves_all_states_when_it_can() {
    let states = vec![
        stone("after cut 1", 0.0, 2600.0, 640.0),
        stone("after cut 2", 0.0, 2150.0, 640.0),
    ];
    let (handling, stops) = handled(states.clone(), &[]);
    assert!(!stops.contains(&"falls-off-trestles"));
    assert_eq!(handling.bench.len(), 1);
    let bench = &handling.bench[0];
    assert_eq!(
        (bench.from.as_str(), bench.to.as_str()),
        ("slab as delivered", "after cut 2")
    );
    let Lies::Judged {
        stress_mpa,
        verdict,
        ..
    } = &bench.lies
    else {
        panic!("{:?}", bench.lies);
    };
    assert!(!verdict.is_above());
    // The lever: the trestles bear the whole slab, about its middle as much on either side.
    let [one, two] = bench.bears.unwrap().map(kerfwright::units::Mass::kg);
    let slab = &handling.slab;
    close(one + two, slab.mass.high.kg(), 1e-9);
    let middle = slab.length_mm / 2.0;
    let [first, second] = bench.at_mm;
    close(one * (middle - first), two * (second - middle), 1e-6);
    // No pair on a grid serves them better.
    for first in 0..12 {
        for second in 0..12 {
            let pair = [f64::from(first) * 80.0, 1325.0 + f64::from(second) * 70.0];
            let (tried, _) = handled(states.clone(), &pair);
            if let Lies::Judged {
                stress_mpa: other, ..
            } = tried.bench[0].lies
            {
                assert!(
                    other >= stress_mpa * 0.998,
                    "{pair:?}: {other} against {stress_mpa}"
                );
            }
        }
    }
}

#[test]
fn trestles_are_moved_when_the_stone_left_does_not_reach_them() {
    // What is left lies wholly left of the slab's balance point.
    let states = vec![stone("after cut 1", 0.0, 1200.0, 900.0)];
    let (handling, stops) = handled(states, &[]);
    assert!(!stops.contains(&"falls-off-trestles"));
    let from: Vec<&str> = handling.bench.iter().map(|b| b.from.as_str()).collect();
    assert_eq!(from, ["slab as delivered", "after cut 1"]);
    for (bench, length) in handling.bench.iter().zip([2600.0, 1200.0]) {
        assert_eq!(bench.places, Places::Proposed);
        assert!(bench.at_mm[1] <= length);
        close(bench.at_mm[0] / length, 0.2071, 0.002);
        close(bench.at_mm[1] / length, 0.7929, 0.002);
    }
}

#[test]
fn given_trestles_that_drop_the_stone_are_a_stop() {
    let states = vec![stone("after cut 1", 0.0, 1200.0, 900.0)];
    let (handling, stops) = handled(states.clone(), &[500.0, 2100.0]);
    assert!(stops.contains(&"falls-off-trestles"));
    assert_eq!(
        handling.bench[0].lies,
        Lies::Falls {
            state: "after cut 1".to_owned()
        }
    );
    let (handling, stops) = handled(
        vec![stone("after cut 1", 0.0, 2300.0, 900.0)],
        &[500.0, 2100.0],
    );
    assert!(!stops.contains(&"falls-off-trestles"));
    assert_eq!(handling.bench[0].places, Places::Given);
    // The trestles are told as lines across the slab.
    close(handling.bench[0].lines[0][0].x, 500.0, 1e-9);
    close(handling.bench[0].lines[0][1].y, 900.0, 1e-9);
}

#[test]
fn states_that_change_nothing_are_not_told() {
    let same = stone("after cut 1", 0.0, 2600.0, 900.0);
    let states = vec![same, stone("after cut 2", 0.0, 2600.0, 640.0)];
    let (handling, _) = handled(states, &[]);
    let names: Vec<&str> = handling.pieces().map(|p| p.name.as_str()).collect();
    assert_eq!(names, ["slab as delivered", "after cut 2", "after cut 2"]);
}
