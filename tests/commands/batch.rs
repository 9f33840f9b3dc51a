//! A folder of jobs in one run.

use std::fs;

use serde_json::Value;

use crate::bench::{Bench, SMALL, Said};

/// A job that a stop stands against: dry cutting in a room.
fn with_a_stop() -> String {
    SMALL
        .replace("where = \"outdoors\"", "where = \"indoors\"")
        .replace("method = \"water\"", "method = \"none\"")
}

/// A folder with one job of each fate, and other things.
fn mixed() -> Bench {
    let bench = Bench::new();
    fs::create_dir(bench.path("jobs")).unwrap();
    let put = |name: &str, text: &str| fs::write(bench.path("jobs").join(name), text).unwrap();
    put("good.toml", SMALL);
    put("bad, \"old\".toml", "[stone]\nkind = 3\n");
    put("big.toml", &SMALL.replace("[500, 250]", "[699, 420]"));
    put("stop.toml", &with_a_stop());
    put("notes.txt", "no job");
    fs::write(bench.path("jobs/latin.toml"), b"\xe9").unwrap();
    fs::create_dir(bench.path("jobs/old.toml")).unwrap();
    #[cfg(unix)]
    {
        let pipe = bench.path("jobs/pipe.toml");
        std::process::Command::new("mkfifo")
            .arg(pipe)
            .status()
            .unwrap();
    }
    bench
}

fn rows(bench: &Bench) -> Vec<Value> {
    let json = fs::read_to_string(bench.path("all.json")).unwrap();
    serde_json::from_str(&json).unwrap()
}

#[test]
fn one_bad_job_stops_no_other() {
    let bench = mixed();
    let said = bench.run(&["batch", "jobs", "--json", "all.json"]);
    assert_eq!((said.code, said.err.as_str()), (Some(1), ""), "{said:?}");
    assert!(said.out.ends_with("5 jobs, 1 without a stop\n"), "{said:?}");
    let wanted = [
        ("bad, \"old\".toml", "faults", None, "slab is missing"),
        ("big.toml", "does not fit", Some(false), ""),
        ("good.toml", "done", Some(true), ""),
        ("latin.toml", "not read", None, "UTF-8"),
        ("stop.toml", "stops", Some(true), ""),
    ];
    let rows = rows(&bench);
    assert_eq!(rows.len(), wanted.len());
    for (row, (file, outcome, fits, why)) in rows.iter().zip(wanted) {
        assert_eq!(row["file"], file);
        assert_eq!(row["outcome"], outcome, "{row}");
        assert_eq!(row["fits"].as_bool(), fits, "{row}");
        let told = row["why"].as_str().unwrap();
        assert!(
            told.contains(why) && told.is_empty() == (outcome == "done"),
            "{row}"
        );
    }
    assert_eq!(rows[2]["stops"], 0);
    assert!(rows[4]["stops"].as_u64().unwrap() > 0);
}

#[test]
fn the_three_summaries_say_the_same() {
    let bench = mixed();
    let said = bench.run(&["batch", "jobs", "--csv", "all.csv", "--json", "all.json"]);
    let csv = fs::read_to_string(bench.path("all.csv")).unwrap();
    let mut lines = csv.split_terminator("\r\n");
    let heads = "file,outcome,fits,top_kg,minutes,stops,open,pages,why";
    assert_eq!(lines.next(), Some(heads));
    let rows = rows(&bench);
    assert_eq!(lines.clone().count(), rows.len());
    for ((line, row), shown) in lines.zip(&rows).zip(said.out.lines().skip(1)) {
        let count = |key: &str| row[key].as_u64().map_or(String::new(), |n| n.to_string());
        let number = |key: &str| {
            row[key]
                .as_f64()
                .map_or(String::new(), |v| format!("{v:.3}"))
        };
        let fits = row["fits"]
            .as_bool()
            .map_or("", |fits| if fits { "yes" } else { "no" });
        let figures = [
            fits.to_owned(),
            number("top_kg"),
            number("minutes"),
            count("stops"),
            count("open"),
            count("pages"),
        ];
        let file = row["file"].as_str().unwrap().replace('"', "\"\"");
        let outcome = row["outcome"].as_str().unwrap();
        let start = format!("\"{file}\",{outcome},{},", figures.join(","));
        assert!(line.starts_with(&start), "{line}\n{start}");
        assert!(
            shown.contains(outcome) && shown.contains(&figures[3]),
            "{shown}"
        );
    }
}

