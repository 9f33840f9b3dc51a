//! `kerfwright draw JOB`: an SVG of the slab with the top, the cuts and the waste, to look at or at true
//! size; or a DXF of the latter.

use std::path::PathBuf;

use super::output::Output;
use super::{Ending, JobArgument, conclude, files, planned, stops};
use crate::plan::Plan;
use crate::render;
use crate::words::{Language, System, Writer};
use crate::{document, layout, template};

/// What `draw` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// Where to write; left out: the job's name with .svg or .dxf, in the current folder. "-" for standard
    /// output
    #[arg(short, long, value_name = "FILE")]
    output: Option<PathBuf>,
    /// The whole job at true size on named layers, for a plotter or a shop; left out: a drawing to look
    /// at
    #[arg(long = "as", value_enum, value_name = "FORM")]
    form: Option<Form>,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, clap::ValueEnum)]
enum Form {
    /// SVG in mm, a group for each layer
    Svg,
    /// DXF in mm
    Dxf,
}

/// Writes the drawing.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, plan) = match planned(&options.job) {
        Ok(planned) => planned,
        Err(ending) => return ending,
    };
    let ending = match options.form {
        Some(Form::Dxf) => "dxf",
        Some(Form::Svg) | None => "svg",
    };
    let output = match Output::of(options.output.as_deref(), &text, ending) {
        Ok(output) => output,
        Err(ending) => return ending,
    };
    let drawn = match drawn(&plan, options.form) {
        Ok(drawn) => drawn,
        Err(fault) => {
            files::say(&format!(
                "kerfwright: the drawing cannot be made: {fault}\n"
            ));
            return Ending::OwnFailure;
        }
    };
    match output.put(drawn.as_bytes(), "drawing") {
        Err(ending) => ending,
        Ok(line) if line.is_empty() => {
            files::say(&stops(&plan));
            Ending::of(&plan)
        }
        Ok(line) => conclude(&(line + &stops(&plan)), &plan),
    }
}

fn drawn(plan: &Plan, form: Option<Form>) -> Result<String, render::RenderFault> {
    match form {
        Some(Form::Dxf) => render::dxf(&template::layers(plan)),
        Some(Form::Svg) => Ok(render::svg_layers(&plan.job.title, &template::layers(plan))),
        None => {
            let writer = Writer::new(System::from(plan.job.units), Language::English);
            let (page, size) = layout::drawing_page(&document::overview(plan), writer);
            Ok(render::svg::svg_page(&page, size))
        }
    }
}
