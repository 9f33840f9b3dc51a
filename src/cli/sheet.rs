//! `kerfwright sheet JOB`: the job sheet as a PDF.

use std::fmt::Write;
use std::path::PathBuf;

use super::{Ending, JobArgument, conclude, files, own_failure, planned, stops};
use crate::plan::Plan;
use crate::render;
use crate::sheet::figure::{Figures, time};
use crate::sheet::item::{Paper, Sheet};
use crate::words::Language;

/// What `sheet` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// Where to write; left out: the job's name with .pdf, in the current folder. "-" for standard
    /// output
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
    /// Size of the paper
    #[arg(long, value_enum, default_value_t)]
    paper: PaperName,
    /// Language of the helper's and the safety page; left out: the job's own, or English
    #[arg(short, long, value_name = "LANGUAGE", value_parser = language)]
    language: Option<Language>,
}

/// Reads a language, or says which there are.
fn language(text: &str) -> Result<Language, String> {
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

/// Writes the sheet and says in a few lines what was planned.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, mut plan) = match planned(&options.job) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    if let Some(language) = options.language {
        plan.job.language = language;
    }
    let paper = match options.paper {
        PaperName::A4 => Paper::A4,
        PaperName::Letter => Paper::Letter,
    };
    let sheet = crate::sheet::sheet(&plan, paper);
    let lacking = lacking(&text.name, &sheet);
    if !lacking.is_empty() {
        files::say(&lacking);
        return Ending::JobAtFault;
    }
    let bytes = match render::pdf::pdf(&sheet) {
        Ok(bytes) => bytes,
        Err(fault) => {
            files::say(&format!(
                "kerfwright: the sheet cannot be printed: {fault}\n"
            ));
            return Ending::OwnFailure;
        }
    };
    if options
        .output
        .as_ref()
        .is_some_and(|o| o.as_os_str() == "-")
    {
        files::say(&(summary(&plan) + &stops(&plan)));
        return match files::put(&bytes) {
            Err(fault) => own_failure(&fault),
            Ok(()) => Ending::of(&plan),
        };
    }
    let path = options
        .output
        .clone()
        .unwrap_or_else(|| PathBuf::from(format!("{}.pdf", text.stem)));
    if let Err(fault) = files::write_whole(&path, &bytes) {
        return own_failure(&fault);
    }
    let written = format!("{}: job sheet written\n", path.display());
    conclude(&(written + &summary(&plan) + &stops(&plan)), &plan)
}

/// One line for each character that the sheet's typeface cannot print, with the text it stands in.
fn lacking(name: &str, sheet: &Sheet) -> String {
    let mut told: Vec<char> = Vec::new();
    let mut words = String::new();
    for lacking in sheet.missing_characters() {
        let c = lacking.character;
        if told.contains(&c) {
            continue;
        }
        told.push(c);
        let _ = writeln!(
            words,
            "{name}: the sheet's typeface has no '{}' (U+{:04X}), in \"{}\"; write it another way",
            c.escape_debug(),
            u32::from(c),
            lacking.text.escape_debug()
        );
    }
    words
}

fn summary(plan: &Plan) -> String {
    let figures = Figures {
        units: plan.job.units,
    };
    format!(
        "finished top  {}\ncuts          {} straight, {} curved\nsawing time   {} with the disc in \
         the stone, {} setting up\nstops         {}\n",
        figures.mass_range(&plan.top.mass),
        plan.totals.straight_cuts,
        plan.totals.curves,
        time(plan.totals.sawing_minutes),
        time(plan.totals.set_up_minutes),
        plan.stops.len(),
    )
}
