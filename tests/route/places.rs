//! Doors and corners of whole jobs: what goes through, what must give, what is told.

use kerfwright::geom::{Pose, Vector};
use kerfwright::handle::route::{
    Carried, Fit, GetsIn, Measure, Need, Passage, Remedy, WayIn, way_in,
};
use kerfwright::job::Job;

use crate::fixtures::{Spread, close, ids, job, load, moved, posed, rectangle};
use kerfwright::words::Writer;

/// A door of these clear sizes.
fn door(width: f64, height: f64) -> String {
    format!("[[route.door]]\nwhat = \"door\"\nwidth = {width}\nheight = {height}\n")
}

/// A corner of these widths and height.
fn corner(from: f64, to: f64, height: f64) -> String {
    format!("[[route.corner]]\nwhat = \"landing\"\nfrom = {from}\nto = {to}\nheight = {height}\n")
}

fn way(job: &Job) -> WayIn {
    moved(job).0.route.expect("there is a way")
}

fn only(job: &Job) -> Passage {
    way(job).top.passages.remove(0)
}

// The top is 2150 × 640 × 31 (thickest); by hand 80 of room, 100 off the floor.
#[test]
fn a_door_takes_the_height_on_edge_and_the_length_upright() {
    let wide = only(&job(&door(900.0, 2000.0)));
    assert_eq!(wide.best, Some(Carried::OnEdge));
    let on_edge = wide.on_edge();
    assert_eq!(on_edge.fit, Fit::Clears(900.0 - 111.0));
    assert_eq!(wide.upright().fit, Fit::Short(250.0));
    assert_eq!(wide.upright().binds.measure, Measure::Height);
    assert_eq!(wide.attempts[2].fit, Fit::Clears(900.0 - 720.0));
    // A hatch 700 high: 40 short on edge.
    let low = only(&job(&door(900.0, 700.0)));
    assert_eq!(low.on_edge().fit, Fit::Short(40.0));
    assert_eq!(low.best, Some(Carried::Flat));
    assert!(low.remedies.contains(&Remedy::Raise {
        carried: Carried::OnEdge,
        needs_mm: 740.0
    }));
    let narrow = only(&job(&door(110.0, 2000.0)));
    assert_eq!(narrow.on_edge().fit, Fit::Short(1.0));
    assert_eq!(narrow.best, None);
    assert!(narrow.remedies.contains(&Remedy::Widen(111.0)));
}

#[test]
fn a_trolley_needs_its_deck_and_its_wheels() {
    let lift = "[lift]\naid = \"trolley\"\ntrolley_track = 500\ntrolley_deck = 180\n";
    let passage = only(&job(&format!("{lift}{}", door(550.0, 830.0))));
    let needs: Vec<(Measure, f64)> = passage
        .on_edge()
        .needs
        .iter()
        .map(|n| (n.measure, n.needs_mm))
        .collect();
    // Wheels 500 apart, half a tyre beyond on both sides; 640 of stone on a deck of 180.
    assert_eq!(needs, [(Measure::Width, 560.0), (Measure::Height, 820.0)]);
    assert_eq!(passage.on_edge().fit, Fit::Short(10.0));
}

#[test]
fn a_corner_tells_what_must_give() {
    // 1100 and 950 with 111 of plank.
    let text = corner(1100.0, 950.0, 2300.0);
    let passage = only(&job(&text));
    let plank = passage.plank.unwrap();
    assert_eq!(plank.thickness_mm, 111.0);
    let longest = plank.longest_mm().unwrap();
    assert_eq!(passage.on_edge().fit, Fit::Clears(longest - 2150.0));
    // 750 and 800: too long on edge, upright it goes.
    let tight = only(&job(&corner(750.0, 800.0, 2300.0)));
    let longest = tight.plank.unwrap().longest_mm().unwrap();
    assert!(longest < 2150.0);
    assert_eq!(tight.on_edge().fit, Fit::Short(2150.0 - longest));
    assert_eq!(tight.best, Some(Carried::Upright));
    assert_eq!(
        tight.remedies[0],
        Remedy::TakeUpright {
            needs_mm: 2250.0,
            has_mm: 2300.0
        }
    );
    assert_eq!(tight.remedies[1], Remedy::CutTo(longest));
    assert!(matches!(tight.remedies[2], Remedy::WidenFrom(mm) if mm > 750.0));
    assert!(matches!(tight.remedies[3], Remedy::WidenTo(mm) if mm > 800.0));
    // The same with the height of a landing under a slope: nothing goes.
    let low = only(&job(&corner(750.0, 800.0, 2000.0)));
    assert_eq!(low.best, None);
    assert!(low.remedies.contains(&Remedy::Raise {
        carried: Carried::Upright,
        needs_mm: 2250.0
    }));
}

