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
