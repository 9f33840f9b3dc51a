//! `kerfwright check JOB`: what is wrong with a job file, and what was assumed.

use std::fmt::Write;

use super::{Ending, JobArgument, files, own_failure, report};
use crate::job::{self, Job};

/// What `check` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
}

/// Prints every fault on standard error, or "nothing wrong" and the assumptions on standard output.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let text = match files::read(&options.job.job) {
        Ok(text) => text,
        Err(fault) => return own_failure(&fault),
    };
    let (job, remarks) = match job::read(&text.text) {
        Ok(read) => read,
        Err(faults) => {
            files::say(&report::draw(
                &text.name,
                &text.text,
                &faults,
                files::colour(),
            ));
            return Ending::JobAtFault;
        }
    };
    files::say(&report::draw(
        &text.name,
        &text.text,
        &remarks,
        files::colour(),
    ));
    match files::print(&all_well(&text.name, &job)) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}

fn all_well(name: &str, job: &Job) -> String {
    let mut words = format!("{name}: nothing wrong with the job file.\n");
    if job.assumed.is_empty() {
        words.push_str("Nothing was assumed.\n");
        return words;
    }
    words.push_str("Assumed, because the file does not say:\n");
    for assumption in &job.assumed {
        let _ = writeln!(
            words,
            "  {} = {}\n      {}",
            assumption.key, assumption.value, assumption.why
        );
    }
    words
}