/// Whether a stone passes a corner on edge after what was said to help was done; nothing for what
/// cannot be tried on edge.
fn helped(remedy: Remedy, from: f64, to: f64, length: f64) -> Option<bool> {
    let (from, to, length) = match remedy {
        Remedy::WidenFrom(mm) => (mm, to, length),
        Remedy::WidenTo(mm) => (from, mm, length),
        Remedy::Widen(mm) => (mm.max(from), mm.max(to), length),
        Remedy::CutTo(mm) => (from, to, mm),
        Remedy::Raise { .. } | Remedy::TakeUpright { .. } => return None,
    };
    let job = job(&corner(from + 1e-6, to + 1e-6, 1500.0));
    let stone = load(rectangle(length, 640.0), 100.0);
    let walk = way_in(&job, &stone, &stone).unwrap().top;
    Some(walk.passages[0].on_edge().fit.passes())
}

#[test]
fn each_way_that_is_said_to_help_helps() {
    let mut spread = Spread(91);
    let mut tried = 0;
    for _ in 0..200 {
        let share = spread.next();
        let (from, to) = (spread.between(100.5, 900.0), 100.5 + share * share * 1500.0);
        let passage = only(&job(&corner(from, to, 1500.0)));
        assert_eq!(passage.remedies.is_empty(), passage.on_edge().fit.passes());
        for remedy in &passage.remedies {
            if let Some(helped) = helped(*remedy, from, to, 2150.0) {
                assert!(helped, "{from} {to} {remedy:?}");
                tried += 1;
            }
        }
    }
    assert!(tried > 200, "{tried}");
}

#[test]
fn the_verdict_follows_from_the_measures() {
    let mut spread = Spread(23);
    for _ in 0..200 {
        let mut size = |low, high| spread.between(low, high);
        let text = [
            door(size(100.0, 1200.0), size(400.0, 2600.0)),
            corner(
                size(100.0, 1500.0),
                size(100.0, 1500.0),
                size(400.0, 2600.0),
            ),
        ];
        let job = job(&text.concat());
        let (length, width) = (size(600.0, 3000.0), size(200.0, 600.0));
        let stone = load(rectangle(length, width), 100.0);
        let smaller = load(rectangle(length * 0.95, width * 0.95), 90.0);
        let way = way_in(&job, &stone, &smaller).unwrap();
        for (large, small) in way.slab.passages.iter().zip(&way.top.passages) {
            for (a, b) in large.attempts.iter().zip(&small.attempts) {
                let spare = a.needs.iter().map(Need::spare_mm);
                let least = spare.fold(f64::INFINITY, f64::min);
                close(a.fit.spare_mm(), least, 0.0);
                assert_eq!(a.fit.passes(), least >= 0.0);
                assert!(b.fit.passes() || !a.fit.passes());
            }
            let first = large.attempts.iter().find(|a| a.fit.passes());
            assert_eq!(large.best, first.map(|a| a.carried));
        }
        let worst = |w: &[Passage]| w.iter().any(|p| p.best.is_none());
        assert_eq!(way.slab.gets_in == GetsIn::No, worst(&way.slab.passages));
    }
}

