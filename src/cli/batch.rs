//! `kerfwright batch FOLDER`: every job file of a folder, and one summary.

use std::fmt::Write;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::{Path, PathBuf};

use rayon::prelude::*;
use serde::Serialize;

use super::files::JobText;
use super::typeface::lacking;
use super::{Ending, files, output, own_failure, progress, summary, write};
use crate::diag::{Diagnostic, Severity};
use crate::document::{self, Annex};
use crate::job::{self, Job};
use crate::layout::{
    self,
    item::{Paper, Sheet},
};
use crate::plan::Plan;
use crate::render;
use crate::words::{Language, Writer};

/// What `batch` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The folder with the job files (*.toml)
    #[arg(value_name = "FOLDER")]
    folder: PathBuf,
    /// Write each job's sheet into this folder
    #[arg(long, value_name = "FOLDER")]
    sheets: Option<PathBuf>,
    /// Write the summary as CSV
    #[arg(long, value_name = "FILE")]
    csv: Option<PathBuf>,
    /// Write the summary as JSON
    #[arg(long, value_name = "FILE")]
    json: Option<PathBuf>,
}

/// What became of one job file. Mass in kg, time in minutes.
#[derive(Clone, Debug, Default, Serialize)]
struct Row {
    file: String,
    /// `done`, `stops`, `does not fit`, `faults`, `not read`, `sheet not written` or `gave up`.
    outcome: &'static str,
    /// Nothing for what could not be read.
    fits: Option<bool>,
    top_kg: Option<f64>,
    minutes: Option<f64>,
    stops: Option<usize>,
    open: Option<usize>,
    pages: Option<usize>,
    /// The first thing that stands against it, in English.
    why: String,
}

impl Row {
    /// A job that ends so; what has been found out stays.
    fn ended(self, outcome: &'static str, why: impl Into<String>) -> Self {
        let why = why.into();
        Self {
            outcome,
            why,
            ..self
        }
    }
}

/// Plans every job file, in parallel; one that is at fault does not stop the others.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let tables = [(&options.csv, "csv"), (&options.json, "json")];
    for (path, ending) in tables {
        let asked = path
            .as_deref()
            .and_then(|path| output::asked_back(path, Path::new(""), ending));
        if let Some(ending) = asked {
            return ending;
        }
    }
    match summed_up(options) {
        Err(fault) => own_failure(&fault),
        Ok(rows) if rows.iter().all(|row| row.outcome == "done") => Ending::Done,
        Ok(_) => Ending::JobAtFault,
    }
}

fn summed_up(options: &Options) -> Result<Vec<Row>, files::FileFault> {
    let jobs = job_files(&options.folder)?;
    options.sheets.as_deref().map_or(Ok(()), write::folder)?;
    let rows = all(&jobs, options.sheets.as_deref());
    for (path, text) in [(&options.csv, csv(&rows)), (&options.json, json(&rows))] {
        if let Some(path) = path {
            write::whole(path, text.as_bytes())?;
        }
    }
    files::print(&table(&rows)).map(|()| rows)
}

/// The job files of a folder, by name: what ends in `.toml` and is no folder, pipe or device.
fn job_files(folder: &Path) -> Result<Vec<PathBuf>, files::FileFault> {
    let fault = |e: std::io::Error| files::FileFault::new("cannot read", folder, e.to_string());
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(fault)? {
        let path = entry.map_err(fault)?.path();
        let is_plain = path.metadata().map_or(true, |there| there.is_file());
        if is_plain && path.extension().is_some_and(|e| e == "toml") {
            found.push(path);
        }
    }
    found.sort();
    Ok(found)
}

/// Every job's row, in the order of the jobs, as many at a time as the machine has cores. A plan is dropped
/// when its row is made, so that the memory does not grow with the number of jobs.
fn all(jobs: &[PathBuf], sheets: Option<&Path>) -> Vec<Row> {
    let bar = progress::bar(jobs.len());
    let told = |path: &PathBuf| {
        let row = one(path, sheets);
        bar.inc(1);
        row
    };
    let rows = jobs.par_iter().map(told).collect();
    bar.finish_and_clear();
    rows
}

/// One job's row. Whatever goes wrong with it stays with it.
fn one(path: &Path, sheets: Option<&Path>) -> Row {
    let file = path.file_name().unwrap_or_default().to_string_lossy();
    let file = files::harmless(&file);
    let row = Row {
        file,
        ..Row::default()
    };
    let read = catch_unwind(AssertUnwindSafe(|| read(row.clone(), path, sheets)));
    read.unwrap_or_else(|_| row.ended("gave up", "the program is at fault; `check` says where"))
}

