//! The program: the only code that knows files, a terminal and the environment.
//!
//! | file | command |
//! |---|---|
//! | [`sheet`] | `kerfwright sheet JOB` |
//! | [`plan`] | `kerfwright plan JOB` |
//! | [`check`] | `kerfwright check JOB` |
//! | [`draw`] | `kerfwright draw JOB` |
//! | [`weigh`] | `kerfwright weigh JOB` |
//! | [`hazards`] | `kerfwright hazards` |
//! | [`explain`] | `kerfwright explain ID` |
//! | [`fit`] | `kerfwright fit JOB` |
//! | [`places`] | `kerfwright places JOB` |
//! | [`report`] | faults and remarks as a person reads them |
//! | [`files`] | job texts in, whole files out |
//!
//! Exit 0: done. Exit 1: the job is at fault or holds a stop, or an id is not known. Exit 2: the command line or the
//! program is at fault, or a file could not be read or written.

pub mod check;
pub mod draw;
pub mod explain;
pub mod files;
pub mod fit;
pub mod hazards;
pub mod places;
pub mod plan;
pub mod report;
pub mod sheet;
pub mod weigh;

use std::fmt::Write;
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

use crate::job::Job;
use crate::place::{NoFit, Stock};
use crate::plan::Plan;

use files::JobText;

/// Plans the cutting of a stone worktop from one job file and prints a job sheet.
#[derive(Debug, Parser)]
#[command(name = "kerfwright", version, max_term_width = 100)]
struct Command {
    #[command(subcommand)]
    action: Action,
}

#[derive(Debug, Subcommand)]
enum Action {
    /// Write the job sheet as a PDF
    Sheet(sheet::Options),
    /// Print the plan as text, or as JSON
    Plan(plan::Options),
    /// Say what is wrong with a job file, and what was assumed
    Check(check::Options),
    /// Draw the slab with the top, the cuts and the waste as an SVG
    Draw(draw::Options),
    /// Say what a stone weighs, who carries what, what each aid needs, and the way in
    #[command(override_usage = weigh::USAGE)]
    Weigh(weigh::Options),
    /// List every hazard, check and formula with one line each
    Hazards,
    /// Explain a hazard, a check or a formula: what, why, what to do, source, worked example
    Explain(explain::Options),
    /// Say in a few lines whether the top fits the slab: before buying it
    Fit(fit::Options),
    /// List the best few places of the top on the slab, with what each costs
    Places(places::Options),
}

/// The job file, which every command reads.
#[derive(Debug, clap::Args)]
pub struct JobArgument {
    /// The job file; "-" for standard input
    #[arg(value_name = "JOB")]
    pub job: PathBuf,
}

/// How a command ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ending {
    /// Done, nothing against the job.
    Done,
    /// The job is at fault or holds a stop; it has been said.
    JobAtFault,
    /// The command line cannot be carried out; it has been said.
    CommandAtFault,
    /// A file could not be read or written, or the program failed; it has been said.
    OwnFailure,
}

impl Ending {
    /// How a command ends whose plan was made and told.
    #[must_use]
    pub fn of(plan: &Plan) -> Self {
        if plan.stops.is_empty() {
            Self::Done
        } else {
            Self::JobAtFault
        }
    }
}

impl From<Ending> for ExitCode {
    fn from(ending: Ending) -> Self {
        Self::from(match ending {
            Ending::Done => 0,
            Ending::JobAtFault => 1,
            Ending::CommandAtFault | Ending::OwnFailure => 2,
        })
    }
}

/// Runs the program on the process's own arguments.
#[must_use]
pub fn run() -> ExitCode {
    let ending = match Command::parse().action {
        Action::Sheet(options) => sheet::run(&options),
        Action::Plan(options) => plan::run(&options),
        Action::Check(options) => check::run(&options),
        Action::Draw(options) => draw::run(&options),
        Action::Weigh(options) => weigh::run(&options),
        Action::Hazards => hazards::run(),
        Action::Explain(options) => explain::run(&options),
        Action::Fit(options) => fit::run(&options),
        Action::Places(options) => places::run(&options),
    };
    ending.into()
}

/// Reads a job and plans it; whatever stands against that is said on standard error.
///
/// # Errors
/// How the command must end.
fn planned(argument: &JobArgument) -> Result<(JobText, Plan), Ending> {
    let (text, job) = read_job(argument)?;
    match Plan::of(&job) {
        Ok(plan) => Ok((text, plan)),
        Err(no_fit) => {
            files::say(&no_fit_words(&text.name, &no_fit));
            Err(Ending::JobAtFault)
        }
    }
}

/// Reads a job file; faults are drawn on standard error.
fn read_job(argument: &JobArgument) -> Result<(JobText, Job), Ending> {
    let text = files::read(&argument.job).map_err(|fault| own_failure(&fault))?;
    match crate::job::read(&text.text) {
        Ok((job, _)) => Ok((text, job)),
        Err(faults) => {
            files::say(&report::draw(
                &text.name,
                &text.text,
                &faults,
                files::colour(),
            ));
            Err(Ending::JobAtFault)
        }
    }
}

/// Says what could not be done with a file.
fn own_failure(fault: &files::FileFault) -> Ending {
    files::say(&format!("kerfwright: {fault}\n"));
    Ending::OwnFailure
}

fn no_fit_words(name: &str, no_fit: &NoFit) -> String {
    if no_fit.stock == Stock::Begun {
        return no_repair_words(name, no_fit);
    }
    let mut words = format!("{name}: the top does not fit the slab.\n");
    if no_fit.reasons.is_empty() {
        words.push_str("  no position could be tried\n");
        return words;
    }
    let turn = no_fit.turn_deg.rem_euclid(360.0);
    let _ = writeln!(words, "The nearest miss, turned {turn:.1}°:");
    for reason in &no_fit.reasons {
        let _ = writeln!(words, "  - {reason}");
    }
    let advice = no_fit.advice();
    if !advice.is_empty() {
        words.push_str("What would fit, by the box round the finished top:\n");
        for size in advice {
            let _ = writeln!(words, "  - {size}");
        }
    }
    words
}

/// What cannot be mended on a slab whose cutting has begun.
fn no_repair_words(name: &str, no_fit: &NoFit) -> String {
    let mut words =
        format!("{name}: the top as asked can no longer be had from what is left of the slab.\n");
    for reason in &no_fit.reasons {
        let _ = writeln!(words, "  - {reason}");
    }
    words
}

/// The stops of a plan, for standard output.
fn stops(plan: &Plan) -> String {
    let mut words = String::new();
    for stop in &plan.stops {
        let _ = writeln!(words, "STOP: {}\n      {}", stop.title, stop.detail);
    }
    words
}

/// Prints on standard output and ends as the plan's stops say.
fn conclude(text: &str, plan: &Plan) -> Ending {
    match files::print(text) {
        Err(fault) => own_failure(&fault),
        Ok(()) => Ending::of(plan),
    }
}
