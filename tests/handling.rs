//! Lifting, bending and setting down against published examples, statics and a second method.

use std::f64::consts::{FRAC_PI_2, PI};

use kerfwright::geom::{Arc, Outline, Point, Pose, Region, Seg, Vector};
use kerfwright::handle::Load;
use kerfwright::handle::axes::Axes;
use kerfwright::handle::bend::{Beam, Lie, Slice};
use kerfwright::handle::guideline::{L23_TABLE, guideline, team_factor};
use kerfwright::handle::lift::{
    self, Lift, PeopleNeeded, Share, Verdict, people_needed, team_limit,
};
use kerfwright::handle::niosh::{
    METRIC, OFF_TRESTLES, Task, US_CUSTOMARY, lifting_index, recommended_weight_limit,
};
use kerfwright::handle::plate::{Spring, linear, settled};
use kerfwright::handle::strip::Strip;
use kerfwright::handle::support::{BearingVerdict, Standing, setting};
use kerfwright::handle::trestles::best_supports;
use kerfwright::job::{self, Aid, Support, SupportPlace};
use kerfwright::tables::region::RegionCode;
use kerfwright::units::{Mass, MassRange};

fn close(got: f64, want: f64, within: f64) {
    assert!(
        (got - want).abs() <= within,
        "{got} is not {want} ± {within}"
    );
}

fn p(x: f64, y: f64) -> Point {
    Point::new(x, y)
}

fn plate(corners: &[(f64, f64)]) -> Region {
    let corners: Vec<Point> = corners.iter().map(|c| p(c.0, c.1)).collect();
    Region::solid(Outline::polygon(&corners).unwrap())
}

fn rectangle(length: f64, width: f64) -> Region {
    plate(&[(0.0, 0.0), (length, 0.0), (length, width), (0.0, width)])
}

/// A counter top of 2150 × 640 with a semicircular right end and a round bowl hole.
fn counter() -> Region {
    let end = Arc {
        centre: p(1830.0, 320.0),
        radius: 320.0,
        start: -FRAC_PI_2,
        sweep: PI,
    };
    let outer = Outline::new(vec![
        Seg::Line(p(0.0, 0.0), p(1830.0, 0.0)),
        Seg::Arc(end),
        Seg::Line(p(1830.0, 640.0), p(0.0, 640.0)),
        Seg::Line(p(0.0, 640.0), p(0.0, 0.0)),
    ]);
    Region {
        outer: outer.unwrap(),
        holes: vec![Outline::circle(p(620.0, 330.0), 180.0).unwrap()],
    }
}

fn load(region: Region, kg: f64) -> Load {
    let mass = Mass::from_kg(kg);
    Load {
        name: "stone".to_owned(),
        region,
        mass: MassRange {
            low: mass,
            likely: mass,
            high: mass,
        },
    }
}

fn strip(region: &Region) -> Strip {
    Strip::new(region, Axes::of(region))
}

fn slice(weight_n_per_mm2: f64, thickness_mm: f64) -> Slice {
    Slice {
        weight_n_per_mm2,
        thickness_mm,
    }
}

fn springs(at: &[(f64, f64)]) -> Vec<Spring> {
    let one = |a: &(f64, f64)| Spring {
        at: p(a.0, a.1),
        stiffness: 1.0,
    };
    at.iter().map(one).collect()
}

fn crew(people: usize, kg: f64) -> job::Lift {
    job::Lift {
        people,
        each: vec![Mass::from_kg(kg); people],
        each_is_guideline: true,
        stand: vec![],
        aid: Aid::None,
    }
}

fn lifted(load: &Load, people: usize, kg: f64) -> Lift {
    let rule = guideline(RegionCode::Eu);
    let axes = Axes::of(&load.region);
    lift::plan(load, &axes, &crew(people, kg), &[], &rule)
}

/// A repeatable spread of numbers in [0, 1): the "minimal standard" multiplier 48271 modulo
/// 2³¹ − 1 (Park, Miller and Stockmeyer 1993).
struct Spread(u64);

impl Spread {
    fn next(&mut self) -> f64 {
        self.0 = self.0 * 48_271 % 2_147_483_647;
        f64::from(u32::try_from(self.0).unwrap()) / 2_147_483_647.0
    }

    fn point(&mut self) -> Point {
        p(2600.0 * self.next(), 900.0 * self.next())
    }
}

