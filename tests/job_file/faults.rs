//! Slips that people make, and what is said of each: `faults.txt` has them all, to be read.
//!
//! A line that begins with `> ` is a line of a job file: `> [slab] rectangle = …` stands in place of that
//! key in the least job file, `> [job]` and others as they are at its end. After a change that is meant:
//! `SNAPSHOTS=overwrite cargo test --test job_file slips`, then read the difference.

use kerfwright::cli::report::{Colour, draw};
use kerfwright::job::read;

use super::LEAST;

const SAID: &str = include_str!("faults.txt");

/// The job file of a case.
fn job_file(lines: &[&str]) -> String {
    let mut text = LEAST.to_owned();
    for line in lines {
        let edit = line
            .strip_prefix('[')
            .and_then(|rest| rest.split_once("] "));
        let Some((section, said)) = edit else {
            text.push_str(line);
            text.push('\n');
            continue;
        };
        let header = format!("[{section}]\n");
        let key = said.split(['=', ' ']).next().unwrap();
        let at = text.find(&header).unwrap() + header.len();
        let end = text[at..].find("\n[").map_or(text.len(), |i| at + i + 1);
        let kept = text[at..end].lines();
        let kept = kept.filter(|old| old.split(['=', ' ']).next() != Some(key));
        let body: Vec<&str> = kept.collect();
        let body = body.join(
            "
",
        );
        text = format!("{}{said}\n{body}\n{}", &text[..at], &text[end..]);
    }
    text
}

/// Everything said of a job file, without the frame round the place.
fn said(lines: &[&str]) -> String {
    let text = job_file(lines);
    let found = match read(&text) {
        Ok((_, remarks)) => remarks,
        Err(found) => found,
    };
    if found.is_empty() {
        return "read\n".to_owned();
    }
    let drawn = draw("job.toml", &text, &found, Colour::Plain);
    drawn.split("\n\n").for_each(is_whole);
    let kept = drawn.lines().filter(|line| {
        let line = line.trim();
        line.starts_with("fault:") || line.starts_with("remark:") || line.contains("do: ")
    });
    let kept: Vec<&str> = kept
        .map(|line| line.trim().trim_start_matches("= "))
        .collect();
    kept.join(
        "
",
    ) + "
"
}

/// What is said names the file and the line, shows what stands there, and says what to do.
fn is_whole(said: &str) {
    let is_summary = said.starts_with("job.toml: ");
    for part in ["--> job.toml:", " | ", "= do: "] {
        assert!(
            is_summary || said.contains(part),
            "{part} is missing: {said}"
        );
    }
}

#[test]
fn slips_are_answered_as_written_down() {
    let mut now = String::new();
    let mut cases = 0;
    let mut case: Vec<&str> = Vec::new();
    for line in SAID.lines().chain([""]) {
        if let Some(line) = line.strip_prefix("> ") {
            case.push(line);
        } else if line.starts_with("## ") {
            now.extend([line, "\n\n"]);
        } else if line.is_empty() && !case.is_empty() {
            for line in &case {
                now.extend(["> ", line, "\n"]);
            }
            now.push_str(&said(&case));
            now.push('\n');
            cases += 1;
            case.clear();
        }
    }
    assert!(cases >= 60, "{cases} cases");
    if std::env::var("SNAPSHOTS").is_ok_and(|v| v == "overwrite") {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/job_file/faults.txt");
        std::fs::write(path, now).unwrap();
        return;
    }
    for (now, there) in now.lines().zip(SAID.lines()) {
        assert_eq!(now, there);
    }
    assert_eq!(now, SAID);
}
