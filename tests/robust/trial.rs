//! One input through the whole program but for its files: what it ends in, and what must never be.

use std::collections::BTreeSet;
use std::fmt::{self, Write};
use std::hash::{DefaultHasher, Hash, Hasher};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};

use kerfwright::cli::files::text;
use kerfwright::cli::report::{Colour, draw};
use kerfwright::diag::{Diagnostic, Finding, Severity};
use kerfwright::document::{Annex, document};
use kerfwright::job::Job;
use kerfwright::layout::{self, item::Paper};
use kerfwright::plan::Plan;
use kerfwright::render;
use kerfwright::words::{Language, Writer};

use crate::replay::{self, Wish};

/// What an input ends in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum End {
    NoText,
    Faults,
    NoFit,
    Planned,
}

/// What must never be.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Wrong {
    Panicked(String),
    NotFinite,
    /// A plan that does not replay.
    Replay(String),
    /// Faults that cannot be shown, or a refusal without a reason.
    Report(String),
}

/// What came of an input.
#[derive(Clone, Debug)]
pub(crate) struct Trial {
    pub(crate) end: End,
    pub(crate) wrong: Vec<Wrong>,
    /// Reading, planning and laying out, without the checks.
    pub(crate) took: Duration,
    /// What was said, each thing once, numbers and names left out: inputs with the same answers went
    /// much the same way.
    pub(crate) answers: BTreeSet<u64>,
}

/// How far a planned job is followed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Depth {
    /// Plan, numbers and replay.
    Plan,
    /// The sheet as well.
    Sheet,
}

/// Whether a stop says that waste stays on, because a cut could not be made.
fn leaves_waste(stop: &Finding) -> bool {
    let said = format!("{:?}", stop.message);
    ["waste-not-freed", "waste-stays"]
        .iter()
        .any(|id| said.contains(id))
}

/// Tries an input.
pub(crate) fn tried(input: &[u8], depth: Depth) -> Trial {
    let start = Instant::now();
    let mut trial = Trial {
        end: End::NoText,
        wrong: Vec::new(),
        took: Duration::ZERO,
        answers: BTreeSet::new(),
    };
    let outcome = catch_unwind(AssertUnwindSafe(|| match text(input.to_vec()) {
        Ok(text) => trial.follow(&text, depth, start),
        Err(why) => trial.answer("no text", "", &why),
    }));
    if let Err(panic) = outcome {
        let said = panic.downcast_ref::<String>().cloned();
        let said = said.or_else(|| panic.downcast_ref::<&str>().map(|s| (*s).to_owned()));
        trial.wrong.push(Wrong::Panicked(said.unwrap_or_default()));
    }
    if trial.took == Duration::ZERO {
        trial.took = start.elapsed();
    }
    trial
}

impl Trial {
    fn follow(&mut self, text: &str, depth: Depth, start: Instant) {
        match kerfwright::job::read(text) {
            Err(faults) => {
                self.end = End::Faults;
                self.took = start.elapsed();
                if !faults.iter().any(|f| f.severity == Severity::Fault) {
                    self.wrong
                        .push(Wrong::Report("refused without a fault".to_owned()));
                }
                self.reported(text, &faults);
            }
            Ok((job, remarks)) => {
                self.reported(text, &remarks);
                self.plan(&job, depth, start);
            }
        }
    }

    /// Faults and remarks can be drawn, and point into the text.
    fn reported(&mut self, text: &str, found: &[Diagnostic]) {
        for one in found {
            self.answer("fault", &one.key, &one.message);
            let (start, end) = one.span.unwrap_or((0, 0));
            if start > end || end > text.len() {
                self.wrong
                    .push(Wrong::Report(format!("{}: {start}..{end}", one.key)));
            }
        }
        if !found.is_empty() && !draw("job.toml", text, found, Colour::Plain).contains("job.toml") {
            self.wrong
                .push(Wrong::Report("nothing is drawn".to_owned()));
        }
    }

