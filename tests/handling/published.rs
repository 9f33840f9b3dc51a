//! Printed answers, the source beside each.

use std::f64::consts::{FRAC_PI_2, PI};

use kerfwright::geom::{Arc, Outline, Point, Seg};
use kerfwright::handle::PeopleNeeded;
use kerfwright::handle::bend::{Beam, Orientation};
use kerfwright::handle::guideline::{L23_TABLE, guideline, team_factor};
use kerfwright::handle::lift::{people_needed, team_limit};
use kerfwright::handle::niosh::{
    METRIC, OFF_TRESTLES, Task, US_CUSTOMARY, lifting_index, recommended_weight_limit,
};
use kerfwright::handle::plate::{bilateral, unilateral};
use kerfwright::handle::strip::BeamProfile;
use kerfwright::handle::trestles::best_supports;
use kerfwright::tables::region::RegionCode;
use kerfwright::units::Mass;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;

#[test]
fn published_gere_marble_slab_on_two_supports() {
    let strip = strip(&rectangle(915.0, 305.0));
    let beam = Beam::new(&strip, slice(10.28 / 305.0, 22.0));
    let [s1, s2] = best_supports(&beam);
    let share = (2.0_f64.sqrt() - 1.0) / 2.0;
    close(s1, share * 915.0, 1e-3);
    close(s2, (1.0 - share) * 915.0, 1e-3);
    close(s1, 189.5, 0.05);
    close(
        beam.worst(Orientation::Flat, [s1, s2]).stress_mpa,
        7.5,
        0.005,
    );
}

// CE board examination, December 2014 (read): 10 m, 15 kN/m, overhang 2 m: 37.5 kN·m in the
// middle; with 2.5 m none there; greatest moment least with a span of 5.86 m.
#[test]
fn published_ce_board_beam() {
    let strip = strip(&rectangle(10_000.0, 100.0));
    let beam = Beam::new(&strip, slice(15.0 / 100.0, 100.0));
    let worst = beam.worst(Orientation::Flat, [2000.0, 8000.0]);
    close(worst.moment_nm, 37_500.0, 0.01);
    close(worst.at_mm, 5000.0, 0.1);
    // No moment in the middle: the worst is the overhang's own, q·a²/2.
    let level = beam.worst(Orientation::Flat, [2500.0, 7500.0]);
    close(level.moment_nm, -46_875.0, 0.01);
    let [s1, s2] = best_supports(&beam);
    close((s2 - s1) / 1000.0, 5.86, 0.005);
}

// Textbook problem (answer computed): steel bar 15 × 30, 6 m, 7850 kg/m³, on its ends under its
// own weight with the 30 upright and 9.81 m/s²: 69.31 MPa. Once flat, once on edge.
#[test]
fn published_steel_bar_under_its_own_weight() {
    let ends = [0.0, 6000.0];
    let flat = strip(&rectangle(6000.0, 15.0));
    let stress = |s: &BeamProfile, n, t, orientation| {
        Beam::new(s, slice(n, t))
            .worst(orientation, ends)
            .stress_mpa
    };
    let density = 7850e-9 * 9.81;
    close(
        stress(&flat, density * 30.0, 30.0, Orientation::Flat),
        69.31,
        0.005,
    );
    let edge = strip(&rectangle(6000.0, 30.0));
    close(
        stress(&edge, density * 15.0, 15.0, Orientation::OnEdge),
        69.31,
        0.005,
    );
}

