//! The one file of a desk.

use std::hash::{DefaultHasher, Hash, Hasher};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};

use serde::Serialize;

use crate::cli::files::{self, FileFault};
use crate::cli::{drawings, write};
use crate::job::Drawings;

/// What a new job begins with.
const NEW: &str = "\
# A job for kerfwright. What a key means: kerfwright explain slab.factory

[job]
units = \"mm\"

[stone]

[slab]

[top]
";

/// The file that is read and saved, and no other.
#[derive(Debug)]
pub(super) struct OneFile {
    path: PathBuf,
    /// Held while it is compared and written.
    saving: Mutex<()>,
}

/// The file as it is now.
#[derive(Clone, Debug, Serialize)]
pub(super) struct State {
    /// Its path, as it is shown.
    pub(super) name: String,
    /// Its text; for one that is not there yet, what a new job begins with.
    text: String,
    /// Which text that is: a save must name it.
    version: String,
    /// It is not there yet.
    new: bool,
}

/// Why a text was not saved.
#[derive(Debug)]
pub(super) enum SaveFault {
    /// The file is no longer the one that the window has read.
    Older,
    /// It cannot be read or written.
    File(FileFault),
}

impl OneFile {
    pub(super) fn at(path: &Path) -> Self {
        Self {
            path: path.to_owned(),
            saving: Mutex::new(()),
        }
    }

    /// Its path, as it is shown.
    pub(super) fn name(&self) -> String {
        files::shown(&self.path)
    }

    /// A name for what is made of it, such as `counter.pdf`.
    pub(super) fn named(&self, ending: &str) -> String {
        let stem = self.path.file_stem().unwrap_or_default().to_string_lossy();
        format!("{}.{ending}", files::harmless(&stem))
    }

    /// The drawings beside it, or below, that a text of it names.
    pub(super) fn drawings(&self, text: &str) -> Drawings {
        drawings::read(self.path.parent().unwrap_or(Path::new("")), text)
    }

    /// The file as it is now.
    ///
    /// # Errors
    /// When it is there but cannot be read, and when there is no folder for it.
    pub(super) fn read(&self) -> Result<State, FileFault> {
        let new = self.path.symlink_metadata().is_err();
        let folder = self.path.parent().filter(|p| !p.as_os_str().is_empty());
        if new && folder.is_some_and(|folder| !folder.is_dir()) {
            return Err(write::no_folder(&self.path));
        }
        let text = if new {
            NEW.to_owned()
        } else {
            files::read(&self.path)?.text
        };
        Ok(State {
            name: self.name(),
            version: version(&text, new),
            text,
            new,
        })
    }

    /// Writes a text that was made from a version of the file; the new version.
    ///
    /// # Errors
    /// When the file is no longer of that version, and when it cannot be written.
    pub(super) fn save(&self, text: &str, from: &str) -> Result<String, SaveFault> {
        let _held = self.saving.lock().unwrap_or_else(PoisonError::into_inner);
        if self.read().map_err(SaveFault::File)?.version != from {
            return Err(SaveFault::Older);
        }
        write::whole(&self.path, text.as_bytes()).map_err(SaveFault::File)?;
        Ok(version(text, false))
    }
}

/// A short name of a text, by which another one is told from it.
fn version(text: &str, new: bool) -> String {
    let mut hasher = DefaultHasher::new();
    (text, new).hash(&mut hasher);
    format!("{:016x}", hasher.finish())
}
