//! `kerfwright plan JOB`: the plan as text, or as JSON.

use super::{Ending, JobArgument, conclude, files, planned, stops};
use crate::document::{self, Annex};
use crate::plan::Plan;
use crate::render;
use crate::words::{Language, System, Writer};

/// What `plan` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// Print the whole plan as JSON
    #[arg(long)]
    json: bool,
    /// Print everything: the bench pages and the annex
    #[arg(long, conflicts_with = "json")]
    full: bool,
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
        words(&plan, options.full)
    };
    if options.json {
        // The answer is for a program; the person at the terminal is told of the stops as well.
        files::say(&stops(&plan));
    }
    conclude(&text, &plan)
}

/// The answer on one screen, then what else there is; all of it when asked for.
fn words(plan: &Plan, full: bool) -> String {
    let writer = Writer::new(System::from(plan.job.units), Language::English);
    let answer = || render::text::blocks(&document::answer(plan), &writer);
    let (mut text, document) = rayon::join(answer, || document::document(plan, Annex::With));
    if full {
        text.push('\n');
        text.push_str(&render::text::document(&document));
    } else {
        text.push('\n');
        text.push_str(&writer.text("answer-more"));
        text.push('\n');
        for section in &document.sections {
            text.push_str("  ");
            text.push_str(&writer.say(&section.name));
            text.push('\n');
        }
    }
    text
}
