//! The top on its supports: weak ones, overhangs, spans, a person leaning on it.

use kerfwright::geom::{Outline, Point, Pose, Region, Seg, Vector};
use kerfwright::handle::lean::Spot;
use kerfwright::handle::overhang::ReachLimit;
use kerfwright::handle::support::{Setting, Standing, setting};
use kerfwright::handle::{Load, Marks};
use kerfwright::job::{self, Aid, Support, SupportPlace};
use kerfwright::units::GRAVITY;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;
use crate::whole_job::whole_job;

fn line(a: (f64, f64), b: (f64, f64), stiffness: f64) -> Support {
    Support {
        what: format!("line at {}", a.0),
        place: SupportPlace::Line(p(a.0, a.1), p(b.0, b.1)),
        limit: None,
        stiffness,
    }
}

fn side(x: f64, stiffness: f64) -> Support {
    line((x, 50.0), (x, 550.0), stiffness)
}

fn edges(region: &Region) -> Marks {
    let named = region.outer.segs().iter().enumerate();
    Marks {
        edges: named
            .map(|(i, s)| (format!("edge {}", i + 1), *s))
            .collect(),
        ..Marks::default()
    }
}

fn set(top: &Load, supports: Vec<Support>, thickness: f64, pose: Pose) -> Setting {
    let mut job = whole_job(Aid::None);
    job.stone.thickness = job::Thickness {
        least: thickness,
        mean: thickness,
        most: thickness,
    };
    job.supports = supports;
    setting(top, &job, &edges(&top.region), pose).unwrap()
}

const STILL: Pose = Pose::new(0.0, Vector::new(0.0, 0.0));

fn slab(kg: f64) -> Load {
    load(rectangle(2000.0, 600.0), kg)
}

fn carried(setting: &Setting) -> Vec<f64> {
    let each = setting.bearings.iter();
    each.map(|b| b.share.mass().kg()).collect()
}

/// Equal spans under an even load: what each support carries of one span's load. Hicks, Civil Engineering
/// Formulas, table 2.1 (sums of the shears on both sides); two and three spans also in any beam table.
const EVEN_SPANS: [&[f64]; 4] = [
    &[3.0 / 8.0, 10.0 / 8.0, 3.0 / 8.0],
    &[4.0 / 10.0, 11.0 / 10.0, 11.0 / 10.0, 4.0 / 10.0],
    &[
        11.0 / 28.0,
        32.0 / 28.0,
        26.0 / 28.0,
        32.0 / 28.0,
        11.0 / 28.0,
    ],
    &[
        15.0 / 38.0,
        43.0 / 38.0,
        37.0 / 38.0,
        37.0 / 38.0,
        43.0 / 38.0,
        15.0 / 38.0,
    ],
];

#[test]
fn supports_at_even_spans_carry_what_the_tables_of_continuous_beams_say() {
    // Long spans of thin stone on walls: they give next to nothing beside the stone.
    const SPAN: f64 = 1500.0;
    for parts in EVEN_SPANS {
        let sum: f64 = parts.iter().sum();
        let spans = f64::from(u32::try_from(parts.len()).unwrap() - 1);
        close(sum, spans, 1e-12);
        let places = (0..parts.len()).map(|i| SPAN * f64::from(u32::try_from(i).unwrap()));
        let supports = places.map(|x| line((x, 0.0), (x, 600.0), 1.0)).collect();
        let top = load(rectangle(SPAN * spans, 600.0), 60.0 * spans);
        let kg = carried(&set(&top, supports, 20.0, STILL));
        // A rigid top shares evenly: where that is more, it is told.
        let even = 60.0 * spans / (spans + 1.0);
        for (got, part) in kg.iter().zip(parts) {
            let want = even.max(60.0 * part);
            close(*got, want, 0.005 * want);
        }
    }
}

#[test]
fn a_support_in_the_middle_of_three_rails_along_the_top_carries_as_a_beam_across() {
    // The same table across the top: two spans of 300 between front, middle and back rail. So short a span is
    // stiffer than a wall gives way, so the middle one carries less than 10/8 and more than an even third. By
    // hand, springs `k` a millimetre of rail: `R·(c + 3/2k) = W·(5c/8 + 1/2k)` with `c = l³/48EI`, l = 600.
    let rail = |y: f64| line((0.0, y), (2000.0, y), 1.0);
    let kg = carried(&set(
        &slab(110.0),
        vec![rail(0.0), rail(300.0), rail(600.0)],
        20.0,
        STILL,
    ));
    let c = 600.0_f64.powi(3) / (48.0 * 70_000.0 * 20.0_f64.powi(3) / 12.0);
    let by_hand = 110.0 * (0.625 * c + 0.5 / 600.0) / (c + 1.5 / 600.0);
    close(kg[1], by_hand, 0.01 * by_hand);
    close(kg[0], 110.0 / 3.0, 1e-6);
}

