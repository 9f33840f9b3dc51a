//! The plan as JSON.

use serde::Serialize;

use crate::diag::{Clears, Finding, Harm, Scope};
use crate::hazard::moment::{CheckLine, Moment};
use crate::plan::{Plan, Weighing};
use crate::words::Writer;

/// Version of the form of the answer: it changes when a key changes its meaning or goes.
pub const VERSION: u32 = 4;

/// JSON Schema (draft 2020-12) of the plan as it is written here; made from the source by its test.
pub const SCHEMA: &str = include_str!("plan.schema.json");

/// The whole plan as indented JSON with a final line end. Numbers are not rounded; findings are in
/// English and in the job's units.
///
/// A number that is not finite would become `null`; the planner makes none.
#[must_use]
pub fn plan(plan: &Plan) -> String {
    let writer = plan.writer().english();
    let hazards = &plan.hazards;
    pretty(&WithFindings {
        version: VERSION,
        data: &WithChecklist {
            plan,
            checklist: hazards
                .checklist
                .iter()
                .map(|l| checked(l, writer))
                .collect(),
            settled: hazards
                .settled
                .iter()
                .map(|m| plain(&writer.say(m)))
                .collect(),
        },
        stops: said(&plan.stops, writer),
        open: said(&plan.open, writer),
        warnings: said(&plan.warnings, writer),
    })
}

/// What the stone weighs and how it is moved, written in the same way.
#[must_use]
pub fn weighing(weighing: &Weighing) -> String {
    let writer = weighing.writer().english();
    pretty(&WithFindings {
        version: VERSION,
        data: weighing,
        stops: said(&weighing.stops, writer),
        open: said(&weighing.open, writer),
        warnings: said(&weighing.warnings, writer),
    })
}

/// Plain data with its findings in words.
#[derive(Serialize)]
struct WithFindings<'a, T> {
    version: u32,
    stops: Vec<InWords<'a>>,
    open: Vec<InWords<'a>>,
    warnings: Vec<InWords<'a>>,
    #[serde(flatten)]
    data: &'a T,
}

/// The plan with the lines of every job, each with its moment, and what of this job is settled.
#[derive(Serialize)]
struct WithChecklist<'a> {
    #[serde(flatten)]
    plan: &'a Plan,
    checklist: Vec<Checked<'a>>,
    settled: Vec<String>,
}

/// A line of the checklist in words.
#[derive(Serialize)]
struct Checked<'a> {
    moment: Moment,
    #[serde(flatten)]
    said: InWords<'a>,
}

fn checked(line: &CheckLine, writer: Writer) -> Checked<'_> {
    Checked {
        moment: line.moment,
        said: in_words(&line.finding, writer),
    }
}

/// A finding in words.
#[derive(Serialize)]
struct InWords<'a> {
    id: &'static str,
    harm: Harm,
    of: Scope,
    title: String,
    detail: String,
    clears: String,
    source: &'a str,
}

fn said(findings: &[Finding], writer: Writer) -> Vec<InWords<'_>> {
    findings.iter().map(|f| in_words(f, writer)).collect()
}

fn in_words(finding: &Finding, writer: Writer) -> InWords<'_> {
    InWords {
        id: finding.id(),
        harm: finding.phrase.harm,
        of: finding.phrase.of,
        title: plain(&writer.say(&finding.message)),
        detail: plain(&writer.detail(&finding.message)),
        clears: match finding.phrase.clears {
            Clears::Key(key) => key.to_owned(),
            Clears::Act(id) => writer.text(id),
        },
        source: &finding.source,
    }
}

/// With spaces that any program can search for.
fn plain(words: &str) -> String {
    words.replace('\u{a0}', " ")
}

fn pretty(data: &impl Serialize) -> String {
    // Writing plain data to a string fails only for maps with keys that are not strings; there
    // are none.
    let mut text = serde_json::to_string_pretty(data).unwrap_or_default();
    text.push('\n');
    text
}
