//! The program as a person runs it: in a folder of their own, from a shell, with files that are not
//! always what they should be.

mod batch;
mod bench;
mod files;
#[path = "../reading/mod.rs"]
mod reading;
mod several;
mod shapes;
mod starting;

use std::fs;
use std::process::Stdio;

use lopdf::Document;
use serde_json::Value;

use bench::{Bench, SMALL, Said, names};

const TEA: &str = include_str!("../../examples/tea-counter.toml");
const WASHSTAND: &str = include_str!("../../examples/washstand.toml");

fn text_of(pdf: &[u8]) -> String {
    let pages = reading::pages(pdf);
    let words = pages.iter().flatten().map(|t| t.words.as_str());
    words.collect::<Vec<_>>().join("\n")
}

#[test]
fn the_sheet_is_written_under_the_jobs_name_in_the_current_folder() {
    let bench = Bench::new();
    fs::create_dir(bench.path("jobs")).unwrap();
    fs::write(bench.path("jobs/tea-counter.toml"), TEA).unwrap();
    let said = bench.run(&["sheet", "jobs/tea-counter.toml"]);
    assert!(said.out.starts_with("tea-counter.pdf: job sheet written\n"));
    assert_eq!(bench.files(), ["jobs", "tea-counter.pdf"]);
    assert_eq!(names(&bench.path("jobs")), ["tea-counter.toml"]);
    let pdf = fs::read(bench.path("tea-counter.pdf")).unwrap();
    assert!(text_of(&pdf).contains("Tea counter, orangery at Hollin Quay"));
}

#[test]
fn a_job_without_a_stop_ends_well_under_every_command() {
    let bench = Bench::with("shelf.toml", SMALL);
    for command in ["check", "plan", "sheet", "draw"] {
        bench.run(&[command, "shelf.toml"]).ends_well();
    }
    assert_eq!(bench.files(), ["shelf.pdf", "shelf.svg", "shelf.toml"]);
    let svg = fs::read_to_string(bench.path("shelf.svg")).unwrap();
    assert!(svg.starts_with("<svg ") && svg.ends_with("</svg>\n"));
}

#[test]
fn one_person_alone_gets_a_sheet() {
    for lift in ["[lift]\npeople = 1\n", ""] {
        let bench = Bench::with("a.toml", SMALL.replace("[lift]\npeople = 2\n", lift));
        bench.run(&["sheet", "a.toml"]).ends_well();
    }
}

#[test]
fn the_output_goes_where_it_is_told() {
    let bench = Bench::with("shelf.toml", SMALL);
    fs::create_dir(bench.path("out")).unwrap();
    bench
        .run(&["sheet", "shelf.toml", "-o", "out/a b.pdf"])
        .ends_well();
    bench
        .run(&["draw", "shelf.toml", "--output", "out/ł.svg"])
        .ends_well();
    let drawn = bench.run(&["draw", "shelf.toml", "-o", "-"]);
    drawn.ends_well();
    assert_eq!(names(&bench.path("out")), ["a b.pdf", "ł.svg"]);
    assert_eq!(bench.files(), ["out", "shelf.toml"]);
    let svg = fs::read_to_string(bench.path("out/ł.svg")).unwrap();
    assert_eq!(drawn.out, svg);
}

#[test]
fn an_older_sheet_is_replaced_whole() {
    let bench = Bench::with("shelf.toml", SMALL);
    fs::write(bench.path("shelf.pdf"), vec![b'x'; 5_000_000]).unwrap();
    bench.run(&["sheet", "shelf.toml"]).ends_well();
    let pdf = fs::read(bench.path("shelf.pdf")).unwrap();
    assert!(pdf.starts_with(b"%PDF-1.7") && !pdf.ends_with(b"x"));
    assert_eq!(bench.files(), ["shelf.pdf", "shelf.toml"]);
}

