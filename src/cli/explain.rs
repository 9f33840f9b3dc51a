//! `kerfwright explain ID`: what a hazard, a check or a formula is, why it matters, what to do; what a
//! key of the job file is and what may stand there.

use std::fmt::Write;

pub use super::explain_sources::sources;
use super::{Ending, files, own_failure};
use crate::diag::{Clears, Phrase};
use crate::hazard::registry;
use crate::job::keys::{self, Entry};
use crate::tables::record::{Kind, Record};
use crate::units::LengthUnit;
use crate::words::Writer;

/// What `explain` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The id behind a stop or caution, or that of a formula, as `kerfwright hazards` lists them; or a
    /// key of the job file, as `kerfwright keys` lists them; or `sources`, for what is borrowed, from
    /// memory or our judgement
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
    let told = match (registry::find(id), keys::find(id)) {
        (Some(record), _) => words(record, id),
        (None, Some(entry)) => key_words(&entry),
        (None, None) if id == "sources" => sources(),
        (None, None) => {
            files::say(&unknown(id));
            return Ending::JobAtFault;
        }
    };
    match files::print(&told) {
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
        row(&mut out, "clears", &clears(phrase));
    }
    row(
        &mut out,
        "note",
        "Rules change and differ: check those now in force where you are.",
    );
    out
}

/// A key of the job file in words.
fn key_words(entry: &Entry) -> String {
    let mut out = format!("{}, a key of the job file\n", entry.path);
    for (name, text) in rows(entry) {
        row(&mut out, name, &text);
    }
    out
}

/// A key in words, as name and text of each row.
fn rows(entry: &Entry) -> Vec<(&'static str, String)> {
    let key = entry.key;
    let mut rows = vec![("what", key.meaning.to_owned())];
    rows.push(("write", key.kind.wanted()));
    let range = key.kind.range(LengthUnit::Millimetre);
    if !range.is_empty() {
        rows.push(("limits", range));
    }
    rows.push(("left out", key.left_out_words()));
    if !key.example.is_empty() {
        let section = entry
            .path
            .rsplit_once('.')
            .map_or("", |(section, _)| section);
        let header = keys::find(section).map_or_else(String::new, |s| s.header());
        rows.push(("example", format!("{header} {}", key.line())));
    }
    if let Some((section, _)) = key.kind.section() {
        let names: Vec<&str> = section.keys.iter().map(|key| key.name).collect();
        rows.push(("keys", names.join(", ")));
    }
    rows
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
    let title = Writer::default()
        .text(phrase.id)
        .replace("{$", "<")
        .replace('}', ">");
    format!("{title} [{}]", phrase.id)
}

/// What makes a finding go away: a key of the job file or something to do.
fn clears(phrase: &Phrase) -> String {
    match phrase.clears {
        Clears::Key(key) => key.to_owned(),
        Clears::Act(id) => Writer::default().text(id),
    }
}

/// A name and a text beside it, broken between words.
pub(super) fn row(out: &mut String, name: &str, text: &str) {
    // A name that the column does not hold stands in a line of its own.
    let mut name = name;
    if name.chars().count() >= NAMES {
        let _ = writeln!(out, "  {name}");
        name = "";
    }
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
pub(super) fn unknown(id: &str) -> String {
    let ids = registry::all().flat_map(Record::ids).map(str::to_owned);
    let paths = keys::all().into_iter().map(|entry| entry.path);
    let mut near: Vec<(usize, String)> = ids
        .chain(paths)
        .map(|known| (unlikeness(id, &known), known))
        .collect();
    near.sort_unstable();
    let offered = near.into_iter().take(OFFERED).map(|(_, known)| known);
    let offered: Vec<String> = offered.collect();
    format!(
        "kerfwright: nothing is called \"{}\"; the nearest: {}. `kerfwright hazards` and `kerfwright keys` \
         list all.\n",
        files::harmless(id),
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
        .split(['-', '.', '_'])
        .map(|part| 1 + strsim::damerau_levenshtein(&asked, part));
    let whole = strsim::damerau_levenshtein(&asked, known);
    parts.chain([whole]).min().unwrap_or(whole)
}
