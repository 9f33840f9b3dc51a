//! Whole files out: a file is there whole or not at all, and what is not a plain file is written
//! through and stays what it is.

use std::collections::BTreeSet;
use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};

use super::files::FileFault;

/// The most links that are followed from one to the next (judgement: as common systems do).
const MOST_LINKS: usize = 40;

/// Writes a file whole.
///
/// A plain file is replaced in one step, so that it is never seen half written: the bytes go into a
/// file without a name where the system has those, otherwise into one beside it that the next run
/// sweeps away if this one is ended. A link is followed. A pipe or a device is written to as it is.
///
/// # Errors
/// A folder that is not there or may not be written to, a folder in the file's place, a file that may
/// not be changed.
pub fn whole(path: &Path, bytes: &[u8]) -> Result<(), FileFault> {
    let fault = |why: String| FileFault::new("cannot write", path, why);
    let there = match fs::metadata(path) {
        Ok(there) if there.is_dir() => {
            return Err(fault("it is a folder; name a file in it".to_owned()));
        }
        Ok(there) if !there.is_file() => {
            return through(path, bytes).map_err(|e| fault(e.to_string()));
        }
        Ok(there) if there.permissions().readonly() => {
            let why = "it may not be changed (read-only), and nothing was; give another name";
            return Err(fault(why.to_owned()));
        }
        there => there.ok().map(|there| there.permissions()),
    };
    let target = match there {
        Some(_) => fs::canonicalize(path),
        None => followed(path),
    };
    let target = target.map_err(|e| fault(e.to_string()))?;
    replace(&target, bytes, there.as_ref()).map_err(|e| fault(in_words(&target, &e)))
}

/// The folder for several files, made when it is not there.
///
/// # Errors
/// When it cannot be made.
pub fn folder(path: &Path) -> Result<(), FileFault> {
    fs::create_dir_all(path)
        .map_err(|e| FileFault::new("cannot make the folder", path, e.to_string()))
}

/// What a path leads to when links are followed, though nothing is there yet.
fn followed(path: &Path) -> io::Result<PathBuf> {
    let mut at = path.to_path_buf();
    for _ in 0..MOST_LINKS {
        let Ok(next) = fs::read_link(&at) else {
            return Ok(at);
        };
        let beside = at.parent().map(Path::to_path_buf).unwrap_or_default();
        at = beside.join(next);
    }
    Err(io::Error::other("its links lead in a circle"))
}

/// Writes to a pipe, a device or a socket.
fn through(path: &Path, bytes: &[u8]) -> io::Result<()> {
    let mut file = OpenOptions::new().write(true).open(path)?;
    file.write_all(bytes)
}

/// Puts a new file in the place of what is there.
fn replace(path: &Path, bytes: &[u8], like: Option<&fs::Permissions>) -> io::Result<()> {
    let folder = match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    };
    sweep_once(folder);
    let part = folder.join(part_name());
    let placed = unnamed::place(folder, &part, path, bytes, like);
    placed.unwrap_or_else(|| named(&part, path, bytes, like))
}

/// What stands before and behind the writer in the name of a file that is being written.
const PART: (&str, &str) = (".kerfwright-", ".part");

/// A name of its own for each file that is being written: the process, and how many it wrote before.
fn part_name() -> String {
    static COUNT: AtomicUsize = AtomicUsize::new(0);
    let (before, behind) = PART;
    let count = COUNT.fetch_add(1, Ordering::Relaxed);
    format!("{before}{}-{count}{behind}", std::process::id())
}

/// Writes a named file beside the place and renames it.
fn named(part: &Path, path: &Path, bytes: &[u8], like: Option<&fs::Permissions>) -> io::Result<()> {
    let write = || {
        let mut file = OpenOptions::new().write(true).create_new(true).open(part)?;
        fill(&mut file, bytes, like)?;
        fs::rename(part, path)
    };
    let written = write();
    if written.is_err() {
        let _ = fs::remove_file(part);
    }
    written
}

/// Writes the bytes down to the disk.
fn fill(file: &mut File, bytes: &[u8], like: Option<&fs::Permissions>) -> io::Result<()> {
    if let Some(permissions) = like {
        file.set_permissions(permissions.clone())?;
    }
    file.write_all(bytes)?;
    file.sync_all()
}

