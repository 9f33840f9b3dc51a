//! The list of keys as a JSON Schema, draft 2020-12, for editors that complete and check.

use serde_json::{Map, Value, json};

use super::key::{Key, Kind, LeftOut, Plain, Section};
use super::root::{ROOT, sections};

/// The schema of a job file.
///
/// It is a little narrower than the reader, which also takes words in capitals, and does not hold what
/// one key asks of another.
///
/// ```
/// let schema = kerfwright::job::keys::schema();
/// assert_eq!(schema["$schema"], "https://json-schema.org/draft/2020-12/schema");
/// assert_eq!(schema["$defs"]["disc"]["properties"]["kerf"]["default"], "2.2 mm");
/// ```
#[must_use]
pub fn schema() -> Value {
    let mut whole = object(&ROOT, "");
    whole.insert(
        "$schema".to_owned(),
        json!("https://json-schema.org/draft/2020-12/schema"),
    );
    whole.insert("title".to_owned(), json!("kerfwright job file"));
    let parts: Map<String, Value> = sections()
        .map(|(entry, section)| {
            let part = object(section, &entry.path);
            (entry.path, Value::Object(part))
        })
        .collect();
    whole.insert("$defs".to_owned(), Value::Object(parts));
    Value::Object(whole)
}

/// A section: its keys, those that must be there, and that there are no others.
fn object(section: &Section, path: &str) -> Map<String, Value> {
    let properties: Map<String, Value> = section
        .keys
        .iter()
        .map(|key| (key.name.to_owned(), property(key, path)))
        .collect();
    let named = |wanted: fn(&LeftOut) -> bool| {
        let keys = section.keys.iter().filter(move |key| wanted(&key.left_out));
        keys.map(|key| key.name)
    };
    let needed: Vec<&str> = named(|l| matches!(l, LeftOut::Needed)).collect();
    let ways: Vec<Value> = named(|l| matches!(l, LeftOut::OneOf(_)))
        .map(|name| json!({ "required": [name] }))
        .collect();
    let mut object = Map::new();
    object.insert("type".to_owned(), json!("object"));
    object.insert("additionalProperties".to_owned(), json!(false));
    object.insert("properties".to_owned(), Value::Object(properties));
    if !needed.is_empty() {
        object.insert("required".to_owned(), json!(needed));
    }
    if !ways.is_empty() {
        object.insert("anyOf".to_owned(), Value::Array(ways));
    }
    object
}

fn property(key: &Key, under: &str) -> Value {
    let path = match under {
        "" => key.name.to_owned(),
        under => format!("{under}.{}", key.name),
    };
    let mut property = kind(&key.kind, &path);
    if let Value::Object(map) = &mut property {
        map.insert("description".to_owned(), json!(key.meaning));
        if let LeftOut::Assumed(plain, _) = key.left_out {
            let value = match plain {
                Plain::Number(number) => json!(number),
                Plain::Word(word) => json!(word),
                Plain::Flag(flag) => json!(flag),
            };
            // A bare length is in the file's unit, so that a default in mm carries its own.
            let value = match key.kind.length() {
                Some(_) => json!(key.assumed_value()),
                None => value,
            };
            map.insert("default".to_owned(), value);
        }
    }
    property
}

/// What may stand at a key of a path.
fn kind(kind_of: &Kind, path: &str) -> Value {
    match kind_of {
        Kind::Text => json!({ "type": "string", "maxLength": 300 }),
        Kind::Flag => json!({ "type": "boolean" }),
        Kind::Date => json!({ "type": "string", "format": "date" }),
        Kind::Word(words) => json!({ "enum": words() }),
        Kind::Name(words) => {
            json!({ "anyOf": [{ "enum": words() }, { "type": "string", "minLength": 1 }] })
        }
        Kind::Whole(least, most) => {
            json!({ "type": "integer", "minimum": least, "maximum": most })
        }
        Kind::Length(_) => json!({ "type": ["number", "string"] }),
        Kind::Mass(limits) | Kind::Quantity(_, limits) => with_unit(limits.least, limits.most),
        Kind::Point => kind(&Kind::List(&Kind::Length(super::figure::SIDE), 2, 2), path),
        Kind::List(of, least, most) => json!({
            "type": "array", "items": kind(of, path), "minItems": least, "maxItems": most
        }),
        Kind::Named(_, of) => json!({
            "type": "object", "additionalProperties": kind(of, path)
        }),
        Kind::Either(kinds) => {
            let each: Vec<Value> = kinds.iter().map(|one| kind(one, path)).collect();
            json!({ "anyOf": each })
        }
        Kind::Table(_) => json!({ "$ref": format!("#/$defs/{path}") }),
        Kind::Tables(_, most) => json!({
            "type": "array", "items": { "$ref": format!("#/$defs/{path}") }, "maxItems": most
        }),
    }
}

/// A bare number within limits, or a text with a unit of its own.
fn with_unit(least: f64, most: f64) -> Value {
    json!({ "anyOf": [
        { "type": "number", "minimum": least, "maximum": most }, { "type": "string" }
    ] })
}
