//! What is said of lifting, carrying and setting down: every finding in a phrase that another language
//! can say, with nothing in its gaps but quantities, names of the job file and fixed words.

use std::collections::BTreeSet;

use kerfwright::diag::Finding;
use kerfwright::hazard::registry::checks;
use kerfwright::job::{self, Job};
use kerfwright::plan::{Plan, Weighing};
use kerfwright::tables::record::Record;
use kerfwright::words::Writer;

use crate::ids::{files, root};

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
    let mut all = [weighed.stops, weighed.open, weighed.warnings].concat();
    all.extend([one.stops, one.open, one.warnings].concat());
    if let Ok(plan) = Plan::of(job) {
        all.extend([plan.stops, plan.open, plan.warnings].concat());
    }
    all
}

#[test]
fn every_finding_of_handling_is_raised_by_some_job() {
    let phrases: Vec<_> = records().flat_map(|r| r.phrases).collect();
    assert!(phrases.len() > 40 && records().all(|r| !r.phrases.is_empty()));
    let mut raised = BTreeSet::new();
    for (_, job) in jobs() {
        raised.extend(found(&job).iter().map(Finding::id));
    }
    let silent = phrases.iter().map(|p| p.id);
    let silent: Vec<&str> = silent.filter(|id| !raised.contains(id)).collect();
    assert!(silent.is_empty(), "{silent:?}");
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
        for finding in found.iter().filter(|f| f.id() == "narrow-rail") {
            let cutouts = finding.message.arg("cutouts").expect("it has cutouts");
            let cutouts = Writer::default().write(cutouts);
            let alone = cutouts.split(", ").all(|c| large.contains(&c));
            assert!(
                !alone,
                "{text}: {} is told by rail-too-narrow",
                Writer::default().say(&finding.message)
            );
            narrow += 1;
        }
    }
    assert!(narrow > 0, "no job has a narrow rail beside a tap hole");
}

fn planned(job: &Job) -> Vec<Finding> {
    let plan = Plan::of(job).ok();
    plan.map_or_else(Vec::new, |p| [p.stops, p.warnings].concat())
}