/// Sweeps a folder when it is the first time that this run writes into it.
fn sweep_once(folder: &Path) {
    static SWEPT: Mutex<BTreeSet<PathBuf>> = Mutex::new(BTreeSet::new());
    let mut swept = SWEPT.lock().unwrap_or_else(PoisonError::into_inner);
    if swept.insert(folder.to_path_buf()) {
        sweep(folder);
    }
}

/// Removes what earlier runs of this program that were ended left in a folder.
fn sweep(folder: &Path) {
    for entry in fs::read_dir(folder).into_iter().flatten().flatten() {
        let found = entry.file_name();
        if writer(&found.to_string_lossy()).is_some_and(|id| !is_running(id, &entry)) {
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// The process that a file being written is named after.
fn writer(name: &str) -> Option<u32> {
    let own = name.strip_prefix(PART.0)?.strip_suffix(PART.1)?;
    let (id, count) = own.split_once('-')?;
    count.parse::<usize>().ok()?;
    id.parse().ok()
}

/// Whether the process that writes a file may still be there.
fn is_running(id: u32, entry: &fs::DirEntry) -> bool {
    /// Nothing takes so long to write, s (judgement).
    const LONG: u64 = 3600;
    if cfg!(target_os = "linux") {
        return Path::new("/proc").join(id.to_string()).exists();
    }
    let written = entry.metadata().and_then(|m| m.modified());
    let age = written.ok().and_then(|at| at.elapsed().ok());
    age.is_none_or(|age| age.as_secs() < LONG)
}

/// The fault of a file whose folder is not there.
pub(super) fn no_folder(path: &Path) -> FileFault {
    let why = in_words(path, &io::ErrorKind::NotFound.into());
    FileFault::new("cannot write", path, why)
}

/// Why a file could not be written, and what to do.
fn in_words(path: &Path, error: &io::Error) -> String {
    let folder = path.parent().filter(|p| !p.as_os_str().is_empty());
    match (error.kind(), folder) {
        (io::ErrorKind::NotFound, Some(folder)) if !folder.exists() => {
            let folder = super::files::shown(folder);
            format!("there is no folder {folder}; make it, or give another name")
        }
        (io::ErrorKind::NotADirectory, _) => {
            "a part of its path is a file and no folder; give another name".to_owned()
        }
        (io::ErrorKind::PermissionDenied, _) => {
            "this folder may not be written to; give a name in another one with -o".to_owned()
        }
        (io::ErrorKind::StorageFull, _) => "the disk is full".to_owned(),
        _ => error.to_string(),
    }
}

/// Files that have no name until they are whole: nothing is left when the program is ended.
#[cfg(target_os = "linux")]
mod unnamed {
    use std::fs::{self, File};
    use std::io;
    use std::os::fd::AsRawFd;
    use std::path::Path;

    use rustix::fs::{AtFlags, CWD, Mode, OFlags, linkat, open};

    /// Writes into a file without a name and gives it one; nothing when the file system has none.
    pub(super) fn place(
        folder: &Path,
        part: &Path,
        path: &Path,
        bytes: &[u8],
        like: Option<&fs::Permissions>,
    ) -> Option<io::Result<()>> {
        let flags = OFlags::TMPFILE | OFlags::WRONLY | OFlags::CLOEXEC;
        let file = open(folder, flags, Mode::from_raw_mode(0o666)).ok()?;
        let mut file = File::from(file);
        if let Err(error) = super::fill(&mut file, bytes, like) {
            return Some(Err(error));
        }
        let own = format!("/proc/self/fd/{}", file.as_raw_fd());
        let link = |to: &Path| linkat(CWD, own.as_str(), CWD, to, AtFlags::SYMLINK_FOLLOW);
        if like.is_none() && link(path).is_ok() {
            return Some(Ok(()));
        }
        // A name cannot be given over one that is there, so this one has another for a moment.
        link(part).ok()?;
        Some(fs::rename(part, path).inspect_err(|_| {
            let _ = fs::remove_file(part);
        }))
    }
}

/// Elsewhere there are none.
#[cfg(not(target_os = "linux"))]
mod unnamed {
    use std::path::Path;

    /// Nothing: the file is written under a name beside its place.
    pub(super) fn place(
        _: &Path,
        _: &Path,
        _: &Path,
        _: &[u8],
        _: Option<&std::fs::Permissions>,
    ) -> Option<std::io::Result<()>> {
        None
    }
}
