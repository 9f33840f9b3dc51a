//! The list of keys against the reader, the schema, the starter file and the README.

use kerfwright::diag::Diagnostic;
use kerfwright::job::keys::{Entry, Key, Kind, LeftOut, Section, all, find, reference, starter};
use kerfwright::job::{Drawings, read_with};
use kerfwright::plan::Plan;
use kerfwright::units::LengthUnit;
use toml::{Table, Value};

/// A job in which every section that needs another finds it.
const WHOLE: &str = r#"
[job]
units = "mm"
[stone]
kind = "granite"
thickness = 30
[slab]
rectangle = [2640, 905]
factory = ["AB", "DA"]
vein = 0
[top]
rectangle = [2150, 640]
round = { 2 = 320, 3 = 320 }
[[top.cutout]]
rectangle = [560, 490]
at = [800, 320]
round = { 2 = 20 }
[place]
at = [0, 0]
[lift]
people = 4
aid = "trolley"
"#;

/// What an example needs beside it.
const BESIDE: &[(&str, &str, &str)] = &[
    ("stone.asbestos", "stone.report", "\"a report\""),
    ("stone.asbestos", "stone.date", "2026-10-01"),
    ("slab.sides", "slab.diagonals", "{ AC = 2790, BD = 2786 }"),
    ("slab.diagonals", "slab.sides", "[2640, 902, 2636, 899]"),
    (
        "slab.base_line",
        "slab.ties",
        "[[0, 2640], [2640, 0], [2785, 901], [899, 2789]]",
    ),
    ("slab.ties", "slab.base_line", "2640"),
    (
        "slab.bow",
        "slab.corners",
        "[[0, 0], [2640, 0], [2640, 905], [0, 905]]",
    ),
    ("disc.expires", "disc.bond", "\"resin\""),
    ("as_cut.arc.edge", "top.bow", "{ \"1-2\" = 25 }"),
    ("top.over_base", "base.rectangle", "[2100, 600]"),
    ("support.pad.at", "support.pad", "{ across = 60 }"),
    ("support.pad.across", "support.pad", "{ at = [1000, 320] }"),
    ("slab.flaw.spot.at", "slab.flaw.spot", "{ across = 20 }"),
    (
        "slab.flaw.spot.across",
        "slab.flaw.spot",
        "{ at = [1200, 300] }",
    ),
    ("protector.h", "protector.m", "27"),
    ("protector.h", "protector.l", "19"),
    ("protector.m", "protector.h", "32"),
    ("protector.m", "protector.l", "19"),
    ("protector.l", "protector.h", "32"),
    ("protector.l", "protector.m", "27"),
    ("slab.shape_unit", "slab.shape", "\"template.svg#top\""),
    ("slab.shape_scale", "slab.shape", "\"template.svg#top\""),
    ("top.shape_unit", "top.shape", "\"template.svg#top\""),
    ("top.shape_scale", "top.shape", "\"template.svg#top\""),
    (
        "top.cutout.shape_unit",
        "top.cutout.shape",
        "\"template.svg#top\"",
    ),
    (
        "top.cutout.shape_scale",
        "top.cutout.shape",
        "\"template.svg#top\"",
    ),
    ("base.shape_unit", "base.shape", "\"template.svg#top\""),
    ("base.shape_scale", "base.shape", "\"template.svg#top\""),
    (
        "slab.flaw.shape_unit",
        "slab.flaw.shape",
        "\"template.svg#top\"",
    ),
    (
        "slab.flaw.shape_scale",
        "slab.flaw.shape",
        "\"template.svg#top\"",
    ),
];

/// The drawings that the examples name.
const DRAWING: &str = r#"<svg xmlns="http://www.w3.org/2000/svg" width="3000mm" viewBox="0 0 3000 1000">
<path id="top" d="M0 0H2150V640H0Z"/><circle id="stain" cx="1000" cy="600" r="20"/>
<line id="tape-1" x2="2400"/></svg>"#;

fn read(text: &str) -> Result<(kerfwright::job::Job, Vec<Diagnostic>), Vec<Diagnostic>> {
    let drawings = ["template.svg", "slab.svg"];
    let drawings = drawings.map(|name| (name.to_owned(), Ok(DRAWING.to_owned())));
    read_with(text, &Drawings::from(drawings))
}

fn value(text: &str) -> Value {
    let table: Table = format!("v = {text}").parse().unwrap();
    table["v"].clone()
}

/// The needed keys of a section and the first of those of which one is needed.
fn fill(section: &Section, table: &mut Table) {
    let one_is_there = section
        .keys
        .iter()
        .any(|key| matches!(key.left_out, LeftOut::OneOf(_)) && table.contains_key(key.name));
    let mut ways = usize::from(one_is_there);
    for key in section.keys {
        let wanted = match key.left_out {
            LeftOut::Needed => true,
            LeftOut::OneOf(_) => {
                ways += 1;
                ways == 1
            }
            _ => false,
        };
        if wanted && !table.contains_key(key.name) && !key.example.is_empty() {
            table.insert(key.name.to_owned(), value(key.example));
        }
    }
}

