//! What each aid needs.

use kerfwright::geom::{Outline, Point, Pose, Region, Vector};
use kerfwright::handle::Load;
use kerfwright::handle::aid::sling::tension_factor;
use kerfwright::handle::aid::vacuum::{CLEAR_MM, CUP_MM, Cups};
use kerfwright::handle::aid::{Aids, Rating};
use kerfwright::handle::plate::{Spring, unilateral};
use kerfwright::job::{Aid, Job};
use kerfwright::units::Mass;

use crate::fixtures::{close, ids, job, load, moved, posed, rectangle};
use kerfwright::words::Writer;

/// What each aid needs for the slab of a job.
fn of(job: &Job, stone: &Load) -> Aids {
    Aids::of(job, stone, &job.slab.flaws)
}

// HSE L23 (read): pushing on the level takes at least 2 % of the load, 200 kg → 4 kg. The pound is
// 0.45359237 kg by definition: 200 kg = 440.92 lb.
#[test]
fn a_trolley_with_200_kg() {
    let stone = load(rectangle(2000.0, 800.0), 200.0);
    let aids = of(&job("[lift]\naid = \"trolley\"\n"), &stone);
    let t = aids.trolley;
    close(t.level_push.kg(), 4.0, 1e-12);
    close(t.rated.pounds(), 440.92, 5e-3);
    // A ramp of 1 in 12 rises 4.764°: 200 kg × 0.08305.
    close(
        t.ramp_adds.kg(),
        200.0 * 4.763_641_690_726_f64.to_radians().sin(),
        1e-9,
    );
    // 400 of track, the balance point 150 + 400 up: atan(200/550) = 19.98°.
    close(t.balance_mm, 400.0, 1e-9);
    close(t.tips_at_deg, 19.983, 1e-3);
}

#[test]
fn the_heavier_side_goes_down() {
    let wedge =
        crate::fixtures::region(&[(0.0, 0.0), (2000.0, 0.0), (1500.0, 700.0), (500.0, 700.0)]);
    let stone = load(wedge, 100.0);
    let t = of(&job(""), &stone).trolley;
    // A trapezium's balance point lies h·(a + 2b)/(3(a + b)) above its long side a.
    close(
        t.balance_mm,
        700.0 * (2000.0 + 2000.0) / (3.0 * 3000.0),
        1e-9,
    );
    assert!(t.stands_on.iter().all(|p| p.y.abs() < 1e-9), "{t:?}");
}

#[test]
fn slings_share_equally_and_pull_more_the_wider_they_spread() {
    let stone = load(rectangle(2000.0, 600.0), 100.0);
    let s = of(&job(""), &stone).slings.unwrap();
    // 0.2071 L from each end (Gere, 5.6-18).
    close(s.from_end_mm[0], 0.2071 * 2000.0, 0.1);
    close(s.from_end_mm[1], 2000.0 - 0.2071 * 2000.0, 0.1);
    close(s.each.kg(), 50.0, 1e-12);
    // The legs make a triangle with the hook: 60° between them.
    close(
        (s.from_balance_mm / s.hook_mm).atan().to_degrees(),
        30.0,
        1e-9,
    );
    close(s.tension.kg(), 100.0 / 3.0_f64.sqrt(), 1e-9);
    close(tension_factor(90.0), std::f64::consts::FRAC_1_SQRT_2, 1e-12);
    // Upwards both legs carry the weight.
    for legs in [0.0_f64, 30.0, 60.0, 90.0, 120.0] {
        close(
            2.0 * tension_factor(legs) * (legs / 2.0).to_radians().cos(),
            1.0,
            1e-12,
        );
    }
    // Off centre: the nearer end decides, and the balance point stays in the middle.
    let lop = crate::fixtures::region(&[(0.0, 0.0), (3000.0, 0.0), (0.0, 900.0)]);
    let lop = load(lop, 90.0);
    let s = of(&job(""), &lop).slings.unwrap();
    let (balance, middle) = (lop.region.centroid(), s.at[0].midpoint(s.at[1]));
    close(
        (balance - middle).dot((s.at[1] - s.at[0]).unit()),
        0.0,
        1e-9,
    );
    assert!(s.from_end_mm[0] > 0.0 && s.from_end_mm[1] < 3000.0);
}

/// The cups of a stone, and what each carries by the statics of a rigid plate.
fn cups(stone: &Load, text: &str) -> Vec<Point> {
    let Cups::Placed { at, each, .. } = of(&job(text), stone).vacuum.cups else {
        panic!("no room");
    };
    let springs: Vec<Spring> = at
        .iter()
        .map(|at| Spring {
            at: *at,
            stiffness: 1.0,
        })
        .collect();
    let rest = unilateral(&springs, stone.mass.high.kg(), stone.region.centroid());
    for force in rest.forces {
        close(force.unwrap(), each.kg(), 1e-6);
    }
    at
}

fn bowl(x: f64, y: f64) -> Region {
    Region {
        outer: rectangle(2150.0, 640.0).outer,
        holes: vec![Outline::circle(Point::new(x, y), 180.0).unwrap()],
    }
}

#[test]
fn cups_are_clear_of_edges_and_cutouts_and_carry_alike() {
    for region in [
        rectangle(2150.0, 640.0),
        bowl(620.0, 330.0),
        bowl(1075.0, 320.0),
        rectangle(900.0, 300.0),
    ] {
        let stone = load(region, 110.0);
        let at = cups(&stone, "");
        assert!(at.len() == 2 || at.len() == 4);
        let reach = CUP_MM / 2.0 + CLEAR_MM;
        for (i, cup) in at.iter().enumerate() {
            assert!(stone.region.outer.depth(*cup) >= reach);
            assert!(stone.region.holes.iter().all(|h| -h.depth(*cup) >= reach));
            assert!(at[..i].iter().all(|other| other.distance(*cup) >= CUP_MM));
        }
    }
    assert_eq!(cups(&load(rectangle(2150.0, 640.0), 110.0), "").len(), 4);
    assert_eq!(cups(&load(rectangle(900.0, 300.0), 30.0), "").len(), 2);
}

