//! What is said of lifting, carrying and setting down: every finding in a phrase that another language
//! can say, with nothing in its gaps but quantities, names of the job file and fixed words.

use std::collections::BTreeSet;

use kerfwright::diag::{Finding, Values, gaps};
use kerfwright::hazard::registry::checks;
use kerfwright::job::{self, Job};
use kerfwright::plan::{Plan, Weighing};
use kerfwright::tables::record::Record;
use kerfwright::words::{Catalogue, Language};

use crate::ids::{files, root};

/// Every word and sentence that stands in a gap and is no quantity and no name of the job file; `{n}`
/// for the quantity or number in it.
const FIXED: [&str; 49] = [
    "",
    "slab as delivered",
    "finished top",
    "top as wanted",
    "stone",
    "after cut {n}",
    "support",
    "cutout {n}",
    "door {n}",
    "corner {n}",
    "edge {n}",
    "the opening",
    "The weaker one must stand where the share is smaller.",
    "No team of people will do.",
    "flat, supported only at its ends",
    "flat, one end lifted off the supports",
    "flat on two supports, best placed",
    "front rail",
    "right rail",
    "back rail",
    "left rail",
    "bridge between cutouts",
    "brace it before the stone is moved",
    "too weak to be moved flat",
    "not reckoned",
    "{n} MPa",
    "neck at corner {n}",
    "neck at an inside corner",
    "nothing for stone so thin",
    "trolley",
    "vacuum lifter",
    "gantry",
    " This job cuts with water: wash the slurry off and let the face dry first.",
    " This stone is porous: air goes through it and the hold fails. Ask the maker, or use slings.",
    " This stone is often sold with a split face: no cup holds on that.",
    "on edge",
    "upright",
    "flat",
    "clear width",
    "clear height",
    "length that turns in the corner",
    "another way in",
    "take it upright, which needs {n} of height",
    "cut it to at most {n} long before this place",
    "make the way before the corner at least {n} wide",
    "make the way after the corner at least {n} wide",
    "make it at least {n} wide: take off the leaf, the stops, a frame",
    "make at least {n} of clear height for it on edge",
    "make at least {n} of clear height for it upright",
];

/// Phrases that no job here raises: the stone has no stone under the line of its supports.
const NOT_RAISED: [&str; 1] = ["overhang-too-far-alone"];

/// The records of lifting, carrying and setting down.
fn records() -> impl Iterator<Item = &'static Record> {
    checks().skip_while(|r| r.id != "not-a-hand-lift")
}

/// Every job at hand, and those of the folder beside this file, which raise what the others do not.
fn jobs() -> Vec<(String, Job)> {
    let own = "tests/safety/handling";
    let folders = ["examples", "tests/golden", "tests/pdf_sheet", own];
    let all = folders
        .iter()
        .flat_map(|folder| files(&root().join(folder)));
    let read = all
        .filter(|path| path.extension().is_some_and(|e| e == "toml"))
        .filter_map(|path| {
            let (name, text) = (path.display().to_string(), std::fs::read_to_string(&path));
            match job::read(&text.unwrap()) {
                Ok((job, _)) => Some((name, job)),
                Err(faults) => {
                    assert!(!name.contains(own), "{name}: {faults:?}");
                    None
                }
            }
        });
    read.collect()
}

/// What is found when a job is planned and when it is only weighed.
fn found(job: &Job) -> Vec<Finding> {
    let weighed = Weighing::of(job).0;
    let one = Weighing::of_one(job);
    let mut all = [weighed.stops, weighed.cautions, one.stops, one.cautions].concat();
    if let Ok(plan) = Plan::of(job) {
        all.extend(plan.stops.into_iter().chain(plan.cautions));
    }
    all
}

/// The names that a job file gives, whole and in the parts of a list.
fn names(job: &Job) -> BTreeSet<String> {
    let supports = job.supports.iter().map(|s| &s.what);
    let places = job.route.obstacles.iter().map(|o| &o.what);
    let cutouts = job.top.cutouts.iter().map(|c| &c.what);
    let whole: Vec<&String> = supports.chain(places).chain(cutouts).collect();
    let parts = whole.iter().flat_map(|n| n.split(", "));
    let parts = parts.map(str::to_owned).collect::<Vec<_>>();
    whole.into_iter().cloned().chain(parts).collect()
}

/// Whether nothing in a text reads as a word: what is left is numbers and units.
fn is_plain(text: &str) -> bool {
    let words = text.split(|c: char| !c.is_alphabetic());
    words.into_iter().all(|w| w.chars().count() < 3)
}