/// The table of a section, made with what it needs when it is not there.
fn section<'t>(whole: &'t mut Table, path: &str) -> &'t mut Table {
    let mut at = whole;
    let mut so_far = String::new();
    for part in path.split('.').filter(|part| !part.is_empty()) {
        so_far = if so_far.is_empty() {
            part.to_owned()
        } else {
            format!("{so_far}.{part}")
        };
        let entry = find(&so_far).unwrap();
        let (keys, _) = entry.key.kind.section().unwrap();
        let many = matches!(entry.key.kind, Kind::Tables(..));
        let fresh = || {
            if many {
                Value::Array(vec![Table::new().into()])
            } else {
                Table::new().into()
            }
        };
        let below = at.entry(part).or_insert_with(fresh);
        let below = match below {
            Value::Array(items) => items[0].as_table_mut(),
            other => other.as_table_mut(),
        };
        at = below.unwrap();
        fill(keys, at);
    }
    at
}

/// The whole job with one key set.
fn with(entry: &Entry, text: &str) -> String {
    let mut whole: Table = WHOLE.parse().unwrap();
    let beside = BESIDE.iter().filter(|(path, ..)| *path == entry.path);
    for (_, path, text) in beside {
        set(&mut whole, path, text);
    }
    set(&mut whole, &entry.path, text);
    toml::to_string(&whole).unwrap()
}

fn set(whole: &mut Table, path: &str, text: &str) {
    let (under, name) = path.rsplit_once('.').unwrap_or(("", path));
    let table = section(whole, under);
    let key = find(path).unwrap().key;
    if matches!(key.left_out, LeftOut::OneOf(_)) || text_replaces(path) {
        drop_others(under, key, table);
    }
    table.insert(name.to_owned(), value(text));
}

/// The second half of a pair stands in place of a rectangle as well.
fn text_replaces(path: &str) -> bool {
    matches!(path, "slab.diagonals" | "slab.ties")
}

/// Takes the other ways out that say the same thing.
fn drop_others(under: &str, key: &Key, table: &mut Table) {
    let (section, _) = find(under).unwrap().key.kind.section().unwrap();
    let pair = |name: &str| matches!(name, "sides" | "diagonals" | "base_line" | "ties");
    for other in section.keys {
        let same = other.name == key.name || (pair(other.name) && pair(key.name));
        if matches!(other.left_out, LeftOut::OneOf(_)) && !same {
            table.remove(other.name);
        }
    }
}

/// The keys at fault, without the numbers of lists.
fn keys_at_fault(text: &str) -> Vec<(String, String)> {
    let found = match read(text) {
        Ok(_) => Vec::new(),
        Err(found) => found,
    };
    let plain = |key: &str| {
        let mut out = String::new();
        let mut inside = false;
        for c in key.chars() {
            match c {
                '[' => inside = true,
                ']' => inside = false,
                c if !inside => out.push(c),
                _ => {}
            }
        }
        out
    };
    found
        .iter()
        .filter(|f| f.severity == kerfwright::diag::Severity::Fault)
        .map(|f| (plain(&f.key), f.message.clone()))
        .collect()
}

#[test]
fn every_key_of_the_list_is_read() {
    // A moment with its time may stand nowhere, so that whoever reads a key refuses it.
    let odd = "1979-05-27T07:32:00Z";
    for entry in all() {
        let text = with(&entry, odd);
        let faults = keys_at_fault(&text);
        let told = faults.iter().any(|(key, _)| *key == entry.path);
        assert!(told, "{} is not read: {faults:?}\n{text}", entry.path);
    }
}

#[test]
fn every_example_is_read_without_a_fault() {
    for entry in all()
        .into_iter()
        .filter(|entry| !entry.key.example.is_empty())
    {
        let text = with(&entry, entry.key.example);
        let faults = keys_at_fault(&text);
        let against = faults.iter().find(|(key, _)| key.starts_with(&entry.path));
        assert!(against.is_none(), "{}: {against:?}\n{text}", entry.path);
        let outside = faults
            .iter()
            .find(|(_, message)| message.contains("list of keys"));
        assert!(outside.is_none(), "{outside:?}");
    }
}

#[test]
fn the_example_files_hold_no_key_outside_the_list() {
    fn visit(table: &Table, under: &str, free: bool, seen: &mut usize) {
        for (name, value) in table {
            let path = if under.is_empty() {
                name.clone()
            } else {
                format!("{under}.{name}")
            };
            let entry = find(&path);
            assert!(free || entry.is_some(), "{path} is not in the list");
            *seen += 1;
            let free = entry.is_none_or(|e| e.key.kind.section().is_none());
            match value {
                Value::Table(table) => visit(table, &path, free, seen),
                Value::Array(items) => {
                    for table in items.iter().filter_map(Value::as_table) {
                        visit(table, &path, free, seen);
                    }
                }
                _ => {}
            }
        }
    }
    let mut seen = 0;
    for text in [
        include_str!("../../examples/tea-counter.toml"),
        include_str!("../../examples/washstand.toml"),
        include_str!("../../examples/garden-bench.toml"),
        include_str!("../../examples/upstairs-vanity.toml"),
    ] {
        visit(&text.parse().unwrap(), "", false, &mut seen);
    }
    assert!(seen > 200, "{seen}");
}