#[test]
fn the_paper_is_a4_or_letter() {
    let bench = Bench::with("shelf.toml", SMALL);
    let a4 = (210.0 / 25.4 * 72.0, 297.0 / 25.4 * 72.0);
    for (paper, (width, height)) in [
        (vec![], a4),
        (vec!["--paper", "a4"], a4),
        (vec!["--paper", "letter"], (612.0, 792.0)),
    ] {
        let mut arguments = vec!["sheet", "shelf.toml"];
        arguments.extend(paper);
        bench.run(&arguments).ends_well();
        let doc = Document::load(bench.path("shelf.pdf")).unwrap();
        for id in doc.get_pages().into_values() {
            let page = doc.get_dictionary(id).unwrap();
            let sides = page.get(b"MediaBox").unwrap().as_array().unwrap();
            let side = |i: usize| f64::from(sides[i].as_float().unwrap());
            assert_eq!((side(0), side(1)), (0.0, 0.0));
            assert!((side(2) - width).abs() < 1e-3 && (side(3) - height).abs() < 1e-3);
        }
    }
    let said = bench.run(&["sheet", "shelf.toml", "--paper", "a5"]);
    said.fails(2, &["a5", "a4", "letter"]);
}

#[test]
fn a_job_is_read_from_standard_input() {
    let bench = Bench::new();
    let said = bench.run_with_input(&["plan", "-"], SMALL);
    said.ends_well();
    assert!(
        said.out.lines().next().unwrap().ends_with("Shelf"),
        "{said:?}"
    );
    bench.run_with_input(&["sheet", "-"], SMALL).ends_well();
    assert_eq!(bench.files(), ["job.pdf"]);
    let faulty = bench.run_with_input(&["check", "-"], "[stone]\nkind = 3\n");
    faulty.fails(1, &["standard input:2:"]);
}

#[test]
fn the_json_plan_is_json_and_nothing_else() {
    let bench = Bench::with("tea.toml", TEA);
    let said = bench.run(&["plan", "tea.toml", "--json"]);
    let plan: Value = serde_json::from_str(&said.out).unwrap();
    assert_eq!(plan["job"]["title"], "Tea counter, orangery at Hollin Quay");
    assert_eq!(plan["kerfwright"], env!("CARGO_PKG_VERSION"));
    for key in ["cuts", "pieces", "remaining", "assumed", "sources"] {
        assert!(!plan[key].as_array().unwrap().is_empty(), "{key}");
    }
    let balance = &plan["balance_sheet"];
    let area = |key: &str| balance[key].as_f64().unwrap();
    let parts = ["top_mm2", "allowance_mm2", "kerf_mm2", "offcuts_mm2"];
    let sum: f64 = parts.iter().map(|key| area(key)).sum();
    assert!((area("slab_mm2") - sum).abs() < 0.01);
    assert!(
        !said.out.contains("null,\n      null"),
        "a place that is no number"
    );
}

#[test]
fn a_stop_is_told_on_standard_output_and_ends_in_1() {
    let wet = SMALL.replace("wet_rated = true", "wet_rated = false");
    let bench = Bench::with("wet.toml", wet.replace("\"battery\"", "\"mains\""));
    let plan = bench.run(&["plan", "wet.toml", "--json"]);
    let plan: Value = serde_json::from_str(&plan.out).unwrap();
    let stops: Vec<&str> = plan["stops"]
        .as_array()
        .unwrap()
        .iter()
        .map(|s| s["title"].as_str().unwrap())
        .collect();
    assert!(!stops.is_empty());
    for command in ["sheet", "draw", "plan"] {
        let said = bench.run(&[command, "wet.toml"]);
        assert_eq!(said.code, Some(1), "{command}: {said:?}");
        for stop in &stops {
            assert!(said.out.contains(&format!("STOP: {stop}")), "{said:?}");
        }
    }
    // The job file itself is in order, and the sheet is there to be read.
    let said = bench.run(&["check", "wet.toml"]);
    assert_eq!(said.code, Some(1), "{said:?}");
    assert!(
        said.out.contains("nothing wrong with the job file"),
        "{said:?}"
    );
    for stop in &stops {
        assert!(said.out.contains(&format!("  - {stop}")), "{said:?}");
    }
    assert_eq!(bench.files(), ["wet.pdf", "wet.svg", "wet.toml"]);
}

