//! The JSON Schema (draft 2020-12) of a type, from its source.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};
use syn::{Fields, GenericArgument, Item, PathArguments, Type};

use crate::source::{Module, Said, Source, documented, said};

/// Types that write themselves, and what they write. How they do is tested by the plans that are
/// validated.
fn by_hand(name: &str) -> Option<Value> {
    let point = json!({ "$ref": "#/$defs/Point" });
    Some(match name {
        "f64" => json!({ "type": "number" }),
        "usize" | "u8" | "u16" | "u32" | "u64" => json!({ "type": "integer", "minimum": 0 }),
        "i64" | "i32" => json!({ "type": "integer" }),
        "bool" => json!({ "type": "boolean" }),
        "str" | "String" | "Text" => json!({ "type": "string" }),
        "Point" | "Vector" => {
            json!({ "type": "array", "items": { "type": "number" }, "minItems": 2,
            "maxItems": 2, "description": "x and y, mm, in the slab's frame" })
        }
        "Mass" => json!({ "type": "number", "description": "kg" }),
        "LengthUnit" => json!({ "enum": ["mm", "in"] }),
        "Language" => json!({ "type": "string", "description": "the code of a language" }),
        "Outline" => json!({ "type": "array", "items": { "$ref": "#/$defs/Seg" } }),
        "Seg" => json!({
            "description": "a piece of an outline: a line, or an arc with angles in degrees, its sweep signed",
            "oneOf": [
                { "type": "object", "required": ["line"],
                  "properties": { "line": { "type": "array", "items": point, "minItems": 2, "maxItems": 2 } } },
                { "type": "object", "required": ["arc"],
                  "properties": { "arc": { "type": "object",
                    "required": ["centre", "radius", "start", "sweep"],
                    "properties": { "centre": point, "radius": { "type": "number" },
                        "start": { "type": "number" }, "sweep": { "type": "number" } } } } },
            ],
        }),
        _ => return None,
    })
}

/// Schemas of all types that were asked for.
pub(crate) struct Schemas<'a> {
    source: &'a Source,
    made: BTreeMap<String, Value>,
    /// What stands for the parameter of the generic type.
    parameter: &'a str,
}

impl<'a> Schemas<'a> {
    /// The schema of a type of `render::json` with what it holds.
    pub(crate) fn of(source: &'a Source, outer: &str, inner: &'a str) -> Value {
        let mut schemas = Self {
            source,
            made: BTreeMap::new(),
            parameter: inner,
        };
        let module = vec!["render".to_owned(), "json".to_owned()];
        let (module, item) = source.find(&module, &[outer.to_owned()]);
        let mut root = schemas.item(module, item);
        root["$defs"] = schemas.made.into_iter().collect::<Map<_, _>>().into();
        root
    }

    fn typed(&mut self, from: &Module, wanted: &Type) -> Value {
        match wanted {
            Type::Reference(to) => self.typed(from, &to.elem),
            Type::Paren(inner) => self.typed(from, &inner.elem),
            Type::Array(array) => {
                let count = whole_number(&array.len);
                let items = self.typed(from, &array.elem);
                json!({ "type": "array", "items": items, "minItems": count, "maxItems": count })
            }
            Type::Slice(slice) => {
                json!({ "type": "array", "items": self.typed(from, &slice.elem) })
            }
            Type::Tuple(tuple) => {
                let parts: Vec<Value> = tuple.elems.iter().map(|t| self.typed(from, t)).collect();
                let count = parts.len();
                json!({ "type": "array", "prefixItems": parts, "minItems": count, "maxItems": count })
            }
            Type::Path(path) => self.named(from, path),
            _ => panic!("a type in {from:?} is not followed"),
        }
    }

