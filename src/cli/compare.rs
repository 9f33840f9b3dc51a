//! `kerfwright compare A B`: two jobs side by side.

use std::fmt::Write;
use std::path::PathBuf;

use super::{Ending, JobArgument, conclude_all, files, planned, summary};
use crate::plan::Plan;

/// What `compare` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The first job file
    #[arg(value_name = "A")]
    first: PathBuf,
    /// The second job file
    #[arg(value_name = "B")]
    second: PathBuf,
}

/// Width of the column of names, and of the first job's figures, characters.
const NAMES: usize = 20;

/// Prints the figures of both, and the stops that only one of them has.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let mut plans = Vec::new();
    let mut failed = Ending::Done;
    for job in [&options.first, &options.second] {
        match planned(&JobArgument { job: job.clone() }) {
            Ok((text, plan)) => plans.push((text.name, plan)),
            Err(ending) => failed = failed.worse(ending),
        }
    }
    match &plans[..] {
        [(first_name, first), (second_name, second)] => {
            let text = side_by_side([first_name, second_name], [first, second]);
            conclude_all(&text, &[first, second])
        }
        _ => failed,
    }
}

fn side_by_side(names: [&str; 2], plans: [&Plan; 2]) -> String {
    let [first, second] = plans.map(summary::figures);
    let width = first.iter().map(|f| f.value.chars().count());
    let width = width.chain([names[0].chars().count()]).max().unwrap_or(0) + 2;
    let mut out = String::new();
    let mut row = |name: &str, a: &str, b: &str, differs: bool| {
        let mark = if differs { "*" } else { " " };
        let _ = writeln!(out, "{mark} {name:<NAMES$}{a:<width$}{b}");
    };
    row("", names[0], names[1], false);
    for (a, b) in first.iter().zip(&second) {
        row(a.name, &a.value, &b.value, a != b);
    }
    let stops = plans.map(summary::stop_titles);
    for (name, own, other) in [
        (names[0], &stops[0], &stops[1]),
        (names[1], &stops[1], &stops[0]),
    ] {
        for stop in own.iter().filter(|stop| !other.contains(stop)) {
            let _ = writeln!(out, "\nSTOP only in {name}: {stop}");
        }
    }
    out.push_str("\n* differs\n");
    files::trimmed(&out)
}
