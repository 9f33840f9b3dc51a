//! `kerfwright template JOB`: a part of the top at 1:1 as a PDF, to be laid on the stone.

use std::fmt::Write;
use std::path::PathBuf;

use super::output::Output;
use super::sheet::language;
use super::typeface::lacking;
use super::{Ending, JobArgument, conclude, files, planned, report, stops};
use crate::layout::item::Paper;
use crate::layout::tiles::{self, Format, LONGEST_MM, Printed, WantedSheets};
use crate::plan::Plan;
use crate::template::{NamedPart, Template, parts, template};
use crate::words::{Language, Writer};
use crate::{document, render};

/// What `template` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// What to print: top, or such as curve-3 (the cut's number), opening-1, clip-2 or scoop-2 (the
    /// corner); left out: every curve, opening, clip and scoop
    #[arg(long, value_name = "PART")]
    part: Option<NamedPart>,
    /// What to print on
    #[arg(long, value_enum, default_value_t)]
    paper: PaperName,
    /// The two bars as measured on a print, across and up, in mm: cures a printer that is out by up to 5 %
    #[arg(long, value_name = "99.4x99.6", value_parser = measured)]
    measured: Option<[f64; 2]>,
    /// Where to write; left out: the job's name with .pdf behind -template, in the current folder. "-"
    /// for standard output
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
    /// Language of the pages; left out: the job's own, or English
    #[arg(short, long, value_name = "LANGUAGE", value_parser = language)]
    language: Option<Language>,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, clap::ValueEnum)]
enum PaperName {
    /// 210 × 297 mm, tiles to be joined
    #[default]
    A4,
    /// 8.5 × 11 in, tiles to be joined
    Letter,
    /// One page, up to 5 m long
    Roll,
}

impl From<PaperName> for Format {
    fn from(name: PaperName) -> Self {
        match name {
            PaperName::A4 => Self::Tiles(Paper::A4),
            PaperName::Letter => Self::Tiles(Paper::Letter),
            PaperName::Roll => Self::Roll,
        }
    }
}

/// The least and the most that a bar of 100 mm may measure, mm (judgement: a printer that is farther out
/// fits the page to its paper).
const BAR_MM: std::ops::RangeInclusive<f64> = 95.0..=105.0;

/// Reads the two bars.
fn measured(text: &str) -> Result<[f64; 2], String> {
    let bars = text.split_once(['x', '×']).and_then(|(across, up)| {
        let number = |t: &str| t.trim().replace(',', ".").parse::<f64>().ok();
        Some([number(across)?, number(up)?])
    });
    let bars = bars.ok_or("two lengths in mm are wanted, across and up, such as 99.4x99.6")?;
    if bars.iter().all(|bar| BAR_MM.contains(bar)) {
        return Ok(bars);
    }
    Err(format!(
        "a bar measures {} to {} mm; beyond that the print was fitted to the page: print at 100 %",
        BAR_MM.start(),
        BAR_MM.end()
    ))
}

/// Writes the template.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (mut text, mut plan) = match planned(&options.job) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    text.stem.push_str("-template");
    let output = match Output::of(options.output.as_deref(), &text, "pdf") {
        Ok(output) => output,
        Err(ending) => return ending,
    };
    plan.job.language = options.language.unwrap_or(plan.job.language);
    let templates = match templates(&plan, options) {
        Ok(templates) => templates,
        Err(ending) => return ending,
    };
    let wanted = WantedSheets {
        job: &plan.job.title,
        date: &plan.job.date,
        plan: &document::fingerprint(&plan),
        writer: Writer::new(plan.job.units.into(), plan.job.language),
        format: options.paper.into(),
        measured: options.measured,
    };
    let printed = match tiles::print(&templates, &wanted) {
        Ok(printed) => printed,
        Err(length) => return too_long(length),
    };
    let lacking = lacking(&text.text, &printed.sheet);
    if !lacking.is_empty() {
        report::say(&text, &lacking);
        return Ending::JobAtFault;
    }
    let bytes = match render::pdf(&printed.sheet) {
        Ok(bytes) => bytes,
        Err(fault) => {
            files::say(&format!("kerfwright: it cannot be printed: {fault}\n"));
            return Ending::OwnFailure;
        }
    };
    let told = told(&templates, &printed) + &stops(&plan);
    match output.put(&bytes, "template") {
        Err(ending) => ending,
        Ok(line) if line.is_empty() => {
            files::say(&told);
            Ending::of(&plan)
        }
        Ok(line) => conclude(&(line + &told), &plan),
    }
}

/// The part asked for, or all that are curved or open; on a roll the whole top.
fn templates(plan: &Plan, options: &Options) -> Result<Vec<Template>, Ending> {
    let there = parts(plan);
    let wanted = match &options.part {
        Some(part) if there.contains(part) => vec![part.clone()],
        Some(part) => {
            let names: Vec<String> = there.iter().map(NamedPart::to_string).collect();
            let names = names.join(", ");
            files::say(&format!(
                "kerfwright: this job has no {part}; it has {names}\n"
            ));
            return Err(Ending::CommandAtFault);
        }
        None if options.paper == PaperName::Roll || there.len() == 1 => vec![NamedPart::Top],
        None => there.into_iter().filter(|p| *p != NamedPart::Top).collect(),
    };
    Ok(wanted.iter().filter_map(|p| template(plan, p)).collect())
}

fn too_long(length: f64) -> Ending {
    files::say(&format!(
        "kerfwright: the page would be {length:.0} mm long, at most {LONGEST_MM} mm; print a part of it \
         with --part, or tiles with --paper a4\n"
    ));
    Ending::CommandAtFault
}

/// What was printed: tiles, turn, size.
fn told(templates: &[Template], printed: &Printed) -> String {
    let mut words = String::new();
    for (template, tiled) in templates.iter().zip(&printed.templates) {
        let turn = tiled.pose.turn.to_degrees();
        let (width, height) = printed.sheet.paper.size_mm();
        let _ = match tiled.tiles.len() {
            1 => write!(words, "{}: one page", template.part),
            n => write!(
                words,
                "{}: {n} tiles and the page that says how they lie",
                template.part
            ),
        };
        let _ = writeln!(words, ", {width} × {height} mm, turned by {turn:.0}°");
    }
    words
}
