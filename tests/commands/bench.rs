//! A folder to work in, the program, and what it said.

use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use tempfile::TempDir;

/// A small job without a stop.
pub(crate) const SMALL: &str = r#"[job]
title = "Shelf"
region = "uk"
date = 2026-03-01
[stone]
kind = "slate"
thickness = 20
silica = "20 %"
[slab]
rectangle = [700, 400]
[top]
rectangle = [500, 250]
[machine]
kind = "angle grinder"
rpm = 9000
power = "battery"
wet_rated = true
[[disc]]
name = "125 rim"
diameter = 125
kerf = 2.2
obstruction = 42
max_rpm = 12200
[dust]
where = "outdoors"
method = "water"
respirator = "ffp3"
mask_fit_tested = true
[lift]
people = 2
"#;

/// A folder to work in, and the program.
pub(crate) struct Bench {
    folder: TempDir,
}

impl Bench {
    pub(crate) fn new() -> Self {
        Self {
            folder: tempfile::tempdir().unwrap(),
        }
    }

    pub(crate) fn with(name: &str, text: impl AsRef<[u8]>) -> Self {
        let bench = Self::new();
        fs::write(bench.path(name), text).unwrap();
        bench
    }

    pub(crate) fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    pub(crate) fn command(&self, arguments: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_kerfwright"));
        command.args(arguments).current_dir(self.folder.path());
        command
    }

    pub(crate) fn run(&self, arguments: &[&str]) -> Said {
        Said::of(&self.command(arguments).output().unwrap())
    }

    pub(crate) fn run_with_input(&self, arguments: &[&str], input: &str) -> Said {
        let mut command = self.command(arguments);
        command.stdin(Stdio::piped());
        command.stdout(Stdio::piped()).stderr(Stdio::piped());
        let mut child = command.spawn().unwrap();
        let mut stdin = child.stdin.take().unwrap();
        stdin.write_all(input.as_bytes()).unwrap();
        drop(stdin);
        Said::of(&child.wait_with_output().unwrap())
    }

    /// The names of everything in the folder.
    pub(crate) fn files(&self) -> Vec<String> {
        names(self.folder.path())
    }
}

pub(crate) fn names(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).unwrap();
    let mut found: Vec<String> = entries
        .map(|e| e.unwrap().file_name().into_string().unwrap())
        .collect();
    found.sort();
    found
}

/// What a run said and how it ended.
#[derive(Debug)]
pub(crate) struct Said {
    pub(crate) code: Option<i32>,
    pub(crate) out: String,
    pub(crate) err: String,
}

impl Said {
    pub(crate) fn of(output: &Output) -> Self {
        let said = Self {
            code: output.status.code(),
            out: String::from_utf8(output.stdout.clone()).unwrap(),
            err: String::from_utf8(output.stderr.clone()).unwrap(),
        };
        assert!(!said.err.contains("panicked"), "{said:?}");
        said
    }

    /// Asserts the exit code and that standard error holds every one of the words.
    pub(crate) fn fails(&self, code: i32, words: &[&str]) {
        assert_eq!(self.code, Some(code), "{self:?}");
        assert_eq!(self.out, "", "{self:?}");
        for word in words {
            assert!(self.err.contains(word), "{word:?} is not in {self:?}");
        }
    }

    /// Asserts a clean end with nothing on standard error.
    pub(crate) fn ends_well(&self) {
        assert_eq!(self.code, Some(0), "{self:?}");
        assert_eq!(self.err, "", "{self:?}");
    }
}