#[test]
fn the_finding_follows_how_far_it_gets() {
    let found = |text: &str| {
        let (moving, found) = moved(&job(text));
        let way_in = |list: &[kerfwright::diag::Finding]| -> Vec<String> {
            let ids = ids(list).into_iter().filter(|id| id.starts_with("way-in"));
            ids.map(str::to_owned).collect()
        };
        let gets_in = moving.route.map(|r| (r.slab.gets_in, r.top.gets_in));
        (
            gets_in.unwrap(),
            way_in(&found.stops),
            way_in(&found.warnings),
        )
    };
    let none: Vec<String> = Vec::new();
    let free = found(&door(1500.0, 2500.0));
    assert_eq!(
        free,
        ((GetsIn::OnEdge, GetsIn::OnEdge), none.clone(), none.clone())
    );
    // The slab is 2640 × 905, the top 2150 × 640: a hatch between the two.
    let slab_only = found(&door(500.0, 800.0));
    assert_eq!(slab_only.0, (GetsIn::No, GetsIn::OnEdge));
    assert_eq!(
        (slab_only.1, slab_only.2),
        (none.clone(), vec!["way-in-slab".to_owned()])
    );
    let neither = found(&door(105.0, 2000.0));
    assert_eq!(
        (neither.1, neither.2),
        (vec!["way-in-blocked".to_owned()], none.clone())
    );
    let upright = found(&corner(750.0, 800.0, 2300.0));
    assert_eq!(upright.0.1, GetsIn::Upright);
    assert_eq!(upright.2, ["way-in-upright", "way-in-slab"]);
    let flat = found(&door(1200.0, 700.0));
    assert_eq!(flat.0.1, GetsIn::Flat);
    assert!(flat.2.contains(&"way-in-flat-only".to_owned()), "{flat:?}");
    // 740 + 19 of height: 19 to spare is tight, 20 is not.
    assert!(
        found(&door(900.0, 759.0))
            .2
            .contains(&"way-in-tight".to_owned())
    );
    assert!(
        !found(&door(900.0, 760.0))
            .2
            .contains(&"way-in-tight".to_owned())
    );
}

#[test]
fn what_is_told_never_flatters() {
    // Longest that turns 2131.98…: told as 2131, the need as 2150.
    let job = job(&corner(830.0, 833.0, 2000.0));
    let passage = only(&job);
    let longest = passage.plank.unwrap().longest_mm().unwrap();
    let (_, found) = moved(&job);
    let stop = found
        .stops
        .iter()
        .find(|f| f.id() == "way-in-blocked")
        .unwrap();
    let short = 2150.0 - longest;
    assert!(short > 0.0, "{longest}");
    let said = Writer::default()
        .detail(&stop.message)
        .replace('\u{a0}', " ");
    for part in [
        format!("{:.0} mm are missing", short.ceil()),
        format!("at most {:.0} mm long", longest.floor()),
        "2250 mm".to_owned(),
    ] {
        assert!(said.contains(&part), "{part}: {said}");
    }
}

#[test]
fn turned_and_mirrored_stones_pass_alike() {
    let job = job(&format!(
        "{}{}",
        door(700.0, 800.0),
        corner(800.0, 850.0, 2260.0)
    ));
    let stone = load(
        crate::fixtures::region(&[(0.0, 0.0), (2140.0, 0.0), (2000.0, 640.0), (30.0, 610.0)]),
        100.0,
    );
    let mirrored = load(
        crate::fixtures::region(&[(0.0, 0.0), (2140.0, 0.0), (2110.0, 610.0), (140.0, 640.0)]),
        100.0,
    );
    let first = way_in(&job, &stone, &stone).unwrap().top;
    let quarter = Pose::new(std::f64::consts::FRAC_PI_2, Vector::new(500.0, -70.0));
    for other in [
        posed(&stone, Pose::new(0.7, Vector::new(40.0, 9.0))),
        posed(&stone, quarter),
        mirrored,
    ] {
        let walk = way_in(&job, &other, &other).unwrap().top;
        close(walk.length_mm, first.length_mm, 1e-6);
        close(walk.width_mm, first.width_mm, 1e-6);
        assert_eq!(walk.gets_in, first.gets_in);
        for (a, b) in walk.passages.iter().zip(&first.passages) {
            for (a, b) in a.attempts.iter().zip(&b.attempts) {
                close(a.fit.spare_mm(), b.fit.spare_mm(), 1e-6);
            }
        }
    }
}

#[test]
fn a_corner_passed_from_the_other_side_is_the_same() {
    let there = only(&job(&corner(800.0, 1150.0, 2300.0)));
    let back = only(&job(&corner(1150.0, 800.0, 2300.0)));
    for (a, b) in there.attempts.iter().zip(&back.attempts) {
        close(a.fit.spare_mm(), b.fit.spare_mm(), 1e-6);
    }
}
