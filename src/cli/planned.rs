//! A job read and planned, with what is said on the way.

use std::fmt::Write;

use super::ending::{Ending, JobArgument};
use super::files::{self, JobText};
use super::no_fit::no_fit_words;
use super::{progress, report};
use crate::job::Job;
use crate::plan::Plan;

/// Reads a job and plans it; whatever stands against that is said on standard error.
///
/// # Errors
/// How the command must end.
pub(super) fn planned(argument: &JobArgument) -> Result<(JobText, Plan), Ending> {
    let (text, job) = read_job(argument)?;
    match progress::during("planning", || Plan::of(&job)) {
        Ok(plan) => Ok((text, plan)),
        Err(no_fit) => {
            files::say(&no_fit_words(&text.name, &job, &no_fit));
            Err(Ending::JobAtFault)
        }
    }
}

/// Reads a job file; faults and remarks are drawn on standard error.
///
/// # Errors
/// How the command must end.
pub(super) fn read_job(argument: &JobArgument) -> Result<(JobText, Job), Ending> {
    let text = files::read(&argument.job).map_err(|fault| own_failure(&fault))?;
    match crate::job::read_with(&text.text, &text.drawings) {
        Ok((job, remarks)) => {
            report::say(&text, &remarks);
            Ok((text, job))
        }
        Err(faults) => {
            report::say(&text, &faults);
            Err(Ending::JobAtFault)
        }
    }
}

/// Says what could not be done with a file.
pub(super) fn own_failure(fault: &files::FileFault) -> Ending {
    files::say(&format!("kerfwright: {fault}\n"));
    Ending::OwnFailure
}

/// The stops of a plan, for standard output.
pub(super) fn stops(plan: &Plan) -> String {
    let mut words = String::new();
    for stop in &plan.stops {
        let writer = plan.writer().english();
        let [title, detail] = [writer.say(&stop.message), writer.detail(&stop.message)];
        let _ = writeln!(words, "STOP: {title}\n      {detail}");
    }
    words
}

/// Prints on standard output and ends as the plan's stops say.
pub(super) fn conclude(text: &str, plan: &Plan) -> Ending {
    match files::print(text) {
        Err(fault) => own_failure(&fault),
        Ok(()) => Ending::of(plan),
    }
}

/// The same for several plans.
pub(super) fn conclude_all(text: &str, plans: &[&Plan]) -> Ending {
    match files::print(text) {
        Err(fault) => own_failure(&fault),
        Ok(()) => plans
            .iter()
            .fold(Ending::Done, |end, plan| end.worse(Ending::of(plan))),
    }
}