#[test]
fn each_sheet_is_the_one_that_the_job_alone_would_have() {
    let bench = mixed();
    bench.run(&["batch", "jobs", "--json", "all.json", "--sheets", "sheets"]);
    let names = crate::bench::names(&bench.path("sheets"));
    assert_eq!(names, ["good.pdf", "stop.pdf"]);
    bench
        .run(&["sheet", "jobs/good.toml", "-o", "alone.pdf"])
        .ends_well();
    let [one, alone] =
        ["sheets/good.pdf", "alone.pdf"].map(|name| fs::read(bench.path(name)).unwrap());
    assert!(one == alone);
    let pages = rows(&bench)[2]["pages"].as_u64().unwrap();
    let document = lopdf::Document::load_mem(&one).unwrap();
    assert_eq!(document.get_pages().len() as u64, pages);
}

#[test]
fn a_sheet_that_cannot_be_written_is_told_and_stops_no_other() {
    let bench = mixed();
    fs::create_dir_all(bench.path("sheets/good.pdf")).unwrap();
    bench.run(&["batch", "jobs", "--json", "all.json", "--sheets", "sheets"]);
    let rows = rows(&bench);
    assert_eq!(rows[2]["outcome"], "sheet not written");
    assert!(rows[2]["why"].as_str().unwrap().contains("it is a folder"));
    assert!(bench.path("sheets/stop.pdf").is_file());
}

#[test]
fn a_folder_that_cannot_be_read_is_told() {
    let bench = Bench::with("a.toml", SMALL);
    for folder in ["away", "a.toml"] {
        bench
            .run(&["batch", folder])
            .fails(2, &["cannot read", folder]);
    }
    fs::create_dir(bench.path("empty")).unwrap();
    let said = bench.run(&["batch", "empty"]);
    assert!(
        said.code == Some(0) && said.out.ends_with("0 jobs, 0 without a stop\n"),
        "{said:?}"
    );
}

/// The most memory that a run over so many jobs had at once, kB, as the system counts it.
#[cfg(target_os = "linux")]
fn peak(jobs: usize) -> u64 {
    let bench = Bench::new();
    fs::create_dir(bench.path("jobs")).unwrap();
    for i in 0..jobs {
        fs::write(bench.path(&format!("jobs/{i}.toml")), SMALL).unwrap();
    }
    let mut command = bench.command(&["batch", "jobs"]);
    let mut child = command
        .stdout(std::process::Stdio::piped())
        .spawn()
        .unwrap();
    let status = format!("/proc/{}/status", child.id());
    let mut most = 0;
    while child.try_wait().unwrap().is_none() {
        let told = fs::read_to_string(&status).unwrap_or_default();
        let line = told.lines().find_map(|l| l.strip_prefix("VmHWM:"));
        let now = line.and_then(|l| l.trim().trim_end_matches(" kB").parse().ok());
        most = most.max(now.unwrap_or(0));
        std::thread::sleep(std::time::Duration::from_millis(2));
    }
    let said = Said::of(&child.wait_with_output().unwrap());
    assert!(
        said.out
            .ends_with(&format!("{jobs} jobs, {jobs} without a stop\n")),
        "{said:?}"
    );
    most
}

#[test]
#[cfg(target_os = "linux")]
fn the_memory_does_not_grow_with_the_number_of_jobs() {
    let [few, many] = [20, 200].map(peak);
    assert!(few > 1000, "{few} kB");
    // A row of the summary is some 200 bytes; the rest is what the allocator keeps.
    assert!(
        many < few + few / 4,
        "{few} kB for 20 jobs, {many} kB for 200"
    );
}
