//! `kerfwright plan JOB`: the plan as text, or as JSON.

use super::{Ending, JobArgument, conclude, files, planned, stops};
use crate::render;

/// What `plan` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// Print the whole plan as JSON
    #[arg(long)]
    json: bool,
}

/// Prints the plan on standard output.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (_, plan) = match planned(&options.job) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    let text = if options.json {
        render::json::plan(&plan)
    } else {
        render::text::plan(&plan)
    };
    if options.json {
        // The answer is for a program; the person at the terminal is told of the stops as well.
        files::say(&stops(&plan));
    }
    conclude(&text, &plan)
}
