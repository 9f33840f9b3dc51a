//! The plan as JSON.

use serde::Serialize;

use crate::plan::{Plan, Weighing};

/// The whole plan as indented JSON with a final line end. Numbers are not rounded.
///
/// A number that is not finite would become `null`; the planner makes none.
#[must_use]
pub fn plan(plan: &Plan) -> String {
    pretty(plan)
}

/// What the stone weighs and how it is moved, written in the same way.
#[must_use]
pub fn weighing(weighing: &Weighing) -> String {
    pretty(weighing)
}

fn pretty(data: &impl Serialize) -> String {
    // Writing plain data to a string fails only for maps with keys that are not strings; there
    // are none.
    let mut text = serde_json::to_string_pretty(data).unwrap_or_default();
    text.push('\n');
    text
}
