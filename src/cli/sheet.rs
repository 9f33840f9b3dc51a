//! `kerfwright sheet JOB`: the job sheet as a PDF, or as one HTML file for a telephone.

use std::path::{Path, PathBuf};

use super::files::JobText;
use super::output::Output;
use super::typeface::lacking;
use super::{Ending, JobArgument, conclude, files, planned, report, stops};
use crate::document::block::Document;
use crate::document::{self, Annex};
use crate::job::Drawings;
use crate::layout::{self, item::Paper};
use crate::plan::Plan;
use crate::render;
use crate::words::{Language, Message, System, Unit, Value, Writer};

/// What `sheet` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    pub(super) job: JobArgument,
    /// Where to write; a name that ends in .html gets the sheet as one page for a telephone. Left out: the
    /// job's name with .pdf, in the current folder. "-" for standard output
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
    /// Size of the paper
    #[arg(long, value_enum, default_value_t)]
    paper: PaperName,
    /// The annex: working, tables, sources, every finding in full. Left out: the bench pages alone
    #[arg(long, value_enum, default_value_t, num_args = 0..=1, default_missing_value = "with")]
    annex: AnnexWanted,
    /// Language of the pages that a helper reads; left out: the job's own, or English
    #[arg(short, long, value_name = "LANGUAGE", value_parser = language)]
    language: Option<Language>,
}

/// Reads a language, or says which there are.
pub(super) fn language(text: &str) -> Result<Language, String> {
    Language::parse(text).ok_or_else(|| format!("there is {}", Language::list()))
}

#[derive(Clone, Copy, Debug, Default, clap::ValueEnum)]
enum PaperName {
    /// 210 × 297 mm
    #[default]
    A4,
    /// 8.5 × 11 in
    Letter,
}

#[derive(Clone, Copy, Debug, Default, clap::ValueEnum)]
enum AnnexWanted {
    /// Bench pages alone
    #[default]
    Without,
    /// Behind the bench pages
    With,
    /// The annex alone
    Only,
}

impl From<AnnexWanted> for Annex {
    fn from(wanted: AnnexWanted) -> Self {
        match wanted {
            AnnexWanted::Without => Self::Without,
            AnnexWanted::With => Self::With,
            AnnexWanted::Only => Self::Only,
        }
    }
}

/// What the sheet is written as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Form {
    Pdf,
    Html,
}

impl Form {
    /// As the name of the file says.
    fn of(output: Option<&Path>) -> Self {
        let ending = output.and_then(Path::extension);
        if ending.is_some_and(|e| e.eq_ignore_ascii_case("html")) {
            Self::Html
        } else {
            Self::Pdf
        }
    }

    const fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Html => "html",
        }
    }
}

/// Writes the sheet and says in a few lines what was planned.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let form = Form::of(options.output.as_deref());
    if matches!(form, Form::Pdf) {
        render::pdf::make_ready();
    }
    let (text, mut plan) = match planned(&options.job) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    let output = match Output::of(options.output.as_deref(), &text, form.ending()) {
        Ok(output) => output,
        Err(ending) => return ending,
    };
    if let Some(language) = options.language {
        plan.job.language = language;
    }
    let document = document::document(&plan, options.annex.into());
    let bytes = match form {
        Form::Html => Ok(render::html::page(&document).into_bytes()),
        Form::Pdf => printed(&text, &document, options.paper),
    };
    let bytes = match bytes {
        Ok(bytes) => bytes,
        Err(ending) => return ending,
    };
    match output.put(&bytes, "job sheet") {
        Err(ending) => ending,
        Ok(line) if line.is_empty() => {
            files::say(&(summary(&plan) + &stops(&plan)));
            Ending::of(&plan)
        }
        Ok(line) => conclude(&(line + &summary(&plan) + &stops(&plan)), &plan),
    }
}

/// The document as a PDF; what the typeface lacks is said.
fn printed(text: &JobText, document: &Document, paper: PaperName) -> Result<Vec<u8>, Ending> {
    let paper = match paper {
        PaperName::A4 => Paper::A4,
        PaperName::Letter => Paper::Letter,
    };
    let sheet = layout::pages(document, paper);
    let lacking = lacking(&text.text, &sheet);
    if !lacking.is_empty() {
        report::say(text, &lacking);
        return Err(Ending::JobAtFault);
    }
    render::pdf::pdf(&sheet).map_err(|fault| {
        files::say(&format!(
            "kerfwright: the sheet cannot be printed: {fault}\n"
        ));
        Ending::OwnFailure
    })
}

/// The bench pages of a job's text, or its annex, as PDF.
///
/// # Errors
/// Why there is none, in a line.
pub(super) fn of_text(
    text: &str,
    drawings: &Drawings,
    letter: bool,
    annex: bool,
) -> Result<Vec<u8>, String> {
    let job =
        crate::job::read_with(text, drawings).map_err(|_| "the job file has faults".to_owned())?;
    let plan = Plan::of(&job.0).map_err(|_| "the top does not fit the slab".to_owned())?;
    let annex = if annex { Annex::Only } else { Annex::Without };
    let paper = if letter { Paper::Letter } else { Paper::A4 };
    let sheet = layout::pages(&document::document(&plan, annex), paper);
    render::pdf::pdf(&sheet).map_err(|fault| format!("the sheet cannot be printed: {fault}"))
}

fn summary(plan: &Plan) -> String {
    let writer = Writer::new(System::from(plan.job.units), Language::English);
    let minutes = |m: f64| Value::of(m, Unit::Minute).up();
    let told = Message::new(
        "answer-sheet",
        [
            ("low", Value::mass(plan.top.mass.low).down()),
            ("high", Value::mass(plan.top.mass.high).up()),
            ("straight", Value::count(plan.totals.straight_cuts)),
            ("curves", Value::count(plan.totals.curves)),
            ("sawing", minutes(plan.totals.sawing_minutes)),
            ("setting", minutes(plan.totals.set_up_minutes)),
            ("stops", Value::count(plan.stops.len())),
        ],
    );
    format!("{}\n", writer.say(&told))
}
