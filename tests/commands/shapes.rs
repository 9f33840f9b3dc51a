//! Drawings beside the job file, and what is drawn and printed at full size.

use std::fs;

use crate::bench::Bench;

const JOB: &str = r#"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [1200, 700]
[top]
shape = "shapes/top.svg"
"#;

const TOP: &str = r#"<svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="600mm" viewBox="0 0 1000 600">
<path d="M0 600H700A300 300 0 0 0 700 0H0Z"/></svg>"#;

fn bench(job: &str, drawing: &str) -> Bench {
    let bench = Bench::with("a.toml", job);
    fs::create_dir(bench.path("shapes")).unwrap();
    fs::write(bench.path("shapes/top.svg"), drawing).unwrap();
    bench
}

#[test]
fn a_drawing_in_a_folder_below_the_jobs_is_read_from_anywhere() {
    let bench = bench(JOB, TOP);
    let said = bench.run(&["plan", "a.toml", "--json"]);
    assert!(said.out.contains("\"top.shape\""), "{said:?}");
    let away = bench.path("a.toml").display().to_string();
    let mut command = bench.command(&["plan", &away, "--json"]);
    let from_elsewhere = command.current_dir(std::env::temp_dir()).output().unwrap();
    assert_eq!(String::from_utf8_lossy(&from_elsewhere.stdout), said.out);
}

#[test]
fn drawings_that_are_missing_huge_or_elsewhere_are_the_jobs_fault() {
    let huge = TOP.replace("</svg>", &format!("{}</svg>", " ".repeat(1024 * 1024)));
    bench(JOB, &huge)
        .run(&["check", "a.toml"])
        .fails(1, &["more than 1048576 bytes"]);
    let missing = bench(&JOB.replace("top.svg", "no.svg"), TOP);
    missing
        .run(&["check", "a.toml"])
        .fails(1, &["no such file", "no.svg"]);
    let out = bench(&JOB.replace("shapes/", "../"), TOP);
    out.run(&["check", "a.toml"]).fails(1, &["leads out of"]);
}

#[cfg(unix)]
#[test]
fn a_link_does_not_lead_out_of_the_jobs_folder() {
    let elsewhere = Bench::with("top.svg", TOP);
    let bench = Bench::with("a.toml", JOB);
    fs::create_dir(bench.path("shapes")).unwrap();
    std::os::unix::fs::symlink(elsewhere.path("top.svg"), bench.path("shapes/top.svg")).unwrap();
    bench
        .run(&["check", "a.toml"])
        .fails(1, &["a link leads it out"]);
}

#[test]
fn a_drawing_is_never_written_over() {
    let bench = bench(JOB, TOP);
    for form in [&["--as", "svg"][..], &[]] {
        let arguments = [&["draw", "a.toml", "-o", "shapes/top.svg"], form].concat();
        bench.run(&arguments).fails(2, &["takes a figure from"]);
    }
    assert_eq!(
        fs::read_to_string(bench.path("shapes/top.svg")).unwrap(),
        TOP
    );
}

#[test]
fn a_template_says_how_many_tiles_it_takes() {
    let bench = bench(JOB, TOP);
    let said = bench.run(&["template", "a.toml", "--part", "top", "--paper", "roll"]);
    assert!(said.out.contains("top: one page"), "{said:?}");
    assert!(
        fs::read(bench.path("a-template.pdf"))
            .unwrap()
            .starts_with(b"%PDF-1.7")
    );
    let said = bench.run(&[
        "template",
        "a.toml",
        "-o",
        "t.pdf",
        "--measured",
        "99.4x99.6",
    ]);
    assert!(said.out.contains(" tiles and the page"), "{said:?}");
    let unknown = bench.run(&["template", "a.toml", "--part", "opening-1"]);
    unknown.fails(2, &["has no opening-1; it has curve-", "top"]);
    let far_out = bench.run(&["template", "a.toml", "--measured", "90x100"]);
    far_out.fails(2, &["95 to 105 mm"]);
}