#[test]
fn a_top_that_does_not_fit_ends_in_1_and_writes_nothing() {
    let bench = Bench::with("big.toml", SMALL.replace("[500, 250]", "[699, 420]"));
    for arguments in [
        &["plan", "big.toml"][..],
        &["plan", "big.toml", "--json"],
        &["sheet", "big.toml"],
        &["draw", "big.toml"],
    ] {
        let said = bench.run(arguments);
        said.fails(
            1,
            &["big.toml: There is no place for the top on the slab", "mm"],
        );
    }
    assert_eq!(bench.files(), ["big.toml"]);
}

#[test]
fn a_repair_that_fails_is_not_told_as_a_slab_that_is_too_small() {
    let begun = format!(
        "{SMALL}\n[as_cut]\n[[as_cut.chip]]\nat = [250, 0]\ndeep = 240\nacross = 400\n\
         [[as_cut.chip]]\nat = [250, 250]\ndeep = 240\nacross = 400\n"
    );
    let bench = Bench::with("begun.toml", begun);
    let said = bench.run(&["plan", "begun.toml"]);
    said.fails(
        1,
        &[
            "begun.toml: The top as asked can no longer be had from what is left of the slab",
            "reaches 240.0 mm over the unhurt stone that is left",
        ],
    );
    assert!(!said.err.contains("does not fit the slab"), "{}", said.err);
    assert!(!said.err.contains("nearest miss"), "{}", said.err);
}

#[test]
fn a_folder_that_cannot_be_written_to_ends_in_2_and_leaves_nothing() {
    let bench = Bench::with("shelf.toml", SMALL);
    fs::create_dir(bench.path("folder")).unwrap();
    fs::write(bench.path("file"), "x").unwrap();
    for command in ["sheet", "draw"] {
        let ending = if command == "sheet" { "pdf" } else { "svg" };
        for output in [
            format!("nowhere/a.{ending}"),
            format!("file/a.{ending}"),
            "folder".to_owned(),
        ] {
            let output = output.as_str();
            let said = bench.run(&[command, "shelf.toml", "-o", output]);
            said.fails(2, &["cannot write", output]);
            assert_eq!(bench.files(), ["file", "folder", "shelf.toml"]);
            assert_eq!(names(&bench.path("folder")), Vec::<String>::new());
        }
    }
}

/// Nobody, not even the machine's owner, makes a file among the kernel's.
#[cfg(target_os = "linux")]
#[test]
fn a_folder_nobody_may_write_to_ends_in_2() {
    let bench = Bench::with("shelf.toml", SMALL);
    let said = bench.run(&["sheet", "shelf.toml", "-o", "/proc/a.pdf"]);
    said.fails(2, &["cannot write /proc/a.pdf"]);
    let mut command = bench.command(&["sheet", &bench.path("shelf.toml").to_string_lossy()]);
    let said = Said::of(&command.current_dir("/proc").output().unwrap());
    said.fails(2, &["cannot write shelf.pdf"]);
}

#[test]
fn a_file_that_cannot_be_read_ends_in_2() {
    let bench = Bench::with("latin.toml", b"[job]\ntitle = \"Caf\xe9\"\n");
    fs::create_dir(bench.path("folder")).unwrap();
    for command in ["check", "plan", "sheet", "draw"] {
        for (job, words) in [
            ("missing.toml", &["cannot read missing.toml"][..]),
            ("folder", &["cannot read folder", "it is a folder"]),
            ("latin.toml", &["cannot read latin.toml", "UTF-8"]),
        ] {
            bench.run(&[command, job]).fails(2, words);
        }
    }
    assert_eq!(bench.files(), ["folder", "latin.toml"]);
}

