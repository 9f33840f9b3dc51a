//! Where a command puts what it makes.

use std::path::{Path, PathBuf};

use super::files::{self, JobText};
use super::{Ending, own_failure, write};

/// Where to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Output {
    /// Standard output.
    Terminal,
    /// A file.
    File(PathBuf),
}

/// Endings of files that hold something else than they say when they are written over.
const OTHERS: [&str; 15] = [
    "toml", "txt", "md", "csv", "json", "html", "svg", "dxf", "pdf", "doc", "docx", "odt", "png",
    "jpg", "jpeg",
];

impl Output {
    /// Where `-o` says, or a file in the current folder named as the job file is.
    ///
    /// # Errors
    /// What [`asked_back`] asks back, and the name of a drawing that the job is made of.
    pub(super) fn of(given: Option<&Path>, job: &JobText, ending: &str) -> Result<Self, Ending> {
        let path = match given {
            Some(path) if path.as_os_str() == "-" => return Ok(Self::Terminal),
            Some(path) => path.to_path_buf(),
            None => PathBuf::from(format!("{}.{ending}", job.stem)),
        };
        let folder = job.path.parent().unwrap_or(Path::new(""));
        let drawings = job.drawings.keys().map(|name| folder.join(name));
        if drawings.into_iter().any(|drawing| is_same(&path, &drawing)) {
            let name = files::shown(&path);
            files::say(&format!(
                "kerfwright: {name} is a drawing that the job takes a figure from: give another name with -o\n"
            ));
            return Err(Ending::CommandAtFault);
        }
        asked_back(&path, &job.path, ending).map_or(Ok(Self::File(path)), Err)
    }

    /// Puts the bytes there; the line that says so, for the terminal that is not written to.
    ///
    /// # Errors
    /// What cannot be written has been said.
    pub(super) fn put(&self, bytes: &[u8], what: &str) -> Result<String, Ending> {
        let (done, line) = match self {
            Self::Terminal => (files::put(bytes), String::new()),
            Self::File(path) => (
                write::whole(path, bytes),
                format!("{}: {what} written\n", files::shown(path)),
            ),
        };
        done.map(|()| line).map_err(|fault| own_failure(&fault))
    }
}

/// Asks back for a name that belongs to another kind of file or leads to the job file itself.
pub(super) fn asked_back(path: &Path, job: &Path, ending: &str) -> Option<Ending> {
    let given = path.extension().map(|e| e.to_string_lossy().to_lowercase());
    let name = files::shown(path);
    let is_other = given.is_some_and(|given| given != ending && OTHERS.contains(&given.as_str()));
    let why = if is_other {
        let better = files::shown(&path.with_extension(ending));
        let kind = ending.to_uppercase();
        format!(
            "what is written is {kind}, and {name} is the name of something else: did you mean -o {better}?"
        )
    } else if is_same(path, job) {
        format!("{name} is the job file itself: give another name with -o")
    } else {
        return None;
    };
    files::say(&format!("kerfwright: {why}\n"));
    Some(Ending::CommandAtFault)
}

/// Whether two names lead to one plain file.
fn is_same(a: &Path, b: &Path) -> bool {
    let [a, b] = [a, b].map(|path| path.canonicalize().ok().filter(|p| p.is_file()));
    a.is_some() && a == b
}
