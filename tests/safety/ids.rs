//! Every finding that is emitted anywhere has a record.

use std::fs;
use std::path::{Path, PathBuf};

use kerfwright::hazard::registry::find;
use kerfwright::job;
use kerfwright::plan::Plan;

/// The stages that emit findings.
const STAGES: [&str; 6] = ["place", "cut", "piece", "handle", "hazard", "plan"];

pub(crate) fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

pub(crate) fn files(at: &Path) -> Vec<PathBuf> {
    if at.is_file() {
        return vec![at.to_path_buf()];
    }
    let Ok(entries) = fs::read_dir(at) else {
        return Vec::new();
    };
    entries.flat_map(|e| files(&e.unwrap().path())).collect()
}

/// Every source file of the stages that emit.
fn sources() -> Vec<PathBuf> {
    let stages = STAGES.iter().flat_map(|stage| {
        let folder = files(&root().join("src").join(stage));
        folder
            .into_iter()
            .chain(files(&root().join(format!("src/{stage}.rs"))))
    });
    stages
        .filter(|path| path.extension().is_some_and(|e| e == "rs"))
        .collect()
}

/// The ids written in a source text: behind a call that makes a kind of finding.
fn ids_in(text: &str) -> Vec<&str> {
    let calls = text.split("of_job(").chain(text.split("of_every_job("));
    let quoted = calls.filter_map(|rest| rest.trim_start().strip_prefix('"'));
    quoted
        .filter_map(|rest| rest.split_once('"').map(|(id, _)| id))
        .collect()
}

#[test]
fn ids_are_found_in_a_source_text() {
    let text =
        "Phrase::of_job(\"frost\").harm(x); Phrase::of_every_job(\n    \"wet-floor\",\n) \"plain\"";
    assert_eq!(ids_in(text), ["frost", "wet-floor"]);
}

#[test]
fn every_id_in_the_source_has_a_record() {
    let mut count = 0;
    for path in sources() {
        let text = fs::read_to_string(&path).unwrap();
        for id in ids_in(&text) {
            assert!(
                find(id).is_some(),
                "{id} in {} has no record",
                path.display()
            );
            count += 1;
        }
    }
    assert!(count > 100, "only {count} ids were found");
}

#[test]
fn every_finding_of_every_job_at_hand_has_a_record() {
    let folders = ["examples", "tests/golden", "tests/pdf_sheet"];
    let jobs = folders
        .iter()
        .flat_map(|folder| files(&root().join(folder)));
    let mut count = 0;
    for path in jobs.filter(|path| path.extension().is_some_and(|e| e == "toml")) {
        let text = fs::read_to_string(&path).unwrap();
        let Ok((job, _)) = job::read(&text) else {
            continue;
        };
        let Ok(plan) = Plan::of(&job) else { continue };
        let lines = plan.hazards.checklist.iter().map(|line| &line.finding);
        let found = plan.stops.iter().chain(&plan.open).chain(&plan.warnings);
        for finding in found.chain(lines) {
            assert!(
                find(finding.id()).is_some(),
                "{}: {}",
                path.display(),
                finding.id()
            );
            count += 1;
        }
    }
    assert!(count > 100, "only {count} findings");
}
