//! Job texts in; the terminal.

use std::fmt;
use std::io::{self, IsTerminal, Read, Write};
use std::path::{Path, PathBuf};

use super::colour::Colour;
use super::drawings;
use crate::job::Drawings;

/// A job file's text and the name it goes by.
#[derive(Clone, Debug)]
pub struct JobText {
    /// Where it was read from.
    pub path: PathBuf,
    /// The path as it is shown, or `standard input`.
    pub name: String,
    /// Name for files made from it, without an ending.
    pub stem: String,
    /// The text.
    pub text: String,
    /// The drawings that it names.
    pub drawings: Drawings,
}

/// Why a file could not be read or written.
#[derive(Debug)]
pub struct FileFault {
    what: &'static str,
    path: PathBuf,
    why: String,
}

impl FileFault {
    /// What could not be done with a file, and why.
    pub(super) fn new(what: &'static str, path: &Path, why: String) -> Self {
        Self {
            what,
            path: path.to_path_buf(),
            why,
        }
    }
}

impl fmt::Display for FileFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}: {}", self.what, shown(&self.path), self.why)
    }
}

impl std::error::Error for FileFault {}

/// A path as it is shown: nothing in it reaches the terminal as a control character.
#[must_use]
pub fn shown(path: &Path) -> String {
    harmless(&path.to_string_lossy())
}

/// A path as it is typed in a command.
#[must_use]
pub(super) fn typed(path: &Path) -> String {
    let shown = shown(path);
    let is_plain = |c: char| c.is_alphanumeric() || "._-/\\:+,".contains(c);
    if shown.chars().all(is_plain) {
        shown
    } else {
        format!("\"{shown}\"")
    }
}

/// A text with what a terminal would act on, or what turns or hides text, written as its code.
///
/// ```
/// assert_eq!(kerfwright::cli::files::harmless("a\u{1b}[31m"), "a\\u{1b}[31m");
/// ```
#[must_use]
pub fn harmless(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if crate::job::is_printable(c) {
            out.push(c);
        } else {
            out.extend(c.escape_unicode());
        }
    }
    out
}

/// Longest text that is read, bytes. The job reader refuses a little less than this with its own
/// message; nothing longer is kept in memory.
const LONGEST: u64 = 2 * 1024 * 1024;

/// Reads a job file, or standard input for `-`.
///
/// # Errors
/// When it cannot be read or is not text, and when nothing comes from standard input.
pub fn read(path: &Path) -> Result<JobText, FileFault> {
    let from_stdin = path.as_os_str() == "-";
    let named = if from_stdin {
        Path::new("standard input")
    } else {
        path
    };
    let fault = |why: String| FileFault::new("cannot read", named, why);
    let mut bytes = Vec::new();
    let outcome = if from_stdin {
        io::stdin().lock().take(LONGEST).read_to_end(&mut bytes)
    } else {
        std::fs::File::open(path).and_then(|f| f.take(LONGEST).read_to_end(&mut bytes))
    };
    outcome.map_err(|e| fault(why_not_read(path, &e)))?;
    if from_stdin && bytes.is_empty() {
        return Err(fault("nothing came; it is closed or empty".to_owned()));
    }
    let stem = path.file_stem().map(|s| s.to_string_lossy().into_owned());
    let text = text(bytes).map_err(fault)?;
    let beside = if from_stdin { None } else { path.parent() };
    Ok(JobText {
        path: path.to_path_buf(),
        name: shown(named),
        stem: stem.filter(|s| s != "-").unwrap_or_else(|| "job".into()),
        drawings: drawings::read(beside.unwrap_or(Path::new("")), &text),
        text,
    })
}

/// The text of a file in UTF-8, or in UTF-16 that says so with its first two bytes.
///
/// # Errors
/// Why it is no text.
pub fn text(bytes: Vec<u8>) -> Result<String, String> {
    // What was cut off, perhaps inside a letter, is refused for its length and not looked at.
    if bytes.len() as u64 == LONGEST {
        return Ok(String::from_utf8_lossy(&bytes).into_owned());
    }
    let join = match bytes[..] {
        [0xFF, 0xFE, ..] => u16::from_le_bytes,
        [0xFE, 0xFF, ..] => u16::from_be_bytes,
        [b'%', b'P', b'D', b'F', ..] => {
            return Err("it is a PDF; name the job file that it was made from".to_owned());
        }
        _ => {
            let why = |e| format!("it is not UTF-8 text ({e}); save it as UTF-8");
            return String::from_utf8(bytes).map_err(why);
        }
    };
    let units = bytes.chunks_exact(2).skip(1);
    let units: Vec<u16> = units.map(|pair| join([pair[0], pair[1]])).collect();
    String::from_utf16(&units).map_err(|_| "it is not UTF-16 text; save it as UTF-8".to_owned())
}

fn why_not_read(path: &Path, error: &io::Error) -> String {
    match error.kind() {
        io::ErrorKind::NotFound => {
            let new = typed(path);
            format!("there is no such file; `kerfwright new {new}` writes one to fill in")
        }
        _ if path.is_dir() => "it is a folder; name the job file in it".to_owned(),
        _ => error.to_string(),
    }
}

/// Colour for a terminal that wants it.
#[must_use]
pub fn colour() -> Colour {
    let plain = std::env::var_os("NO_COLOR").is_some_and(|v| !v.is_empty());
    if io::stderr().is_terminal() && !plain {
        Colour::Ansi
    } else {
        Colour::Plain
    }
}

/// Says something on standard error. Nobody listening is no reason to fail.
pub fn say(text: &str) {
    let text = text.replace('\u{a0}', " ");
    let _ = io::stderr().lock().write_all(text.as_bytes());
}

/// Writes bytes to standard output.
///
/// # Errors
/// When standard output cannot be written; a reader that has gone away is not a failure.
pub fn put(bytes: &[u8]) -> Result<(), FileFault> {
    match io::stdout().lock().write_all(bytes) {
        Err(e) if e.kind() != io::ErrorKind::BrokenPipe => Err(FileFault::new(
            "cannot write",
            Path::new("standard output"),
            e.to_string(),
        )),
        _ => Ok(()),
    }
}

/// Prints to standard output; a reader that has gone away is not a failure.
///
/// # Errors
/// When standard output cannot be written for any other reason.
pub fn print(text: &str) -> Result<(), FileFault> {
    put(text.replace('\u{a0}', " ").as_bytes())
}

/// The lines of a text without the spaces at their ends.
pub(super) fn trimmed(text: &str) -> String {
    let lines: Vec<&str> = text.lines().map(str::trim_end).collect();
    lines.join("\n") + "\n"
}
