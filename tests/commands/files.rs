//! What the program reads from and writes to, when it is not a plain file.

use std::fs;
use std::process::Stdio;

use crate::bench::{Bench, SMALL, Said};

#[test]
fn a_file_in_utf_16_is_read() {
    let units = SMALL.encode_utf16();
    let bytes = |mark: [u8; 2], order: fn(u16) -> [u8; 2]| {
        let body = units.clone().flat_map(order);
        mark.into_iter().chain(body).collect::<Vec<u8>>()
    };
    for text in [
        bytes([0xFF, 0xFE], u16::to_le_bytes),
        bytes([0xFE, 0xFF], u16::to_be_bytes),
    ] {
        let bench = Bench::with("a.toml", text);
        bench.run(&["plan", "a.toml"]).ends_well();
    }
    let half = Bench::with("a.toml", [0xFF, 0xFE, 0x00, 0xD8]);
    half.run(&["plan", "a.toml"]).fails(2, &["UTF-16"]);
}

#[test]
fn standard_input_that_is_closed_is_not_an_empty_job() {
    let bench = Bench::new();
    let mut command = bench.command(&["check", "-"]);
    let said = Said::of(&command.stdin(Stdio::null()).output().unwrap());
    said.fails(2, &["cannot read standard input", "closed or empty"]);
}

#[test]
fn nothing_of_a_name_or_an_argument_acts_on_the_terminal() {
    let bench = Bench::with("a\u{1b}[31m.toml", "[stone]\nkind = 3\n");
    for arguments in [
        &["check", "a\u{1b}[31m.toml"][..],
        &["check", "b\u{1b}[31m.toml"],
        &["sheet", "a\u{1b}[31m.toml", "-o", "c\u{1b}[31m.txt"],
        &["explain", "b\u{1b}[31m"],
    ] {
        let said = bench.run(arguments);
        assert_ne!(said.code, Some(0), "{said:?}");
        assert!(
            !said.err.contains('\u{1b}') && !said.out.contains('\u{1b}'),
            "{said:?}"
        );
        assert!(said.err.contains("\\u{1b}[31m"), "{said:?}");
    }
    let said = bench.run(&["\u{1b}[31m"]);
    assert!(
        said.code == Some(2) && !said.err.contains('\u{1b}'),
        "{said:?}"
    );
    let keys = "[stone]\n\"\\u001b[31m\" = 3\nkind = \"\\u001b[31m\"\n";
    fs::write(bench.path("k.toml"), keys).unwrap();
    assert!(!bench.run(&["check", "k.toml"]).err.contains('\u{1b}'));
}

#[test]
fn a_name_of_another_kind_of_file_is_asked_back() {
    let bench = Bench::with("shelf.toml", SMALL);
    for name in ["shelf.toml", "out.txt", "out.SVG"] {
        let said = bench.run(&["sheet", "shelf.toml", "-o", name]);
        said.fails(2, &[name, "did you mean -o", ".pdf?"]);
    }
    let said = bench.run(&["draw", "shelf.toml", "-o", "out.pdf"]);
    said.fails(2, &["did you mean -o out.svg?"]);
    assert_eq!(bench.files(), ["shelf.toml"]);
    assert_eq!(fs::read_to_string(bench.path("shelf.toml")).unwrap(), SMALL);
    bench
        .run(&["sheet", "shelf.toml", "-o", "no-ending"])
        .ends_well();
}

#[test]
fn the_job_file_is_never_written_over() {
    let bench = Bench::with("counter", SMALL);
    let is_whole = || fs::read_to_string(bench.path("counter")).unwrap() == SMALL;
    let aimed = |command: &str, at: &str| {
        let said = bench.run(&[command, "counter", "-o", at]);
        said.fails(2, &["the job file itself", "-o"]);
        assert!(is_whole(), "{command} {at}");
    };
    aimed("sheet", "counter");
    aimed("draw", "./counter");
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink("counter", bench.path("counter.pdf")).unwrap();
        aimed("sheet", "counter.pdf");
        // Nor by the name that it takes when none is given.
        bench
            .run(&["sheet", "counter"])
            .fails(2, &["job file itself"]);
        assert!(is_whole());
    }
    fs::create_dir(bench.path("jobs")).unwrap();
    fs::write(bench.path("jobs/a.toml"), SMALL).unwrap();
    for option in ["--csv", "--json"] {
        let said = bench.run(&["batch", "jobs", option, "jobs/a.toml"]);
        said.fails(2, &["jobs/a.toml is the name of something else"]);
    }
    let kept = fs::read_to_string(bench.path("jobs/a.toml")).unwrap();
    assert_eq!(kept, SMALL);
}

