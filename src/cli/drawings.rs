//! The drawings that a job names, read from beside its file.

use std::fs;
use std::io::{self, Read};
use std::path::Path;

use crate::job::drawing::LONGEST_DRAWING;
use crate::job::{Drawings, JobFile};

/// Reads every drawing that a job text names, from its folder or below it. What cannot be read is kept in
/// words, for the reader of the job to say at the key.
pub(super) fn read(folder: &Path, text: &str) -> Drawings {
    let Ok(file) = JobFile::new(text) else {
        return Drawings::new();
    };
    let folder = if folder.as_os_str().is_empty() {
        Path::new(".")
    } else {
        folder
    };
    let names = file.drawings().into_iter();
    names
        .map(|name| (name.clone(), one(folder, &name)))
        .collect()
}

fn one(folder: &Path, name: &str) -> Result<String, String> {
    let path = folder.join(name);
    let whole = path.canonicalize().map_err(|e| why(&e))?;
    let home = folder.canonicalize().map_err(|e| why(&e))?;
    if !whole.starts_with(&home) {
        return Err("a link leads it out of the job file's folder".to_owned());
    }
    if !whole.is_file() {
        return Err("it is no plain file".to_owned());
    }
    let mut bytes = Vec::new();
    let file = fs::File::open(&whole).map_err(|e| why(&e))?;
    let most = LONGEST_DRAWING as u64 + 1;
    file.take(most)
        .read_to_end(&mut bytes)
        .map_err(|e| why(&e))?;
    if bytes.len() > LONGEST_DRAWING {
        return Err(format!("it has more than {LONGEST_DRAWING} bytes (1 MiB)"));
    }
    // Words in a drawing may be in any old encoding; what counts in it is plain ASCII.
    Ok(String::from_utf8_lossy(&bytes).into_owned())
}

fn why(error: &io::Error) -> String {
    match error.kind() {
        io::ErrorKind::NotFound => "there is no such file beside the job file".to_owned(),
        _ => error.to_string(),
    }
}
