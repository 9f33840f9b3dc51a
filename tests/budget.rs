//! The bench pages of many jobs: how many they are, and that none but the last is half empty.
//!
//! A sheet takes six pages that every job has and those of its work: half a page for each straight cut, one for
//! each curve and each opening, one for a repair. Work of three pages or more saves one: its order of the day
//! stands on page 1, and its day shares a page with the move. Few may not: those with a long table of marks.

// Counts and grid coordinates are far below what the casts can hold.
#![allow(
    clippy::cast_possible_truncation,
    clippy::cast_precision_loss,
    clippy::cast_sign_loss
)]

mod job_texts;
#[path = "replay/mod.rs"]
mod replay;

use kerfwright::cut::{Cut, CutKind, SetOut};
use kerfwright::document::{Annex, document};
use kerfwright::job::read;
use kerfwright::layout::item::{Item, Page, Paper};
use kerfwright::layout::pages;
use kerfwright::plan::Plan;
use kerfwright::words::Language;

use job_texts::jobs;
use replay::random_job::RandomJob;

const PAPERS: [Paper; 2] = [Paper::A4, Paper::Letter];
/// A bench page but the last is at least so full, from its head's rule to its foot's.
const FULL: f64 = 0.45;
/// Two pivots nearer than this are one, mm.
const ONE_PIVOT_MM: f64 = 0.5;
/// No text is nearer to the paper's lower edge, mm: below the foot.
const EDGE_MM: f64 = 8.0;
/// The pages that every job has: at a glance, mark out, move, dust, helper, day.
const OF_EVERY_JOB: usize = 6;

/// Half a page for each straight cut, a page for each curve and each opening, one for a repair.
fn work(plan: &Plan) -> usize {
    let own = |kind: CutKind| {
        let cuts = plan.cuts.iter().filter(|c| c.cutout.is_none());
        cuts.filter(|c| c.kind == kind).collect::<Vec<&Cut>>()
    };
    let mut openings: Vec<usize> = plan.cuts.iter().filter_map(|c| c.cutout).collect();
    openings.sort_unstable();
    openings.dedup();
    let straight = own(CutKind::Straight).len().div_ceil(2);
    let curves = curves(&own(CutKind::Curve));
    straight + curves + openings.len() + usize::from(plan.repair.is_some())
}

/// Curves, those about one pivot being one.
fn curves(cuts: &[&Cut]) -> usize {
    let same = |a: &Cut, b: &Cut| match (&a.set_out, &b.set_out) {
        (SetOut::Pivot(a), SetOut::Pivot(b)) => {
            a.pivot.distance(b.pivot) < ONE_PIVOT_MM
                && (a.sawn_radius - b.sawn_radius).abs() < ONE_PIVOT_MM
        }
        _ => false,
    };
    let first = |(i, cut): (usize, &&Cut)| !cuts[..i].iter().any(|c| same(c, cut));
    cuts.iter().enumerate().filter(|c| first(*c)).count()
}

fn full(page: &Page, paper: Paper) -> f64 {
    let (top, floor) = (paper.size_mm().1 - 25.0, 22.0);
    let lowest = page.items.iter().filter_map(|item| match item {
        Item::Text(text) => Some(text.at.y).filter(|y| *y > floor),
        _ => None,
    });
    (top - lowest.fold(top, f64::min)) / (top - floor)
}

/// What the bench pages of some plans come to.
#[derive(Default)]
struct Seen {
    /// Plans on a paper.
    sheets: usize,
    /// Those whose cuts take three pages or more and that save none of them.
    spared_none: usize,
    faults: Vec<String>,
}

impl Seen {
    fn plan(&mut self, name: &str, plan: &Plan) {
        for paper in PAPERS {
            self.sheet(name, plan, paper);
        }
    }

    fn sheet(&mut self, name: &str, plan: &Plan, paper: Paper) {
        let sheet = pages(&document(plan, Annex::Without), paper);
        let (count, work) = (sheet.pages.len(), work(plan));
        let most = OF_EVERY_JOB + work;
        self.sheets += 1;
        self.spared_none += usize::from(work >= 3 && count == most);
        let name = format!("{name} on {paper:?}");
        if count > most {
            let pages: Vec<&str> = sheet.pages.iter().map(|p| p.name.as_str()).collect();
            let fault = format!("{name}: {count} pages, {most} planned: {pages:?}");
            self.faults.push(fault);
        }
        for (i, page) in sheet.pages.iter().enumerate() {
            let full = full(page, paper);
            if full < FULL && i + 1 < count {
                self.faults
                    .push(format!("{name}, {}: {full:.2}", page.name));
            }
            if !on_paper(page, paper) {
                self.faults
                    .push(format!("{name}, {}: off the paper", page.name));
            }
        }
    }

    fn check(self, least: usize) {
        assert!(self.sheets >= least, "only {} sheets", self.sheets);
        assert!(self.faults.is_empty(), "{:#?}", self.faults);
        let spared_none = self.spared_none;
        assert!(spared_none * 5 <= self.sheets, "{spared_none} save no page");
    }
}

/// Whether every text stands on the paper.
fn on_paper(page: &Page, paper: Paper) -> bool {
    let (width, height) = paper.size_mm();
    page.items.iter().all(|item| match item {
        Item::Text(text) => {
            let b = text.bounds();
            b.min.x > 0.0 && b.min.y > EDGE_MM && b.max.x < width && b.max.y < height
        }
        _ => true,
    })
}

fn planned(text: &str) -> Option<Plan> {
    let (job, _) = read(text).ok()?;
    Plan::of(&job).ok()
}

#[test]
fn the_jobs_of_the_tests_keep_to_their_budget() {
    let each = ["tests/golden", "tests/pdf_sheet", "examples"].map(jobs);
    let mut seen = Seen::default();
    for (name, text) in each.iter().flatten() {
        if let Some(plan) = planned(text) {
            seen.plan(name, &plan);
        }
    }
    seen.check(46);
}

fn random_jobs(seeds: std::ops::Range<u64>, of: fn(u64) -> RandomJob) {
    let mut seen = Seen::default();
    for seed in seeds {
        if let Some(plan) = planned(&of(seed).text()) {
            seen.plan(&format!("seed {seed}"), &plan);
        }
    }
    seen.check(64);
}

#[test]
fn random_jobs_keep_to_their_budget() {
    random_jobs(0..80, RandomJob::of);
}

#[test]
fn random_jobs_with_insides_keep_to_their_budget() {
    random_jobs(0..36, RandomJob::with_insides);
}

/// The examples in every language: a longer word takes no page more.
#[test]
fn the_examples_take_eight_pages_in_every_language() {
    for (name, text) in jobs("examples") {
        let mut plan = planned(&text).expect("an example is planned");
        for language in Language::ALL {
            plan.job.language = language;
            for paper in PAPERS {
                let count = pages(&document(&plan, Annex::Without), paper).pages.len();
                assert!(
                    count <= 8,
                    "{name} in {language:?} on {paper:?}: {count} pages"
                );
            }
        }
    }
}
