//! The job file as typed: every key and value with its place in the text.

use toml::Spanned;
use toml::de::{DeTable, DeValue, Error};

use super::Job;
use super::drawing::{Drawings, leads_out, split_name};
use super::keys::ROOT;
use super::ledger::Ledger;
use super::read as sections;
use super::reader::Reader;
use crate::diag::{Diagnostic, Severity};
use crate::units::LengthUnit;

/// Reads a job file into a job, and the remarks on it.
///
/// ```
/// let text = r#"
///     [stone]
///     kind = "granite"
///     thickness = 30
///     [slab]
///     rectangle = [2400, 800]
///     [top]
///     rectangle = [2000, 640]
/// "#;
/// let (job, remarks) = kerfwright::job::read(text).map_err(|faults| format!("{faults:?}"))?;
/// assert_eq!(job.top.shape.outline().area(), 2000.0 * 640.0);
/// assert_eq!(job.passes.step_mm, 6.0);
/// assert!(job.assumed.iter().any(|a| a.key == "passes.step"));
/// assert!(remarks.is_empty());
/// # Ok::<(), String>(())
/// ```
///
/// # Errors
/// Every fault of the file in one run, with the remarks, in the order of their places in it.
pub fn read(text: &str) -> Result<(Job, Vec<Diagnostic>), Vec<Diagnostic>> {
    read_with(text, &Drawings::new())
}

