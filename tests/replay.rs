//! Replays plans from their JSON alone, as a machine that trusts nobody would.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "replay/mod.rs"]
mod replay;

use kerfwright::plan::Plan;
use serde_json::Value;

use replay::{Wish, faults};

/// What a job file gets that says nothing about passes.
const USUAL: Wish = Wish {
    score: 2.0,
    step: 6.0,
    plunge_step: 10.0,
    through: 3.0,
    cusp: 0.5,
};

fn plan(text: &str) -> Value {
    let (job, _) = kerfwright::job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    let plan = Plan::of(&job).unwrap_or_else(|miss| panic!("{:?}\n{text}", miss.reasons));
    serde_json::to_value(&plan).expect("a plan is data")
}

fn holds(text: &str) {
    let faults = faults(&plan(text), &USUAL);
    assert!(faults.is_empty(), "{}\n{text}", faults.join("\n"));
}

/// A slab a little out of square with a fissure, a counter with a half-round end on its two
/// finished edges.
const COUNTER: &str = r#"
[stone]
kind = "gabbro"
thickness = [29.6, 30.4, 30.1]
[slab]
corners = [[0, 0], [2640, 3], [2636, 905], [0, 902]]
factory = ["AB", "DA"]
[[slab.flaw]]
what = "healed fissure"
line = [[2380, 905], [2500, 640]]
clear = 15
[top]
rectangle = [2150, 640]
round = { 2 = 320, 3 = 320 }
finish = { "4-1" = "factory", "1-2" = "polish", "2-3" = "polish", "3-4" = "ease" }
"#;

#[test]
fn counter_with_a_round_end() {
    holds(COUNTER);
}