#[test]
fn a_name_as_long_as_names_may_be_is_written_and_written_again() {
    let bench = Bench::with("shelf.toml", SMALL);
    let name = "n".repeat(251) + ".pdf";
    for _ in 0..2 {
        bench.run(&["sheet", "shelf.toml", "-o", &name]).ends_well();
    }
    assert_eq!(bench.files(), [name.as_str(), "shelf.toml"]);
}

#[test]
fn a_folder_that_is_not_there_is_named() {
    let bench = Bench::with("shelf.toml", SMALL);
    let said = bench.run(&["sheet", "shelf.toml", "-o", "away/out.pdf"]);
    said.fails(2, &["cannot write away/out.pdf", "there is no folder away"]);
    let said = bench.run(&["sheet", "shelf.toml", "-o", "shelf.toml/out.pdf"]);
    said.fails(2, &["a part of its path is a file"]);
    let said = bench.run(&["places", "shelf.toml", "--svg", "made/for/it"]);
    assert_eq!(said.err, "");
    assert!(bench.path("made/for/it").is_dir());
}

/// Makes a file that may not be changed.
fn protect(path: &std::path::Path) {
    let mut permissions = fs::metadata(path).unwrap().permissions();
    permissions.set_readonly(true);
    fs::set_permissions(path, permissions).unwrap();
}

#[test]
fn a_file_that_may_not_be_changed_is_not() {
    let bench = Bench::with("shelf.toml", SMALL);
    fs::write(bench.path("shelf.pdf"), "mine").unwrap();
    protect(&bench.path("shelf.pdf"));
    let said = bench.run(&["sheet", "shelf.toml"]);
    said.fails(2, &["cannot write shelf.pdf", "read-only"]);
    assert_eq!(fs::read(bench.path("shelf.pdf")).unwrap(), b"mine");
    let said = bench.run(&["sheet", "shelf.toml", "-o", "."]);
    said.fails(2, &["it is a folder"]);
}

#[cfg(unix)]
mod unix {
    use std::fs::{self, File};
    use std::io::Read;
    use std::os::unix::fs::{FileTypeExt, PermissionsExt, symlink};
    use std::process::{Command, Stdio};

    use crate::bench::{Bench, SMALL};

    #[test]
    fn a_link_is_followed_and_stays_a_link() {
        let bench = Bench::with("shelf.toml", SMALL);
        fs::create_dir(bench.path("sheets")).unwrap();
        fs::write(bench.path("sheets/real.pdf"), "old").unwrap();
        symlink("sheets/real.pdf", bench.path("link.pdf")).unwrap();
        symlink("sheets/new.pdf", bench.path("ahead.pdf")).unwrap();
        symlink("round.pdf", bench.path("round.pdf")).unwrap();
        for (link, real) in [("link.pdf", "real.pdf"), ("ahead.pdf", "new.pdf")] {
            bench.run(&["sheet", "shelf.toml", "-o", link]).ends_well();
            let there = fs::symlink_metadata(bench.path(link)).unwrap();
            assert!(there.file_type().is_symlink());
            let bytes = fs::read(bench.path("sheets").join(real)).unwrap();
            assert!(bytes.starts_with(b"%PDF"));
        }
        let said = bench.run(&["sheet", "shelf.toml", "-o", "round.pdf"]);
        said.fails(2, &["cannot write round.pdf", "circle"]);
    }

