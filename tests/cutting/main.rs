//! How each cut is made: discs, plunges, core holes, stops, rails, the order.

mod fissures;
mod holes;
mod one_curve;
mod order;
mod plunges;
mod rails;
mod shape;

use kerfwright::plan::Plan;
use serde_json::Value;

/// The plan of a job file as anybody else reads it.
fn plan(text: &str) -> Value {
    let (job, _) = kerfwright::job::read(text).unwrap_or_else(|f| panic!("{f:#?}\n{text}"));
    let plan = Plan::of(&job).unwrap_or_else(|miss| panic!("{:?}\n{text}", miss.reasons));
    serde_json::from_str(&kerfwright::render::json::plan(&plan)).expect("a plan is data")
}

fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value[key].as_array().map_or(&[], Vec::as_slice)
}

fn number(value: &Value, key: &str) -> f64 {
    value[key]
        .as_f64()
        .unwrap_or_else(|| panic!("no number {key} in {value}"))
}

/// The findings of an id, stops and cautions alike.
fn told<'a>(plan: &'a Value, id: &str) -> Vec<&'a str> {
    let all = list(plan, "stops").iter().chain(list(plan, "warnings"));
    let found = all.filter(|f| f["id"] == *id);
    found
        .map(|f| f["detail"].as_str().unwrap_or_default())
        .collect()
}

fn near(got: f64, want: f64, slack: f64) {
    assert!((got - want).abs() <= slack, "{got} is not {want}");
}