#[test]
fn each_key_is_described_once_and_in_one_line() {
    let entries = all();
    let mut paths: Vec<&str> = entries.iter().map(|e| e.path.as_str()).collect();
    paths.sort_unstable();
    paths.dedup();
    assert_eq!(paths.len(), entries.len(), "a key stands in the list twice");
    for Entry { path, key } in &entries {
        assert!(key.meaning.len() > 5, "{path}");
        assert!(
            !key.meaning.ends_with('.') && !key.meaning.contains('\n'),
            "{path}"
        );
        if let LeftOut::Assumed(_, why) = key.left_out {
            assert!(!why.is_empty(), "{path} is assumed without a reason");
        }
    }
}

#[test]
fn the_readme_has_the_list() {
    let readme = include_str!("../../README.md").replace("\r\n", "\n");
    let start = readme
        .find("<!-- keys -->\n")
        .expect("the mark before the list");
    let end = readme
        .find("<!-- end of keys -->")
        .expect("the mark behind the list");
    let there = &readme[start + "<!-- keys -->\n".len()..end];
    let wanted = reference();
    if let Ok(folder) = std::env::var("WRITE_REFERENCE") {
        let start = start + "<!-- keys -->\n".len();
        let whole = [&readme[..start], &wanted, &readme[end..]].concat();
        std::fs::write(folder, whole).unwrap();
        return;
    }
    assert!(
        there == wanted,
        "the reference in README.md is not the list of keys; write it with WRITE_REFERENCE=README.md"
    );
}

#[test]
fn the_starter_file_asks_for_what_is_needed_and_nothing_else() {
    for units in [LengthUnit::Millimetre, LengthUnit::Inch] {
        let text = starter(units);
        let faults = read(&text).unwrap_err();
        let open: Vec<&str> = faults.iter().map(|f| f.key.as_str()).collect();
        let wanted = [
            "stone.kind",
            "stone.thickness",
            "slab.rectangle[0]",
            "slab.rectangle[1]",
            "top.rectangle[0]",
            "top.rectangle[1]",
        ];
        assert_eq!(open, wanted);
        assert!(faults.iter().all(|f| f.message.contains("not filled in")));
        let (job, remarks) = read(&filled_in(&text)).unwrap();
        assert!(remarks.is_empty());
        assert_eq!(job.units, units);
    }
}

/// A starter file with what it asks for.
fn filled_in(starter: &str) -> String {
    starter
        .replace("kind = \"?\"", "kind = \"granite\"")
        .replace("thickness = \"?\"", "thickness = \"30 mm\"")
        .replacen("[\"?\", \"?\"]", "[\"2400 mm\", \"800 mm\"]", 1)
        .replacen("[\"?\", \"?\"]", "[\"2000 mm\", \"640 mm\"]", 1)
}

/// What is marked in the starter file is what stands between it and a job without a stop.
#[test]
fn the_marked_keys_of_the_starter_file_clear_its_stops() {
    let text = filled_in(&starter(LengthUnit::Millimetre));
    let stops = |text: &str| Plan::of(&read(text).unwrap().0).unwrap().stops.len();
    assert!(stops(&text) > 0);
    let given = [
        ("power", "\"mains\""),
        ("wet_rated", "true"),
        ("protected", "\"rcd\""),
        ("where", "\"outdoors\""),
        ("method", "\"water\""),
        ("respirator", "\"ffp3\""),
        ("people", "3"),
        ("aid", "\"trolley\""),
        ("rated", "\"500 kg\""),
    ];
    let marked = |line: &&str| line.contains("    # (!) ");
    assert_eq!(text.lines().filter(marked).count(), given.len());
    let lines = text.lines().map(|line| {
        let is_it = |(name, _): &&(&str, &str)| line.starts_with(&format!("# {name} = "));
        match given.iter().find(is_it) {
            Some((name, value)) if marked(&line) => format!("{name} = {value}\n"),
            _ => format!("{line}\n"),
        }
    });
    assert_eq!(stops(&lines.collect::<String>()), 0);
}

/// Every remark of the starter file is a line that can be read once its # is gone.
#[test]
fn every_remark_of_the_starter_file_is_toml() {
    for line in starter(LengthUnit::Inch).lines() {
        let Some(line) = line.strip_prefix("# ") else {
            continue;
        };
        let is_key = line
            .split(" = ")
            .next()
            .is_some_and(|key| !key.contains(' '));
        if is_key && line.contains(" = ") {
            assert!(line.parse::<Table>().is_ok(), "{line}");
        }
    }
}
