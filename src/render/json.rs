//! The plan as JSON.

use crate::plan::Plan;

/// The whole plan as indented JSON with a final line end. Numbers are not rounded.
///
/// A number that is not finite would become `null`; the planner makes none.
#[must_use]
pub fn plan(plan: &Plan) -> String {
    // Writing plain data to a string fails only for maps with keys that are not strings; the plan
    // has none.
    let mut text = serde_json::to_string_pretty(plan).unwrap_or_default();
    text.push('\n');
    text
}