#[test]
fn cups_keep_off_a_flaw_and_say_when_there_is_no_room() {
    let stone = load(rectangle(2640.0, 905.0), 200.0);
    let flaw = "[[slab.flaw]]\nwhat = \"mend\"\nline = [[560, 0], [560, 905]]\n";
    let at = cups(&stone, flaw);
    assert!(
        at.iter()
            .all(|p| (p.x - 560.0).abs() >= CUP_MM / 2.0 + CLEAR_MM)
    );
    let strip = load(rectangle(2000.0, 150.0), 20.0);
    assert_eq!(of(&job(""), &strip).vacuum.cups, Cups::NoRoom);
}

#[test]
fn the_mark_on_the_aid_is_compared() {
    let stone = load(rectangle(2000.0, 600.0), 120.0);
    let rating = |text: &str| of(&job(text), &stone).rating;
    let kg = Mass::from_kg;
    assert_eq!(rating("[lift]\naid = \"trolley\"\n"), Rating::NotGiven);
    assert_eq!(
        rating("[lift]\naid = \"trolley\"\nrated = \"120 kg\"\n"),
        Rating::Enough {
            rated: kg(120.0),
            needs: kg(120.0)
        }
    );
    // Twice the weight for a vacuum lifter.
    assert_eq!(
        rating("[lift]\naid = \"vacuum lifter\"\nrated = \"239 kg\"\n"),
        Rating::TooWeak {
            rated: kg(239.0),
            needs: kg(240.0)
        }
    );
    let (_, found) = moved(&job("[lift]\naid = \"gantry\"\nrated = \"150 kg\"\n"));
    // Slab 206 kg, top 110 kg.
    assert_eq!(ids(&found.stops), ["aid-too-weak"]);
    let said = Writer::default().detail(&found.stops[0].message);
    assert!(said.contains("206\u{a0}kg"), "{said}");
    // Marked for enough: settled, nothing is said. Not marked: a blank to fill.
    let (_, enough) = moved(&job("[lift]\naid = \"gantry\"\nrated = \"250 kg\"\n"));
    assert!(enough.stops.is_empty() && enough.open.is_empty());
    let (_, blank) = moved(&job("[lift]\naid = \"gantry\"\n"));
    assert_eq!(ids(&blank.open), ["aid-without-mark"]);
}

#[test]
fn the_aid_that_is_used_is_told_with_its_conditions() {
    let told = |text: &str| -> Vec<(&'static str, String)> {
        let found = moved(&job(text)).1.warnings.into_iter();
        let both = found.map(|f| {
            (
                f.id(),
                format!(
                    "{}. {}",
                    Writer::default().say(&f.message),
                    Writer::default().detail(&f.message)
                ),
            )
        });
        both.collect()
    };
    let of = |told: &[(&'static str, String)], id: &str| -> Option<String> {
        told.iter().find(|t| t.0 == id).map(|t| t.1.clone())
    };
    let none = told("");
    assert!(
        ["on-a-trolley", "under-a-vacuum-lifter", "in-slings"]
            .iter()
            .all(|id| of(&none, id).is_none())
    );
    let told_of = told("[lift]\naid = \"trolley\"\n");
    let trolley = of(&told_of, "on-a-trolley").unwrap();
    assert!(trolley.contains("held back from uphill"), "{trolley}");
    let slab = of(&told_of, "on-a-trolley-numbers").unwrap();
    assert!(
        slab.contains("206\u{a0}kg") && slab.contains("4.2\u{a0}kg"),
        "{slab}"
    );
    let wet = "[lift]\naid = \"vacuum lifter\"\n[machine]\nwet_rated = true\npower = \"battery\"\n[dust]\nmethod = \"water\"\n";
    let wet = told(wet);
    let vacuum = of(&wet, "under-a-vacuum-lifter").unwrap();
    let numbers = wet
        .iter()
        .filter(|t| t.0 == "under-a-vacuum-lifter-numbers");
    let numbers: Vec<&str> = numbers.map(|t| t.1.as_str()).collect();
    // Slab 206 kg, top 110 kg: the heavier is told.
    assert!(
        matches!(numbers[..], [slab] if slab.contains("412\u{a0}kg")),
        "{numbers:?}"
    );
    for words in ["second securing", "dry first", "rough or split"] {
        assert!(vacuum.contains(words), "{words}: {vacuum}");
    }
    let gantry = told("[lift]\naid = \"gantry\"\n");
    let slings = of(&gantry, "in-slings").unwrap();
    assert!(slings.contains("competent"), "{slings}");
    let numbers = of(&gantry, "in-slings-numbers").unwrap();
    assert!(numbers.contains("0.58 of the weight"), "{numbers}");
}

#[test]
fn a_turned_stone_has_the_same_numbers() {
    let job = job("[lift]\naid = \"trolley\"\n");
    let stone = load(bowl(620.0, 330.0), 110.0);
    let turned = posed(&stone, Pose::new(0.4, Vector::new(90.0, -30.0)));
    let (a, b) = (of(&job, &stone), of(&job, &turned));
    close(a.trolley.tips_at_deg, b.trolley.tips_at_deg, 1e-9);
    let away = |aids: &Aids| aids.slings.unwrap().from_balance_mm;
    close(away(&a), away(&b), 1e-6);
    assert_eq!(a.rating, Rating::NotGiven);
    assert_eq!(a.needs_rating(Aid::None), None);
}
