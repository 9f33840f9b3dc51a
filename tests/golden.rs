//! What the program makes of whole jobs, kept as files that people can review.
//!
//! Each folder under `tests/golden/` is a case: its `job.toml` (an example's job stands under
//! `examples/` and nowhere else), the plan as text, the sheet's PDF read back as text,
//! everything said on standard error, and how each command ended; for three cases the plan as JSON and
//! the drawing as well. After a change that is meant: `SNAPSHOTS=overwrite cargo test --test golden`, then read the difference.

mod reading;

use std::fmt::Write;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use reading::{Placed, Turn};
use serde_json::Value;
use snapbox::Assert;
use snapbox::assert::DEFAULT_ACTION_ENV;
use snapbox::data::{Data, DataFormat};

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// The cases whose plan is kept as JSON and whose drawing is kept, too: a counter with a round end, a
/// basin in inches, an inside corner. What the JSON of the others holds is checked by its meaning.
const WHOLE: [&str; 3] = ["tea-counter", "washstand", "l-top"];

/// The file that holds a case's job.
fn job_file(case: &str) -> PathBuf {
    let own = root().join("tests/golden").join(case).join("job.toml");
    let example = root().join("examples").join(format!("{case}.toml"));
    match (own.exists(), example.exists()) {
        (true, false) => own,
        (false, true) => example,
        (own, _) => panic!("{case}: own job {own}, and an example of the same name"),
    }
}

/// Runs every command on a case and compares all that comes out.
fn check(case: &str) {
    let folder = tempfile::tempdir().unwrap();
    let job = "job.toml";
    fs::copy(job_file(case), folder.path().join(job)).unwrap();
    let mut log = Log::default();
    let mut run = |arguments: &[&str]| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_kerfwright"));
        command.args(arguments).current_dir(folder.path());
        log.note(arguments, command.output().unwrap())
    };
    run(&["check", job]);
    let plan = run(&["plan", job]);
    let json = run(&["plan", job, "--json"]);
    run(&["draw", job]);
    run(&["sheet", job]);
    let written = |name: &str| fs::read(folder.path().join(name)).ok();
    let svg = written("job.svg").map(|svg| String::from_utf8(svg).unwrap());
    let sheet = written("job.pdf").map(|pdf| as_text(&pdf));
    let whole = |text: String| {
        if WHOLE.contains(&case) {
            text
        } else {
            String::new()
        }
    };
    let results = [
        ("plan.txt", plan),
        ("plan.json", whole(rounded(&json))),
        ("drawing.svg", whole(svg.unwrap_or_default())),
        ("sheet.txt", sheet.unwrap_or_default()),
        ("stderr.txt", log.said),
        ("exit.txt", log.ends),
    ];
    for (name, actual) in results {
        compare(&root().join("tests/golden").join(case).join(name), actual);
    }
}

/// What the commands said on standard error, and how they ended.
#[derive(Default)]
struct Log {
    said: String,
    ends: String,
}

impl Log {
    /// Notes one run and gives its standard output.
    fn note(&mut self, arguments: &[&str], output: Output) -> String {
        let call = arguments.join(" ");
        let code = output.status.code().expect("it ended by itself");
        let _ = writeln!(self.ends, "{call}: {code}");
        let said = String::from_utf8(output.stderr).unwrap();
        if !said.is_empty() {
            let _ = write!(self.said, "{call}:\n{said}\n");
        }
        String::from_utf8(output.stdout).unwrap()
    }
}

/// Compares with a file, to the letter; an empty answer has no file.
fn compare(path: &Path, actual: String) {
    if actual.is_empty() {
        assert!(!path.exists(), "{} is out of date", path.display());
        return;
    }
    let expected = Data::read_from(path, Some(DataFormat::Text)).raw();
    Assert::new()
        .action_env(DEFAULT_ACTION_ENV)
        .eq(Data::text(actual), expected);
}

/// The texts of a PDF as lines from the top of each page down, a bar between texts that stand
/// apart on one line; upright texts last.
fn as_text(pdf: &[u8]) -> String {
    let mut words = String::new();
    for (i, mut texts) in reading::pages(pdf).into_iter().enumerate() {
        let _ = writeln!(words, "=== page {} ===", i + 1);
        // Texts of one line may differ by a rounding.
        let line = |t: &Placed| (t.y * 10.0).round();
        let key = |t: &Placed| -> (f64, f64, f64) {
            match t.turn {
                Turn::Level => (0.0, -line(t), t.x),
                Turn::Upwards => (1.0, t.x, t.y),
            }
        };
        texts.sort_by(|a, b| {
            let (a, b) = (key(a), key(b));
            let (first, second) = (a.0.total_cmp(&b.0), a.1.total_cmp(&b.1));
            first.then(second).then(a.2.total_cmp(&b.2))
        });
        for same in texts.chunk_by(|a, b| a.turn == b.turn && line(a) == line(b)) {
            let parts: Vec<&str> = same.iter().map(|t| t.words.as_str()).collect();
            let _ = writeln!(words, "{}", parts.join(" | "));
        }
    }
    words
}

