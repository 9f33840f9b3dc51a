//! The keys in a table each section, as they stand in the README.

use std::fmt::Write;

use super::key::{Key, LeftOut, Section};
use super::root::sections;
use crate::units::LengthUnit;

/// The most words that are listed in a table.
const MOST_WORDS: usize = 20;

/// Every key, in Markdown.
#[must_use]
pub fn reference() -> String {
    let mut out = String::new();
    for (entry, section) in sections() {
        let _ = writeln!(out, "`{}` {}\n", entry.header(), entry.key.meaning);
        table(&mut out, section);
        out.push('\n');
    }
    out
}

fn table(out: &mut String, section: &Section) {
    out.push_str("| key | what it is | what may stand there | left out |\n|---|---|---|---|\n");
    for key in section.keys {
        let _ = writeln!(
            out,
            "| `{}` | {} | {} | {} |",
            key.name,
            cell(key.meaning),
            cell(&may_be(key)),
            cell(&key.left_out_words())
        );
    }
}

/// A text that does not end a cell.
fn cell(text: &str) -> String {
    text.replace('|', "\\|")
}

/// Type, words or limits, and an example.
fn may_be(key: &Key) -> String {
    let mut said = vec![key.kind.name()];
    let words = key.kind.words();
    if !words.is_empty() && words.len() <= MOST_WORDS {
        said.push(words.join(", "));
    }
    let range = key.kind.range(LengthUnit::Millimetre);
    if !range.is_empty() {
        said.push(range);
    }
    if !key.example.is_empty() {
        said.push(format!("`{}`", key.example));
    }
    said.join("; ")
}

impl Key {
    /// What holds when it is left out, in words.
    #[must_use]
    pub fn left_out_words(&self) -> String {
        match self.left_out {
            LeftOut::Needed => "must be given".to_owned(),
            LeftOut::OneOf(names) => format!("one of these must be given: {names}"),
            LeftOut::Open(then) => then.to_owned(),
            LeftOut::Follows(how) => how.to_owned(),
            LeftOut::Assumed(_, why) => format!("{}: {why}", self.assumed_value()),
        }
    }
}
