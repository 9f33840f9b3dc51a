//! How the records of regions, stones and sources are read from their files, which are part of the program.

use serde::de::DeserializeOwned;
use serde::{Deserialize, Deserializer};
use toml::{Table, Value};

/// Words of a record; kept for as long as the program runs.
pub type Text = &'static str;

/// The record in a file. A fault in a file is for the tests to find; it gives limits of 0, which
/// everything is over.
pub(super) fn read<T: DeserializeOwned + Default>(file: &str) -> T {
    toml::from_str(file).unwrap_or_default()
}

/// The record in a file, laid key by key over the file that it names as its `base`.
///
/// # Errors
///
/// The first fault: no TOML, a key that the record does not have, one that it lacks.
pub(super) fn read_over<T: DeserializeOwned>(
    file: &str,
    base: fn(&str) -> &'static str,
) -> Result<T, toml::de::Error> {
    laid_over(file, base)?.try_into()
}

/// A file's table over that of its base. A table in both has the keys of both; the file's own win.
fn laid_over(file: &str, base: fn(&str) -> &'static str) -> Result<Table, toml::de::Error> {
    let mut own: Table = toml::from_str(file)?;
    let Some(Value::String(name)) = own.remove("base") else {
        return Ok(own);
    };
    let mut whole = laid_over(base(&name), base)?;
    for (key, value) in own {
        match (whole.get_mut(&key), value) {
            (Some(Value::Table(under)), Value::Table(over)) => under.extend(over),
            (_, value) => drop(whole.insert(key, value)),
        }
    }
    Ok(whole)
}

/// Reads words and keeps them.
pub(super) fn kept<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Text, D::Error> {
    Ok(String::deserialize(deserializer)?.leak())
}
