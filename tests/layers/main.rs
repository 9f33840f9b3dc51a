//! The house rules of the source: each stage uses only earlier ones, no files of a room form a circle,
//! a foreign package has one door, only the program touches the world outside, no file grows too
//! long. That nothing gives up or prints is held by the compiler's lints (`lib.rs`).

mod house;
mod rules;

use std::path::Path;

use house::House;
use rules::{ORDER, broken};

fn house() -> House {
    House::read(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"))
}

fn of(files: &[(&'static str, &'static str)]) -> House {
    House::of(files.iter().copied())
}

#[test]
fn every_source_file_keeps_the_rules() {
    let house = house();
    assert!(house.files.len() > 50, "{} files", house.files.len());
    let found: Vec<String> = house
        .files
        .iter()
        .flat_map(|(module, file)| broken(&house, module, file))
        .collect();
    assert!(found.is_empty(), "\n{}", found.join("\n"));
}

#[test]
fn no_files_of_a_room_form_a_circle() {
    let house = house();
    let circles = house.circles();
    let words: Vec<String> = circles.iter().map(|c| c.join(" ~ ")).collect();
    assert!(circles.is_empty(), "{}", words.join("\n"));
}

#[test]
fn every_stage_of_the_order_is_there_and_no_other() {
    let house = house();
    let rooms: std::collections::BTreeSet<&str> = house
        .files
        .keys()
        .filter_map(|module| module.first().map(String::as_str))
        .collect();
    let mut order = ORDER.to_vec();
    order.sort_unstable();
    assert_eq!(rooms.into_iter().collect::<Vec<_>>(), order);
}

#[test]
fn circles_are_found_through_names_that_are_passed_on() {
    let straight = of(&[
        ("cut/mod.rs", "mod disc; mod pass; pub use disc::Disc;"),
        ("cut/disc.rs", "pub struct Disc;"),
        ("cut/pass.rs", "use super::Disc; fn f(_: Disc) {}"),
    ]);
    assert!(straight.circles().is_empty(), "{:?}", straight.circles());
    let through_mod = of(&[
        (
            "cut/mod.rs",
            "mod pass; pub struct Disc; fn f() { pass::g() }",
        ),
        ("cut/pass.rs", "use super::Disc; pub fn g() {}"),
    ]);
    assert_eq!(through_mod.circles(), [["cut/mod.rs", "cut/pass.rs"]]);
    let through_names = of(&[
        ("cut/mod.rs", "mod a; mod b; pub use a::A; pub use b::B;"),
        ("cut/a.rs", "use super::B; pub struct A;"),
        ("cut/b.rs", "fn f(_: crate::cut::A) {} pub struct B;"),
    ]);
    assert_eq!(through_names.circles(), [["cut/a.rs", "cut/b.rs"]]);
}

#[test]
fn every_kind_of_fault_is_found() {
    let cases = [
        ("cut/mod.rs", "use crate::plan::Plan;", "plan"),
        ("cut/mod.rs", "use crate::{geom, plan::Plan};", "plan"),
        ("cut/disc.rs", "fn f() -> crate::plan::Plan {}", "plan"),
        ("cut/mod.rs", "pub mod disc; pub struct Cut;", "wires"),
        ("cut/disc.rs", "use super::super::plan::Plan;", "plan"),
        ("units.rs", "use super::plan;", "plan"),
        (
            "cut/mod.rs",
            "#[cfg(test)]\nuse crate::cli;\nuse crate::plan;",
            "plan",
        ),
        ("render/svg.rs", "use printpdf::Op;", "printpdf"),
        ("geom/hull.rs", "fn f() { geo::Polygon::new(); }", "geo"),
        ("geom/hull.rs", "use geo::{Coord};", "geo"),
        ("job/mod.rs", "use std::{fmt, fs};", "fs"),
        (
            "job/gear.rs",
            "fn f() { std::time::Instant::now(); }",
            "time",
        ),
    ];
    for (path, text, word) in cases {
        let sources = [(path, text), ("plan/mod.rs", ""), ("cli/mod.rs", "")];
        let house = House::of(sources.into_iter());
        let module = house::module(path);
        let found = broken(&house, &module, &house.files[&module]);
        assert_eq!(found.len(), 1, "{path}: {text}: {found:?}");
        assert!(found[0].contains(word), "{found:?}");
    }
}

#[test]
fn what_a_file_may_do_is_allowed() {
    let cases = [
        ("render/pdf_finish.rs", "use printpdf::Op;"),
        ("geom/boolean.rs", "use geo::BooleanOps;"),
        ("cli/files.rs", "use std::{io, fs}; fn f() { println!(); }"),
        ("plan/mod.rs", "use crate::cut::Cut;"),
        (
            "cut/disc.rs",
            "// crate::plan in a comment\n const A: &str = \"crate::plan\"; #[cfg(test)] mod t { use crate::cli; }",
        ),
    ];
    for (path, text) in cases {
        let house = House::of([(path, text), ("cut/mod.rs", "")].into_iter());
        let module = house::module(path);
        let found = broken(&house, &module, &house.files[&module]);
        assert_eq!(found, Vec::<String>::new(), "{path}: {text}");
    }
}

#[test]
fn a_file_that_grows_too_long_is_found() {
    for (lines, faults) in [(450, 0), (451, 1)] {
        let text = "\n".repeat(lines);
        let house = House::of([("cut/mod.rs", text.as_str())].into_iter());
        let module = house::module("cut/mod.rs");
        assert_eq!(broken(&house, &module, &house.files[&module]).len(), faults);
    }
}
