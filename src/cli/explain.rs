//! `kerfwright explain ID`: what a hazard, a check or a formula is, why it matters, what to do.

use std::fmt::Write;

use super::{Ending, files, own_failure};
use crate::diag::Phrase;
use crate::hazard::registry;
use crate::tables::record::{Kind, Record};

/// What `explain` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The id behind a stop or caution, or that of a formula; `kerfwright hazards` lists them
    #[arg(value_name = "ID")]
    id: String,
}

/// Width of what is printed, characters.
const WIDTH: usize = 96;
/// Width of the column of names, characters.
const NAMES: usize = 12;
/// The most ids that are offered for an unknown one.
const OFFERED: usize = 3;

/// Prints one record, or names the nearest ids on standard error.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let id = options.id.trim();
    let Some(record) = registry::find(id) else {
        files::say(&unknown(id));
        return Ending::JobAtFault;
    };
    match files::print(&words(record, id)) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}

/// A record in words.
///
/// ```
/// let record = kerfwright::hazard::registry::find("a8").expect("it is there");
/// let words = kerfwright::cli::explain::words(record, "a8");
/// assert!(words.contains("A(8) = 3.6 m/s²"));
/// ```
#[must_use]
pub fn words(record: &Record, id: &str) -> String {
    let mut out = format!(
        "{} [{}], a {}\n",
        record.title,
        record.id,
        kind(record.kind)
    );
    row(&mut out, "what", record.what);
    row(&mut out, "why", record.why);
    row(&mut out, "what to do", record.what_to_do);
    if !record.formula.is_empty() {
        row(&mut out, "formula", record.formula);
    }
    if let Some(example) = record.example.map(|example| example()) {
        row(&mut out, "example", &example.given);
        row(&mut out, "gives", &example.result);
    }
    for source in record.sources {
        let cited = format!("{}: {}", source.cite(), source.what);
        row(&mut out, "source", &cited);
    }
    let said = record
        .phrases
        .iter()
        .filter(|p| id == record.id || p.id == id);
    for phrase in said {
        row(&mut out, "says", &said_words(phrase));
    }
    row(
        &mut out,
        "note",
        "Rules change and differ: check those now in force where you are.",
    );
    out
}

fn kind(kind: Kind) -> &'static str {
    match kind {
        Kind::Hazard => "hazard",
        Kind::Check => "check of the plan",
        Kind::Formula => "formula",
    }
}

/// A finding's title with its gaps open, and its id.
fn said_words(phrase: &Phrase) -> String {
    let title = phrase.title.replace('{', "<").replace('}', ">");
    format!("{title} [{}]", phrase.id)
}

/// A name and a text beside it, broken between words.
fn row(out: &mut String, name: &str, text: &str) {
    let mut name = name;
    let mut line = String::new();
    let mut put = |line: &mut String| {
        let _ = writeln!(out, "  {name:<NAMES$}{line}");
        name = "";
        line.clear();
    };
    for word in text.split_whitespace() {
        let length = line.chars().count() + word.chars().count() + 1;
        if !line.is_empty() && length > WIDTH - NAMES - 2 {
            put(&mut line);
        }
        if !line.is_empty() {
            line.push(' ');
        }
        line.push_str(word);
    }
    put(&mut line);
}

/// What is said of an id that is not known: the nearest ones.
fn unknown(id: &str) -> String {
    let mut near: Vec<(usize, &str)> = registry::all()
        .flat_map(Record::ids)
        .map(|known| (unlikeness(id, known), known))
        .collect();
    near.sort_unstable();
    let offered: Vec<&str> = near.iter().take(OFFERED).map(|(_, known)| *known).collect();
    format!(
        "kerfwright: nothing is called \"{id}\"; the nearest: {}. `kerfwright hazards` lists all.\n",
        offered.join(", ")
    )
}

/// How unlike two ids are: letters that differ from the whole or from one of its words.
fn unlikeness(asked: &str, known: &str) -> usize {
    let asked = asked.to_lowercase();
    if !asked.is_empty() && known.contains(asked.as_str()) {
        return 0;
    }
    let parts = known
        .split('-')
        .map(|part| 1 + strsim::damerau_levenshtein(&asked, part));
    let whole = strsim::damerau_levenshtein(&asked, known);
    parts.chain([whole]).min().unwrap_or(whole)
}
