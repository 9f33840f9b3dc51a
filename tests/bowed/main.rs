//! Bowed edges and long curves: chord and ordinates against handbook rows and formulas of their own, and
//! whole jobs with bows replayed.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

#[path = "../replay/mod.rs"]
mod replay;

mod handbook;
mod jobs;
mod notices;

use kerfwright::plan::Plan;
use replay::Wish;
use serde_json::Value;

/// What a job file gets that says nothing about passes.
const USUAL: Wish = Wish {
    score: 2.0,
    step: 6.0,
    plunge_step: 10.0,
    through: 3.0,
    cusp: 0.5,
};

/// A counter with a bowed front, its back on the slab's finished edge.
const BOW_FRONT: &str = r#"
[stone]
kind = "granite"
thickness = [29.8, 30.2]
[slab]
rectangle = [2600, 860]
factory = ["CD"]
[top]
rectangle = [2200, 600]
bow = { "1-2" = 70 }
finish = { "1-2" = "polish", "2-3" = "polish", "3-4" = "factory", "4-1" = "polish" }
"#;

fn plan(text: &str) -> Value {
    let (job, _) = kerfwright::job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    let plan = Plan::of(&job).unwrap_or_else(|miss| panic!("{:?}\n{text}", miss.reasons));
    serde_json::from_str(&kerfwright::render::json::plan(&plan)).expect("a plan is data")
}
