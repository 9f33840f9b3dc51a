//! The job file as typed: every key and value with its place in the text.

use toml::Spanned;
use toml::de::{DeTable, Error};

use super::ledger::Ledger;
use super::reader::Reader;
use super::{Job, read};
use crate::diag::{Diagnostic, Severity};

/// The longest job file that is read, bytes: hundreds of times what a worktop needs (judgement).
pub const LONGEST_FILE: usize = 1024 * 1024;

/// A job file as typed, not yet understood.
#[derive(Clone, Debug)]
pub struct JobFile<'a> {
    text: &'a str,
    tree: Spanned<DeTable<'a>>,
    unreadable: Vec<Diagnostic>,
}

impl<'a> JobFile<'a> {
    /// The file as typed. A text that is not quite TOML is kept as far as it can be read, so that
    /// the rest of its faults can be told in the same run.
    ///
    /// # Errors
    /// A text longer than [`LONGEST_FILE`].
    pub fn new(text: &'a str) -> Result<Self, Diagnostic> {
        if text.len() > LONGEST_FILE {
            let message = format!(
                "the job file has {} bytes, most {LONGEST_FILE} (1 MiB)",
                text.len()
            );
            return Err(Diagnostic::fault("", None, message, "is it a job file?"));
        }
        let (tree, errors) = DeTable::parse_recoverable(text);
        Ok(Self {
            text,
            tree,
            unreadable: errors.iter().map(unreadable).collect(),
        })
    }

    /// The job: defaults filled in, everything in mm, outlines checked; and the remarks.
    ///
    /// # Errors
    /// Every fault of the file, and the remarks, in the order of their places.
    pub fn resolve(&self) -> Result<(Job, Vec<Diagnostic>), Vec<Diagnostic>> {
        let ledger = Ledger::default();
        let root = Reader::new(String::new(), Some(self.tree.get_ref()), None, &ledger);
        let job = root.finish_with(read::job);
        let (noted, assumed) = ledger.close();
        let noted = self.with_unreadable(noted);
        let faulty = noted.iter().any(|d| d.severity == Severity::Fault);
        match job {
            Some(job) if !faulty => Ok((Job { assumed, ..job }, noted)),
            _ => Err(noted),
        }
    }

    /// Puts the places that are not TOML with the rest, and drops what only follows from them:
    /// what stands on the same line, and what is missing.
    fn with_unreadable(&self, mut noted: Vec<Diagnostic>) -> Vec<Diagnostic> {
        if !self.unreadable.is_empty() {
            let spoilt: Vec<usize> = self.unreadable.iter().map(|d| self.line(d)).collect();
            noted.retain(|d| !d.message.contains(" is missing: "));
            noted.retain(|d| d.span.is_some() && !spoilt.contains(&self.line(d)));
            noted.extend(self.unreadable.iter().cloned());
        }
        noted.sort_by_key(|d| d.span.map_or(0, |s| s.0));
        noted
    }

    fn line(&self, diagnostic: &Diagnostic) -> usize {
        let start = diagnostic.span.map_or(0, |s| s.0);
        let before = self.text.as_bytes().iter().take(start);
        before.filter(|byte| **byte == b'\n').count()
    }
}

/// What the TOML reader says, in our words.
fn unreadable(error: &Error) -> Diagnostic {
    let span = error.span().map(|s| (s.start, s.end));
    let said = error.message();
    if said.contains("duplicate key") {
        let hint = "keep one of the two; a section such as [slab] may stand only once";
        return Diagnostic::fault("", span, "this key is given twice", hint);
    }
    Diagnostic::fault(
        "",
        span,
        format!("this cannot be read as TOML: {said}"),
        "texts stand in \"double quotes\", lists in [square brackets], one `key = value` to a line",
    )
}
