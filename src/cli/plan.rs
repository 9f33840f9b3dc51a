//! `kerfwright plan JOB`: the plan as text, or as JSON.

use super::{Ending, JobArgument, conclude, planned};
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
    conclude(&text, &plan)
}