/// Whether a value can be said in another language.
fn can_be_said(value: &str, names: &BTreeSet<String>) -> bool {
    let fixed = FIXED.iter().any(|f| match f.split_once("{n}") {
        None => *f == value,
        Some((before, behind)) => value
            .strip_prefix(before)
            .and_then(|rest| rest.strip_suffix(behind))
            .is_some_and(is_plain),
    });
    let parts = || {
        let separator = ["; ", ", "].into_iter().find(|s| value.contains(s))?;
        Some(value.split(separator).all(|v| can_be_said(v, names)))
    };
    fixed || names.contains(value) || is_plain(value) || parts() == Some(true)
}

fn value<'a>(values: &'a Values, gap: &str) -> Option<&'a str> {
    let found = values.iter().find(|v| v.0 == gap);
    found.map(|v| v.1.as_str())
}

#[test]
fn every_finding_of_handling_can_be_said_in_another_language() {
    let phrases: Vec<_> = records().flat_map(|r| r.phrases).collect();
    assert!(phrases.len() > 40 && records().all(|r| !r.phrases.is_empty()));
    let mut raised = BTreeSet::new();
    for (_, job) in jobs() {
        let names = names(&job);
        for finding in found(&job) {
            let Some(record) = records().find(|r| r.answers_to(finding.id)) else {
                continue;
            };
            let said = &finding.said;
            assert!(record.phrases.contains(said.phrase), "{}", finding.id);
            assert_eq!(finding.id, said.phrase.id);
            assert_eq!(finding.title, said.put_into(said.phrase.title));
            assert_eq!(finding.detail, said.put_into(said.phrase.detail));
            let all = [said.phrase.title, said.phrase.detail].map(gaps).concat();
            for gap in all {
                let value = value(&said.values, gap);
                let value = value.unwrap_or_else(|| panic!("{}: {gap} is empty", finding.id));
                assert!(can_be_said(value, &names), "{}, {gap}: {value}", finding.id);
            }
            raised.insert(finding.id);
        }
    }
    let silent = phrases.iter().map(|p| p.id);
    let silent: Vec<&str> = silent.filter(|id| !raised.contains(id)).collect();
    assert_eq!(silent, NOT_RAISED);
}

#[test]
fn what_reads_as_a_sentence_with_a_number_cannot_be_said() {
    let names = BTreeSet::from(["hall door".to_owned()]);
    for said in [
        "12.3 kg (27 lb)",
        "after cut 2",
        "hall door, door 2",
        "edge 2-3, corner C",
        "cut it to at most 2231 mm long before this place; another way in",
    ] {
        assert!(can_be_said(said, &names), "{said}");
    }
    for not in [
        "needs 12.3 kg",
        "after cut two",
        "hall door and door 2",
        "cellar door",
    ] {
        assert!(!can_be_said(not, &names), "{not}");
    }
}

#[test]
fn a_number_in_a_term_is_kept() {
    let foreign = Language::ALL
        .into_iter()
        .filter(|l| *l != Language::English);
    for words in foreign.map(Catalogue::of) {
        let terms = words.templates().filter(|(id, _)| id.starts_with("terms."));
        for (id, text) in terms {
            assert_eq!(gaps(id), gaps(text), "{:?}: {id}", words.language);
        }
        let said = words.value("after cut 12");
        assert!(said.ends_with(" 12") && !said.contains("cut"), "{said}");
    }
    let german = Catalogue::of(Language::German);
    assert_eq!(german.value("after cut 2"), "nach Schnitt 2");
    assert_eq!(
        german.value("after cut 2, W1; after cut 2.5 kg (6 lb)"),
        "nach Schnitt 2, W1; nach Schnitt 2,5 kg (6 lb)"
    );
    // A name that begins like a term but holds no number is left alone.
    assert_eq!(german.value("after cut two"), "after cut two");
    assert_eq!(
        Catalogue::of(Language::English).value("after cut 2"),
        "after cut 2"
    );
}

#[test]
fn a_rail_is_named_once_by_what_the_trade_leaves_it() {
    let mut narrow = 0;
    for (text, job) in jobs() {
        let found = planned(&job);
        let large = job.top.cutouts.iter().filter(|c| {
            let circle = c.shape.as_circle();
            circle.is_none_or(|(_, radius)| radius > 30.0)
        });
        let large: Vec<&str> = large.map(|c| c.what.as_str()).collect();
        for finding in found.iter().filter(|f| f.id == "narrow-rail") {
            let cutouts = value(&finding.said.values, "cutouts").expect("it has cutouts");
            let alone = cutouts.split(", ").all(|c| large.contains(&c));
            assert!(
                !alone,
                "{text}: {} is told by rail-too-narrow",
                finding.title
            );
            narrow += 1;
        }
    }
    assert!(narrow > 0, "no job has a narrow rail beside a tap hole");
}

fn planned(job: &Job) -> Vec<Finding> {
    let plan = Plan::of(job).ok();
    plan.map_or_else(Vec::new, |p| [p.stops, p.cautions].concat())
}
