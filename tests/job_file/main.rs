//! The job file: every kind of fault, with its key, its words and its line; units; defaults; and
//! the examples.

mod defaults;
mod faults;
mod figures;
mod fuzz;
mod keys;
mod schema;
mod shapes;
mod slab;
mod slab_faults;
mod text;
mod values;

use kerfwright::cli::report::{Colour, draw};
use kerfwright::diag::{Diagnostic, Severity};
use kerfwright::job::{Job, read};

/// The least a job file can say.
const LEAST: &str = "\
[stone]
kind = \"granite\"
thickness = 30
[slab]
rectangle = [2400, 800]
[top]
rectangle = [2000, 640]
";

fn job(text: &str) -> Job {
    match read(text) {
        Ok((job, _)) => job,
        Err(faults) => panic!("{}", draw("job.toml", text, &faults, Colour::Plain)),
    }
}

fn findings(text: &str) -> Vec<Diagnostic> {
    match read(text) {
        Ok((_, remarks)) => remarks,
        Err(faults) => faults,
    }
}

/// The line of the text that a finding points at.
fn line_of<'t>(text: &'t str, finding: &Diagnostic) -> &'t str {
    let start = finding.span.map_or(0, |s| s.0);
    let from = text[..start].rfind('\n').map_or(0, |i| i + 1);
    text[from..].lines().next().unwrap_or("")
}

/// Asserts that a text has exactly one fault: its key, the words in its message and hint, and the
/// line it points at.
fn expect_fault(text: &str, key: &str, words: &[&str], line: &str) {
    let mut found = findings(text);
    found.retain(|f| f.severity == Severity::Fault);
    let drawn = draw("job.toml", text, &found, Colour::Plain);
    assert_eq!(found.len(), 1, "one fault was expected\n{drawn}\n{text}");
    assert_eq!(found[0].key, key, "{drawn}");
    let said = format!("{}\n{}", found[0].message, found[0].hint);
    for word in words {
        assert!(said.contains(word), "{word:?} is not in\n{said}");
    }
    assert!(
        line_of(text, &found[0]).contains(line),
        "points at the wrong line\n{drawn}"
    );
}

/// As [`expect_fault`], for the least job file with lines added at its end.
fn expect_fault_in(added: &str, key: &str, words: &[&str], line: &str) {
    expect_fault(&format!("{LEAST}{added}"), key, words, line);
}

/// As [`expect_fault`], for the least job file with one part replaced.
fn expect_fault_with(old: &str, new: &str, key: &str, words: &[&str], line: &str) {
    assert!(LEAST.contains(old));
    expect_fault(&LEAST.replace(old, new), key, words, line);
}
