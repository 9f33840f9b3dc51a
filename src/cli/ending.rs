//! How a command ends, and the argument that most of them take.

use std::path::PathBuf;
use std::process::ExitCode;

use crate::plan::Plan;

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
    /// The worse of two: our own failure before a wrong command line before a job at fault.
    #[must_use]
    pub const fn worse(self, other: Self) -> Self {
        if self as u8 > other as u8 {
            self
        } else {
            other
        }
    }

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