    fn named(&mut self, from: &Module, path: &syn::TypePath) -> Value {
        let segments = &path.path.segments;
        let last = segments.last().unwrap();
        let inner: Vec<&Type> = match &last.arguments {
            PathArguments::AngleBracketed(args) => args.args.iter().filter_map(as_type).collect(),
            _ => Vec::new(),
        };
        let name = last.ident.to_string();
        match (name.as_str(), &inner[..]) {
            ("Option", [one]) => json!({ "anyOf": [self.typed(from, one), { "type": "null" }] }),
            ("Vec", [one]) => json!({ "type": "array", "items": self.typed(from, one) }),
            ("Box" | "Cow", [one]) => self.typed(from, one),
            ("BTreeMap", [_, one]) => {
                json!({ "type": "object", "additionalProperties": self.typed(from, one) })
            }
            ("T", []) => {
                let parameter: Type = syn::parse_str(self.parameter).unwrap();
                self.typed(from, &parameter)
            }
            _ => {
                let way: Vec<String> = segments.iter().map(|s| s.ident.to_string()).collect();
                self.reference(from, &way)
            }
        }
    }

    fn reference(&mut self, from: &Module, way: &[String]) -> Value {
        let name = way.last().unwrap();
        if let Some(schema) = by_hand(name) {
            return self.kept(name, schema);
        }
        // A source is written as its record.
        let way = if name == "Source" {
            vec!["Citation".to_owned()]
        } else {
            way.to_vec()
        };
        let (module, item) = self.source.find(from, &way);
        if let Item::Type(alias) = item {
            return self.typed(module, &alias.ty);
        }
        let mut key = way.last().unwrap().clone();
        if self.source.types[&key].len() > 1 {
            key = format!("{}.{key}", module.join("."));
        }
        if !self.made.contains_key(&key) {
            self.made.insert(key.clone(), Value::Null);
            let made = self.item(module, item);
            self.made.insert(key.clone(), made);
        }
        json!({ "$ref": format!("#/$defs/{key}") })
    }

    /// A schema by hand: one with parts of its own stands among the definitions.
    fn kept(&mut self, name: &str, schema: Value) -> Value {
        const WITH_PARTS: [&str; 4] = ["Outline", "Seg", "Point", "Vector"];
        if !WITH_PARTS.contains(&name) {
            return schema;
        }
        for part in ["Seg", "Point"] {
            self.made
                .extend(by_hand(part).map(|made| (part.to_owned(), made)));
        }
        self.made.insert(name.to_owned(), schema);
        json!({ "$ref": format!("#/$defs/{name}") })
    }

    fn item(&mut self, module: &Module, item: &Item) -> Value {
        let (attributes, mut schema) = match item {
            Item::Struct(s) => (&s.attrs, self.fields(module, &s.fields, &said(&s.attrs))),
            Item::Enum(e) => (&e.attrs, self.variants(module, e)),
            _ => panic!("neither a structure nor a choice"),
        };
        let words = documented(attributes);
        if !words.is_empty() {
            schema["description"] = words.into();
        }
        schema
    }

    fn fields(&mut self, module: &Module, fields: &Fields, whole: &Said) -> Value {
        if let Fields::Unnamed(parts) = fields {
            let parts: Vec<Value> = parts
                .unnamed
                .iter()
                .map(|f| self.typed(module, &f.ty))
                .collect();
            let count = parts.len();
            return match &parts[..] {
                [one] => one.clone(),
                _ => {
                    json!({ "type": "array", "prefixItems": parts, "minItems": count, "maxItems": count })
                }
            };
        }
        let mut object = Object::default();
        for field in fields {
            let own = said(&field.attrs);
            let mut schema = if own.skip {
                continue;
            } else {
                self.typed(module, &field.ty)
            };
            if own.flatten {
                object.take_in(&self.resolved(&schema));
                continue;
            }
            let name = field.ident.as_ref().unwrap().to_string();
            let name = named(&name, &own, whole);
            if own.may_be_missing {
                // What is missing is not written as null.
                schema = schema["anyOf"].get(0).cloned().unwrap_or(schema);
            } else {
                object.required.push(name.clone());
            }
            describe(&mut schema, &documented(&field.attrs));
            object.properties.insert(name, schema);
        }
        object.finished()
    }

