//! Whole jobs with bows, replayed.

use kerfwright::plan::Plan;
use serde_json::Value;

use super::replay::faults;
use super::replay::plane::{list, number};
use super::replay::random_job::RandomJob;
use super::{BOW_FRONT, USUAL, plan};

fn holds(text: &str) -> Value {
    let plan = plan(text);
    let faults = faults(&plan, &USUAL);
    assert!(faults.is_empty(), "{}\n{text}", faults.join("\n"));
    plan
}

fn kinds(plan: &Value) -> Vec<String> {
    let cuts = list(plan, "cuts").iter();
    cuts.map(|c| c["kind"].as_str().expect("a kind").to_owned())
        .collect()
}

#[test]
fn bow_front_on_a_long_radius() {
    let plan = holds(BOW_FRONT);
    let curve = list(&plan, "cuts").iter().find(|c| c["kind"] == "curve");
    let set_out = &curve.expect("a curve")["set_out"];
    assert!(set_out["pivot"].is_null(), "the pivot lies 8 m off");
    assert!(number(&set_out["ordinates"], "arm_mm") > 8000.0);
    let caution = list(&plan, "warnings").iter();
    assert!(caution.into_iter().any(|c| c["id"] == "curve-without-arm"));
}

/// An arm that reaches is offered, and then nothing is measured from a chord.
#[test]
fn the_arm_is_offered_where_it_reaches() {
    let text = format!("{BOW_FRONT}[circle_jig]\nreach = [150, 9000]\noffset = 96\n");
    let text = text.replace("9000]", "4900]").replace("= 70 }", "= 150 }");
    let plan = holds(&text);
    let curve = list(&plan, "cuts").iter().find(|c| c["kind"] == "curve");
    let set_out = &curve.expect("a curve")["set_out"]["pivot"];
    assert_eq!(set_out["reach"], "within");
    assert_eq!(set_out["pivot_on"], "off");
}

/// A wide strip beyond a bow is taken off by a straight relief cut along its crown first.
#[test]
fn relief_before_a_bow() {
    let plan = holds(BOW_FRONT);
    let kinds = kinds(&plan);
    let (relief, curve) = (
        kinds.iter().position(|k| k == "relief"),
        kinds.iter().position(|k| k == "curve"),
    );
    assert!(relief.is_some() && relief < curve, "{kinds:?}");
}

/// A quarter circle of 600 in stone of 40 mm frees twice what one person holds: parted before.
#[test]
fn relief_at_a_large_rounding() {
    let text = r#"
[stone]
kind = "granite"
thickness = 40
[slab]
rectangle = [2600, 1300]
[top]
rectangle = [2200, 1200]
round = { 2 = 600, 3 = 600, 1 = 100 }
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "polish" }
[[disc]]
name = "180 continuous rim"
diameter = 180
kerf = 2.6
obstruction = 60
max_rpm = 8400
"#;
    let plan = holds(text);
    assert!(kinds(&plan).iter().filter(|k| *k == "relief").count() >= 2);
    // Pieces freed by curves and reliefs alike can be held; the trims' need not be.
    let light = list(&plan, "pieces").iter().filter(|p| {
        let by = p["after_cut"].as_u64().expect("a number") as usize;
        list(&plan, "cuts")[by - 1]["kind"] != "straight"
    });
    for piece in light {
        let kg = number(&piece["mass"], "high");
        assert!(kg <= 5.0, "{kg} kg in {}", piece["name"]);
    }
    // A heavier limit needs none.
    let lax = super::plan(&format!("{text}[passes]\nwaste_piece = \"40 kg\"\n"));
    assert!(!kinds(&lax).contains(&"relief".to_owned()));
}

#[test]
fn bows_on_two_edges_and_a_round_between() {
    holds(
        r#"
[stone]
kind = "marble"
thickness = 20
[slab]
rectangle = [1900, 1000]
[top]
rectangle = [1400, 700]
bow = { "1-2" = 45, "2-3" = 30 }
round = { 2 = 60 }
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "ease", "4-1" = "saw" }
"#,
    );
}

/// What stands out at the ends of deep hollow bows, where three slots meet, is told.
#[test]
fn deep_hollow_bows_replay() {
    for (length, depth, bow) in [(2000, 640, -400), (1200, 700, -350), (2400, 1000, -700)] {
        holds(&format!(
            "[stone]\nkind = \"granite\"\nthickness = 30\n[slab]\nrectangle = [3200, 1600]\n[top]\n\
             rectangle = [{length}, {depth}]\nbow = {{ \"1-2\" = {bow} }}\n"
        ));
    }
}

/// Bows whose ends or whose waste the roundings and trims beside them share.
const CROWDED: [u64; 7] = [12, 108, 363, 661, 719, 787, 2672];

/// Random jobs with one or two edges bowed outwards.
#[test]
fn random_bows_replay() {
    let (mut planned, mut curved, mut bad) = (0, 0, Vec::new());
    for seed in (5000..5070).chain(CROWDED) {
        let job = RandomJob::of(seed);
        let Some(text) = job.bowed(seed) else {
            continue;
        };
        let Ok((read, _)) = kerfwright::job::read(&text) else {
            continue;
        };
        let Ok(plan) = Plan::of(&read) else { continue };
        let plan =
            serde_json::from_str(&kerfwright::render::json::plan(&plan)).expect("a plan is data");
        planned += 1;
        let cuts = list(&plan, "cuts").iter();
        curved += cuts
            .filter(|c| c["kind"] == "curve" && c["edge"].as_str().is_some_and(|e| e.contains('-')))
            .count();
        let faults = faults(&plan, &job.wish);
        if !faults.is_empty() {
            bad.push(format!("seed {seed}: {}\n{text}", faults.join("\n   ")));
        }
    }
    assert!(
        bad.is_empty(),
        "{} bad of {planned}:\n{}",
        bad.len(),
        bad.join("\n")
    );
    assert!(
        planned > 15 && curved > 15,
        "{planned} planned, {curved} bows sawn"
    );
}