#[test]
fn a_weak_support_carries_in_proportion_to_its_stiffness() {
    // One in the middle of the stone, where it does not tilt. Rigid, they share as they are stiff: 50, 50, 10.
    // Bent over walls the middle one carries more. By hand, equal deflections of stone and supports:
    // `R·(l³/48EI + 1/2k + 1/k') = W·(5l³/384EI + 1/2k)`.
    let supports = vec![
        line((0.0, 50.0), (0.0, 550.0), 1.0),
        line((2000.0, 50.0), (2000.0, 550.0), 1.0),
        side(1000.0, 0.2),
    ];
    let kg = carried(&set(&slab(110.0), supports, 30.0, STILL));
    let bends = 2000.0_f64.powi(3) / (70_000.0 * 600.0 * 30.0_f64.powi(3) / 12.0);
    let ends = 0.5 / (600.0 * 500.0);
    let middle = 1.0 / (0.2 * 600.0 * 500.0);
    let by_hand = 110.0 * (5.0 / 384.0 * bends + ends) / (bends / 48.0 + ends + middle);
    assert!(by_hand > 60.0);
    for (got, want) in kg.iter().zip([50.0, 50.0, by_hand]) {
        close(*got, want, 1e-3 * want);
    }
}

#[test]
fn shares_hold_the_top_for_random_supports() {
    let mut spread = Spread(99);
    for _ in 0..60 {
        let mut supports = vec![side(100.0, 1.0), side(1900.0, 0.3 + 0.7 * spread.next())];
        for _ in 0..4 {
            let end = |s: &mut Spread| (50.0 + 1900.0 * s.next(), 30.0 + 540.0 * s.next());
            let (a, b) = (end(&mut spread), end(&mut spread));
            supports.push(line(a, b, 0.05 + 0.95 * spread.next()));
        }
        let setting = set(&slab(110.0), supports, 30.0, STILL);
        // Each is the most of several ways to share: no less than all of it together, no more than all for one.
        let kg = carried(&setting);
        assert!(kg.iter().sum::<f64>() >= 110.0 - 1e-9);
        assert!(kg.iter().all(|kg| (0.0..=110.0 + 1e-6).contains(kg)));
        let tied: f64 = setting.bearings.iter().map(|b| b.if_tied_down_kg).sum();
        close(tied, 110.0, 1e-9);
        close(setting.off_balance_mm.unwrap(), 0.0, 1e-9);
        // A person adds to some support, and never more than the person weighs to all.
        let leaning = setting.leaning.unwrap();
        assert_eq!(leaning.tips_at, None);
        for (bearing, most) in setting.bearings.iter().zip(&leaning.carried) {
            assert!(bearing.with_person.kg() >= bearing.share.mass().kg());
            assert!(most.kg() <= 110.0 + 1000.0 / GRAVITY + 1e-6);
        }
    }
}

#[test]
fn overhangs_are_measured_square_to_the_edge_and_limited_by_thickness_and_width() {
    let supports = vec![side(100.0, 1.0), side(1700.0, 1.0)];
    let setting = set(&slab(110.0), supports.clone(), 30.0, STILL);
    let of = |setting: &Setting, edge: &str| {
        let found = setting.overhangs.iter().find(|o| o.edge == edge);
        found.unwrap_or_else(|| panic!("{edge}")).clone()
    };
    let right = of(&setting, "edge 2");
    close(right.overhang_mm, 300.0, 1e-9);
    assert_eq!(right.limit, ReachLimit::UpTo { limit_mm: 250.0 });
    assert!(right.is_over());
    assert_eq!(setting.overhangs[0], right);
    // A third of 600 is less than 250.
    let front = of(&setting, "edge 1");
    close(front.overhang_mm, 50.0, 1e-9);
    assert_eq!(front.limit, ReachLimit::UpTo { limit_mm: 200.0 });
    // Thin and thinner.
    let thin = |t: f64| of(&set(&slab(110.0), supports.clone(), t, STILL), "edge 2").limit;
    assert_eq!(thin(20.0), ReachLimit::UpTo { limit_mm: 150.0 });
    assert_eq!(thin(12.0), ReachLimit::NonePublished);
    // By hand: 300 mm beyond, the person's 1 kN 250 out on 300 mm, spread to 550 from the end of the
    // line; own weight over the whole 600.
    let own = GRAVITY * 110.0 / 2000.0 / 600.0 * 300.0 * 150.0;
    let stress = 6.0 * (own + 1000.0 * 250.0 / 550.0) / 900.0;
    close(right.person_mpa.unwrap(), stress, 1e-9);
    // 50 mm beyond: half the strip the person bears on, 25 out, in the middle of a long line.
    let own = GRAVITY * 110.0 / 2000.0 / 600.0 * 50.0 * 25.0;
    let stress = 6.0 * (own + 500.0 * 25.0 / 325.0) / 900.0;
    close(front.person_mpa.unwrap(), stress, 1e-9);
}