#[test]
fn a_wrong_command_line_ends_in_2() {
    let bench = Bench::with("shelf.toml", SMALL);
    for arguments in [
        &[][..],
        &["saw"],
        &["sheet"],
        &["plan", "shelf.toml", "--colour"],
        &["check", "shelf.toml", "b.toml"],
    ] {
        bench.run(arguments).fails(2, &["Usage: kerfwright"]);
    }
    for arguments in [&["--help"][..], &["--version"], &["sheet", "--help"]] {
        let said = bench.run(arguments);
        said.ends_well();
        assert!(said.out.contains("kerfwright"), "{said:?}");
    }
}

#[test]
fn an_empty_file_and_a_huge_one_are_the_jobs_fault() {
    let bench = Bench::with("empty.toml", "");
    bench
        .run(&["check", "empty.toml"])
        .fails(1, &["is empty", "kerfwright new"]);
    fs::write(bench.path("huge.toml"), "# stone\n".repeat(3_000_000 / 8)).unwrap();
    bench
        .run(&["check", "huge.toml"])
        .fails(1, &["huge.toml", "bytes", "1 MiB"]);
    // The limit may fall in the middle of a letter.
    for before in ["", "#", "##"] {
        let letters = format!("{before}# {}\n", "€".repeat(1_000_000));
        fs::write(bench.path("huge.toml"), letters).unwrap();
        bench
            .run(&["sheet", "huge.toml"])
            .fails(1, &["huge.toml", "bytes", "1 MiB"]);
    }
    assert_eq!(bench.files(), ["empty.toml", "huge.toml"]);
}

#[test]
fn numbers_that_are_none_are_the_jobs_fault() {
    for (from, to, line) in [
        ("thickness = 20", "thickness = nan", 7),
        ("rectangle = [700, 400]", "rectangle = [inf, 400]", 10),
        ("rpm = 9000", "rpm = -inf", 15),
        ("kerf = 2.2", "kerf = 0", 21),
        ("diameter = 125", "diameter = 1e300", 20),
    ] {
        let bench = Bench::with("a.toml", SMALL.replace(from, to));
        let said = bench.run(&["sheet", "a.toml"]);
        said.fails(1, &[&format!("a.toml:{line}:")]);
        assert_eq!(bench.files(), ["a.toml"]);
    }
}

#[test]
fn all_faults_are_told_at_once_each_with_its_line() {
    let faulty = SMALL
        .replace("\"slate\"", "\"slaet\"")
        .replace("[700, 400]", "[700, -400]")
        .replace("kerf = 2.2", "kerf = \"2.2 kg\"")
        .replace("wet_rated", "wet_ratd")
        .replace("\"water\"", "\"watter\"")
        .replace("region = \"uk\"", "region = \"xx\"");
    let bench = Bench::with("faulty.toml", &faulty);
    let places = [3, 6, 10, 17, 21, 26].map(|line| format!("faulty.toml:{line}:"));
    let places: Vec<&str> = places.iter().map(String::as_str).collect();
    for command in ["check", "plan", "sheet", "draw"] {
        let said = bench.run(&[command, "faulty.toml"]);
        said.fails(1, &places);
        said.fails(1, &["did you mean \"slate\"", "wet_rated", "6 faults"]);
    }
    assert_eq!(bench.files(), ["faulty.toml"]);
}

#[test]
fn a_reader_that_goes_away_is_no_failure() {
    let bench = Bench::with("shelf.toml", SMALL);
    for arguments in [
        &["plan", "shelf.toml", "--json"][..],
        &["plan", "shelf.toml"],
        &["check", "shelf.toml"],
        &["sheet", "shelf.toml"],
        &["draw", "shelf.toml", "-o", "-"],
        &["--help"],
    ] {
        let mut command = bench.command(arguments);
        command.stdout(Stdio::piped()).stderr(Stdio::piped());
        let mut child = command.spawn().unwrap();
        drop(child.stdout.take());
        Said::of(&child.wait_with_output().unwrap()).ends_well();
    }
}

