//! The job files that come with the project, for several test programs.

use std::fs;
use std::path::Path;

/// Names and texts of the job files of a folder, also of those in folders of their own, in the order of their names.
pub(crate) fn jobs(folder: &str) -> Vec<(String, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let entries = fs::read_dir(&folder).expect("the folder is there");
    let paths = entries.map(|e| e.expect("an entry").path());
    let paths = paths.map(|p| if p.is_dir() { p.join("job.toml") } else { p });
    let mut files: Vec<_> = paths
        .filter(|p| p.extension().is_some_and(|e| e == "toml"))
        .collect();
    files.sort();
    let read = |path: &std::path::PathBuf| {
        Some((path.display().to_string(), fs::read_to_string(path).ok()?))
    };
    let texts: Vec<_> = files.iter().filter_map(read).collect();
    assert!(!texts.is_empty(), "no job in {}", folder.display());
    texts
}
