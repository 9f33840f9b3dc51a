//! `kerfwright watch JOB`: the sheet again at each save, and what changed.

use std::path::{Path, PathBuf};
use std::time::{Duration, SystemTime};

use super::files::JobText;
use super::{Ending, files, own_failure, planned, sheet, summary};
use crate::plan::Plan;

/// What `watch` can be told.
#[derive(Debug, clap::Args)]
#[group(skip)]
pub struct Options {
    #[command(flatten)]
    sheet: sheet::Options,
}

/// How often the file is looked at (judgement: at once to a person, nothing to the machine).
const LOOK: Duration = Duration::from_millis(250);

/// Writes the sheet, then again at each change of the file, until it is ended from outside.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let path = &options.sheet.job.job;
    if path.as_os_str() == "-" {
        files::say("kerfwright: standard input cannot be watched; name a file\n");
        return Ending::CommandAtFault;
    }
    let text = match files::read(path) {
        Ok(text) => text,
        Err(fault) => return own_failure(&fault),
    };
    let mut watched = Watched::of(path, &text);
    let mut last = again(options, None);
    files::say("watching; Ctrl-C ends it\n");
    loop {
        std::thread::sleep(LOOK);
        // A file that is away for a moment is being saved.
        let now = watched.states();
        if now.first().is_some_and(Option::is_some) && now != watched.seen {
            watched.seen = now;
            if let Ok(text) = files::read(path) {
                watched = Watched::of(path, &text);
            }
            last = again(options, last);
        }
    }
}

/// When a file was changed and how long it is; nothing for one that is not there.
type State = Option<(SystemTime, u64)>;

/// The job file and the drawings that it names, and how they were seen last.
struct Watched {
    files: Vec<PathBuf>,
    seen: Vec<State>,
}

impl Watched {
    fn of(job: &Path, text: &JobText) -> Self {
        let drawings = text.drawings.keys().map(|name| job.with_file_name(name));
        let files: Vec<PathBuf> = std::iter::once(job.to_owned()).chain(drawings).collect();
        let mut watched = Self {
            files,
            seen: Vec::new(),
        };
        watched.seen = watched.states();
        watched
    }

    fn states(&self) -> Vec<State> {
        self.files.iter().map(|file| changed_at(file)).collect()
    }
}

fn changed_at(path: &Path) -> State {
    let there = std::fs::metadata(path).ok()?;
    Some((there.modified().ok()?, there.len()))
}

/// Writes the sheet and says what is otherwise than before; the last plan that could be made.
fn again(options: &Options, last: Option<Plan>) -> Option<Plan> {
    let Ok((_, plan)) = planned(&options.sheet.job) else {
        files::say("the sheet is left as it was; waiting for the next save\n");
        return last;
    };
    let _ = sheet::run(&options.sheet);
    if let Some(last) = &last {
        let changes = summary::changes(last, &plan);
        let told = if changes.is_empty() {
            "no figure changed\n".to_owned()
        } else {
            format!("changed:\n{changes}")
        };
        let _ = files::print(&told);
    }
    Some(plan)
}