// Gere, Mechanics of Materials, 7th ed., problem 5.6-18 (read): L 915, b 305, t 22, 7.5 MPa:
// 10.28 kN/m with the supports at 0.2071 L.
#[test]
fn published_gere_marble_slab_on_two_supports() {
    let strip = strip(&rectangle(915.0, 305.0));
    let beam = Beam::new(&strip, slice(10.28 / 305.0, 22.0));
    let [s1, s2] = best_supports(&beam);
    let share = (2.0_f64.sqrt() - 1.0) / 2.0;
    close(s1, share * 915.0, 1e-3);
    close(s2, (1.0 - share) * 915.0, 1e-3);
    close(s1, 189.5, 0.05);
    close(beam.worst(Lie::Flat, [s1, s2]).stress_mpa, 7.5, 0.005);
}

// CE board examination, December 2014 (read): 10 m, 15 kN/m, overhang 2 m: 37.5 kN·m in the
// middle; with 2.5 m none there; greatest moment least with a span of 5.86 m.
#[test]
fn published_ce_board_beam() {
    let strip = strip(&rectangle(10_000.0, 100.0));
    let beam = Beam::new(&strip, slice(15.0 / 100.0, 100.0));
    let worst = beam.worst(Lie::Flat, [2000.0, 8000.0]);
    close(worst.moment_nm, 37_500.0, 0.01);
    close(worst.at_mm, 5000.0, 0.1);
    // No moment in the middle: the worst is the overhang's own, q·a²/2.
    let level = beam.worst(Lie::Flat, [2500.0, 7500.0]);
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
    let stress = |s: &Strip, n, t, lie| Beam::new(s, slice(n, t)).worst(lie, ends).stress_mpa;
    let density = 7850e-9 * 9.81;
    close(stress(&flat, density * 30.0, 30.0, Lie::Flat), 69.31, 0.005);
    let edge = strip(&rectangle(6000.0, 30.0));
    close(
        stress(&edge, density * 15.0, 15.0, Lie::OnEdge),
        69.31,
        0.005,
    );
}

// Printed as 54, 29, −4, 21 in a trade forum (quoted): four equal springs at the corners of
// 6 × 4 ft, 100 t at (2, 1) ft off centre. On three they are plain statics.
#[test]
fn published_four_springs_and_the_one_that_lifts_off() {
    let corners = springs(&[(3.0, 2.0), (3.0, -2.0), (-3.0, -2.0), (-3.0, 2.0)]);
    let pull = linear(&corners, 100.0, p(2.0, 1.0));
    for (got, want) in pull.iter().zip([54.17, 29.17, -4.17, 20.83]) {
        close(*got, want, 0.005);
    }
    let rest = settled(&corners, 100.0, p(2.0, 1.0));
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
    let forces = linear(&legs, 500.0, p(x, y));
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
        let rest = settled(&held, 1.0, inner);
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
    let level = settled(&two, 90.0, p(300.0, 0.0));
    close(level.forces[0].unwrap(), 63.0, 1e-9);
    close(level.off_balance_mm, 0.0, 1e-9);
    close(
        settled(&two, 90.0, p(300.0, 70.0)).off_balance_mm,
        70.0,
        1e-9,
    );
    // A load beyond the last of them cannot be held.
    close(
        settled(&two, 90.0, p(1200.0, 0.0)).off_balance_mm,
        200.0,
        1e-9,
    );
    assert!(settled(&[], 90.0, p(0.0, 0.0)).off_balance_mm.is_infinite());
}

