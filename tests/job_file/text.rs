//! Faults of the text as a whole: keys, TOML, size; and how they are drawn.

use kerfwright::cli::report::{Colour, draw};
use kerfwright::job::read;

use super::{LEAST, expect_fault_in, expect_fault_with, findings, line_of};

#[test]
fn unknown_keys_name_the_nearest_known_one() {
    expect_fault_in(
        "[passes]\nscor = 2\n",
        "passes.scor",
        &["not a known key", "did you mean `score`?"],
        "scor = 2",
    );
    expect_fault_in(
        "[pases]\nscore = 2\n",
        "pases",
        &["not a known key", "did you mean `passes`?"],
        "[pases]",
    );
    expect_fault_in(
        "[machine]\nvibration = { a = 3, kk = 1 }\n",
        "machine.vibration.kk",
        &["did you mean `k`?"],
        "vibration",
    );
    expect_fault_in(
        "[[disc]]\ncolour = \"red\"\n",
        "disc[0].colour",
        &["known here", "obstruction"],
        "colour",
    );
    expect_fault_in(
        "[[disc]]\n[[disc]]\nname=\"b\"\ndiametre = 125\n",
        "disc[1].diametre",
        &["did you mean `diameter`?"],
        "diametre",
    );
}

#[test]
fn required_sections_and_keys() {
    let found = findings("[job]\n");
    let keys: Vec<&str> = found.iter().map(|f| f.key.as_str()).collect();
    assert_eq!(keys.len(), 3);
    assert!(
        ["slab", "stone", "top"].iter().all(|k| keys.contains(k)),
        "{keys:?}"
    );
    assert!(found.iter().all(|f| f.message.contains("is missing")));
    expect_fault_with(
        "kind = \"granite\"\n",
        "",
        "stone.kind",
        &["is missing", "granite"],
        "[stone]",
    );
    expect_fault_with(
        "thickness = 30\n",
        "",
        "stone.thickness",
        &["is missing"],
        "[stone]",
    );
    expect_fault_with(
        "rectangle = [2400, 800]\n",
        "",
        "slab.rectangle",
        &["is missing", "corners"],
        "[slab]",
    );
    expect_fault_in(
        "[[core_bit]]\n",
        "core_bit[0].diameter",
        &["is missing"],
        "core_bit",
    );
}

#[test]
fn keys_given_twice_and_texts_that_are_not_toml() {
    expect_fault_with(
        "thickness = 30",
        "thickness = 30\nthickness = 31",
        "",
        &["given twice"],
        "thickness = 31",
    );
    expect_fault_in("[slab]\ntape = 1\n", "", &["given twice"], "[slab]");
    let text = LEAST.replace("\"granite\"", "granite");
    let found = findings(&text);
    assert_eq!(found.len(), 1, "{found:?}");
    assert!(found[0].message.contains("a text stands in quotes"));
    assert!(found[0].hint.contains("kind = \"granite\""));
    assert!(line_of(&text, &found[0]).contains("kind = granite"));
}

#[test]
fn a_bracket_left_open_is_one_fault() {
    let text = LEAST
        .replace("[2400, 800]", "[2400, 800")
        .replace("= 30", "= \"x\"");
    let found = findings(&text);
    let lines: Vec<&str> = found.iter().map(|f| line_of(&text, f)).collect();
    assert_eq!(lines, ["thickness = \"x\"", "[top]"], "{found:?}");
    assert!(found[1].message.contains("bracket"));
}

#[test]
fn a_faulty_value_does_not_set_off_others() {
    let added = "[[disc]]\ndiameter = 500\nobstruction = 130\n";
    expect_fault_in(added, "disc[0].diameter", &["most 400 mm"], "diameter");
    let added = "finish = { \"1-2\" = \"factory\" }\n[slab.flaw]\n";
    expect_fault_in(added, "slab.flaw", &["[[slab.flaw]]"], "slab.flaw");
}

#[test]
fn faults_of_all_kinds_come_in_one_run_in_the_order_of_the_file() {
    let text = "\
[job]
units = \"mm\"
region = \"moon\"
[stone]
kind = \"granit\"
thickness = [30, nan]
[slab]
rectangle = [2400, 800, 3]
factory = [\"AB\", \"XY\"]
tape = \"1 lightyear\"
tape = 2
[top]
corners = [[0, 0], [0, 640], [2000, 640], [2000, 0]]
colour = \"black\"
[machine]
rpm = 99999
[[disc]]
diameter = 125
obstruction = 130
";
    let found = findings(text);
    let keys: Vec<&str> = found.iter().map(|f| f.key.as_str()).collect();
    let wanted = [
        "job.region",
        "stone.kind",
        "stone.thickness[1]",
        "slab.rectangle",
        "slab.tape",
        "",
        "top.corners",
        "top.colour",
        "machine.rpm",
        "disc[0].obstruction",
    ];
    assert_eq!(keys, wanted);
    let starts: Vec<_> = found.iter().map(|f| f.span).collect();
    assert!(starts.is_sorted());
    let drawn = draw("counter.toml", text, &found, Colour::Plain);
    assert!(drawn.ends_with("counter.toml: 10 faults\n"), "{drawn}");
    assert!(drawn.contains("counter.toml:5:8"), "{drawn}");
    assert!(!drawn.contains('\u{1b}'));
}

#[test]
fn a_text_beyond_a_mebibyte_is_refused() {
    let filler = "#".repeat(1024 * 1024 - LEAST.len());
    assert!(read(&format!("{LEAST}{filler}")).is_ok());
    let found = findings(&format!("{LEAST}{filler}#"));
    assert_eq!(found.len(), 1);
    assert!(
        found[0].message.contains("more than 1048576 bytes"),
        "{}",
        found[0].message
    );
}

#[test]
fn a_mebibyte_of_nonsense_is_told_in_short() {
    for piece in ["a\n", "[[", "x = {", "[slab]\n", "= 1\n"] {
        let text = piece.repeat(1024 * 1024 / piece.len());
        let found = findings(&text);
        assert!(
            !found.is_empty() && found.len() <= 201,
            "{piece:?}: {}",
            found.len()
        );
    }
    let keys: Vec<String> = (0..50_000).map(|i| format!("key{i} = 1")).collect();
    let found = findings(&keys.join("\n"));
    assert_eq!(found.len(), 201);
    assert!(
        found[200].message.contains("49803 more"),
        "{}",
        found[200].message
    );
    let long = format!("{LEAST}{} = 1\n", "k".repeat(1_000_000));
    assert_eq!(findings(&long).len(), 1);
}

#[test]
fn a_report_can_be_read_without_colour() {
    let text = LEAST.replace("[2400, 800]", "[25000, 800]");
    let found = findings(&text);
    let drawn = draw("counter.toml", &text, &found, Colour::Plain);
    let expected = "\
fault: slab.rectangle[0] is 25000 mm, most 10000 mm
 --> counter.toml:5:14
  |
5 | rectangle = [25000, 800]
  |              ^^^^^
  |
  = do: check the number and its unit: a bare number is in mm

counter.toml: 1 fault
";
    assert_eq!(drawn, expected);
    assert!(draw("counter.toml", &text, &found, Colour::Ansi).contains('\u{1b}'));
    assert_eq!(draw("counter.toml", &text, &[], Colour::Plain), "");
}
