//! Random jobs: no plan panics, every plan balances and replays, and no answer depends on how the
//! stone happens to lie or is numbered.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "replay/mod.rs"]
mod replay;

use std::panic::{AssertUnwindSafe, catch_unwind};

use kerfwright::plan::Plan;
use kerfwright::{cut, piece, place};
use serde_json::Value;

use replay::plane::Place;
use replay::random_job::RandomJob;
use replay::{faults, rules};

/// What became of a job.
enum Outcome {
    Planned(Box<Value>),
    NoFit,
}

fn outcome(job: &RandomJob) -> Result<Outcome, String> {
    let text = job.text();
    let planned = catch_unwind(AssertUnwindSafe(|| {
        let (job, _) = kerfwright::job::read(&text).map_err(|f| format!("not read: {f:#?}"))?;
        match Plan::of(&job) {
            Ok(plan) => serde_json::from_str(&kerfwright::render::json::plan(&plan))
                .map(|p| Outcome::Planned(Box::new(p)))
                .map_err(|e| e.to_string()),
            Err(miss) if miss.reasons.is_empty() => Err("no fit, and no reason".into()),
            Err(_) => Ok(Outcome::NoFit),
        }
    }));
    planned.unwrap_or_else(|_| Err("panicked".into()))
}

/// So many times the usual count of jobs are tried, after the usual ones: `TIMES=3 cargo test --release --test
/// properties` plans and replays some 3000 more than without.
fn times() -> u64 {
    let said = std::env::var("TIMES").ok().and_then(|n| n.parse().ok());
    said.unwrap_or(1)
}

/// Plans and replays the jobs of some seeds, and of as many more as `times` says; gives how many were planned.
fn replayed(seeds: std::ops::Range<u64>, of: fn(u64) -> RandomJob) -> usize {
    let (first, count) = (seeds.start, seeds.end - seeds.start);
    let more = (1..times()).flat_map(move |n| {
        let from = FURTHER * n + first;
        from..from + count
    });
    let seeds = seeds.chain(more);
    let mut planned = 0;
    let mut bad = Vec::new();
    for seed in seeds {
        let job = of(seed);
        match outcome(&job) {
            Ok(Outcome::Planned(plan)) => {
                planned += 1;
                let mut faults = faults(&plan, &job.wish);
                faults.extend(rules::faults(&plan, &job));
                if !faults.is_empty() {
                    bad.push(format!("seed {seed}: {}", faults.join("\n   ")));
                }
            }
            Ok(Outcome::NoFit) => {}
            Err(fault) => bad.push(format!("seed {seed}: {fault}\n{}", job.text())),
        }
    }
    assert!(bad.is_empty(), "{} bad:\n{}", bad.len(), bad.join("\n"));
    planned
}

/// Seeds of a long run begin so far on for each time.
const FURTHER: u64 = 10_000;

#[test]
fn random_jobs_replay_first_half() {
    let planned = replayed(0..155, RandomJob::of);
    assert!(planned > 60, "only {planned} of 155 could be planned");
}

#[test]
fn random_jobs_replay_second_half() {
    let planned = replayed(155..310, RandomJob::of);
    assert!(planned > 60, "only {planned} of 155 could be planned");
}

#[test]
fn random_jobs_with_insides_replay_first_half() {
    let planned = replayed(0..370, RandomJob::with_insides);
    assert!(planned > 300, "only {planned} of 370 could be planned");
}

#[test]
fn random_jobs_with_insides_replay_second_half() {
    let planned = replayed(370..740, RandomJob::with_insides);
    assert!(planned > 300, "only {planned} of 370 could be planned");
}

/// What must not depend on how a job is told.
#[derive(Clone, Debug)]
struct Sums {
    work: f64,
    slab: f64,
    top: f64,
    left: f64,
    kerf: f64,
    offcuts: f64,
    length: f64,
    minutes: f64,
    place: (Place, f64),
}

