//! Relief cuts stay in the waste, and no curve frees more than a person can hold unless the plan says so.

use serde_json::Value;

use super::disc::{strokes, taken};
use super::plane::{Stone, list, number, word};

/// Relief cuts keep so far from the sawn outline, mm, as the planner promises.
const CLEAR_MM: f64 = 5.0;
/// What chords and the clipping grid may take off that, mm.
const SLACK_MM: f64 = 0.02;

/// What is wrong with a relief cut, or with what a curve frees.
pub(crate) fn faults(sawn: &Stone, plan: &Value, cut: &Value) -> Vec<String> {
    let name = format!("cut {} ({})", cut["number"], cut["edge"]);
    let found = match word(cut, "kind") {
        "relief" => {
            let slab = Stone::outline(&plan["slab"]["outline"]);
            let slots = taken(&strokes(cut), 0.0).within(&slab);
            let gap = slots.gap(sawn);
            let near = gap < CLEAR_MM - SLACK_MM || slots.within(sawn).area() > 0.0;
            near.then(|| format!("comes to {gap:.3} mm of the kept stone, {CLEAR_MM} promised"))
        }
        "curve" => too_heavy(plan, cut),
        _ => None,
    };
    found.map(|f| format!("{name}: {f}")).into_iter().collect()
}

fn too_heavy(plan: &Value, cut: &Value) -> Option<String> {
    let said = |id: &str| list(plan, "warnings").iter().any(|c| word(c, "id") == id);
    if cut["cutout"].is_number() || said("curve-waste-heavy") {
        return None;
    }
    let limit = number(&plan["kit"], "waste_piece_kg");
    let frees = list(cut, "frees");
    let pieces = list(plan, "pieces").iter();
    let heaviest = pieces
        .filter(|p| frees.contains(&p["name"]))
        .map(|p| number(&p["mass"], "high"))
        .fold(0.0, f64::max);
    (heaviest > limit).then(|| format!("frees {heaviest:.2} kg in one piece, {limit} allowed"))
}