    #[test]
    fn a_device_and_a_pipe_are_written_through() {
        let bench = Bench::with("shelf.toml", SMALL);
        bench
            .run(&["sheet", "shelf.toml", "-o", "/dev/null"])
            .ends_well();
        let device = fs::metadata("/dev/null").unwrap().file_type();
        assert!(device.is_char_device());
        let pipe = bench.path("pipe.pdf");
        assert!(
            Command::new("mkfifo")
                .arg(&pipe)
                .status()
                .unwrap()
                .success()
        );
        let mut command = bench.command(&["sheet", "shelf.toml", "-o", "pipe.pdf"]);
        let mut child = command.stdout(Stdio::null()).spawn().unwrap();
        let mut bytes = Vec::new();
        File::open(&pipe).unwrap().read_to_end(&mut bytes).unwrap();
        assert!(child.wait().unwrap().success());
        assert!(bytes.starts_with(b"%PDF"));
        assert!(fs::metadata(&pipe).unwrap().file_type().is_fifo());
        // What the shell has opened for it, under the name that the system has for that.
        let mut command = bench.command(&["draw", "shelf.toml", "-o", "/dev/stdout"]);
        let out = command.output().unwrap().stdout;
        assert!(String::from_utf8(out).unwrap().contains("<svg"));
    }

    #[test]
    fn a_reader_that_goes_away_and_a_full_device_are_told() {
        let bench = Bench::with("shelf.toml", SMALL);
        let said = bench.run(&["sheet", "shelf.toml", "-o", "/dev/full"]);
        said.fails(2, &["cannot write /dev/full"]);
        let pipe = bench.path("pipe.pdf");
        Command::new("mkfifo").arg(&pipe).status().unwrap();
        let mut command = bench.command(&["sheet", "shelf.toml", "-o", "pipe.pdf"]);
        command.stdout(Stdio::piped()).stderr(Stdio::piped());
        let child = command.spawn().unwrap();
        let mut first = [0; 4];
        File::open(&pipe).unwrap().read_exact(&mut first).unwrap();
        let said = crate::bench::Said::of(&child.wait_with_output().unwrap());
        said.fails(2, &["cannot write pipe.pdf"]);
        assert!(fs::metadata(&pipe).unwrap().file_type().is_fifo());
    }

    #[test]
    fn what_may_be_done_with_a_file_stays_as_it_was() {
        let bench = Bench::with("shelf.toml", SMALL);
        fs::write(bench.path("shelf.pdf"), "old").unwrap();
        let mode = |mode| fs::Permissions::from_mode(mode);
        fs::set_permissions(bench.path("shelf.pdf"), mode(0o640)).unwrap();
        bench.run(&["sheet", "shelf.toml"]).ends_well();
        let now = fs::metadata(bench.path("shelf.pdf")).unwrap().permissions();
        assert_eq!(now.mode() & 0o777, 0o640);
    }

    #[test]
    fn a_run_that_is_killed_leaves_nothing_behind() {
        let bench = Bench::with("shelf.toml", SMALL);
        // As long as one run takes, in steps, so that some are killed while they write.
        let start = std::time::Instant::now();
        bench.run(&["sheet", "shelf.toml"]).ends_well();
        let whole = start.elapsed();
        for step in 1..=20 {
            let mut command = bench.command(&["sheet", "shelf.toml"]);
            command.stdout(Stdio::null()).stderr(Stdio::null());
            let mut child = command.spawn().unwrap();
            std::thread::sleep(whole * step / 20);
            child.kill().unwrap();
            child.wait().unwrap();
            let bytes = fs::read(bench.path("shelf.pdf")).unwrap();
            assert!(
                bytes.starts_with(b"%PDF") && bytes.ends_with(b"%%EOF\n")
                    || bytes.ends_with(b"%%EOF")
            );
        }
        // One that was killed between its two steps is swept away by the next run; no process has this id.
        // What is named only nearly like that, and what a process that is still there writes, stays.
        let alive = format!(".kerfwright-{}-0.part", std::process::id());
        let left = [
            ".kerfwright-4294967295-0.part",
            &alive,
            ".kerfwright-mine-0.part",
        ];
        for name in left {
            fs::write(bench.path(name), "half").unwrap();
        }
        bench.run(&["sheet", "shelf.toml"]).ends_well();
        let mut kept = vec![&alive, ".kerfwright-mine-0.part", "shelf.pdf", "shelf.toml"];
        kept.sort_unstable();
        assert_eq!(bench.files(), kept);
    }
}
