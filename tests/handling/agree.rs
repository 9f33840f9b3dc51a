//! Rules over random jobs: nothing that is proposed asks for a state that bending forbids, a weight that is
//! told in two places is the same, and no number is missing.

use kerfwright::handle::Verdict;
use kerfwright::handle::aid::vacuum::Cups;
use kerfwright::handle::axes::Axes;
use kerfwright::handle::bench::{Lies, Places};
use kerfwright::handle::bend::{Beam, Orientation};
use kerfwright::handle::strip::BeamProfile;
use kerfwright::handle::{HandledPiece, Load};
use kerfwright::job::Job;
use kerfwright::plan::Plan;
use serde_json::Value;

use crate::replay::random_job::{Dice, RandomJob};

/// A random job with a crew and an aid.
fn text(seed: u64) -> String {
    let dice = &mut Dice(seed ^ 0x11F7);
    let job = if seed.is_multiple_of(3) {
        RandomJob::with_insides(seed)
    } else {
        RandomJob::of(seed)
    };
    let aid = dice.pick(&["none", "trolley", "vacuum lifter", "gantry"]);
    let people = dice.below(6) + 1;
    format!("{}[lift]\npeople = {people}\naid = \"{aid}\"\n", job.text())
}

fn plans(seeds: std::ops::Range<u64>) -> impl Iterator<Item = (u64, Job, Plan)> {
    seeds.filter_map(|seed| {
        let (job, _) = kerfwright::job::read(&text(seed)).ok()?;
        let plan = Plan::of(&job).ok()?;
        Some((seed, job, plan))
    })
}

#[test]
fn nothing_proposed_asks_for_what_bending_forbids() {
    let (mut held, mut lain) = (0, 0);
    for (seed, job, plan) in plans(0..60) {
        let handling = &plan.handling;
        for piece in handling.pieces() {
            let none = matches!(
                piece.lift.verdict,
                Verdict::NotAHandLift { .. } | Verdict::Breaks
            );
            assert_eq!(none, piece.lift.lifters.is_empty(), "seed {seed}");
            if let Some(carried) = &piece.strength.carried {
                held += 1;
                assert!(!carried.verdict.is_above(), "seed {seed}, {}", piece.name);
            }
        }
        for bench in &handling.bench {
            assert_eq!(bench.places, Places::Proposed);
            if let Lies::Judged { verdict, .. } = &bench.lies {
                lain += 1;
                assert!(!verdict.is_above(), "seed {seed}, {}", bench.from);
            }
        }
        let slab = Load::of(&job.stone, "slab", job.slab.region());
        hangs(seed, &job, &slab, &handling.slab, &plan);
    }
    assert!(held > 20 && lain > 30, "{held} held, {lain} lain");
}

/// Slings and cups under the slab.
fn hangs(seed: u64, job: &Job, slab: &Load, piece: &HandledPiece, plan: &Plan) {
    let axes = Axes::of(&slab.region);
    let strip = BeamProfile::new(&slab.region, axes);
    let beam = Beam::new(&strip, kerfwright::handle::poses::section(slab, &job.stone));
    let allowed = piece.strength.allowed_mpa * (1.0 + 1e-9);
    let [aids, _] = &plan.handling.moving.aids;
    if let Some(slings) = aids.slings {
        let bent = beam
            .worst(Orientation::OnEdge, slings.from_end_mm)
            .stress_mpa;
        assert!(bent <= allowed, "seed {seed}: slings");
    }
    if let Cups::Placed {
        orientation,
        from_end_and_side_mm,
        ..
    } = &aids.vacuum.cups
    {
        let along = from_end_and_side_mm.iter().map(|at| at[0]);
        let ends = along.fold([f64::MAX, f64::MIN], |e, u| [e[0].min(u), e[1].max(u)]);
        let bent = beam.worst(*orientation, ends).stress_mpa;
        assert!(bent <= allowed, "seed {seed}: cups");
    }
}

#[test]
fn a_weight_told_twice_is_the_same_and_no_number_is_missing() {
    let mut compared = 0;
    for (seed, _, plan) in plans(60..100) {
        let json: serde_json::Value =
            serde_json::from_str(&kerfwright::render::json::plan(&plan)).expect("a plan is data");
        let handling = &json["handling"];
        missing(handling, &format!("seed {seed}: handling"));
        assert_eq!(
            handling["slab"]["mass"], json["slab"]["mass"],
            "seed {seed}"
        );
        assert_eq!(handling["top"]["mass"], json["top"]["mass"], "seed {seed}");
        for (waste, piece) in list(&handling["waste"]).zip(list(&json["pieces"])) {
            assert_eq!(waste["name"], piece["name"], "seed {seed}");
            assert_eq!(waste["mass"], piece["mass"], "seed {seed}");
        }
        for state in list(&handling["states"]) {
            let same = |left: &&Value| state["name"] == format!("after cut {}", left["after_cut"]);
            let left = list(&json["remaining"]).find(same).expect("a state");
            assert_eq!(state["mass"], left["mass"], "seed {seed}");
            assert_eq!(state["balance"], left["balance"], "seed {seed}");
            compared += 1;
        }
        let most = |of: &Value| of["mass"]["high"].clone();
        let (slab, top) = (most(&handling["slab"]), most(&handling["top"]));
        for of in ["aids", "falls"] {
            assert_eq!(handling[of][0]["mass_kg"], slab, "seed {seed}: {of}");
            assert_eq!(handling[of][1]["mass_kg"], top, "seed {seed}: {of}");
        }
    }
    assert!(compared > 60, "{compared}");
}

fn list(of: &Value) -> impl Iterator<Item = &Value> {
    of.as_array().into_iter().flatten()
}

/// No value is null: a number that is not finite would be.
fn missing(value: &Value, at: &str) {
    match value {
        Value::Null => panic!("{at} is null"),
        Value::Array(all) => {
            for (i, one) in all.iter().enumerate() {
                missing(one, &format!("{at}[{i}]"));
            }
        }
        Value::Object(all) => {
            for (key, one) in all {
                missing(one, &format!("{at}.{key}"));
            }
        }
        Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
    }
}