/// Widest line of the rewritten JSON.
const WIDEST: usize = 100;

/// JSON with every number rounded to three decimals; what is short stands on one line.
fn rounded(json: &str) -> String {
    if json.is_empty() {
        return String::new();
    }
    let mut value: Value = serde_json::from_str(json).expect("JSON");
    round(&mut value);
    let mut words = String::new();
    write_json(&value, 0, &mut words);
    words.push('\n');
    words
}

fn round(value: &mut Value) {
    match value {
        Value::Number(number) if number.is_f64() => {
            let rounded = (number.as_f64().unwrap() * 1e3).round() / 1e3;
            // No minus in front of nothing.
            *value = Value::from(rounded + 0.0);
        }
        Value::Array(items) => items.iter_mut().for_each(round),
        Value::Object(items) => items.values_mut().for_each(round),
        _ => {}
    }
}

fn write_json(value: &Value, deep: usize, words: &mut String) {
    let short = value.to_string();
    let parts: Vec<(String, &Value)> = match value {
        _ if deep + short.len() <= WIDEST => Vec::new(),
        Value::Array(items) => items.iter().map(|v| (String::new(), v)).collect(),
        Value::Object(items) => {
            let name = |k: &String| format!("{}: ", Value::from(k.as_str()));
            items.iter().map(|(k, v)| (name(k), v)).collect()
        }
        _ => Vec::new(),
    };
    if parts.is_empty() {
        words.push_str(&short);
        return;
    }
    let (open, close) = if value.is_array() { "[]" } else { "{}" }.split_at(1);
    words.push_str(open);
    for (i, (name, part)) in parts.iter().enumerate() {
        let comma = if i == 0 { "" } else { "," };
        let _ = write!(words, "{comma}\n{:deep$}{name}", "", deep = deep + 1);
        write_json(part, deep + 1, words);
    }
    let _ = write!(words, "\n{:deep$}{close}", "");
}

#[test]
fn tea_counter() {
    check("tea-counter");
}

#[test]
fn garden_bench() {
    check("garden-bench");
}

#[test]
fn washstand() {
    check("washstand");
}

#[test]
fn water_on_mains() {
    check("water-on-mains");
}

#[test]
fn heavy_slab() {
    check("heavy-slab");
}

#[test]
fn five_cabinet_sides() {
    check("five-cabinet-sides");
}

#[test]
fn basin_with_thin_rails() {
    check("basin-with-thin-rails");
}

#[test]
fn does_not_fit() {
    check("does-not-fit");
}

#[test]
fn upstairs_vanity() {
    check("upstairs-vanity");
}

#[test]
fn tight_landing() {
    check("tight-landing");
}

#[test]
fn window_seat() {
    check("window-seat");
}

#[test]
fn over_its_base() {
    check("over-its-base");
}

#[test]
fn out_of_square_remnant() {
    check("out-of-square-remnant");
}

#[test]
fn faulty() {
    check("faulty");
}

#[test]
fn basin_and_two_taps() {
    check("basin-and-two-taps");
}

#[test]
fn l_top() {
    check("l-top");
}

#[test]
fn round_a_pillar() {
    check("round-a-pillar");
}

#[test]
fn disc_too_small() {
    check("disc-too-small");
}

#[test]
fn bow_front() {
    check("bow-front");
}

#[test]
fn second_cut() {
    check("second-cut");
}

#[test]
fn second_cut_at_an_opening() {
    check("second-cut-at-an-opening");
}

#[test]
fn every_example_and_every_folder_is_a_case() {
    let own = include_str!("golden.rs");
    let names = |folder: &str| -> Vec<String> {
        let entries = fs::read_dir(root().join(folder)).unwrap();
        let names = entries.map(|e| e.unwrap().file_name().into_string().unwrap());
        names.collect()
    };
    let examples = names("examples");
    let jobs = examples.iter().filter_map(|n| n.strip_suffix(".toml"));
    let folders = names("tests/golden");
    for case in jobs.chain(folders.iter().map(String::as_str)) {
        let call = format!("check(\"{case}\");");
        assert!(own.contains(&call), "{case} is not checked");
    }
}

#[test]
fn numbers_are_rounded_and_nothing_else_is_changed() {
    let given = r#"{"a": [1.23456789, -1e-9, 3, null, "x\"y", true], "b": {}}"#;
    let expected = "{\"a\":[1.235,0.0,3,null,\"x\\\"y\",true],\"b\":{}}\n";
    assert_eq!(rounded(given), expected);
    let long = format!("[[{}1.5], {{\"k\": 2}}]", "1.00000049, ".repeat(30));
    let read: Value = serde_json::from_str(&rounded(&long)).unwrap();
    assert_eq!(read[0].as_array().unwrap().len(), 31);
    assert_eq!((&read[0][0], &read[1]["k"]), (&1.0.into(), &2.into()));
    assert!(rounded(&long).lines().all(|l| l.len() <= WIDEST));
}