    fn resolved(&self, schema: &Value) -> Value {
        let name = schema["$ref"]
            .as_str()
            .and_then(|r| r.strip_prefix("#/$defs/"));
        name.map_or(schema.clone(), |name| self.made[name].clone())
    }

    fn variants(&mut self, module: &Module, choice: &syn::ItemEnum) -> Value {
        let whole = said(&choice.attrs);
        let (mut words, mut ways) = (Vec::new(), Vec::new());
        for variant in &choice.variants {
            let own = said(&variant.attrs);
            let name = named(&variant.ident.to_string(), &own, &whole);
            if matches!(variant.fields, Fields::Unit) {
                words.push(name);
                continue;
            }
            let mut inner = self.fields(module, &variant.fields, &Said::default());
            describe(&mut inner, &documented(&variant.attrs));
            ways.push(if whole.untagged {
                inner
            } else {
                json!({ "type": "object", "required": [&name], "properties": { &name: inner } })
            });
        }
        if !words.is_empty() {
            ways.insert(0, json!({ "enum": words }));
        }
        match &ways[..] {
            [one] => one.clone(),
            _ => json!({ "anyOf": ways }),
        }
    }
}

/// An object under way.
#[derive(Default)]
struct Object {
    properties: Map<String, Value>,
    required: Vec<String>,
    choices: Vec<Value>,
}

impl Object {
    /// Takes in what another schema asks for; of a choice, every way's keys and that one of them is there.
    fn take_in(&mut self, schema: &Value) {
        for way in schema["anyOf"].as_array().into_iter().flatten() {
            self.choices.push(json!({ "required": way["required"] }));
            let keys = way["properties"].as_object().expect("a way with a key");
            self.properties.extend(keys.clone());
        }
        if let Some(keys) = schema["properties"].as_object() {
            self.properties.extend(keys.clone());
        }
        let required = schema["required"].as_array().into_iter().flatten();
        self.required
            .extend(required.map(|r| r.as_str().unwrap().to_owned()));
        for choice in schema["oneOf"].as_array().into_iter().flatten() {
            self.choices.push(choice.clone());
        }
    }

    fn finished(mut self) -> Value {
        self.required.sort();
        let mut schema =
            json!({ "type": "object", "required": self.required, "properties": self.properties });
        if !self.choices.is_empty() {
            schema["oneOf"] = self.choices.into();
        }
        schema
    }
}

fn describe(schema: &mut Value, words: &str) {
    if !words.is_empty() {
        schema["description"] = words.into();
    }
}

fn as_type(argument: &GenericArgument) -> Option<&Type> {
    match argument {
        GenericArgument::Type(inner) => Some(inner),
        _ => None,
    }
}

fn whole_number(expression: &syn::Expr) -> usize {
    let syn::Expr::Lit(literal) = expression else {
        panic!("a length that is not written out")
    };
    let syn::Lit::Int(number) = &literal.lit else {
        panic!("a length that is no number")
    };
    number.base10_parse().unwrap()
}

/// The name that is written.
fn named(name: &str, own: &Said, whole: &Said) -> String {
    if let Some(name) = &own.rename {
        return name.clone();
    }
    match whole.rename_all.as_deref() {
        None => name.to_owned(),
        Some("lowercase") => name.to_lowercase(),
        Some("kebab-case") => parted(name, '-'),
        Some("snake_case") => parted(name, '_'),
        Some(other) => panic!("{other} is not followed"),
    }
}

fn parted(name: &str, by: char) -> String {
    let mut out = String::new();
    for c in name.chars() {
        if c.is_uppercase() && !out.is_empty() {
            out.push(by);
        }
        out.extend(c.to_lowercase());
    }
    out.replace('_', &by.to_string())
}
