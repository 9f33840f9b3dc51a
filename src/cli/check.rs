//! `kerfwright check JOB`: what is wrong with a job file, what stands against the job, and what was
//! assumed.

use std::fmt::Write;

use super::assumed::Effect;
use super::{
    Ending, JobArgument, assumed, conclude, files, no_fit_words, progress, read_job, report,
    typeface,
};
use crate::diag::Finding;
use crate::document::{self, Annex};
use crate::job::Assumption;
use crate::layout::{self, item::Paper};
use crate::plan::Plan;

/// What `check` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// List every value that was assumed, with the reason
    #[arg(long)]
    assumed: bool,
}

/// The most assumed values that are told of without being asked for.
const MOST_ASSUMED: usize = 5;

/// Prints every fault on standard error; or "nothing wrong", and on standard output what stands against
/// the job and the assumed values that change it most.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, job) = match read_job(&options.job) {
        Ok(read) => read,
        Err(ending) => return ending,
    };
    let mut words = format!("{}: nothing wrong with the job file.\n", text.name);
    let plan = match progress::during("planning", || Plan::of(&job)) {
        Ok(plan) => plan,
        Err(no_fit) => {
            words.push_str(&no_fit_words(&text.name, &job, &no_fit));
            return match files::print(&words) {
                Ok(()) => Ending::JobAtFault,
                Err(fault) => super::own_failure(&fault),
            };
        }
    };
    let sheet = layout::pages(&document::document(&plan, Annex::With), Paper::A4);
    let lacking = typeface::lacking(&text.text, &sheet);
    if !lacking.is_empty() {
        report::say(&text, &lacking);
        return Ending::JobAtFault;
    }
    findings(&mut words, &plan, "Stops", &plan.stops);
    findings(&mut words, &plan, "Open points", &plan.open);
    let effects = progress::during("trying the assumed values", || {
        assumed::effects(&text, &job, &plan)
    });
    if job.assumed.is_empty() {
        words.push_str("Nothing was assumed.\n");
    } else if options.assumed {
        every(&mut words, &job.assumed, &effects);
    } else {
        most(
            &mut words,
            job.assumed.len(),
            &effects,
            &files::typed(&text.path),
        );
    }
    conclude(&words, &plan)
}

/// Each finding in a line, with the key that clears it.
fn findings(words: &mut String, plan: &Plan, name: &str, found: &[Finding]) {
    let writer = plan.writer().english();
    if found.is_empty() {
        let _ = writeln!(words, "{name}: none.");
        return;
    }
    let _ = writeln!(words, "{name}:");
    for finding in found {
        let clears = match finding.phrase.clears {
            crate::diag::Clears::Key(key) => format!(" [{key}]"),
            crate::diag::Clears::Act(_) => String::new(),
        };
        let _ = writeln!(words, "  - {}{clears}", writer.say(&finding.message));
    }
}

/// The assumed values that change the plan most.
fn most(words: &mut String, count: usize, effects: &[Effect], name: &str) {
    let those = if effects.is_empty() {
        "None of them changes the plan much."
    } else {
        "Those that change the plan most:"
    };
    let _ = writeln!(words, "Assumed: {count} values. {those}");
    for effect in effects.iter().take(MOST_ASSUMED) {
        let _ = writeln!(
            words,
            "  {} = {}\n      {}",
            effect.key, effect.value, effect.told
        );
    }
    let _ = writeln!(
        words,
        "All of them, and why: kerfwright check --assumed {name}"
    );
}

/// Every assumed value with its reason, and what it changes.
fn every(words: &mut String, assumed: &[Assumption], effects: &[Effect]) {
    words.push_str("Assumed, because the file does not say:\n");
    for assumption in assumed {
        let _ = writeln!(
            words,
            "  {} = {}\n      {}",
            assumption.key, assumption.value, assumption.why
        );
        if let Some(effect) = effects.iter().find(|e| e.key == assumption.key) {
            let _ = writeln!(words, "      {}", effect.told);
        }
    }
}