#[test]
fn nobody_reading_the_faults_is_no_crash() {
    let bench = Bench::with("faulty.toml", "[stone]\nkind = 3\n");
    for arguments in [&["check", "faulty.toml"][..], &["check", "missing.toml"]] {
        let mut command = bench.command(arguments);
        let mut child = command.stderr(Stdio::piped()).spawn().unwrap();
        drop(child.stderr.take());
        let code = child.wait().unwrap().code();
        assert!(matches!(code, Some(1 | 2)), "{arguments:?}: {code:?}");
    }
}

#[test]
fn a_character_the_typeface_lacks_is_named_and_is_the_jobs_fault() {
    for (title, character) in [
        ("漢字 counter", "'漢' (U+6F22)"),
        ("Top → wall", "'→' (U+2192)"),
    ] {
        let bench = Bench::with("a.toml", SMALL.replace("Shelf", title));
        let said = bench.run(&["sheet", "a.toml"]);
        said.fails(1, &["a.toml:2:", "job.title", character, title]);
        bench
            .run(&["check", "a.toml"])
            .fails(1, &["a.toml:2:", "job.title", character]);
        assert_eq!(said.err.matches(character).count(), 1, "{said:?}");
        assert_eq!(bench.files(), ["a.toml"]);
        bench.run(&["plan", "a.toml"]).ends_well();
    }
}

#[test]
fn titles_in_the_alphabets_of_europe_are_printed() {
    for title in [
        "Łódź",
        "Ångström",
        "Masă în Brașov",
        "Þórðarhöfði",
        "Kő é ñ",
    ] {
        let bench = Bench::with("a.toml", SMALL.replace("Shelf", title));
        bench.run(&["sheet", "a.toml"]).ends_well();
        let pdf = fs::read(bench.path("a.pdf")).unwrap();
        assert!(text_of(&pdf).lines().any(|l| l == title), "{title}");
        let plan = bench.run(&["plan", "a.toml"]);
        assert!(plan.out.lines().next().unwrap().ends_with(title));
    }
}

/// What every command makes of a job: the PDF, the drawing and everything said.
fn everything(text: &str, settings: &[(&str, &str)]) -> Vec<Vec<u8>> {
    let bench = Bench::with("a.toml", text);
    let mut made = Vec::new();
    for arguments in [
        &["check", "a.toml"][..],
        &["plan", "a.toml"],
        &["plan", "a.toml", "--json"],
        &["draw", "a.toml"],
        &["draw", "a.toml", "--as", "dxf"],
        &["sheet", "a.toml"],
        &["template", "a.toml"],
    ] {
        let mut command = bench.command(arguments);
        let output = command.envs(settings.iter().copied()).output().unwrap();
        made.extend([output.stdout, output.stderr]);
    }
    let files = ["a.svg", "a.dxf", "a.pdf", "a-template.pdf"];
    made.extend(files.map(|file| fs::read(bench.path(file)).unwrap()));
    made
}

#[test]
fn the_same_job_gives_the_same_bytes_anywhere_and_any_time() {
    for text in [TEA, WASHSTAND, SMALL] {
        let first = everything(text, &[("TZ", "UTC"), ("LANG", "C")]);
        // The second run falls in another second of the clock.
        std::thread::sleep(std::time::Duration::from_millis(1100));
        let elsewhere = [
            ("TZ", "Pacific/Kiritimati"),
            ("LANG", "tr_TR.UTF-8"),
            ("LC_ALL", "de_DE.UTF-8"),
            ("COLUMNS", "40"),
        ];
        assert!(first == everything(text, &elsewhere));
    }
}