#[test]
fn a_cutout_in_the_line_of_the_support_takes_from_it() {
    let supports = vec![
        line((50.0, 200.0), (1950.0, 200.0), 1.0),
        line((50.0, 580.0), (1950.0, 580.0), 1.0),
    ];
    let whole = set(&slab(110.0), supports.clone(), 30.0, STILL);
    let mut top = rectangle(2000.0, 600.0);
    let hole = [
        p(900.0, 150.0),
        p(1100.0, 150.0),
        p(1100.0, 400.0),
        p(900.0, 400.0),
    ];
    top.holes.push(Outline::polygon(&hole).unwrap());
    let holed = set(&load(top, 105.0), supports, 30.0, STILL);
    let front = |s: &Setting| {
        s.overhangs
            .iter()
            .find(|o| o.edge == "edge 1")
            .unwrap()
            .clone()
    };
    close(front(&whole).overhang_mm, 200.0, 1e-9);
    // By hand: the shelf is 2000 × 200. The person bears 150 out; at an end of the line the weight
    // spreads over 450 of it, over the cutout, 200 of 600 missing, over 400.
    let own = |kg: f64, area: f64, net: f64| GRAVITY * kg / area * 400_000.0 * 100.0 / net;
    let stress = |own: f64, over: f64| 6.0 * (own + 1000.0 * 150.0 / over) / 900.0;
    let one = stress(own(110.0, 1_200_000.0, 2000.0), 450.0);
    close(front(&whole).person_mpa.unwrap(), one, 1e-9);
    let other = stress(own(105.0, 1_150_000.0, 1800.0), 400.0);
    close(front(&holed).person_mpa.unwrap(), other, 1e-9);
}

#[test]
fn the_free_span_is_the_distance_of_parallel_supports() {
    let between = |supports: Vec<Support>| set(&slab(110.0), supports, 30.0, STILL).span.unwrap();
    let sides = between(vec![side(100.0, 1.0), side(900.0, 1.0), side(1900.0, 1.0)]);
    close(sides.span_mm, 1000.0, 1e-2);
    assert!(sides.is_over());
    // Front and back rail as well: their distance is the less.
    let framed = between(vec![
        side(100.0, 1.0),
        side(1900.0, 1.0),
        line((100.0, 50.0), (1900.0, 50.0), 1.0),
        line((100.0, 550.0), (1900.0, 550.0), 1.0),
    ]);
    close(framed.span_mm, 500.0, 1e-2);
    assert!(!framed.is_over());
}

#[test]
fn a_person_on_the_end_tips_a_top_that_reaches_far_out() {
    let tips = |x: f64, kg: f64| {
        let supports = vec![side(300.0, 1.0), side(x, 1.0)];
        set(&slab(kg), supports, 30.0, STILL)
            .leaning
            .unwrap()
            .tips_at
    };
    // About x = 1400: 90 kg on 400 mm against a person on 600 mm.
    let at: Point = tips(1400.0, 90.0).unwrap();
    close(at.x, 2000.0, 1e-9);
    assert_eq!(tips(1900.0, 90.0), None);
}

/// A rigid top tips over the rim of its one foot: statics about the rim, `kg·g·r` against the person's
/// `1 kN·(reach - r)`.
#[test]
fn a_top_on_one_wide_foot_lies_still_until_a_person_leans_beyond_it() {
    let round = |across: f64, kg: f64| {
        let top = load(rectangle(1000.0, 1000.0), kg);
        let foot = Support {
            what: "foot".into(),
            place: SupportPlace::Pad(p(500.0, 500.0), across),
            limit: None,
            stiffness: 1.0,
        };
        set(&top, vec![foot], 30.0, STILL)
    };
    let narrow = round(300.0, 90.0);
    assert_eq!(narrow.stands, Standing::Balanced);
    let mass = narrow.bearings[0].share.mass().kg();
    close(mass, 90.0, 1e-9);
    assert!(mass * GRAVITY * 150.0 < 1000.0 * (500.0 - 150.0));
    assert!(narrow.leaning.unwrap().tips_at.is_some());
    // The person stands at the ends of the middle line or in the corners: 707 from the middle at most.
    assert!(mass * GRAVITY * 470.0 > 1000.0 * (707.2 - 470.0));
    assert_eq!(round(980.0, 90.0).leaning.unwrap().tips_at, None);
}