// Printed as 54, 29, −4, 21 in a trade forum (quoted): four equal springs at the corners of
// 6 × 4 ft, 100 t at (2, 1) ft off centre. On three they are plain statics.
#[test]
fn published_four_springs_and_the_one_that_lifts_off() {
    let corners = springs(&[(3.0, 2.0), (3.0, -2.0), (-3.0, -2.0), (-3.0, 2.0)]);
    let pull = bilateral(&corners, 100.0, p(2.0, 1.0));
    for (got, want) in pull.iter().zip([54.17, 29.17, -4.17, 20.83]) {
        close(*got, want, 0.005);
    }
    let rest = unilateral(&corners, 100.0, p(2.0, 1.0));
    assert_eq!(rest.forces[2], None);
    for (i, want) in [(0, 175.0 / 3.0), (1, 25.0), (3, 50.0 / 3.0)] {
        close(rest.forces[i].unwrap(), want, 1e-9);
    }
    close(rest.off_balance_mm, 0.0, 1e-9);
}

// Quoted: three-legged table, side 900, 500 N at 325 from A and 625 from B: 291.98, 116.05, 91.97.
#[test]
fn published_triangle_table() {
    let x = (325.0_f64.powi(2) - 625.0_f64.powi(2) + 900.0 * 900.0) / 1800.0;
    let y = (325.0_f64.powi(2) - x * x).sqrt();
    let legs = springs(&[(0.0, 0.0), (900.0, 0.0), (450.0, 900.0 * 0.75_f64.sqrt())]);
    let forces = bilateral(&legs, 500.0, p(x, y));
    for (got, want) in forces.iter().zip([291.98, 116.05, 91.97]) {
        close(*got, want, 0.005);
    }
}

fn us(horizontal: f64, height: f64, travel: f64, turn_deg: f64, fm: f64, cm: f64) -> f64 {
    let task = Task {
        horizontal,
        height,
        travel,
        turn_deg,
        frequency: fm,
        coupling: cm,
    };
    recommended_weight_limit(&task, &US_CUSTOMARY)
}

// NIOSH 94-110, revised 2021, examples 2, 4 and 5 (read), at full precision where the document
// rounds its multipliers.
#[test]
fn published_niosh_examples() {
    close(us(15.0, 27.0, 17.0, 0.0, 1.0, 0.90), 27.70, 0.006);
    close(us(20.0, 10.0, 17.0, 0.0, 1.0, 0.90), 18.06, 0.006);
    close(us(10.0, 22.0, 37.0, 0.0, 0.88, 0.95), 34.81, 0.006);
    close(us(20.0, 59.0, 37.0, 0.0, 0.88, 1.0), 15.25, 0.006);
    close(us(20.0, 44.0, 37.0, 30.0, 0.80, 1.0), 14.34, 0.006);
    close(us(20.0, 7.0, 37.0, 30.0, 0.80, 1.0), 13.26, 0.006);
    close(lifting_index(35.0, 27.70), 1.3, 0.05);
    close(lifting_index(35.0, 18.06), 1.9, 0.05);
}

#[test]
fn the_lifting_equation_ends_where_it_says() {
    let limit = |change: fn(&mut Task)| {
        let mut task = OFF_TRESTLES;
        change(&mut task);
        recommended_weight_limit(&task, &METRIC)
    };
    close(limit(|_| ()), 23.0 * 25.0 / 40.0 * 0.90, 1e-12);
    assert_eq!(limit(|t| t.horizontal = 63.1), 0.0);
    assert_eq!(limit(|t| t.height = 176.0), 0.0);
    assert_eq!(limit(|t| t.travel = 176.0), 0.0);
    assert_eq!(limit(|t| t.turn_deg = 136.0), 0.0);
    close(limit(|t| t.horizontal = 10.0), 23.0 * 0.90, 1e-12);
}

// HSE L23, paragraphs 119 and 120 (read and quoted): two people of 20 kg 26.6, three of 50 kg 75.
#[test]
fn published_team_factors() {
    let of = |kg: f64, people: usize| {
        team_limit(
            &vec![Mass::from_kg(kg); people],
            Mass::from_kg(25.0),
            people,
        )
        .kg()
    };
    close(of(20.0, 2), 26.6, 0.1);
    close(of(50.0, 3), 75.0, 1e-12);
    assert_eq!((team_factor(5), team_factor(0)), (None, None));
}

