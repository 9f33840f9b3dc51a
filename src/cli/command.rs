//! The command line.

use std::ffi::OsString;
use std::path::Path;
use std::process::ExitCode;

use clap::{CommandFactory, Parser, Subcommand};
use rayon::ThreadPoolBuilder;

use super::ending::Ending;
use super::{
    batch, check, compare, desk, draw, explain, files, fit, hazards, keys, new, places, plan,
    sheet, shell, template, watch, weigh,
};

/// Plans the cutting of a stone worktop from one job file and prints a job sheet.
#[derive(Debug, Parser)]
#[command(name = "kerfwright", version, max_term_width = 100, after_help = FIRST_JOB)]
struct Command {
    #[command(subcommand)]
    action: Action,
}

const FIRST_JOB: &str = "\
The first job, by a form:
  kerfwright desk counter.toml     in the web browser, with the drawing beside it

The first job, by a text editor:
  kerfwright new counter.toml      a file to fill in
  kerfwright check counter.toml    what is missing or wrong, until nothing is
  kerfwright counter.toml          the job sheet, counter.pdf";

#[derive(Debug, Subcommand)]
enum Action {
    /// Write a job file to fill in
    #[command(after_help = "Example: kerfwright new counter.toml --units in")]
    New(new::Options),
    /// Fill in a job in the web browser, and see the drawing as you type
    #[command(after_help = "Example: kerfwright desk counter.toml")]
    Desk(desk::Options),
    /// Say what is wrong with a job file, what stands against the job, and what was assumed
    #[command(after_help = "Example: kerfwright check counter.toml")]
    Check(check::Options),
    /// Say in a few lines whether the top fits the slab: before buying it
    #[command(after_help = "Example: kerfwright fit counter.toml")]
    Fit(fit::Options),
    /// List the best few places of the top on the slab, with what each costs
    #[command(after_help = "Example: kerfwright places counter.toml")]
    Places(places::Options),
    /// Write the job sheet as a PDF
    #[command(after_help = "Example: kerfwright sheet counter.toml --paper letter")]
    Sheet(sheet::Options),
    /// Write the sheet again at each save of the job file, and say what changed
    #[command(after_help = "Example: kerfwright watch counter.toml")]
    Watch(watch::Options),
    /// Print the plan as text, or as JSON
    #[command(after_help = "Example: kerfwright plan counter.toml")]
    Plan(plan::Options),
    /// Print a curve, an opening, a corner or the whole top at full size
    #[command(after_help = "Example: kerfwright template counter.toml --part curve-3")]
    Template(template::Options),
    /// Draw the slab with the top, the cuts and the waste as an SVG
    #[command(after_help = "Example: kerfwright draw counter.toml -o slab.svg")]
    Draw(draw::Options),
    /// Say what a stone weighs, who carries what, what each aid needs, and the way in
    #[command(after_help = "Example: kerfwright weigh --stone granite --thickness 30 --size 2150x640", override_usage = weigh::USAGE)]
    Weigh(weigh::Options),
    /// Put two jobs side by side
    #[command(after_help = "Example: kerfwright compare counter.toml counter-short.toml")]
    Compare(compare::Options),
    /// Plan every job file of a folder, and sum up
    #[command(after_help = "Example: kerfwright batch jobs --csv jobs.csv --sheets sheets")]
    Batch(batch::Options),
    /// Explain a hazard, a check, a formula or a key of the job file
    #[command(after_help = "Example: kerfwright explain slab.factory")]
    Explain(explain::Options),
    /// List the keys of the job file with one line each
    #[command(after_help = "Example: kerfwright keys slab")]
    Keys(keys::Options),
    /// List every hazard, check and formula with one line each
    #[command(after_help = "Example: kerfwright hazards")]
    Hazards,
    /// Print the JSON Schema of the job file, for editors that complete and check, or of a plan
    #[command(after_help = "Example: kerfwright schema > kerfwright.schema.json")]
    Schema(keys::SchemaOptions),
    /// Print what a shell needs to complete commands and options
    #[command(after_help = "Example: kerfwright completions bash > kerfwright.bash")]
    Completions(shell::Options),
    /// Print the manual page
    #[command(after_help = "Example: kerfwright man > kerfwright.1")]
    Man,
}

/// Runs the program on the process's own arguments.
#[must_use]
pub fn run() -> ExitCode {
    match Command::try_parse_from(with_command(std::env::args_os().collect())) {
        Ok(command) => {
            if !matches!(command.action, Action::Desk(_)) {
                join_the_workers();
            }
            act(command.action).into()
        }
        Err(said) => answer(&said),
    }
}

/// Makes this thread one of those that share the work, so that no work waits for another to wake up. Not for a server,
/// whose first thread only waits for the browser.
fn join_the_workers() {
    // Where the workers are there already the work is done all the same.
    let _ = ThreadPoolBuilder::new().use_current_thread().build_global();
}

/// `kerfwright job.toml` means `kerfwright sheet job.toml`.
fn with_command(mut arguments: Vec<OsString>) -> Vec<OsString> {
    let ending = arguments
        .get(1)
        .and_then(|first| Path::new(first).extension());
    if ending.is_some_and(|e| e.eq_ignore_ascii_case("toml")) {
        arguments.insert(1, "sheet".into());
    }
    arguments
}

/// Help and version as they are; what is wrong with the command line without control characters.
fn answer(said: &clap::Error) -> ExitCode {
    if !said.use_stderr() {
        let _ = said.print();
        return Ending::Done.into();
    }
    let lines = said.render().to_string();
    let lines: Vec<String> = lines.lines().map(files::harmless).collect();
    files::say(&(lines.join("\n") + "\n"));
    Ending::CommandAtFault.into()
}

fn act(action: Action) -> Ending {
    match action {
        Action::Sheet(options) => sheet::run(&options),
        Action::Plan(options) => plan::run(&options),
        Action::Check(options) => check::run(&options),
        Action::Draw(options) => draw::run(&options),
        Action::Template(options) => template::run(&options),
        Action::Weigh(options) => weigh::run(&options),
        Action::Hazards => hazards::run(),
        Action::Explain(options) => explain::run(&options),
        Action::Desk(options) => desk::run(&options),
        Action::New(options) => new::run(&options),
        Action::Keys(options) => keys::run(&options),
        Action::Schema(options) => keys::schema(&options),
        Action::Fit(options) => fit::run(&options),
        Action::Places(options) => places::run(&options),
        Action::Watch(options) => watch::run(&options),
        Action::Compare(options) => compare::run(&options),
        Action::Batch(options) => batch::run(&options),
        Action::Completions(options) => shell::completions(&options, &mut Command::command()),
        Action::Man => shell::man(Command::command()),
    }
}