#[test]
fn a_turned_job_is_set_down_the_same_and_a_mirrored_one_in_mirror_image() {
    let mut top = rectangle(2000.0, 600.0);
    top.holes
        .push(Outline::circle(p(700.0, 320.0), 150.0).unwrap());
    let supports = || vec![side(60.0, 1.0), side(900.0, 0.4), side(1650.0, 1.0)];
    let here = set(&load(top.clone(), 100.0), supports(), 30.0, STILL);
    let same = |there: &Setting, order: [usize; 3]| {
        for (i, j) in order.into_iter().enumerate() {
            let (a, b) = (&here.bearings[i], &there.bearings[j]);
            close(a.share.mass().kg(), b.share.mass().kg(), 1e-6);
            close(a.with_person.kg(), b.with_person.kg(), 1e-6);
        }
        let (a, b) = (
            here.leaning.as_ref().unwrap(),
            there.leaning.as_ref().unwrap(),
        );
        close(a.stress_mpa / b.stress_mpa, 1.0, 1e-6);
        close(
            here.span.unwrap().span_mm,
            there.span.unwrap().span_mm,
            1e-2,
        );
        close(
            here.overhangs[0].overhang_mm,
            there.overhangs[0].overhang_mm,
            1e-6,
        );
        let person = |s: &Setting| s.overhangs[0].person_mpa.unwrap();
        close(person(&here), person(there), 1e-6);
    };
    let pose = Pose::new(0.9, Vector::new(400.0, -100.0));
    let turned = Region {
        outer: top.outer.posed(pose),
        holes: top.holes.iter().map(|h| h.posed(pose)).collect(),
    };
    same(
        &set(&load(turned, 100.0), supports(), 30.0, pose),
        [0, 1, 2],
    );
    let mirror = |s: &Seg| match *s {
        Seg::Line(a, b) => Seg::Line(p(2000.0 - b.x, b.y), p(2000.0 - a.x, a.y)),
        Seg::Arc(_) => panic!("the outline is straight"),
    };
    let segs = top.outer.segs().iter().rev().map(mirror).collect();
    let mirrored = Region {
        outer: Outline::new(segs).unwrap(),
        holes: vec![Outline::circle(p(1300.0, 320.0), 150.0).unwrap()],
    };
    let others = vec![side(350.0, 1.0), side(1100.0, 0.4), side(1940.0, 1.0)];
    same(&set(&load(mirrored, 100.0), others, 30.0, STILL), [2, 1, 0]);
}

/// A top with a sink opening, its front rail 80 wide and its back rail 120; sides at the given places.
fn with_sink(sides: &[f64]) -> Setting {
    let mut region = rectangle(2000.0, 600.0);
    let hole = [
        p(1100.0, 80.0),
        p(1500.0, 80.0),
        p(1500.0, 480.0),
        p(1100.0, 480.0),
    ];
    let hole = Outline::polygon(&hole).unwrap();
    region.holes.push(hole.clone());
    let mut job = whole_job(Aid::None);
    job.supports = sides.iter().map(|x| side(*x, 1.0)).collect();
    let mut marks = edges(&region);
    marks.cutouts.push(("sink".into(), hole));
    setting(&load(region, 100.0), &job, &marks, STILL).unwrap()
}

#[test]
fn the_place_where_a_person_leans_is_named() {
    // Narrow stone beside the opening in the middle of the span: there.
    let leaning = with_sink(&[700.0, 1900.0]).leaning.unwrap();
    let Some(Spot::Rail(rail)) = &leaning.spot else {
        panic!("{leaning:?}");
    };
    assert_eq!(rail.cutouts, ["sink"]);
    let front = leaning.at.y < 80.0;
    let named = if front { "front rail" } else { "back rail" };
    assert_eq!(rail.kind, named);
    assert_eq!(leaning.worst_spot, leaning.spot);
    // Far beyond the last support: on the overhang, and the stone is stressed most over that support.
    let sides = vec![side(100.0, 1.0), side(800.0, 1.0), side(1500.0, 1.0)];
    let out = set(&slab(110.0), sides, 30.0, STILL).leaning.unwrap();
    assert_eq!(out.spot, Some(Spot::Overhang("edge 2".into())));
    assert_eq!(out.worst_spot, Some(Spot::Over(3)));
    // Farther still it tips there: 110 kg on 450 mm against a person on 550 mm.
    let sides = vec![side(100.0, 1.0), side(1450.0, 1.0)];
    let tips = set(&slab(110.0), sides, 30.0, STILL).leaning.unwrap();
    assert_eq!(tips.tips_spot, Some(Spot::Overhang("edge 2".into())));
    // Between the two that stand farthest apart.
    let sides = vec![side(50.0, 1.0), side(500.0, 1.0), side(1950.0, 1.0)];
    let between = set(&slab(110.0), sides, 30.0, STILL).leaning.unwrap();
    assert_eq!(between.spot, Some(Spot::Between([2, 3])));
}
