//! From nothing to the first sheet, and what helps on the way.

use std::fs;

use crate::bench::{Bench, SMALL};

#[test]
fn a_new_file_leads_to_a_sheet() {
    let bench = Bench::new();
    let said = bench.run(&["new", "counter.toml"]);
    said.ends_well();
    assert!(
        said.out.ends_with("kerfwright check counter.toml\n"),
        "{said:?}"
    );
    let open = bench.run(&["check", "counter.toml"]);
    open.fails(1, &["stone.kind is not filled in yet", "6 faults"]);
    let text = fs::read_to_string(bench.path("counter.toml")).unwrap();
    let text = text
        .replace("kind = \"?\"", "kind = \"granite\"")
        .replace("thickness = \"?\"", "thickness = 30")
        .replacen("[\"?\", \"?\"]", "[2400, 800]", 1)
        .replacen("[\"?\", \"?\"]", "[2000, 640]", 1);
    fs::write(bench.path("counter.toml"), text).unwrap();
    let said = bench.run(&["check", "counter.toml"]);
    assert!(
        said.out.contains("nothing wrong with the job file"),
        "{said:?}"
    );
    // The job file alone means its sheet.
    let said = bench.run(&["counter.toml"]);
    assert!(
        said.out.starts_with("counter.pdf: job sheet written"),
        "{said:?}"
    );
    // A command is told as it must be typed.
    let said = bench.run(&["new", "first counter.toml"]);
    assert!(
        said.out
            .ends_with("kerfwright check \"first counter.toml\"\n"),
        "{said:?}"
    );
    // What is there is never written over.
    let said = bench.run(&["new", "counter.toml"]);
    said.fails(2, &["counter.toml is there already"]);
}

#[test]
fn what_is_no_job_file_or_has_no_folder_is_told_at_once() {
    let bench = Bench::with("a.toml", SMALL);
    bench.run(&["a.toml"]).ends_well();
    let made = "it is a PDF; name the job file that it was made from";
    bench.run(&["check", "a.pdf"]).fails(2, &[made]);
    let lost = "cannot write nowhere/a.toml: there is no folder nowhere";
    for command in ["new", "desk"] {
        bench.run(&[command, "nowhere/a.toml"]).fails(2, &[lost]);
    }
}

#[test]
fn a_new_file_may_be_like_another_job() {
    let bench = Bench::new();
    for (name, words) in [
        ("tea-counter", "gabbro"),
        ("washstand", "marble"),
        ("garden-bench", "sandstone"),
        ("upstairs-vanity", "[[route.door]]"),
    ] {
        let file = format!("{name}.toml");
        bench.run(&["new", &file, "--like", name]).ends_well();
        assert!(
            fs::read_to_string(bench.path(&file))
                .unwrap()
                .contains(words)
        );
    }
    bench
        .run(&["new", "a.toml", "--like", "castle"])
        .fails(2, &["castle", "tea-counter"]);
    bench.run(&["new", "in.toml", "--units", "in"]).ends_well();
    let text = fs::read_to_string(bench.path("in.toml")).unwrap();
    assert!(text.contains("units = \"in\""));
}

#[test]
fn a_key_is_explained_and_listed() {
    let bench = Bench::new();
    let said = bench.run(&["explain", "disc[0].kerf"]);
    said.ends_well();
    for words in [
        "disc.kerf",
        "0.8 mm to 8 mm",
        "2.2 mm: thin discs",
        "[[disc]] kerf = 2.2",
    ] {
        assert!(said.out.contains(words), "{words}: {said:?}");
    }
    let said = bench.run(&["keys"]);
    for entry in kerfwright::job::keys::all() {
        assert!(said.out.contains(&entry.path), "{}", entry.path);
    }
    let slab = bench.run(&["keys", "slab"]).out;
    assert!(slab.contains("slab.factory") && !slab.contains("stone.kind"));
    bench
        .run(&["keys", "slap"])
        .fails(1, &["slap", "the nearest: slab"]);
    bench
        .run(&["explain", "slab.factry"])
        .fails(1, &["slab.factory"]);
}

