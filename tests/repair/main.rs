//! What really happened, and the rest planned again: nothing is lost while the allowance takes it up;
//! beyond that the new top lies inside the stone as cut, judged by another library, and no larger one does.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "../replay/mod.rs"]
mod replay;

mod hollows;
mod inside;
mod plans;
mod random;
mod reading;
mod slips;

use kerfwright::job::{self, Job};
use kerfwright::place::NoFit;
use kerfwright::plan::Plan;
use kerfwright::repair::{self, Repaired};
use serde_json::Value;

/// A counter with two rounded corners on a slab of whose edges none is used.
const COUNTER: &str = r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [1800, 900]
rough = ["AB", "BC", "CD", "DA"]
[top]
rectangle = [1400, 600]
round = { 2 = 150, 3 = 100 }
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "polish", "4-1" = "polish" }
[base]
rectangle = [1350, 560]
at = [0, 20]
[place]
at = [150, 120]
"#;

fn read(text: &str) -> Job {
    let (job, _) = job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    job
}

fn counter(as_cut: &str) -> String {
    format!("{COUNTER}{as_cut}")
}

fn after(text: &str) -> Result<Repaired, NoFit> {
    repair::after(&read(text)).map(|r| r.expect("something happened"))
}

fn plan(text: &str) -> Value {
    let plan = Plan::of(&read(text)).unwrap_or_else(|miss| panic!("{:?}\n{text}", miss.reasons));
    serde_json::from_str(&kerfwright::render::json::plan(&plan)).expect("a plan is data")
}