// HSE L23 (quoted), ISO 11228-1 (weakly quoted), NIOSH 94-110 (read).
#[test]
fn published_guideline_weights() {
    close(guideline(RegionCode::Uk).each.kg(), 25.0, 0.0);
    close(guideline(RegionCode::Eu).each.kg(), 25.0, 0.0);
    close(guideline(RegionCode::Us).each.kg(), 23.0, 0.0);
    // A region that is not on file takes the strictest: the column for women, at every height.
    close(guideline(RegionCode::Other).each.kg(), 16.0, 0.0);
    close(
        guideline(RegionCode::Other).at_height(1500.0).kg(),
        7.0,
        0.0,
    );
    for region in RegionCode::ALL {
        let record = region.record().hand_lift.one_person_kg;
        close(guideline(region).each.kg(), record, 0.0);
    }
    assert_eq!(L23_TABLE[2].women_kg, (16.0, 10.0));
    let needed = |kg: f64| people_needed(Mass::from_kg(kg), &[], Mass::from_kg(25.0));
    assert_eq!(needed(25.0), PeopleNeeded::AtLeast(1));
    assert_eq!(needed(33.0), PeopleNeeded::AtLeast(2));
    assert_eq!(needed(50.0), PeopleNeeded::AtLeast(4));
    assert_eq!(needed(50.1), PeopleNeeded::MoreThanATeam);
}

// Exact definition, 1 lb = 0.45359237 kg.
#[test]
fn published_two_hundred_kilograms_in_pounds() {
    close(Mass::from_kg(200.0).pounds(), 440.92, 0.005);
}

// Gere ch. 12 (read): semicircle centroid 4r/3π from the diameter. Beer & Johnston 5.1, 5.2, 5.5
// and 5.6 (read): two rectangles, a triangle beside a rectangle, plates less half and whole circles.
#[test]
fn published_balance_points() {
    let half = |centre: Point, radius: f64, start: f64| Arc {
        centre,
        radius,
        start,
        sweep: PI,
    };
    let disc = Outline::new(vec![
        Seg::Arc(half(p(0.0, 0.0), 320.0, 0.0)),
        Seg::Line(p(-320.0, 0.0), p(320.0, 0.0)),
    ]);
    close(disc.unwrap().centroid().y, 4.0 * 320.0 / (3.0 * PI), 1e-9);

    let beside = plate(&[
        (-8.0, 6.0),
        (0.0, 6.0),
        (0.0, 0.0),
        (16.0, 0.0),
        (16.0, 12.0),
        (-8.0, 12.0),
    ]);
    close(beside.centroid().x, 5.60, 0.005);
    close(beside.centroid().y, 6.60, 0.005);
    let joined = plate(&[(0.0, 0.0), (165.0, 0.0), (165.0, 75.0), (60.0, 75.0)]);
    close(joined.area(), 10_125.0, 1e-9);
    close(joined.centroid().x, 96.4, 0.05);
    close(joined.centroid().y, 34.7, 0.05);

    let mut bitten = rectangle(120.0, 200.0);
    let bite = Outline::new(vec![
        Seg::Arc(half(p(120.0 - 1e-3, 120.0), 60.0, FRAC_PI_2)),
        Seg::Line(p(120.0 - 1e-3, 60.0), p(120.0 - 1e-3, 180.0)),
    ]);
    bitten.holes.push(bite.unwrap());
    close(bitten.area(), 18_345.0, 0.5);
    close(bitten.centroid().x, 49.4, 0.05);
    close(bitten.centroid().y, 93.8, 0.05);

    let mut holed = rectangle(14.0, 20.0);
    holed
        .holes
        .push(Outline::circle(p(6.0, 12.0), 4.0).unwrap());
    close(holed.area(), 229.73, 0.005);
    close(holed.centroid().x, 7.22, 0.005);
    close(holed.centroid().y, 9.56, 0.005);
}