#[test]
fn proposed_places_are_on_the_edge_and_hold_the_stone() {
    for region in [rectangle(2400.0, 600.0), counter()] {
        for people in 2..=5 {
            let stone = load(region.clone(), 45.0);
            let lift = lifted(&stone, people, 25.0);
            assert_eq!(lift.lifters.len(), people);
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

#[test]
fn verdicts_name_what_is_wrong() {
    let verdict =
        |kg: f64, people| lifted(&load(rectangle(2400.0, 600.0), kg), people, 25.0).verdict;
    assert!(matches!(verdict(30.0, 2), Verdict::Within { utilisation } if utilisation < 1.0));
    assert!(matches!(verdict(40.0, 2), Verdict::Over { .. }));
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
    let axes = Axes::of(&stone.region);
    let one_side = lift::plan(
        &stone,
        &axes,
        &crew(2, 25.0),
        &places,
        &guideline(RegionCode::Eu),
    );
    close(one_side.off_balance_mm, 300.0, 1e-9);
    assert!(matches!(one_side.verdict, Verdict::Tips { .. }));
}

/// The moment at every slice's middle by a plain sum over slices of the sampled stone, and the
/// greatest stress: nothing shared with the library but the question "inside or not".
fn summed_stress(region: &Region, supports: [f64; 2], q: f64, t: f64, slices: u32) -> f64 {
    let step = 2150.0 / f64::from(slices);
    let rows = 640_u32;
    let widths: Vec<f64> = (0..slices)
        .map(|i| {
            let x = (f64::from(i) + 0.5) * step;
            let hit = |r: &u32| {
                let at = p(x, (f64::from(*r) + 0.5) * 640.0 / f64::from(rows));
                region.side(at) == kerfwright::geom::Side::Inside
            };
            let count = u32::try_from((0..rows).filter(hit).count()).unwrap();
            f64::from(count) * 640.0 / f64::from(rows)
        })
        .collect();
    let at = |i: usize| (f64::from(u32::try_from(i).unwrap()) + 0.5) * step;
    let loads: Vec<f64> = widths.iter().map(|b| q * b * step).collect();
    let total: f64 = loads.iter().sum();
    let turn: f64 = loads.iter().enumerate().map(|(i, w)| w * at(i)).sum();
    let second = (turn - total * supports[0]) / (supports[1] - supports[0]);
    let reactions = [total - second, second];
    // Second differences: M″ = −w, stepped from the free end.
    let (mut shear, mut moment, mut most) = (0.0, 0.0, 0.0_f64);
    for (i, w) in loads.iter().enumerate() {
        for (s, r) in supports.iter().zip(reactions) {
            let here = (*s - (at(i) - 0.5 * step)) / step;
            if (0.0..1.0).contains(&here) {
                shear += r;
                moment -= r * here * step;
            }
        }
        moment += shear * step - 0.5 * w * step;
        shear -= w;
        if widths[i] > 100.0 {
            most = most.max(moment.abs() * 6.0 / (widths[i] * t * t));
        }
    }
    most
}

#[test]
fn bending_agrees_with_a_stepped_sum_on_a_holed_round_ended_top() {
    let region = counter();
    let strip = strip(&region);
    close(strip.area() / region.area(), 1.0, 1e-9);
    close(strip.middle(), region.centroid().x, 1e-6);
    let (q, t) = (30.0 * 2900e-9 * 9.806_65 * 1.2, 29.6);
    let beam = Beam::new(&strip, slice(q, t));
    let best = best_supports(&beam);
    for supports in [[0.0, 2150.0], [300.0, 1700.0], best] {
        let exact = beam.worst(Lie::Flat, supports).stress_mpa;
        let stepped = summed_stress(&region, supports, q, t, 1075);
        close(exact / stepped, 1.0, 0.015);
    }
    // No pair of supports on a grid does better than the best.
    let least = beam.worst(Lie::Flat, best).stress_mpa;
    for i in 0..40 {
        for j in 0..40 {
            let tried = [f64::from(i) * 20.0, 2150.0 - f64::from(j) * 20.0];
            assert!(beam.worst(Lie::Flat, tried).stress_mpa >= least * (1.0 - 1e-9));
        }
    }
}

#[test]
fn a_turned_or_mirrored_stone_is_as_strong_and_as_heavy_to_lift() {
    let region = counter();
    let pose = Pose::new(0.3, Vector::new(170.0, 90.0));
    let turned = Region {
        outer: region.outer.posed(pose),
        holes: region.holes.iter().map(|h| h.posed(pose)).collect(),
    };
    // Half a turn swaps the ends the distances are counted from.
    let about = Pose::new(PI, Vector::new(0.0, 0.0));
    let swapped = Region {
        outer: region.outer.posed(about),
        holes: region.holes.iter().map(|h| h.posed(about)).collect(),
    };
    let mut mirrored = region.clone();
    mirrored.holes = vec![Outline::circle(p(620.0, 310.0), 180.0).unwrap()];
    let best = |r: &Region| {
        let strip = strip(r);
        let beam = Beam::new(&strip, slice(1e-3, 30.0));
        let supports = best_supports(&beam);
        (supports, beam.worst(Lie::Flat, supports).stress_mpa)
    };
    let ([s1, s2], stress) = best(&region);
    for (other, ends) in [
        (&turned, [s1, s2]),
        (&mirrored, [s1, s2]),
        (&swapped, [2150.0 - s2, 2150.0 - s1]),
    ] {
        let (supports, same) = best(other);
        close(same / stress, 1.0, 1e-9);
        close(supports[0], ends[0], 1e-3);
        close(supports[1], ends[1], 1e-3);
    }
    let (here, there) = (
        lifted(&load(region, 45.0), 4, 25.0),
        lifted(&load(turned, 45.0), 4, 25.0),
    );
    for (a, b) in here.lifters.iter().zip(&there.lifters) {
        close(pose.apply(a.point).distance(b.point), 0.0, 1e-6);
        close(a.share.mass().kg(), b.share.mass().kg(), 1e-9);
    }
}

#[test]
fn a_slab_out_of_square_is_as_strong_on_edge_as_a_square_one() {
    // Its ends run out into corners a few mm long; held at those ends it is still a deep beam.
    let square = rectangle(1810.0, 607.0);
    let skew = plate(&[(0.0, 0.0), (1812.0, -3.0), (1806.0, 604.0), (4.0, 611.0)]);
    let stress = |region: &Region| {
        let strip = strip(region);
        let beam = Beam::new(&strip, slice(1e-3, 39.0));
        beam.worst(Lie::OnEdge, [0.0, strip.length_mm()]).stress_mpa
    };
    close(stress(&skew) / stress(&square), 1.0, 0.02);
}

#[test]
fn tilting_up_takes_the_lever_share_at_the_far_edge() {
    let stone = load(plate(&[(0.0, 0.0), (3000.0, 0.0), (0.0, 900.0)]), 90.0);
    let axes = Axes::of(&stone.region);
    let tilts = lift::tilts(&stone, &axes);
    close(tilts[0].share + tilts[1].share, 1.0, 1e-12);
    let least = tilts[0].share.min(tilts[1].share);
    close(least, 1.0 / 3.0, 1e-12);
}

fn rail(x: f64, limit: Option<f64>) -> Support {
    Support {
        what: format!("rail at {x}"),
        place: SupportPlace::Line(p(x, 0.0), p(x, 600.0)),
        limit: limit.map(Mass::from_kg),
    }
}

#[test]
fn supports_share_by_length_and_place() {
    let top = load(rectangle(2000.0, 600.0), 100.0);
    let pose = Pose::new(0.0, Vector::new(0.0, 0.0));
    let rails = [rail(100.0, Some(40.0)), rail(1900.0, None)];
    let set = setting(&top, &rails, pose).unwrap();
    close(set.bearings[0].share.mass().kg(), 50.0, 1e-9);
    assert!(matches!(
        set.bearings[0].verdict,
        BearingVerdict::Over { .. }
    ));
    assert_eq!(set.bearings[1].verdict, BearingVerdict::NoLimitGiven);
    assert_eq!(set.stands, Standing::Balanced);
    // A third rail far out to one side is left in the air by two on the other.
    let far = [rail(900.0, None), rail(1100.0, None), rail(1990.0, None)];
    let set = setting(&top, &far, pose).unwrap();
    let total: f64 = set.bearings.iter().map(|b| b.share.mass().kg()).sum();
    close(total, 100.0, 1e-9);
    let outside = [rail(1200.0, None), rail(1900.0, None)];
    assert_eq!(
        setting(&top, &outside, pose).unwrap().stands,
        Standing::Tips
    );
    assert_eq!(
        setting(&top, &outside, pose).unwrap().bearings[1].share,
        Share::LiftsOff
    );
    let beside = [rail(2500.0, None)];
    assert_eq!(
        setting(&top, &beside, pose).unwrap().stands,
        Standing::NotSupported
    );
    assert_eq!(setting(&top, &[], pose), None);
}

/// A small job in the open with four people and a granite slab.
fn whole_job(aid: Aid) -> job::Job {
    let shape = |naming, l: f64, w: f64| {
        let corners = vec![p(0.0, 0.0), p(l, 0.0), p(l, w), p(0.0, w)];
        job::Shape::new(naming, corners, vec![job::CornerCut::Sharp; 4]).unwrap()
    };
    let range = |likely| job::Range {
        low: likely,
        likely,
        high: likely,
    };
    job::Job {
        heading: job::Heading::default(),
        region: RegionCode::Eu,
        units: kerfwright::units::LengthUnit::Millimetre,
        stone: job::Stone {
            kind: kerfwright::tables::stone::StoneKind::Granite,
            name: "granite".to_owned(),
            thickness: job::Thickness {
                least: 29.6,
                mean: 30.0,
                most: 30.4,
            },
            density: range(2900.0),
            strength_mpa: 8.27,
            strength_source: "ASTM C615".to_owned(),
            safety_factor: 3.0,
            silica: range(0.3),
            weighed: None,
            said: None,
        },
        slab: job::Slab {
            shape: shape(job::Naming::Letters, 2640.0, 905.0),
            edges: vec![job::EdgeState::Sawn; 4],
            flaws: vec![],
            tape_error_mm: 1.0,
            vein_deg: None,
        },
        top: job::Top {
            shape: shape(job::Naming::Numbers, 2150.0, 640.0),
            finishes: vec![job::Finish::Saw; 4],
            allowances: job::Allowances {
                polish_mm: 1.0,
                ease_mm: 0.5,
                saw_mm: 0.0,
            },
            vein: job::VeinWish::Any,
        },
        supports: vec![rail(100.0, Some(20.0)), rail(2000.0, None)],
        place: job::PlaceWish {
            how: job::PlaceHow::Search,
            least_strip_mm: 10.0,
        },
        machine: job::Machine {
            kind: job::MachineKind::AngleGrinder,
            rpm: 9800.0,
            power: job::Power::Battery,
            wet_rated: true,
            protected: job::Protection::Battery,
            plate_mm: 6.0,
            vibration: job::Vibration { a: 6.5, k: 1.5 },
            noise_db: 104.0,
        },
        discs: vec![],
        guide: job::Guide {
            length_mm: 1400.0,
            offset_mm: 118.0,
            overlap_mm: 150.0,
        },
        circle_jig: job::CircleJig {
            offset_mm: 96.0,
            reach_mm: (150.0, 900.0),
        },
        passes: job::Passes {
            score_mm: 2.0,
            step_mm: 6.0,
            plunge_step_mm: 10.0,
            through_mm: 3.0,
            cusp_mm: 0.5,
            rate_cm2_per_min: 25.0,
            rate_is_guess: true,
            far_end_mm: 60.0,
            curve_factor: 3.0,
            set_up_min: 10.0,
        },
        dust: job::Dust {
            place: job::Place::Outdoors,
            method: job::DustMethod::Water,
            airflow_m3h: 0.0,
            respirator: job::Respirator::Ffp3,
            mask_fit_tested: true,
            hours_today: 0.0,
        },
        lift: job::Lift {
            aid,
            ..crew(4, 25.0)
        },
        assumed: vec![],
    }
}

#[test]
fn the_findings_stop_a_hand_lift_that_is_none() {
    let (slab, top) = (
        load(rectangle(2640.0, 905.0), 206.0),
        load(counter(), 110.0),
    );
    let pose = Pose::new(0.0, Vector::default());
    let found = |aid| kerfwright::handle::assess(&whole_job(aid), &slab, &top, pose);
    let ids = |list: &[kerfwright::diag::Finding]| list.iter().map(|f| f.id).collect::<Vec<_>>();
    let (handling, bare) = found(Aid::None);
    let stops = ids(&bare.stops);
    assert_eq!(
        stops.iter().filter(|id| **id == "not-a-hand-lift").count(),
        2
    );
    assert!(stops.contains(&"support-over-limit"));
    let (_, aided) = found(Aid::Trolley);
    assert!(!ids(&aided.stops).contains(&"not-a-hand-lift"));
    let cautions = ids(&aided.cautions);
    for id in [
        "not-a-hand-lift",
        "carry-on-edge",
        "crush-and-falls",
        "guideline-is-not-a-limit",
    ] {
        assert!(cautions.contains(&id), "{id} is missing from {cautions:?}");
    }
    // 206 kg: a vacuum lifter for 412 kg, printed in full.
    assert!(
        bare.stops[0].detail.contains("412.0 kg"),
        "{}",
        bare.stops[0].detail
    );
    let edge = &handling.top.strength;
    assert!(edge.ends_on_edge.worst.stress_mpa < edge.ends_only.worst.stress_mpa);
    close(edge.integration.area_error, 0.0, 1e-9);
    for given in handling.top.bendings() {
        assert!(given.worst.stress_mpa.is_finite());
    }
    assert!(!handling.sources.is_empty());
    serde_json::to_string(&handling).unwrap();
}
