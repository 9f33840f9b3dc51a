//! How a heavy waste piece leaves the bench: how many people, flat or on edge.

use kerfwright::geom::{Pose, Region, Vector};
use kerfwright::handle::bend::Orientation;
use kerfwright::handle::waste::Leaves;
use kerfwright::handle::{Free, Load, Loads, Marks};
use kerfwright::job::Aid;
use kerfwright::units::{Mass, MassRange};

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;
use crate::whole_job::whole_job;

/// How a piece leaves the bench of a job for so many people. Granite of the whole job: 30 mm, about 81 kg/m².
fn leaves(region: Region, kg: f64, people: usize, aid: Aid, flawed: bool) -> Option<Leaves> {
    let mut job = whole_job(aid);
    job.lift.people = people;
    let mass = Mass::from_kg(kg);
    let free = Free {
        name: "W1".into(),
        after_cut: 1,
        mass: MassRange {
            low: mass,
            likely: mass,
            high: mass,
        },
        region: Some(region),
        flawed,
    };
    let stone = |name: &str| Load::of(&job.stone, name, rectangle(2000.0, 600.0));
    let loads = Loads {
        slab: stone("slab as delivered"),
        states: Vec::new(),
        top: stone("finished top"),
        waste: vec![free],
        marks: Marks::default(),
    };
    let pose = Pose::new(0.0, Vector::default());
    let (handling, _) = kerfwright::handle::assess(&job, &loads, pose);
    handling.waste[0].leaves
}

const fn in_hands(people: usize, orientation: Orientation) -> Leaves {
    Leaves::InHands {
        people,
        orientation,
    }
}

#[test]
fn one_person_carries_what_is_light() {
    assert_eq!(
        leaves(rectangle(700.0, 300.0), 17.0, 2, Aid::None, false),
        None
    );
}

#[test]
fn a_compact_piece_goes_flat_between_two_people() {
    // 700 × 450, 26 kg: two of 20 and more count on two thirds of their sum. Held at its long sides it hangs
    // 350 mm out: σ = 6·M/(b·t²) = 3·w·l²/(b·t²), about 0.5 MPa with handling.
    let got = leaves(rectangle(700.0, 450.0), 26.0, 2, Aid::None, false);
    assert_eq!(got, Some(in_hands(2, Orientation::Flat)));
    // With a fissure through it, on edge.
    let got = leaves(rectangle(700.0, 450.0), 26.0, 2, Aid::None, true);
    assert_eq!(got, Some(in_hands(2, Orientation::OnEdge)));
}

#[test]
fn a_long_strip_goes_on_edge() {
    // 4600 × 72, 29 kg: even a fifth in from its ends an even strip is bent to M = q·l²·(3 − 2√2)/8 (Gere). By
    // hand, with the handling factor: q = 1.2·29·9.81/4.6 = 74 N/m, M = 33.6 N·m,
    // σ = 6·33.6/(0.072·0.0296²)/10⁶ = 3.2 MPa; granite may take 8.27/3 = 2.8 MPa.
    let got = leaves(rectangle(4600.0, 72.0), 29.0, 2, Aid::None, false);
    assert_eq!(got, Some(in_hands(2, Orientation::OnEdge)));
    // Half as long it may lie flat.
    let got = leaves(rectangle(2300.0, 144.0), 29.0, 2, Aid::None, false);
    assert_eq!(got, Some(in_hands(2, Orientation::Flat)));
}

#[test]
fn what_the_people_of_the_job_cannot_take_wants_more_or_an_aid() {
    let strip = || rectangle(1500.0, 450.0);
    // More than two people may count on, less than four may.
    let most = |people| match leaves(strip(), 45.0, people, Aid::None, false) {
        Some(Leaves::WantsMore { people, .. }) => people,
        other => panic!("{other:?}"),
    };
    assert!(most(2) > 2);
    assert_eq!(
        leaves(strip(), 45.0, 2, Aid::Trolley, false),
        Some(Leaves::WithAid(Aid::Trolley))
    );
    assert_eq!(
        leaves(strip(), 200.0, 4, Aid::None, false),
        Some(Leaves::SawnAcross)
    );
    assert_eq!(
        leaves(strip(), 200.0, 4, Aid::Gantry, false),
        Some(Leaves::WithAid(Aid::Gantry))
    );
}
