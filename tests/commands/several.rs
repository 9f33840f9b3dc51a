//! More than one job, or one job more than once.

use std::fs;
use std::io::{BufRead, BufReader};
use std::process::Stdio;

use crate::bench::{Bench, SMALL};

#[test]
fn two_jobs_stand_side_by_side() {
    let bench = Bench::with("a.toml", SMALL);
    fs::write(
        bench.path("b.toml"),
        SMALL.replace("[500, 250]", "[600, 250]"),
    )
    .unwrap();
    let said = bench.run(&["compare", "a.toml", "b.toml"]);
    said.ends_well();
    let row = |name: &str| {
        said.out
            .lines()
            .find(|l| l.contains(name))
            .unwrap()
            .to_owned()
    };
    assert!(row("finished top").starts_with('*'), "{said:?}");
    assert!(row("straight cuts").starts_with(' '), "{said:?}");
    assert!(said.out.lines().next().unwrap().ends_with("b.toml"));
    bench
        .run(&["compare", "a.toml", "c.toml"])
        .fails(2, &["c.toml"]);
}

#[test]
fn a_watched_job_is_written_at_each_save_and_the_change_told() {
    let bench = Bench::with("a.toml", SMALL);
    let mut command = bench.command(&["watch", "a.toml"]);
    command.stdout(Stdio::piped()).stderr(Stdio::null());
    let mut child = command.spawn().unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap()).lines();
    let mut until = |words: &str| {
        let line = lines
            .by_ref()
            .map(Result::unwrap)
            .find(|line| line.contains(words));
        line.unwrap_or_else(|| panic!("{words} was not said"))
    };
    until("stops");
    // A job at fault in between changes nothing.
    fs::write(bench.path("a.toml"), "[stone]\n").unwrap();
    std::thread::sleep(std::time::Duration::from_millis(600));
    fs::write(
        bench.path("a.toml"),
        SMALL.replace("[500, 250]", "[600, 250]"),
    )
    .unwrap();
    until("changed:");
    let weight = until("finished top");
    assert!(weight.contains('→'), "{weight}");
    child.kill().unwrap();
    child.wait().unwrap();
}

#[test]
fn a_watched_jobs_drawing_is_watched_as_well() {
    let drawing = |across: u32| {
        format!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="{across}mm" height="250mm" viewBox="0 0 {across} 250"><rect width="{across}" height="250"/></svg>"#
        )
    };
    let job = SMALL.replace("rectangle = [500, 250]", "shape = \"top.svg\"");
    assert!(job.contains("top.svg"));
    let bench = Bench::with("a.toml", &job);
    fs::write(bench.path("top.svg"), drawing(500)).unwrap();
    let mut command = bench.command(&["watch", "a.toml"]);
    command.stdout(Stdio::piped()).stderr(Stdio::null());
    let mut child = command.spawn().unwrap();
    let mut lines = BufReader::new(child.stdout.take().unwrap())
        .lines()
        .map(Result::unwrap);
    assert!(lines.any(|line| line.starts_with("stops")));
    fs::write(bench.path("top.svg"), drawing(600)).unwrap();
    assert!(lines.any(|line| line.contains("finished top") && line.contains('→')));
    child.kill().unwrap();
    child.wait().unwrap();
}
