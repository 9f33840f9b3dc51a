//! Job texts in, whole files out.

use std::fmt;
use std::io::{self, IsTerminal, Read, Write};
use std::path::{Path, PathBuf};

use super::report::Colour;

/// A job file's text and the name it goes by.
#[derive(Clone, Debug)]
pub struct JobText {
    /// The path as given, or `standard input`.
    pub name: String,
    /// Name for files made from it, without an ending.
    pub stem: String,
    /// The text.
    pub text: String,
}

/// Why a file could not be read or written.
#[derive(Debug)]
pub struct FileFault {
    what: &'static str,
    path: PathBuf,
    why: String,
}

impl fmt::Display for FileFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} {}: {}", self.what, self.path.display(), self.why)
    }
}

/// Longest text that is read, bytes. The job reader refuses a little less than this with its own
/// message; nothing longer is kept in memory.
const LONGEST: u64 = 2 * 1024 * 1024;

/// Reads a job file, or standard input for `-`.
///
/// # Errors
/// When it cannot be read or is not UTF-8 text.
pub fn read(path: &Path) -> Result<JobText, FileFault> {
    let fault = |why: String| FileFault {
        what: "cannot read",
        path: path.to_path_buf(),
        why,
    };
    let mut bytes = Vec::new();
    let from_stdin = path.as_os_str() == "-";
    let outcome = if from_stdin {
        io::stdin().lock().take(LONGEST).read_to_end(&mut bytes)
    } else {
        std::fs::File::open(path).and_then(|f| f.take(LONGEST).read_to_end(&mut bytes))
    };
    outcome.map_err(|e| fault(e.to_string()))?;
    // What was cut off, perhaps inside a letter, is refused for its length and not looked at.
    let text = if bytes.len() as u64 == LONGEST {
        String::from_utf8_lossy(&bytes).into_owned()
    } else {
        String::from_utf8(bytes)
            .map_err(|e| fault(format!("it is not UTF-8 text ({e}); save it as UTF-8")))?
    };
    let stem = path.file_stem().map(|s| s.to_string_lossy().into_owned());
    Ok(JobText {
        name: if from_stdin {
            "standard input".into()
        } else {
            path.display().to_string()
        },
        stem: stem.filter(|s| s != "-").unwrap_or_else(|| "job".into()),
        text,
    })
}

/// Writes a file whole: into a temporary file beside it, then renamed. Nothing is left behind when
/// it fails.
///
/// # Errors
/// When the folder cannot be written to.
pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), FileFault> {
    let fault = |why: String| FileFault {
        what: "cannot write",
        path: path.to_path_buf(),
        why,
    };
    let parent = path.parent().filter(|p| !p.as_os_str().is_empty());
    let mut builder = tempfile::Builder::new();
    #[cfg(unix)]
    {
        // Readable as any document is, less what the user's mask takes away.
        use std::os::unix::fs::PermissionsExt;
        builder.permissions(std::fs::Permissions::from_mode(0o666));
    }
    let mut file = builder
        .tempfile_in(parent.unwrap_or(Path::new(".")))
        .map_err(|e| fault(e.to_string()))?;
    file.write_all(bytes)
        .and_then(|()| file.as_file().sync_all())
        .map_err(|e| fault(e.to_string()))?;
    file.persist(path).map_err(|e| fault(e.error.to_string()))?;
    Ok(())
}

/// Colour for a terminal that wants it.
#[must_use]
pub fn colour() -> Colour {
    let plain = std::env::var_os("NO_COLOR").is_some_and(|v| !v.is_empty());
    if io::stderr().is_terminal() && !plain {
        Colour::Ansi
    } else {
        Colour::Plain
    }
}

/// Says something on standard error. Nobody listening is no reason to fail.
pub fn say(text: &str) {
    let _ = io::stderr().lock().write_all(text.as_bytes());
}

/// Writes bytes to standard output.
///
/// # Errors
/// When standard output cannot be written; a reader that has gone away is not a failure.
pub fn put(bytes: &[u8]) -> Result<(), FileFault> {
    match io::stdout().lock().write_all(bytes) {
        Err(e) if e.kind() != io::ErrorKind::BrokenPipe => Err(FileFault {
            what: "cannot write",
            path: PathBuf::from("standard output"),
            why: e.to_string(),
        }),
        _ => Ok(()),
    }
}

/// Prints to standard output; a reader that has gone away is not a failure.
///
/// # Errors
/// When standard output cannot be written for any other reason.
pub fn print(text: &str) -> Result<(), FileFault> {
    put(text.as_bytes())
}
