//! The JSON Schema of `plan --json`: it is made from the source of what is written, plans keep to it, and
//! it says every key. `WRITE_SCHEMA=1 cargo test --test plan_schema` writes it again, when it only adds to what
//! the version had; else the version has to be raised.

mod keys;
mod schema;
mod source;

use std::path::{Path, PathBuf};
use std::process::Command;
use std::{env, fs};

use jsonschema::Validator;
use serde_json::{Value, json};

use schema::Schemas;
use source::Source;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn kept() -> PathBuf {
    root().join("src/render/plan.schema.json")
}

/// The schema as the source has it now.
fn made() -> Value {
    let source = Source::read(&root().join("src"));
    let mut schema = Schemas::of(&source, "WithFindings", "WithChecklist");
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema".into();
    schema["title"] = "a plan of kerfwright".into();
    schema["description"] = "What `kerfwright plan JOB --json` prints. Lengths mm, areas mm², masses kg, angles degrees \
        counter-clockwise from AB, places in the slab's frame. Within a version keys are only added: a reader passes over \
        those it does not know."
        .into();
    schema["properties"]["version"] = json!({ "const": kerfwright::render::json::VERSION });
    schema
}

/// A line for each key of the root and for each type.
fn lines(schema: &Value) -> String {
    let mut parts = Vec::new();
    for (key, value) in schema.as_object().unwrap() {
        match (key.as_str(), value) {
            ("$defs" | "properties", Value::Object(all)) => {
                let each = all
                    .iter()
                    .map(|(name, inner)| format!("    {}: {inner}", json!(name)));
                let each: Vec<String> = each.collect();
                parts.push(format!("  {}: {{\n{}\n  }}", json!(key), each.join(",\n")));
            }
            _ => parts.push(format!("  {}: {value}", json!(key))),
        }
    }
    format!("{{\n{}\n}}\n", parts.join(",\n"))
}

/// Writes the schema that the source has now, unless something that the version had is lost.
fn write(schema: &Value) {
    let before = fs::read_to_string(kept()).unwrap_or_default();
    let before: Value = serde_json::from_str(&before).unwrap_or_default();
    if before["properties"]["version"] == schema["properties"]["version"] {
        let lost = keys::lost(&before, schema);
        assert!(
            lost.is_empty(),
            "raise render::json::VERSION, for this is lost: {lost:#?}"
        );
    }
    fs::write(kept(), lines(schema)).unwrap();
}

/// The same schema with no other keys than it names.
fn strict(schema: &Value) -> Value {
    match schema {
        Value::Object(map) => {
            let mut out: serde_json::Map<String, Value> =
                map.iter().map(|(k, v)| (k.clone(), strict(v))).collect();
            let is_object = map.get("type") == Some(&json!("object"));
            if is_object && map.contains_key("properties") {
                out.entry("additionalProperties").or_insert(false.into());
            }
            out.into()
        }
        Value::Array(all) => all.iter().map(strict).collect(),
        other => other.clone(),
    }
}

/// Plans of all kinds of job.
fn plans() -> Vec<(String, Value)> {
    let of = |folder: &str| {
        fs::read_dir(root().join(folder))
            .unwrap()
            .map(|e| e.unwrap().path())
    };
    let golden = of("tests/golden").map(|case| case.join("job.toml"));
    let jobs = of("examples").chain(of("tests/pdf_sheet")).chain(golden);
    let jobs = jobs.filter(|job| job.exists() && job.extension().is_some_and(|e| e == "toml"));
    let plan = |job: PathBuf| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_kerfwright"));
        let output = command
            .arg("plan")
            .arg(&job)
            .arg("--json")
            .output()
            .unwrap();
        let plan = serde_json::from_slice(&output.stdout).ok()?;
        Some((job.display().to_string(), plan))
    };
    jobs.filter_map(plan).collect()
}

fn faults(validator: &Validator, plan: &Value) -> Vec<String> {
    let faults = validator.iter_errors(plan);
    faults
        .map(|f| format!("{}: {f}", f.instance_path()))
        .collect()
}

#[test]
fn the_schema_is_that_of_the_source_and_the_program_prints_it() {
    let schema = made();
    if env::var_os("WRITE_SCHEMA").is_some() {
        write(&schema);
    }
    let text = lines(&schema);
    let written = fs::read_to_string(kept()).unwrap();
    assert!(
        written == text,
        "WRITE_SCHEMA=1 cargo test --test plan_schema, then tell what changed"
    );
    let mut command = Command::new(env!("CARGO_BIN_EXE_kerfwright"));
    let printed = command.args(["schema", "plan"]).output().unwrap();
    assert!(printed.status.success());
    assert!(String::from_utf8(printed.stdout).unwrap() == text);
}

#[test]
fn every_number_carries_its_unit_in_its_key() {
    let bare = keys::without_unit(&made());
    assert!(bare.is_empty(), "{bare:#?}");
}

#[test]
fn plans_keep_to_it_and_hold_no_key_that_it_does_not_name() {
    let (open, closed) = (made(), strict(&made()));
    let open = jsonschema::validator_for(&open).unwrap();
    let closed = jsonschema::validator_for(&closed).unwrap();
    let plans = plans();
    assert!(plans.len() > 20, "{}", plans.len());
    for (job, plan) in &plans {
        for validator in [&open, &closed] {
            let found = faults(validator, plan);
            assert!(
                found.is_empty(),
                "{job}: {:#?}",
                &found[..found.len().min(5)]
            );
        }
    }
}

#[test]
fn a_plan_with_a_key_gone_or_of_another_kind_is_refused_and_a_new_key_is_not() {
    let schema = made();
    let validator = jsonschema::validator_for(&schema).unwrap();
    let (_, plan) = plans().swap_remove(0);
    let keys: Vec<String> = plan.as_object().unwrap().keys().cloned().collect();
    let named = |key: &String| schema["properties"].get(key).is_some();
    assert!(keys.iter().all(named), "{keys:?}");
    for key in keys.iter().filter(|k| *k != "repair") {
        let mut other = plan.clone();
        other.as_object_mut().unwrap().remove(key);
        assert!(!validator.is_valid(&other), "{key} is gone");
        other[key] = json!({ "unlike": true });
        assert!(!validator.is_valid(&other), "{key} is something else");
    }
    let mut deeper = plan.clone();
    deeper["cuts"][0]["strokes"][0]["depth"] = "2 mm".into();
    assert!(!validator.is_valid(&deeper));
    let mut more = plan;
    more["cuts"][0]["further"] = 1.into();
    assert!(validator.is_valid(&more));
}