#[test]
fn the_shell_and_the_manual_know_every_command() {
    let bench = Bench::new();
    let help = bench.run(&["--help"]).out;
    let commands: Vec<&str> = help
        .lines()
        .skip_while(|line| *line != "Commands:")
        .skip(1)
        .take_while(|line| !line.is_empty())
        .filter_map(|line| line.split_whitespace().next())
        .collect();
    assert!(commands.len() > 15, "{commands:?}");
    let man = bench.run(&["man"]).out;
    let bash = bench.run(&["completions", "bash"]).out;
    for command in commands {
        assert!(man.contains(command) && bash.contains(command), "{command}");
        if command != "help" {
            let own = bench.run(&[command, "--help"]).out;
            assert!(
                own.contains("Example: kerfwright "),
                "{command} has no example"
            );
        }
    }
    for shell in ["zsh", "fish", "powershell", "elvish"] {
        bench.run(&["completions", shell]).ends_well();
    }
}

#[test]
fn the_schema_is_json() {
    let said = Bench::new().run(&["schema"]);
    let schema: serde_json::Value = serde_json::from_str(&said.out).unwrap();
    assert_eq!(schema, kerfwright::job::keys::schema());
}

#[test]
fn check_tells_what_an_assumed_value_changes() {
    let no_rate = SMALL.replace("[lift]\npeople = 2\n", "");
    let bench = Bench::with("a.toml", no_rate);
    let said = bench.run(&["check", "a.toml"]);
    assert!(said.out.contains("Stops: none."), "{said:?}");
    assert!(said.out.contains("Open points"), "{said:?}");
    assert!(
        said.out.contains("Those that change the plan most:"),
        "{said:?}"
    );
    let all = bench.run(&["check", "--assumed", "a.toml"]);
    assert!(
        all.out.contains("Assumed, because the file does not say:"),
        "{all:?}"
    );
    // A quarter faster is a fifth less time with the disc in the stone.
    let rate = all
        .out
        .split("  passes.rate = 25 cm²/min\n")
        .nth(1)
        .unwrap();
    let effect = rate.lines().nth(1).unwrap();
    assert!(
        effect.trim().starts_with("with 31.2 cm²/min: sawing "),
        "{effect}"
    );
    let (few, many) = (said.out.lines().count(), all.out.lines().count());
    assert!(many > few + 20, "{few} {many}");
}

/// What stops the job comes before what takes longer; a stop and an open point are named; how many
/// warnings there are is nothing to act on, and an open point is not told of twice.
#[test]
fn the_assumed_values_are_ranked_by_what_they_change() {
    let dry = SMALL.replace("power = \"battery\"\nwet_rated = true\n", "");
    let bench = Bench::with("a.toml", dry.replace("people = 2", "people = 1"));
    let out = bench.run(&["check", "a.toml"]).out;
    let (open, assumed) = out.split_once("Assumed: ").unwrap();
    assert!(open.contains("[stone.steel]") && !assumed.contains("stone.steel"));
    assert!(!assumed.contains("warnings"), "{assumed}");
    let [stop, longer] = ["STOP: ", "sawing "].map(|words| assumed.find(words));
    assert!(
        stop.is_some() && longer.is_none_or(|at| stop < Some(at)),
        "{assumed}"
    );
}

#[test]
fn remarks_are_shown_by_every_command_that_reads_a_job() {
    let odd = SMALL.replace(
        "silica = \"20 %\"",
        "silica = \"20 %\"\nweighed = \"10 kg\"",
    );
    let bench = Bench::with("a.toml", odd);
    for command in ["check", "plan", "sheet", "draw", "fit", "places"] {
        let said = bench.run(&[command, "a.toml"]);
        assert!(
            said.err.contains("remark: stone.weighed gives"),
            "{command}: {said:?}"
        );
    }
}
