//! The job file as typed: every key and value with its place in the text.

use toml::Spanned;
use toml::de::{DeTable, Error};

use super::ledger::Ledger;
use super::reader::Reader;
use super::{Job, read};
use crate::diag::{Diagnostic, Severity};

/// The longest job file that is read, bytes: hundreds of times what a worktop needs (judgement).
pub const LONGEST_FILE: usize = 1024 * 1024;

/// The most findings that are told in one run (judgement: nobody mends more before looking again).
pub const MOST_FINDINGS: usize = 200;

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
                "the job file has more than {LONGEST_FILE} bytes (1 MiB), which is the most that is read"
            );
            return Err(Diagnostic::fault("", None, message, "is it a job file?"));
        }
        let (tree, errors) = DeTable::parse_recoverable(text);
        Ok(Self {
            text,
            tree,
            unreadable: unreadable(text, errors),
        })
    }

    /// The job: defaults filled in, everything in mm, outlines checked; and the remarks.
    ///
    /// # Errors
    /// Every fault of the file, and the remarks, in the order of their places.
    pub fn resolve(&self) -> Result<(Job, Vec<Diagnostic>), Vec<Diagnostic>> {
        let ledger = Ledger::new(!self.unreadable.is_empty());
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
    /// what stands on the same line, and what holds such a place.
    fn with_unreadable(&self, mut noted: Vec<Diagnostic>) -> Vec<Diagnostic> {
        let lines = Lines::of(self.text);
        if !self.unreadable.is_empty() {
            noted.retain(|d| d.span.is_some());
        }
        for place in &self.unreadable {
            let (at, spoilt) = (start(place), lines.line(place));
            let holds = |d: &Diagnostic| d.span.is_some_and(|(from, to)| from <= at && at < to);
            noted.retain(|d| !holds(d) && lines.line(d) != spoilt);
        }
        noted.extend(self.unreadable.iter().cloned());
        noted.sort_by_key(start);
        shorten(&mut noted);
        noted
    }
}

/// Keeps the first findings of very many, and says how many more there are.
fn shorten(noted: &mut Vec<Diagnostic>) {
    let more = noted.len().saturating_sub(MOST_FINDINGS);
    if more > 0 {
        noted.truncate(MOST_FINDINGS);
        let message = format!("there are {more} more findings after these {MOST_FINDINGS}");
        noted.push(Diagnostic::fault("", None, message, "mend these first"));
    }
}

fn start(diagnostic: &Diagnostic) -> usize {
    diagnostic.span.map_or(0, |s| s.0)
}

/// Where the lines of a text end.
struct Lines {
    ends: Vec<usize>,
}

impl Lines {
    fn of(text: &str) -> Self {
        let ends = text.match_indices('\n').map(|(at, _)| at).collect();
        Self { ends }
    }

    /// The line a finding begins on, counted from 0.
    fn line(&self, diagnostic: &Diagnostic) -> usize {
        let at = start(diagnostic);
        self.ends.partition_point(|end| *end < at)
    }
}

/// The places that are not TOML: one on a line, and none behind a bracket that is never closed,
/// where everything to the end of the text is only its echo.
fn unreadable(text: &str, mut errors: Vec<Error>) -> Vec<Diagnostic> {
    errors.sort_by_key(|error| error.span().map_or(0, |s| s.start));
    let open = errors.iter().any(|e| e.message().contains("unclosed"));
    let echo = |e: &Error| open && e.message().contains("missing comma");
    if let Some(first) = errors.iter().position(echo) {
        errors.truncate(first + 1);
    }
    let mut places: Vec<Diagnostic> = errors.iter().map(in_our_words).collect();
    if let (Some(last), true) = (places.last_mut(), errors.last().is_some_and(echo)) {
        *last = Diagnostic::fault(
            "",
            last.span,
            "a bracket that was opened before is not closed here",
            "close the list or the table that begins above",
        );
    }
    let lines = Lines::of(text);
    places.dedup_by_key(|d| lines.line(d));
    places.truncate(MOST_FINDINGS + 1);
    places
}

/// What the TOML reader says, in our words.
fn in_our_words(error: &Error) -> Diagnostic {
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
