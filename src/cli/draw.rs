//! `kerfwright draw JOB`: an SVG of the slab with the top, the cuts and the waste.

use std::path::PathBuf;

use super::{Ending, JobArgument, conclude, files, own_failure, planned, stops};
use crate::render;
use crate::sheet;

/// What `draw` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// Where to write; left out: the job's name with .svg, in the current folder. "-" for standard
    /// output
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
}

/// Writes the drawing.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, plan) = match planned(&options.job) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    let (page, size) = sheet::drawing_page(&plan);
    let svg = render::svg::svg_page(&page, size);
    if options
        .output
        .as_ref()
        .is_some_and(|o| o.as_os_str() == "-")
    {
        files::say(&stops(&plan));
        return conclude(&svg, &plan);
    }
    let path = options
        .output
        .clone()
        .unwrap_or_else(|| PathBuf::from(format!("{}.svg", text.stem)));
    if let Err(fault) = files::write_whole(&path, svg.as_bytes()) {
        return own_failure(&fault);
    }
    let written = format!("{}: drawing written\n", path.display());
    conclude(&(written + &stops(&plan)), &plan)
}
