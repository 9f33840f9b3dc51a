//! What a text of a job file comes to: its faults, or the plan in a few figures and the drawing.

use serde::Serialize;
use serde_json::Value as Json;

use super::edit;
use super::file::OneFile;
use super::parts;
use crate::cli::{no_fit, summary, typeface};
use crate::diag::{Clears, Diagnostic, Finding, Severity};
use crate::document::block::Reading;
use crate::document::{self, Annex};
use crate::job::{self, Job};
use crate::layout::{self, item::Paper};
use crate::plan::Plan;
use crate::render;
use crate::words::{Language, Message, System, Writer};

/// How wide a drawing is made for the screen, mm. The narrower, the larger its words when it fills the
/// screen.
const WIDTHS_MM: [f64; 4] = [95.0, 125.0, 155.0, 190.0];

/// What is shown of a text.
#[derive(Clone, Debug, Serialize)]
pub(super) struct Seen {
    /// The text.
    text: String,
    /// What the form shows; nothing when the text is not TOML.
    values: Option<Json>,
    /// `faults`, `miss` or `fits`.
    outcome: &'static str,
    /// Faults and remarks, in the order of the text.
    said: Vec<Said>,
    /// Why the top does not fit, and what would.
    miss: Vec<String>,
    /// The figures of the plan, by name.
    figures: Vec<(&'static str, String)>,
    stops: Vec<Found>,
    open: Vec<Found>,
    /// The slab with the top, as SVG; empty when there is no plan.
    drawing: String,
}

/// A fault or a remark.
#[derive(Clone, Debug, Serialize)]
struct Said {
    severity: Severity,
    key: String,
    /// Counted from 1, when the place is known.
    line: Option<usize>,
    message: String,
    hint: String,
}

/// A stop or an open point.
#[derive(Clone, Debug, Serialize)]
struct Found {
    title: String,
    detail: String,
    /// The key that clears it; empty when none does.
    key: &'static str,
    /// What clears it otherwise.
    act: String,
}

/// Looks at a text.
pub(super) fn look(file: &OneFile, text: String, room_mm: f64) -> Seen {
    let mut seen = Seen {
        values: edit::values(&text),
        text,
        outcome: "faults",
        said: Vec::new(),
        miss: Vec::new(),
        figures: Vec::new(),
        stops: Vec::new(),
        open: Vec::new(),
        drawing: String::new(),
    };
    match job::read_with(&seen.text, &file.drawings(&seen.text)) {
        Err(faults) => seen.said = said(&seen.text, &faults),
        Ok((job, remarks)) => {
            seen.said = said(&seen.text, &remarks);
            seen.plan(&file.name(), &job, room_mm);
        }
    }
    seen
}

impl Seen {
    fn plan(&mut self, name: &str, job: &Job, room_mm: f64) {
        let plan = match Plan::of(job) {
            Ok(plan) => plan,
            Err(no_fit) => {
                self.outcome = "miss";
                let words = no_fit::no_fit_words(name, job, &no_fit);
                self.miss = words.lines().map(str::to_owned).collect();
                return;
            }
        };
        let lacking = lacking(&self.text, &plan);
        if !lacking.is_empty() {
            self.said.extend(lacking);
            return;
        }
        self.outcome = "fits";
        let figures = summary::figures(&plan).into_iter();
        self.figures = figures.map(|f| (f.name, f.value)).collect();
        self.stops = found(&plan, &plan.stops);
        self.open = found(&plan, &plan.open);
        self.drawing = drawing(job, &plan, room_mm);
    }
}

/// Characters that the sheet's typeface has not got.
fn lacking(text: &str, plan: &Plan) -> Vec<Said> {
    let sheet = layout::pages(&document::document(plan, Annex::With), Paper::A4);
    said(text, &typeface::lacking(text, &sheet))
}

fn said(text: &str, all: &[Diagnostic]) -> Vec<Said> {
    let line = |at: usize| text.bytes().take(at).filter(|b| *b == b'\n').count() + 1;
    let each = all.iter().map(|d| Said {
        severity: d.severity,
        key: d.key.clone(),
        line: d.span.map(|(from, _)| line(from)),
        message: d.message.clone(),
        hint: d.hint.clone(),
    });
    each.collect()
}

fn found(plan: &Plan, all: &[Finding]) -> Vec<Found> {
    let writer = plan.writer().english();
    let each = all.iter().map(|finding| {
        let (key, act) = match finding.phrase.clears {
            Clears::Key(key) => (key, String::new()),
            Clears::Act(id) => ("", writer.say(&Message::plain(id))),
        };
        Found {
            title: writer.say(&finding.message),
            detail: writer.detail(&finding.message),
            key,
            act,
        }
    });
    each.collect()
}

/// The drawing for so much room, with the edges and corners that can be pointed at.
pub(super) fn drawing(job: &Job, plan: &Plan, room_mm: f64) -> String {
    let mut figure = document::overview(plan);
    figure.extend(parts::parts(job, plan));
    let writer = Writer::new(System::from(plan.job.units), Language::English);
    let narrower = WIDTHS_MM.iter().take_while(|width| **width < room_mm);
    let widths = &WIDTHS_MM[narrower.count().min(WIDTHS_MM.len() - 1)..];
    let (page, size) = layout::figure_page(&figure, writer, Reading::Bench, widths);
    render::svg::svg_page(&page, size)
}
