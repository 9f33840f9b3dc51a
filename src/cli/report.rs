//! Drawing faults and remarks for a person: file, line, caret, what to do.

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Renderer, Snippet};

pub use super::colour::Colour;
use super::files::{self, JobText};
use crate::diag::{Diagnostic, Severity};

/// Draws every finding about a job text, one after the other, with a closing line of counts.
///
/// `path` is printed as the name of the file. A finding without a place in the text is drawn
/// without a snippet. The answer is empty when there are no findings.
///
/// ```
/// use kerfwright::cli::report::{Colour, draw};
/// let text = "[stone]\nkind = \"granit\"\n";
/// let faults = kerfwright::job::read(text).unwrap_err();
/// let drawn = draw("counter.toml", text, &faults, Colour::Plain);
/// assert!(drawn.contains("counter.toml:2:8"));
/// assert!(drawn.contains("did you mean \"granite\"?"));
/// ```
#[must_use]
pub fn draw(path: &str, text: &str, findings: &[Diagnostic], colour: Colour) -> String {
    if findings.is_empty() {
        return String::new();
    }
    let renderer = match colour {
        Colour::Plain => Renderer::plain(),
        Colour::Ansi => Renderer::styled(),
    };
    let renderer = renderer.decor_style(DecorStyle::Ascii);
    let drawn = findings.iter().map(|d| one(&renderer, path, text, d));
    let mut answer: String = drawn.map(|d| d + "\n\n").collect();
    answer.push_str(&counts(path, findings));
    answer
}

/// Draws the findings about a job file on standard error.
pub(super) fn say(job: &JobText, findings: &[Diagnostic]) {
    files::say(&draw(&job.name, &job.text, findings, files::colour()));
}

fn one(renderer: &Renderer, path: &str, text: &str, finding: &Diagnostic) -> String {
    let level = match finding.severity {
        Severity::Fault => Level::ERROR.with_name("fault"),
        Severity::Remark => Level::NOTE.with_name("remark"),
    };
    let message = annotate_snippets::normalize_untrusted_str(&finding.message);
    let hint = annotate_snippets::normalize_untrusted_str(&finding.hint);
    let mut group = Group::with_title(level.primary_title(message));
    match place(text, finding.span) {
        Some(span) => {
            let mark = AnnotationKind::Primary.span(span);
            group = group.element(Snippet::source(text).path(path).annotation(mark));
        }
        None => group = group.element(annotate_snippets::Origin::path(path)),
    }
    if !hint.is_empty() {
        group = group.element(Level::HELP.with_name("do").message(hint));
    }
    renderer.render(&[group])
}

/// The place to point at: within the text, on whole characters, and no more than its first line.
fn place(text: &str, span: Option<(usize, usize)>) -> Option<std::ops::Range<usize>> {
    let (start, end) = span?;
    let start = floor(text, start);
    let end = floor(text, end).max(start);
    let line = text.get(start..end)?.find('\n');
    let end = line.map_or(end, |at| start + at);
    // A place without width points at the character that stands there.
    let here = text.get(start..)?.chars().next().filter(|c| *c != '\n');
    Some(start..end.max(start + here.map_or(0, char::len_utf8)))
}

/// The last character boundary at or before an index.
fn floor(text: &str, index: usize) -> usize {
    let index = index.min(text.len());
    (0..=index)
        .rev()
        .find(|i| text.is_char_boundary(*i))
        .unwrap_or(0)
}

fn counts(path: &str, findings: &[Diagnostic]) -> String {
    let of = |severity| findings.iter().filter(|d| d.severity == severity).count();
    let words = |count: usize, word: &str| match count {
        0 => String::new(),
        1 => format!("1 {word}"),
        n => format!("{n} {word}s"),
    };
    let both = [
        words(of(Severity::Fault), "fault"),
        words(of(Severity::Remark), "remark"),
    ];
    let both: Vec<String> = both.into_iter().filter(|w| !w.is_empty()).collect();
    format!("{path}: {}\n", both.join(", "))
}
