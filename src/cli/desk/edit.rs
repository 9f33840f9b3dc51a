//! Changes of the form put into the text of a job file, which stays as it is everywhere else: its
//! remarks, its order, its way of writing.

use serde::Deserialize;
use serde_json::{Map, Value as Json};
use toml_edit::{Array, ArrayOfTables, DocumentMut, InlineTable, Item, Table, TableLike, Value};

use crate::job::keys::{Kind, ROOT, Section, TO_FILL};

/// One field that was changed.
#[derive(Clone, Debug, Deserialize)]
pub(super) struct Change {
    /// Where: the names of keys, and for lists of sections the number of one, counted from 0.
    at: Vec<Step>,
    /// What was typed there: texts, in lists and by names; nothing to take the key out.
    to: Json,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(untagged)]
enum Step {
    Number(usize),
    Key(String),
}

/// Why a change was not made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum EditFault {
    /// The text is not TOML, so that nothing can be put into it.
    NotToml,
    /// There is no such key in the list of keys, or something else stands in its place.
    NoPlace,
}

/// The text with the changes in it.
///
/// # Errors
/// See [`EditFault`]; nothing is changed then.
pub(super) fn edited(text: &str, changes: &[Change]) -> Result<String, EditFault> {
    if changes.is_empty() {
        return Ok(text.to_owned());
    }
    let mut document: DocumentMut = text.parse().map_err(|_| EditFault::NotToml)?;
    for change in changes {
        put(document.as_table_mut(), &ROOT, &change.at, &change.to).ok_or(EditFault::NoPlace)?;
    }
    Ok(document.to_string())
}

/// What the form shows of a text: every value as a text, in lists and by names. Nothing when the text is
/// not TOML.
pub(super) fn values(text: &str) -> Option<Json> {
    let document: DocumentMut = text.parse().ok()?;
    Some(of_table(document.as_table()))
}

fn of_table(table: &dyn TableLike) -> Json {
    let each = table
        .iter()
        .map(|(key, item)| (key.to_owned(), of_item(item)));
    Json::Object(each.collect())
}

fn of_item(item: &Item) -> Json {
    match item {
        Item::None => Json::Null,
        Item::Value(value) => of_value(value),
        Item::Table(table) => of_table(table),
        Item::ArrayOfTables(tables) => tables.iter().map(|t| of_table(t)).collect(),
    }
}

fn of_value(value: &Value) -> Json {
    let text = match value {
        Value::Array(list) => return list.iter().map(of_value).collect(),
        Value::InlineTable(table) => return of_table(table),
        Value::String(text) if text.value() == TO_FILL => String::new(),
        Value::String(text) => text.value().clone(),
        Value::Integer(number) => number.display_repr().into_owned(),
        Value::Float(number) => number.display_repr().into_owned(),
        Value::Boolean(flag) => flag.value().to_string(),
        Value::Datetime(date) => date.value().to_string(),
    };
    Json::String(text)
}

/// Puts one change into a table of a section.
fn put(table: &mut dyn TableLike, section: &Section, at: &[Step], to: &Json) -> Option<()> {
    let (Step::Key(name), rest) = at.split_first()? else {
        return None;
    };
    let kind = &section.key(name)?.kind;
    match (kind, rest) {
        (Kind::Tables(below, _), [Step::Number(number), rest @ ..]) => {
            put_in_list(table, name, below, *number, rest, to)
        }
        (Kind::Table(below), [Step::Key(_), ..]) => {
            let inline = !section.path.is_empty();
            let item = opened(table, name, inline);
            put(item.as_table_like_mut()?, below, rest, to)?;
            let braces = item.as_inline_table_mut();
            if braces.is_some_and(|braces| is_emptied(braces, to)) {
                table.remove(name);
            }
            Some(())
        }
        (Kind::Table(_) | Kind::Tables(..), _) => None,
        (_, []) => {
            set(table, name, kind, to);
            Some(())
        }
        _ => None,
    }
}

/// Sets a table in braces anew when something was taken out of it; whether nothing is left in it.
fn is_emptied(braces: &mut InlineTable, to: &Json) -> bool {
    if to.is_null() {
        braces.fmt();
    }
    braces.is_empty()
}

/// A section below a table, made when it is not there.
fn opened<'t>(table: &'t mut dyn TableLike, name: &str, inline: bool) -> &'t mut Item {
    let new = if inline {
        toml_edit::value(InlineTable::new())
    } else {
        Item::Table(Table::new())
    };
    table.entry(name).or_insert(new)
}

/// Puts a change into one of several sections of a name; the one behind the last is made.
fn put_in_list(
    table: &mut dyn TableLike,
    name: &str,
    section: &Section,
    number: usize,
    rest: &[Step],
    to: &Json,
) -> Option<()> {
    let new = Item::ArrayOfTables(ArrayOfTables::new());
    let item = table.entry(name).or_insert(new);
    let count = match item {
        Item::ArrayOfTables(tables) => in_tables(tables, section, number, rest, to)?,
        Item::Value(Value::Array(list)) => in_array(list, section, number, rest, to)?,
        _ => return None,
    };
    if count == 0 {
        table.remove(name);
    }
    Some(())
}