/// The same for a job that takes figures from drawings: their texts by the names that
/// [`JobFile::drawings`] gives.
///
/// # Errors
/// As [`read`].
pub fn read_with(
    text: &str,
    drawings: &Drawings,
) -> Result<(Job, Vec<Diagnostic>), Vec<Diagnostic>> {
    let file = JobFile::new(text).map_err(|fault| vec![fault])?;
    file.resolve(drawings)
}

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
    /// A text longer than [`LONGEST_FILE`], or empty.
    pub fn new(text: &'a str) -> Result<Self, Diagnostic> {
        if text.len() > LONGEST_FILE {
            let message = format!(
                "the job file has more than {LONGEST_FILE} bytes (1 MiB), which is the most that is read"
            );
            return Err(Diagnostic::fault("", None, message, "is it a job file?"));
        }
        if text.trim().is_empty() {
            let hint = "`kerfwright new job.toml` writes a file to fill in";
            return Err(Diagnostic::fault("", None, "the job file is empty", hint));
        }
        let (tree, errors) = DeTable::parse_recoverable(text);
        Ok(Self {
            text,
            tree,
            unreadable: unreadable(text, errors),
        })
    }

    /// The drawings that it names, each once: paths beside the job file. Names that lead out of its folder
    /// are not among them.
    #[must_use]
    pub fn drawings(&self) -> Vec<String> {
        let mut names = Vec::new();
        for (key, value) in self.tree.get_ref() {
            named_drawings(key.get_ref(), value.get_ref(), &mut names);
        }
        names
    }

    /// The job: defaults filled in, everything in mm, outlines checked; and the remarks.
    ///
    /// # Errors
    /// Every fault of the file, and the remarks, in the order of their places.
    pub fn resolve(&self, drawings: &Drawings) -> Result<(Job, Vec<Diagnostic>), Vec<Diagnostic>> {
        let ledger = Ledger::new(!self.unreadable.is_empty(), drawings.clone());
        let root = Reader::new(
            String::new(),
            &ROOT,
            Some(self.tree.get_ref()),
            None,
            &ledger,
        );
        let job = root.finish_with(sections::job);
        let (noted, assumed) = ledger.close();
        let noted = self.with_unreadable(noted);
        let faulty = noted.iter().any(|d| d.severity == Severity::Fault);
        match job {
            Some(job) if !faulty => Ok((Job { assumed, ..job }, noted)),
            _ => Err(noted),
        }
    }

    /// Where a key such as `disc[0].kerf` stands, or the nearest that holds it.
    fn place(&self, path: &str) -> Option<(usize, usize)> {
        let mut found = None;
        let mut table = self.tree.get_ref();
        for part in path.split('.') {
            let (name, number) = part.split_once('[').unwrap_or((part, ""));
            let Some((key, mut value)) = table.get_key_value(name) else {
                break;
            };
            if let (DeValue::Array(items), Ok(number)) = (
                value.get_ref(),
                number.trim_end_matches(']').parse::<usize>(),
            ) {
                value = items.get(number).unwrap_or(value);
            }
            match value.get_ref() {
                DeValue::Table(inner) => {
                    found = Some(key.span());
                    table = inner;
                }
                _ => return Some((value.span().start, value.span().end)),
            }
        }
        found.map(|span| (span.start, span.end))
    }

    /// Puts the places that are not TOML with the rest, and drops what only follows from them:
    /// what stands on the same line, and what holds such a place.
    fn with_unreadable(&self, mut noted: Vec<Diagnostic>) -> Vec<Diagnostic> {
        let lines = Lines::of(self.text);
        if !self.unreadable.is_empty() {
            noted.retain(|d| d.span.is_some());
        }
        for finding in noted.iter_mut().filter(|d| d.span.is_none()) {
            finding.span = self.place(&finding.key);
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

/// The drawings that a value names: what stands at every `shape` in it.
fn named_drawings(key: &str, value: &DeValue<'_>, names: &mut Vec<String>) {
    match value {
        DeValue::String(text) if key == "shape" => {
            let (name, _) = split_name(text);
            if !leads_out(name) && !names.iter().any(|n| n == name) {
                names.push(name.to_owned());
            }
        }
        DeValue::Table(inner) => {
            for (key, value) in inner {
                named_drawings(key.get_ref(), value.get_ref(), names);
            }
        }
        DeValue::Array(items) => {
            for item in items {
                named_drawings("", item.get_ref(), names);
            }
        }
        _ => {}
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
    let mut places: Vec<Diagnostic> = errors.iter().map(|e| in_our_words(text, e)).collect();
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
fn in_our_words(text: &str, error: &Error) -> Diagnostic {
    let span = error.span().map(|s| (s.start, s.end));
    let said = error.message();
    if said.contains("duplicate key") {
        let hint = "keep one of the two; a section such as [slab] may stand only once";
        return Diagnostic::fault("", span, "this key is given twice", hint);
    }
    let line = span.map_or("", |(at, _)| line_at(text, at));
    let (message, hint) = match slip(line) {
        Some((message, hint)) => (message.to_owned(), hint),
        None => (
            format!("this cannot be read as TOML: {said}"),
            "texts stand in \"double quotes\", lists in [square brackets], one `key = value` to a line"
                .to_owned(),
        ),
    };
    Diagnostic::fault("", span, message, hint)
}

/// The line of a text that a place is on.
fn line_at(text: &str, at: usize) -> &str {
    let at = (0..=at.min(text.len()))
        .rev()
        .find(|i| text.is_char_boundary(*i));
    let (before, after) = text.split_at(at.unwrap_or(0));
    let from = before.rfind('\n').map_or(0, |i| i + 1);
    let to = after.find('\n').map_or(text.len(), |i| before.len() + i);
    text.get(from..to).unwrap_or("")
}

/// A usual slip in a line `key = value` that TOML does not read, and what to write.
fn slip(line: &str) -> Option<(&'static str, String)> {
    let (key, value) = line.split_once('=')?;
    let (key, value) = (key.trim(), value.split('#').next().unwrap_or("").trim());
    if value.contains(['“', '”', '„', '‘', '’']) {
        let straight = value.replace(['“', '”', '„', '‘', '’'], "\"");
        return Some((
            "these quotes are curly",
            format!("write straight ones: {key} = {straight}"),
        ));
    }
    if value.is_empty() {
        return Some((
            "there is no value",
            format!("write one behind {key} =, or leave the line out"),
        ));
    }
    match value.to_lowercase().as_str() {
        "yes" | "on" => return Some(("this is not a value", format!("write {key} = true"))),
        "no" | "off" => return Some(("this is not a value", format!("write {key} = false"))),
        _ => {}
    }
    let starts_with_number = value.starts_with(|c: char| c.is_ascii_digit());
    if starts_with_number && value.matches('.').count() == 2 && value.len() <= 10 {
        return Some((
            "dates are written with the year first",
            format!("write {key} = 2026-11-30"),
        ));
    }
    if let Some(quoted) = quoted_list(value).or_else(|| quoted_length(value)) {
        let hint = format!("write it in quotes: {key} = {quoted}");
        return Some(("a number with a unit or a fraction is a text", hint));
    }
    if starts_with_number && crate::units::parse_mass(value).is_ok() {
        let hint = format!("write it in quotes: {key} = {value:?}");
        return Some(("a number with a unit is a text", hint));
    }
    if starts_with_number && value.contains(',') {
        let hint = format!("write {key} = {}", value.replace(',', "."));
        return Some(("decimals stand behind a point", hint));
    }
    let is_word = value
        .chars()
        .all(|c| c.is_alphabetic() || c == ' ' || c == '-');
    is_word.then(|| {
        (
            "a text stands in quotes",
            format!("write {key} = {value:?}"),
        )
    })
}

/// A list of lengths with quotes where they are needed, when that is all it lacks.
fn quoted_list(value: &str) -> Option<String> {
    let inside = value.strip_prefix('[')?.strip_suffix(']')?;
    let is_readable = |part: &str| {
        let is_text = part.len() > 1 && part.starts_with('"') && part.ends_with('"');
        is_text || part.parse::<f64>().is_ok()
    };
    let parts = inside.split(',').map(str::trim).map(|part| {
        if is_readable(part) {
            return Some(part.to_owned());
        }
        quoted_length(part)
    });
    let parts: Vec<String> = parts.collect::<Option<_>>()?;
    Some(format!("[{}]", parts.join(", ")))
}

/// A length as a text, inches by their name and not by a mark that TOML takes for a quote.
fn quoted_length(value: &str) -> Option<String> {
    let text = value.replace('"', " in");
    let is_length = crate::units::parse_length_mm(&text, LengthUnit::Millimetre).is_ok();
    let is_it = value.starts_with(|c: char| c.is_ascii_digit()) && is_length;
    is_it.then(|| format!("{text:?}"))
}
