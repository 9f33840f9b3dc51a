//! `kerfwright keys` and `kerfwright schema`: the keys of the job file.

use std::fmt::Write;

use super::{Ending, explain, files, own_failure};
use crate::job::keys::{self, Entry};
use crate::render::json;

/// Width of the column of keys, characters.
const KEYS: usize = 28;

/// What `keys` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// Only this section, such as slab or disc; left out: all
    #[arg(value_name = "SECTION")]
    section: Option<String>,
}

/// Prints each key with one line about it.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let wanted = options.section.as_deref().map(keys::find);
    if let Some(None) = wanted {
        let asked = options.section.as_deref().unwrap_or_default();
        files::say(&explain::unknown(asked));
        return Ending::JobAtFault;
    }
    let under = wanted.flatten().map(|entry| entry.path);
    print(&list(under.as_deref()))
}

/// What `schema` can be told.
#[derive(Debug, clap::Args)]
pub struct SchemaOptions {
    /// Whose
    #[arg(value_enum, default_value_t)]
    of: SchemaOf,
}

#[derive(Clone, Copy, Debug, Default, clap::ValueEnum)]
enum SchemaOf {
    /// The job file
    #[default]
    Job,
    /// What `plan --json` prints
    Plan,
}

/// Prints the JSON Schema of a job file, or of a plan.
#[must_use]
pub fn schema(options: &SchemaOptions) -> Ending {
    match options.of {
        SchemaOf::Job => print(&format!("{:#}\n", keys::schema())),
        SchemaOf::Plan => print(json::SCHEMA),
    }
}

fn print(text: &str) -> Ending {
    match files::print(text) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}

/// The keys under a path, or all.
fn list(under: Option<&str>) -> String {
    let mut out = String::new();
    for entry in keys::all() {
        let below = |path: &str| {
            let rest = entry.path.strip_prefix(path);
            rest.is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
        };
        if under.is_none_or(below) {
            line(&mut out, &entry);
        }
    }
    out.push_str(
        "\n`kerfwright explain KEY` explains one, such as `kerfwright explain slab.factory`.\n",
    );
    out
}

fn line(out: &mut String, entry: &Entry) {
    let is_section = entry.key.kind.section().is_some() && entry.key.example.is_empty();
    if is_section {
        let _ = writeln!(out, "\n{}  {}", entry.header(), entry.key.meaning);
    } else {
        let _ = writeln!(out, "  {:<KEYS$}{}", entry.path, entry.key.meaning);
    }
}