/// The same among sections under headers of their own; how many there are then.
fn in_tables(
    tables: &mut ArrayOfTables,
    section: &Section,
    number: usize,
    rest: &[Step],
    to: &Json,
) -> Option<usize> {
    if rest.is_empty() && to.is_null() {
        tables.get(number)?;
        tables.remove(number);
        return Some(tables.len());
    }
    if number == tables.len() {
        tables.push(Table::new());
    }
    let table = tables.get_mut(number)?;
    if !rest.is_empty() {
        put(table, section, rest, to)?;
    }
    Some(tables.len())
}

/// The same among tables in braces.
fn in_array(
    list: &mut Array,
    section: &Section,
    number: usize,
    rest: &[Step],
    to: &Json,
) -> Option<usize> {
    if rest.is_empty() && to.is_null() {
        list.get(number)?;
        list.remove(number);
        return Some(list.len());
    }
    if number == list.len() {
        list.push(InlineTable::new());
    }
    let table = list.get_mut(number)?.as_inline_table_mut()?;
    if !rest.is_empty() {
        put(table, section, rest, to)?;
    }
    Some(list.len())
}

/// Gives a key its value, or takes it out; the remark behind it stays.
fn set(table: &mut dyn TableLike, name: &str, kind: &Kind, to: &Json) {
    let Some(value) = value_of(kind, to) else {
        table.remove(name);
        return;
    };
    match table.get_mut(name) {
        Some(Item::Value(old)) => renew(old, value),
        Some(Item::Table(old)) if value.is_inline_table() => {
            renew_table(old, value);
        }
        _ => {
            table.insert(name, toml_edit::value(value));
        }
    }
}

/// A value in the place of another; parts that are the same stay as they are written.
fn renew(old: &mut Value, new: Value) {
    if of_value(old) == of_value(&new) {
        return;
    }
    match (&mut *old, new) {
        (Value::Array(list), Value::Array(new)) if list.len() == new.len() => {
            for (old, new) in list.iter_mut().zip(new) {
                renew(old, new);
            }
        }
        (Value::InlineTable(table), new @ Value::InlineTable(_)) => {
            let count = table.len();
            if renew_table(table, new) || table.len() != count {
                table.fmt();
            }
        }
        (old, mut new) => {
            *new.decor_mut() = old.decor().clone();
            *old = new;
        }
    }
}

/// The same for what stands beside names; whether something was taken out.
fn renew_table(old: &mut dyn TableLike, new: Value) -> bool {
    let Value::InlineTable(new) = new else {
        return false;
    };
    let gone = old.iter().map(|(name, _)| name.to_owned());
    let gone: Vec<String> = gone.filter(|name| !new.contains_key(name)).collect();
    for name in &gone {
        old.remove(name);
    }
    for (name, value) in new {
        match old.get_mut(&name) {
            Some(Item::Value(old)) => renew(old, value),
            _ => {
                old.insert(&name, toml_edit::value(value));
            }
        }
    }
    !gone.is_empty()
}

/// What was typed as a value of the file; nothing where nothing was typed.
fn value_of(kind: &Kind, typed: &Json) -> Option<Value> {
    match typed {
        Json::String(text) if text.trim().is_empty() => None,
        Json::String(text) => Some(scalar(kind, text.trim())),
        Json::Array(items) => list_of(kind, items).map(Value::Array),
        Json::Object(items) => by_name(kind, items).map(Value::InlineTable),
        Json::Null | Json::Bool(_) | Json::Number(_) => None,
    }
}

/// A list; what is still empty in it is marked as to be filled in.
fn list_of(kind: &Kind, items: &[Json]) -> Option<Array> {
    let of = match kind.list() {
        Some((of, ..)) => of,
        None => &Kind::Length(crate::job::quantity::from_to(f64::MIN, f64::MAX)),
    };
    let items: Vec<Option<Value>> = items.iter().map(|item| value_of(of, item)).collect();
    if items.iter().all(Option::is_none) {
        return None;
    }
    let filled = items
        .into_iter()
        .map(|v| v.unwrap_or_else(|| TO_FILL.into()));
    Some(filled.collect())
}

fn by_name(kind: &Kind, items: &Map<String, Json>) -> Option<InlineTable> {
    let of = kind.named()?;
    let given = items
        .iter()
        .filter_map(|(name, typed)| Some((name.as_str(), value_of(of, typed)?)));
    let table: InlineTable = given.collect();
    (!table.is_empty()).then_some(table)
}

/// One value: a number, an answer or a date where such a thing may stand and was typed, otherwise a text.
fn scalar(kind: &Kind, text: &str) -> Value {
    let one = |kind: &Kind| match kind {
        Kind::Whole(..) | Kind::Length(_) | Kind::Mass(_) | Kind::Quantity(..) => number(text),
        Kind::Flag => text.parse::<bool>().ok().map(Value::from),
        Kind::Date => text.parse::<toml_edit::Datetime>().ok().map(Value::from),
        _ => None,
    };
    kind.find(one).unwrap_or_else(|| text.into())
}

/// A plain number.
fn number(text: &str) -> Option<Value> {
    if let Ok(whole) = text.parse::<i64>() {
        return Some(whole.into());
    }
    let plain = text
        .chars()
        .all(|c| c.is_ascii_digit() || matches!(c, '.' | '-'));
    let value = text.parse::<f64>().ok()?;
    (plain && value.is_finite()).then(|| value.into())
}
