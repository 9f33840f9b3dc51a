//! What is there before the first cut of a plan that goes on after a repair.

use serde_json::Value;

use super::disc::Hole;
use super::plane::{Stone, number, place};

/// What had been taken out of the stone before the first cut of the plan.
pub(super) fn taken_before(plan: &Value) -> Stone {
    let taken = plan["slab"].get("taken").and_then(Value::as_array);
    Stone::all(taken.into_iter().flatten().map(Stone::outline))
}

/// The core holes that had been drilled before it.
pub(super) fn drilled_before(plan: &Value) -> Vec<Hole> {
    let drilled = plan["slab"].get("drilled").and_then(Value::as_array);
    let each = drilled.into_iter().flatten().map(|hole| Hole {
        at: place(&hole["at"]),
        radius: number(hole, "diameter_mm") / 2.0,
    });
    each.collect()
}

/// The most that is ground off a face that is there already and is not sawn again.
pub(super) fn ground_by_repair(plan: &Value) -> f64 {
    let repair = &plan["repair"];
    let parts = |of: &Value| -> Vec<f64> {
        let keys = ["edges", "corners", "sides"].into_iter();
        let each = keys.filter_map(|key| of.get(key)?.as_array());
        let each = each
            .flatten()
            .filter_map(|part| part["to_do"]["finish-mm"].as_f64());
        each.collect()
    };
    let openings = repair.get("openings").and_then(Value::as_array);
    let openings = openings.into_iter().flatten().flat_map(parts);
    openings.chain(parts(repair)).fold(0.0, f64::max)
}
