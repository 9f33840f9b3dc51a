//! `kerfwright weigh JOB`, or `kerfwright weigh --stone … --thickness … --size …`: what the stone weighs,
//! who carries what, what each aid needs, and the way in.

mod told;

use std::path::PathBuf;

use super::{Ending, JobArgument, files, own_failure, read_job};
use crate::document::{self, Stones};
use crate::job::Job;
use crate::plan::Weighing;
use crate::render;
use crate::words::{Language, System, Writer};

/// The two ways of telling it a stone.
pub const USAGE: &str = "kerfwright weigh JOB [--json]
       kerfwright weigh --stone KIND --thickness THICKNESS --size LENGTHxWIDTH [OPTIONS]";

/// What `weigh` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    /// The job file; "-" for standard input. Left out: the stone is told by --stone, --thickness and
    /// --size
    #[arg(value_name = "JOB", conflicts_with_all = ["stone", "thickness", "size", "units", "region", "people"],
          required_unless_present_any = ["stone", "thickness", "size"])]
    job: Option<PathBuf>,
    #[command(flatten)]
    told: told::Told,
    /// Print it all as JSON
    #[arg(long)]
    json: bool,
}

/// Prints the weights on standard output.
#[must_use]
pub fn run(options: &Options) -> Ending {
    match &options.job {
        Some(path) => of_job(path, options.json),
        None => match options.told.job() {
            Ok(job) => conclude(&Weighing::of_one(&job), Stones::One, options.json),
            Err(faults) => {
                files::say(&faults);
                Ending::CommandAtFault
            }
        },
    }
}

fn of_job(path: &std::path::Path, json: bool) -> Ending {
    let argument = JobArgument {
        job: path.to_owned(),
    };
    let (text, job): (_, Job) = match read_job(&argument) {
        Ok(read) => read,
        Err(ending) => return ending,
    };
    let (weighing, miss) = Weighing::of(&job);
    let ending = conclude(&weighing, Stones::SlabAndTop, json);
    match miss {
        Some(miss) => {
            files::say(&super::no_fit::no_fit_words(&text.name, &job, &miss));
            files::say("The slab and the top as wanted were weighed all the same.\n");
            if ending == Ending::Done {
                Ending::JobAtFault
            } else {
                ending
            }
        }
        None => ending,
    }
}

fn conclude(weighing: &Weighing, stones: Stones, json: bool) -> Ending {
    let text = if json {
        render::json::weighing(weighing)
    } else {
        let writer = Writer::new(System::from(weighing.job.units), Language::English);
        render::text::blocks(&document::weighing(weighing, stones), &writer)
    };
    match files::print(&text) {
        Err(fault) => own_failure(&fault),
        Ok(()) if weighing.stops.is_empty() => Ending::Done,
        Ok(()) => Ending::JobAtFault,
    }
}
