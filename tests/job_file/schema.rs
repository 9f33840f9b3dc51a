//! The schema of the job file, judged by a validator that is not ours.

use kerfwright::job::keys::{schema, sections};
use serde_json::{Value as Json, json};
use toml::{Table, Value};

#[test]
fn the_schema_is_one_of_its_draft_and_takes_the_examples() {
    let schema = schema();
    assert_eq!(
        schema["$schema"],
        "https://json-schema.org/draft/2020-12/schema"
    );
    for (entry, _) in sections() {
        assert!(schema["$defs"][&entry.path].is_object(), "{}", entry.path);
    }
    let validator = jsonschema::draft202012::new(&schema).expect("a schema");
    for text in [
        include_str!("../../examples/tea-counter.toml"),
        include_str!("../../examples/washstand.toml"),
        include_str!("../../examples/garden-bench.toml"),
        include_str!("../../examples/upstairs-vanity.toml"),
    ] {
        let table: Table = text.parse().unwrap();
        validator.validate(&of(&Value::Table(table))).unwrap();
    }
    let with_top = |top: Json| json!({ "stone": { "kind": "granite", "thickness": 30 }, "slab": { "rectangle": [1, 2] }, "top": top });
    let coloured = with_top(json!({ "rectangle": [1, 2], "colour": 1 }));
    let fault = validator.validate(&coloured);
    assert!(fault.unwrap_err().to_string().contains("colour"));
    assert!(!validator.is_valid(&with_top(json!({}))));
}

/// A value of TOML as JSON; a date is its text.
fn of(value: &Value) -> Json {
    match value {
        Value::String(text) => Json::from(text.as_str()),
        Value::Integer(whole) => Json::from(*whole),
        Value::Float(number) => Json::from(*number),
        Value::Boolean(flag) => Json::from(*flag),
        Value::Datetime(moment) => Json::from(moment.to_string()),
        Value::Array(items) => items.iter().map(of).collect(),
        Value::Table(table) => {
            let pairs = table.iter().map(|(name, value)| (name.clone(), of(value)));
            Json::Object(pairs.collect())
        }
    }
}