    fn plan(&mut self, job: &Job, depth: Depth, start: Instant) {
        let plan = match Plan::of(job) {
            Ok(plan) => plan,
            Err(no_fit) => {
                self.end = End::NoFit;
                if no_fit.reasons.is_empty() {
                    self.wrong
                        .push(Wrong::Report("no fit, and no reason".to_owned()));
                }
                let plain = Writer::new(job.units.into(), Language::English);
                for reason in &no_fit.reasons {
                    self.answer("no fit", "", &plain.say(reason));
                }
                return;
            }
        };
        self.end = End::Planned;
        let graded = [
            ("stop", &plan.stops),
            ("open", &plan.open),
            ("warning", &plan.warnings),
        ];
        for (grade, all) in graded {
            for found in all {
                self.answer(grade, "", &found.message.id);
            }
        }
        for cut in &plan.cuts {
            let how = format!("{:?} {}", cut.kind, few(cut.strokes.len()));
            self.answer("cut", few(plan.cuts.len()), &how);
        }
        if depth == Depth::Sheet {
            let pages = layout::pages(&document(&plan, Annex::With), Paper::A4);
            // A character that the typeface lacks is refused, and that is an answer.
            let _ = render::pdf::pdf(&pages);
        }
        self.took = start.elapsed();
        self.checked(job, &plan);
    }

    /// Every number is one, and a plan that frees all its waste replays; one that does not is stopped.
    fn checked(&mut self, job: &Job, plan: &Plan) {
        let mut numbers = Numbers { all_finite: true };
        let _ = write!(numbers, "{plan:?}");
        if !numbers.all_finite {
            self.wrong.push(Wrong::NotFinite);
        }
        if plan.stops.iter().any(leaves_waste) {
            return;
        }
        let passes = &job.passes;
        let wish = Wish {
            score: passes.score_mm,
            step: passes.step_mm,
            plunge_step: passes.plunge_step_mm,
            through: passes.through_mm,
            cusp: passes.cusp_mm,
        };
        match serde_json::from_str(&render::json::plan(plan)) {
            Ok(plan) => self
                .wrong
                .extend(replay::faults(&plan, &wish).into_iter().map(Wrong::Replay)),
            Err(fault) => self.wrong.push(Wrong::Report(fault.to_string())),
        }
    }

    fn answer(&mut self, kind: &str, key: &str, said: &str) {
        let mut hasher = DefaultHasher::new();
        (kind, shape(key), shape(said)).hash(&mut hasher);
        self.answers.insert(hasher.finish());
    }
}

/// How many, as a word that stays when numbers are left out.
fn few(count: usize) -> &'static str {
    match count {
        0 => "none",
        1 => "one",
        2 => "two",
        3..=5 => "few",
        6..=20 => "some",
        _ => "many",
    }
}

/// A text without its numbers and without what stands in quotes.
fn shape(text: &str) -> String {
    let mut quoted = false;
    let keep = |c: &char| {
        quoted ^= matches!(c, '"' | '`' | '\'');
        !quoted && !c.is_ascii_digit() && !matches!(c, '.' | '-' | ' ')
    };
    text.chars().filter(keep).collect()
}

/// Looks at what is written and keeps nothing of it.
struct Numbers {
    all_finite: bool,
}

impl Write for Numbers {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        self.all_finite &= !matches!(text, "NaN" | "inf" | "-inf");
        Ok(())
    }
}

#[test]
fn a_number_that_is_none_is_seen() {
    let sees = |x: f64| {
        let mut numbers = Numbers { all_finite: true };
        write!(numbers, "{:?}", [Some(("infinite", x))]).unwrap();
        numbers.all_finite
    };
    assert!(sees(1e308) && !sees(f64::NAN) && !sees(f64::INFINITY) && !sees(-f64::INFINITY));
}