fn read(row: Row, path: &Path, sheets: Option<&Path>) -> Row {
    let text = match files::read(path) {
        Ok(text) => text,
        Err(fault) => return row.ended("not read", fault.to_string()),
    };
    match job::read_with(&text.text, &text.drawings) {
        Ok((job, _)) => planned(row, &job, &text, sheets),
        Err(faults) => row.ended("faults", first(&faults)),
    }
}

fn first(faults: &[Diagnostic]) -> &str {
    let fault = faults.iter().find(|f| f.severity == Severity::Fault);
    fault.map_or("", |fault| &fault.message)
}

fn planned(mut row: Row, job: &Job, text: &JobText, sheets: Option<&Path>) -> Row {
    let plan = match Plan::of(job) {
        Ok(plan) => plan,
        Err(no_fit) => {
            row.fits = Some(false);
            let writer = Writer::new(job.units.into(), Language::English);
            return row.ended("does not fit", writer.say(&no_fit.verdict()));
        }
    };
    row.fits = Some(true);
    row.top_kg = Some(plan.top.mass.high.kg());
    row.minutes = Some(plan.totals.sawing_minutes + plan.totals.set_up_minutes);
    (row.stops, row.open) = (Some(plan.stops.len()), Some(plan.open.len()));
    let sheet = layout::pages(&document::document(&plan, Annex::Without), Paper::A4);
    row.pages = Some(sheet.pages.len());
    let lacking = lacking(&text.text, &sheet);
    if !lacking.is_empty() {
        return row.ended("faults", first(&lacking));
    }
    let to = sheets.map(|folder| folder.join(format!("{}.pdf", text.stem)));
    match (
        to.map(|to| written(&sheet, &to)),
        summary::stop_titles(&plan),
    ) {
        (Some(Err(why)), _) => row.ended("sheet not written", why),
        (_, stops) if stops.is_empty() => row.ended("done", ""),
        (_, stops) => row.ended("stops", stops.join("; ")),
    }
}

/// Writes a sheet, or says why it cannot be printed or written.
fn written(sheet: &Sheet, to: &Path) -> Result<(), String> {
    let bytes = render::pdf::pdf(sheet).map_err(|fault| fault.to_string())?;
    write::whole(to, &bytes).map_err(|fault| fault.to_string())
}

/// The names of a row's figures, as CSV and JSON have them.
const FIGURES: [&str; 6] = ["fits", "top_kg", "minutes", "stops", "open", "pages"];

impl Row {
    /// The figures, each written by `number` when it is one; `nothing` where there is none.
    fn figures(&self, nothing: &str, number: fn(f64) -> String) -> [String; 6] {
        let fits = self
            .fits
            .map(|fits| if fits { "yes" } else { "no" }.to_owned());
        let count = |n: Option<usize>| n.map(|n| n.to_string());
        [
            fits,
            self.top_kg.map(number),
            self.minutes.map(number),
            count(self.stops),
            count(self.open),
            count(self.pages),
        ]
        .map(|figure| figure.unwrap_or_else(|| nothing.to_owned()))
    }
}

/// The summary for a person. What is lifted and what is spent is never rounded down.
fn table(rows: &[Row]) -> String {
    let widths = rows.iter().map(|row| row.file.chars().count());
    let width = widths.max().unwrap_or(0).max(4);
    let mut out = String::new();
    let mut line = |file: &str, outcome: &str, figures: [&str; 6], why: &str| {
        let _ = write!(out, "{file:<width$}  {outcome:<17}");
        for (figure, wide) in figures.iter().zip([4, 7, 9, 5, 4, 5]) {
            let _ = write!(out, " {figure:>wide$}");
        }
        let _ = writeln!(out, "  {why}");
    };
    let heads = ["fits", "top, kg", "time, min", "stops", "open", "pages"];
    line("file", "outcome", heads, "");
    for row in rows {
        let figures = row.figures("-", |v| format!("{:.0}", v.ceil()));
        line(
            &row.file,
            row.outcome,
            figures.each_ref().map(String::as_str),
            &row.why,
        );
    }
    let done = rows.iter().filter(|row| row.outcome == "done").count();
    let _ = writeln!(out, "{} jobs, {done} without a stop", rows.len());
    files::trimmed(&out)
}

/// The summary as CSV (RFC 4180).
fn csv(rows: &[Row]) -> String {
    let quoted = |text: &str| format!("\"{}\"", text.replace('"', "\"\""));
    let mut out = format!("file,outcome,{},why\r\n", FIGURES.join(","));
    for row in rows {
        let figures = row.figures("", |v| format!("{v:.3}")).join(",");
        let [file, why] = [&row.file, &row.why].map(|text| quoted(text));
        let _ = write!(out, "{file},{},{figures},{why}\r\n", row.outcome);
    }
    out
}

fn json(rows: &[Row]) -> String {
    let text = serde_json::to_string_pretty(rows).unwrap_or_default();
    text + "\n"
}
