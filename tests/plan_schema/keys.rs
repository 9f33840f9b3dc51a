//! Whether a schema only adds to another: every key is still there, and is still what it was.

use std::collections::BTreeSet;

use serde_json::{Value, json};

/// Every key by its path from the root, with the kinds of value that stand there.
fn keys(whole: &Value, schema: &Value, path: &str, found: &mut BTreeSet<String>) {
    if let Some(name) = schema["$ref"].as_str() {
        let named = whole
            .pointer(name.trim_start_matches('#'))
            .expect("a definition");
        return keys(whole, named, path, found);
    }
    if let Some(kind) = schema["type"].as_str() {
        found.insert(format!("{path}: {kind}"));
    }
    for word in schema["enum"].as_array().into_iter().flatten() {
        found.insert(format!("{path}: {word}"));
    }
    for (key, inner) in schema["properties"].as_object().into_iter().flatten() {
        keys(whole, inner, &format!("{path}.{key}"), found);
    }
    for each in ["items", "additionalProperties"] {
        if schema[each].is_object() {
            keys(whole, &schema[each], &format!("{path}[]"), found);
        }
    }
    for each in ["anyOf", "oneOf", "prefixItems"] {
        for inner in schema[each].as_array().into_iter().flatten() {
            keys(whole, inner, path, found);
        }
    }
}

/// What the first schema says and the second no longer does.
pub(crate) fn lost(before: &Value, after: &Value) -> Vec<String> {
    let all = |schema: &Value| {
        let mut found = BTreeSet::new();
        keys(schema, schema, "plan", &mut found);
        found
    };
    all(before).difference(&all(after)).cloned().collect()
}

#[test]
fn a_key_that_is_new_is_nothing_lost_and_one_that_goes_or_changes_is() {
    let inner = json!({ "type": "object", "properties": { "mass": { "type": "number" } } });
    let schema = |inner: &Value| {
        json!({ "properties": { "pieces": { "type": "array", "items": { "$ref": "#/$defs/Piece" } } },
            "$defs": { "Piece": inner } })
    };
    let mut more = inner.clone();
    more["properties"]["name"] = json!({ "enum": ["a"] });
    let other = json!({ "type": "object", "properties": { "mass": { "type": "string" } } });
    assert!(lost(&schema(&inner), &schema(&more)).is_empty());
    let gone = lost(&schema(&more), &schema(&inner));
    assert_eq!(gone, ["plan.pieces[].name: \"a\""]);
    let changed = lost(&schema(&inner), &schema(&other));
    assert_eq!(changed, ["plan.pieces[].mass: number"]);
}

/// The units that a key may end with; a time may also begin with its own (`minutes_to_limit`).
const UNITS: [&str; 28] = [
    "mm", "mm2", "cm2", "m2", "mm3", "m3", "kg", "n", "nm", "deg", "mpa", "s", "h", "minutes",
    "hours", "db", "dba", "m", "cm", "lb", "w", "min", "l", "m3h", "rpm", "s2", "percent", "kn",
];

/// Numbers that have none: counts, places in an order, ratios, published factors and points.
const NO_UNIT: [&str; 49] = [
    "after_cut",
    "apf",
    "at-least",
    "bags",
    "before_cut",
    "between",
    "buckets",
    "core_holes",
    "count",
    "coupling",
    "curve_factor",
    "curves",
    "cut",
    "cutout",
    "cuts",
    "flaws",
    "frequency",
    "handling_factor",
    "index",
    "index_without",
    "least",
    "lifter",
    "most",
    "number",
    "over",
    "pass",
    "people",
    "points",
    "points_day",
    "points_job",
    "points_per_hour",
    "pressed",
    "relief_cuts",
    "run_outs_removed",
    "safety_factor",
    "share",
    "shares_to_action",
    "shares_to_limit",
    "station",
    "stiffness",
    "straight_cuts",
    "taped_from",
    "team_factor",
    "tension_factor",
    "utilisation",
    "value",
    "year",
    "turned_by",
    "turning",
];

/// Keys that the first version fixed without a unit, by their type: mm, kg, degrees and minutes.
const FIXED: [(&str, &[&str]); 11] = [
    ("CoreBit", &["diameter"]),
    ("CoreHole", &["diameter"]),
    ("Disc", &["diameter", "kerf"]),
    ("LeftOver", &["length"]),
    ("MassRange", &["high", "likely", "low"]),
    ("PlacementNote", &["least_spare", "turn"]),
    ("Seg", &["radius", "start", "sweep"]),
    ("Thickness", &["least", "mean", "most"]),
    (
        "Cut",
        &["allowance", "cusp", "full_depth", "length", "tail"],
    ),
    ("Stroke", &["depth", "heading"]),
    ("Range", &["high", "likely", "low"]),
];

/// Whether a number, or a list or a choice of them, stands there.
fn is_number(schema: &Value) -> bool {
    let kinds = match &schema["type"] {
        Value::Array(all) => all.clone(),
        one => vec![one.clone()],
    };
    let inner = ["anyOf", "oneOf", "prefixItems"].map(|each| schema[each].as_array());
    kinds
        .iter()
        .any(|kind| kind == "number" || kind == "integer")
        || schema["items"].is_object() && is_number(&schema["items"])
        || inner.into_iter().flatten().flatten().any(is_number)
}

/// The numeric keys of a type that say no unit though they have one.
fn bare(of: &str, schema: &Value, found: &mut Vec<String>) {
    let own = of.rsplit('.').next();
    let fixed = FIXED.iter().find(|(name, _)| Some(*name) == own);
    let known = |key: &str| {
        let mut words = key.split(['_', '-']);
        let unit = |word: Option<&str>| word.is_some_and(|w| UNITS.contains(&w));
        unit(key.rsplit(['_', '-']).next())
            || words.next().is_some_and(|w| w == "minutes" || w == "hours")
            || NO_UNIT.contains(&key)
            || fixed.is_some_and(|(_, keys)| keys.contains(&key))
    };
    for (key, inner) in schema["properties"].as_object().into_iter().flatten() {
        if is_number(inner) && !known(key) {
            found.push(format!("{of}.{key}"));
        }
        bare(of, inner, found);
    }
    for each in ["anyOf", "oneOf"] {
        for inner in schema[each].as_array().into_iter().flatten() {
            bare(of, inner, found);
        }
    }
}

/// The numeric keys of a schema that do not carry their unit.
pub(crate) fn without_unit(schema: &Value) -> Vec<String> {
    let mut found = Vec::new();
    bare("plan", schema, &mut found);
    for (name, inner) in schema["$defs"].as_object().into_iter().flatten() {
        bare(name, inner, &mut found);
    }
    found
}

#[test]
fn a_number_that_does_not_say_its_unit_is_found() {
    let number = json!({ "type": "number" });
    let schema = json!({ "properties": { "reach": number, "reach_mm": number, "count": number },
        "$defs": { "Tie": { "properties": { "far": { "type": "array", "items": number } } } } });
    assert_eq!(without_unit(&schema), ["plan.reach", "Tie.far"]);
}