/// A job as far as its pieces.
fn sums(job: &RandomJob) -> Option<Sums> {
    let text = job.text();
    let (job, _) =
        kerfwright::job::read(&text).unwrap_or_else(|f| panic!("not read: {f:#?}\n{text}"));
    let (placement, _) = place::place(&job).ok()?;
    let (mut cuts, ..) = cut::plan(&job, &placement);
    let stones = piece::follow(&job, &placement, &mut cuts);
    let sheet = stones.balance_sheet;
    let shift = placement.pose.shift;
    Some(Sums {
        work: placement.work_mm2,
        slab: sheet.slab_mm2,
        top: sheet.top_mm2,
        left: sheet.allowance_mm2,
        kerf: sheet.kerf_mm2,
        offcuts: sheet.offcuts_mm2,
        length: cuts.iter().map(|c| c.length).sum(),
        minutes: cuts.iter().map(|c| c.minutes).sum(),
        place: ([shift.x, shift.y], placement.pose.turn.to_degrees()),
    })
}

fn differ(a: f64, b: f64, slack: f64) -> bool {
    (a - b).abs() > slack + 1e-9 * a.abs()
}

impl Sums {
    /// What differs between two tellings of a job whose place is fixed. Trims of equal length may
    /// be made in another order, which moves stone between kerf and offcuts.
    fn unlike(&self, other: &Self) -> Vec<String> {
        [
            ("work", self.work, other.work, 1.0),
            ("slab", self.slab, other.slab, 1e-3),
            ("top", self.top, other.top, 1e-3),
            ("left on", self.left, other.left, 0.1),
            (
                "waste",
                self.kerf + self.offcuts,
                other.kerf + other.offcuts,
                0.1,
            ),
            ("length", self.length, other.length, 0.1),
            ("minutes", self.minutes, other.minutes, 0.01),
        ]
        .into_iter()
        .filter(|(_, a, b, slack)| differ(*a, *b, *slack))
        .map(|(what, a, b, _)| format!("{what} {a} and {b}"))
        .collect()
    }
}

type Told = (&'static str, RandomJob);

fn told_otherwise(job: &RandomJob, seed: u64) -> Vec<Told> {
    let step = usize::try_from(seed).expect("a small seed");
    let (slab, top) = (job.slab.len(), job.top.len());
    vec![
        ("turned", job.clone().turned(17.0 + 40.0 * seed as f64)),
        (
            "slab renumbered",
            job.clone().slab_renumbered(1 + step % (slab - 1)),
        ),
        (
            "top renumbered",
            job.clone().top_renumbered(1 + step % (top - 1)),
        ),
        ("mirrored", job.clone().mirrored()),
        ("in inches", job.clone().in_inches()),
    ]
}

#[test]
fn a_fixed_place_gives_the_same_however_it_is_told() {
    let (mut compared, mut bad) = (0, Vec::new());
    for seed in 0..40 {
        let mut job = RandomJob::of(seed);
        job.inches = false;
        let Some(searched) = sums(&job) else { continue };
        job.fixed = Some(searched.place);
        let here = sums(&job).expect("the place that was found is a place");
        let told = told_otherwise(&job, seed);
        for (how, other) in told {
            compared += 1;
            match sums(&other) {
                Some(there) => {
                    let unlike = here.unlike(&there);
                    bad.extend(
                        unlike
                            .into_iter()
                            .map(|u| format!("seed {seed} {how}: {u}")),
                    );
                }
                None => bad.push(format!("seed {seed} {how}: no longer fits")),
            }
        }
    }
    assert!(
        bad.is_empty(),
        "{} of {compared}:\n{}",
        bad.len(),
        bad.join("\n")
    );
    assert!(compared > 70, "{compared}");
}

#[test]
fn the_best_place_takes_the_same_work_however_it_is_told() {
    let mut bad = Vec::new();
    for seed in 0..10 {
        let mut job = RandomJob::of(seed);
        job.inches = false;
        job.fixed = None;
        let here = sums(&job);
        for (how, other) in told_otherwise(&job, seed) {
            match (&here, sums(&other)) {
                (None, None) => {}
                (Some(a), Some(b)) if !differ(a.work, b.work, 2.0) => {}
                (a, b) => {
                    let works = (a.as_ref().map(|s| s.work), b.map(|s| s.work));
                    bad.push(format!("seed {seed} {how}: {works:?}"));
                }
            }
        }
    }
    assert!(bad.is_empty(), "{}:\n{}", bad.len(), bad.join("\n"));
}
