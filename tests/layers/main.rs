//! The house rules of the source: each stage uses only earlier ones, a foreign package has one
//! door, only the program touches the world outside, no file grows too long, nothing gives up.

mod rules;
mod source;

use std::fs;
use std::path::{Path, PathBuf};

use rules::{ORDER, broken};

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

/// Every source file under a folder.
fn files(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            found.extend(files(&path));
        } else if path.extension().is_some_and(|e| e == "rs") {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// Files that only tests compile: those that a `#[cfg(test)] mod name;` names.
fn for_tests_only(sources: &[(String, String)]) -> Vec<String> {
    let mut found = Vec::new();
    for (file, text) in sources {
        let folder = file.rfind('/').map_or("", |i| &file[..=i]);
        for pair in text.lines().collect::<Vec<_>>().windows(2) {
            let name = pair[1].trim().strip_prefix("mod ");
            if let Some(name) = name.and_then(|n| n.strip_suffix(';'))
                && pair[0].trim() == "#[cfg(test)]"
            {
                found.push(format!("{folder}{name}.rs"));
            }
        }
    }
    found
}

#[test]
fn every_source_file_keeps_the_rules() {
    let relative = |p: &Path| {
        let under = p.strip_prefix(root()).unwrap();
        under.to_string_lossy().replace('\\', "/")
    };
    let sources: Vec<(String, String)> = files(&root())
        .iter()
        .map(|p| (relative(p), fs::read_to_string(p).unwrap()))
        .collect();
    assert!(sources.len() > 50, "{} files", sources.len());
    let tests = for_tests_only(&sources);
    let found: Vec<String> = sources
        .iter()
        .filter(|(file, _)| !tests.contains(file))
        .flat_map(|(file, text)| broken(file, text))
        .collect();
    assert!(found.is_empty(), "\n{}", found.join("\n"));
}

#[test]
fn every_stage_of_the_order_is_there_and_no_other() {
    let library = fs::read_to_string(root().join("lib.rs")).unwrap();
    let named = library
        .lines()
        .filter_map(|l| l.strip_prefix("pub mod ")?.strip_suffix(';'));
    let mut named: Vec<&str> = named.collect();
    let mut order = ORDER.to_vec();
    named.sort_unstable();
    order.sort_unstable();
    assert_eq!(named, order);
}

/// A file that breaks nothing, with every trap that is no fault.
const CLEAN: &str = r##"
//! `crate::sheet` in a comment, panic! too. /* and so on
use std::collections::BTreeMap;
use crate::geom::{Point, seg::{self, Seg}};
/* crate::cli /* deeper */ std::fs */
fn name<'a>(text: &'a str) -> &'a str { let q = '"'; let s = "crate::plan \" unwrap() "; text }
const RAW: &str = r#"use crate::render; " panic!()"#;
fn expected() { super::unwrap_or(crate::units::MM); }
#[cfg(test)]
mod tests {
    use crate::sheet::Sheet;
    fn f() { std::fs::read("{").unwrap(); panic!("}"); }
}
fn after() {}
"##;

#[test]
fn what_is_no_fault_is_not_found() {
    assert_eq!(broken("geom/point.rs", CLEAN), Vec::<String>::new());
}

#[test]
fn every_kind_of_fault_is_found_with_its_line() {
    let cases = [
        ("cut/mod.rs", "\nuse crate::plan::Plan;", 2, "plan"),
        ("cut/mod.rs", "use crate::{geom, sheet::item};", 1, "sheet"),
        ("cut/mod.rs", "fn f() -> crate::piece::Piece {}", 1, "piece"),
        (
            "cut/disc.rs",
            "use super::super::handle::lift;",
            1,
            "handle",
        ),
        ("plan.rs", "use super::sheet;", 1, "sheet"),
        ("units.rs", "use crate::diag;", 1, "diag"),
        ("tables/stone.rs", "use crate::job::Job;", 1, "job"),
        (
            "cut/mod.rs",
            "#[cfg(test)]\nuse crate::cli;\nuse crate::render;",
            3,
            "render",
        ),
        ("render/svg.rs", "use printpdf::Op;", 1, "printpdf"),
        ("geom/hull.rs", "let a = geo::Polygon;", 1, "geo"),
        ("geom/hull.rs", "use geo::{Coord};", 1, "geo"),
        ("job/mod.rs", "use std::{fmt, fs};", 1, "std::fs"),
        (
            "job/mod.rs",
            "let now = std::time::Instant;",
            1,
            "std::time",
        ),
        ("plan.rs", "\n\nprintln!(\"x\");", 3, "print"),
        ("plan.rs", "x.unwrap();", 1, "unwrap"),
        ("plan.rs", "x.expect(\"y\");", 1, "expect"),
        ("plan.rs", "todo!()", 1, "todo"),
        ("cli/mod.rs", "panic!()", 1, "panic"),
    ];
    for (file, text, line, word) in cases {
        let found = broken(file, text);
        assert_eq!(found.len(), 1, "{file}: {text}: {found:?}");
        assert!(found[0].starts_with(&format!("src/{file}:{line}: ")));
        assert!(found[0].contains(word), "{found:?}");
    }
    assert_eq!(broken("plan.rs", &"\n".repeat(450)), Vec::<String>::new());
    assert_eq!(broken("plan.rs", &"\n".repeat(451)).len(), 1);
    assert_eq!(broken("main.rs", &"\n".repeat(61)).len(), 1);
}

#[test]
fn what_a_file_may_do_is_allowed() {
    let cases = [
        ("render/pdf_finish.rs", "use printpdf::Op;"),
        ("geom/boolean.rs", "use geo::BooleanOps;"),
        ("cli/files.rs", "use std::{io, fs}; fn f() { println!(); }"),
        (
            "sheet/page/curve.rs",
            "use super::super::item; use super::straight;",
        ),
        ("sheet/page/curve.rs", "use crate::cut::Cut;"),
        ("cut/disc.rs", "use super::plan; use super::super::job;"),
    ];
    for (file, text) in cases {
        assert_eq!(broken(file, text), Vec::<String>::new(), "{file}: {text}");
    }
}
