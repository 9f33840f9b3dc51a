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
use serde_json::Value;

use replay::faults;
use replay::random_job::RandomJob;

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
            Ok(plan) => serde_json::to_value(&plan)
                .map(|p| Outcome::Planned(Box::new(p)))
                .map_err(|e| e.to_string()),
            Err(miss) if miss.reasons.is_empty() => Err("no fit, and no reason".into()),
            Err(_) => Ok(Outcome::NoFit),
        }
    }));
    planned.unwrap_or_else(|_| Err("panicked".into()))
}

/// Plans and replays the jobs of some seeds; gives how many were planned.
fn replayed(seeds: std::ops::Range<u64>) -> usize {
    let mut planned = 0;
    let mut bad = Vec::new();
    for seed in seeds {
        let job = RandomJob::of(seed);
        match outcome(&job) {
            Ok(Outcome::Planned(plan)) => {
                planned += 1;
                let faults = faults(&plan, &job.wish);
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

#[test]
fn random_jobs_replay_first_half() {
    let planned = replayed(0..170);
    assert!(planned > 85, "only {planned} of 170 could be planned");
}

#[test]
fn random_jobs_replay_second_half() {
    let planned = replayed(170..390);
    assert!(planned > 85, "only {planned} of 220 could be planned");
}
