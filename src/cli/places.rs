//! `kerfwright places JOB`: the best few places that differ, each with what it costs and a drawing.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use super::{Ending, JobArgument, files, no_fit_words, own_failure, read_job};
use crate::job::{Job, PlaceHow};
use crate::place::{self, EdgeUse, Placement, several};
use crate::plan::Plan;
use crate::sheet::figure::{Figures, angle, face, time};
use crate::{render, sheet};

/// What `places` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
    /// How many places at most
    #[arg(long, value_name = "COUNT", default_value_t = 5, value_parser = clap::value_parser!(u8).range(1..=20))]
    most: u8,
    /// Draw each as an SVG: into this folder, or under this name with the place's number for a "#".
    /// Left out: no drawings
    #[arg(long, value_name = "FOLDER or NAME-#.svg")]
    svg: Option<PathBuf>,
}

/// Lists the places and writes their drawings.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, job) = match read_job(&options.job) {
        Ok(read) => read,
        Err(ending) => return ending,
    };
    let places = match several::several(&job, usize::from(options.most)) {
        Ok(places) => places,
        Err(no_fit) => {
            files::say(&no_fit_words(&text.name, &no_fit));
            return Ending::JobAtFault;
        }
    };
    let mut words = String::new();
    for (i, placement) in places.iter().enumerate() {
        let (number, fixed) = (i + 1, fixed(&job, placement));
        words.push_str(&told(number, &job, placement));
        let Some(target) = &options.svg else {
            continue;
        };
        let path = drawing_path(target, &text.stem, number);
        match draw(&fixed, &path) {
            Ok(()) => {
                let _ = writeln!(words, "  drawing    {}", path.display());
            }
            Err(ending) => return ending,
        }
    }
    match files::print(&words) {
        Ok(()) => Ending::Done,
        Err(fault) => own_failure(&fault),
    }
}

/// The job with this place fixed.
fn fixed(job: &Job, placement: &Placement) -> Job {
    let mut fixed = job.clone();
    fixed.place.how = PlaceHow::Fixed {
        at: crate::geom::Point::ORIGIN + placement.pose.shift,
        turn_deg: placement.pose.turn.to_degrees(),
    };
    fixed
}

fn draw(job: &Job, path: &Path) -> Result<(), Ending> {
    let plan = Plan::of(job).map_err(|no_fit| {
        files::say(&no_fit_words("this place", &no_fit));
        Ending::OwnFailure
    })?;
    let (page, size) = sheet::drawing_page(&plan);
    let svg = render::svg::svg_page(&page, size);
    files::write_whole(path, svg.as_bytes()).map_err(|fault| own_failure(&fault))
}

/// A number in place of `#` in the name, or a file of its own in the folder.
fn drawing_path(target: &Path, stem: &str, number: usize) -> PathBuf {
    let name = target.to_string_lossy();
    if name.contains('#') {
        PathBuf::from(name.replace('#', &number.to_string()))
    } else {
        target.join(format!("{stem}-place-{number}.svg"))
    }
}

/// What a place costs and leaves, and the lines that fix it.
fn told(number: usize, job: &Job, placement: &Placement) -> String {
    let figures = Figures { units: job.units };
    let minutes = placement.work_mm2 / 100.0 / job.passes.rate_cm2_per_min;
    let stopped = placement.trims.iter().filter(|t| !t.runs_off()).count();
    let mut words = format!("Place {number}\n");
    let _ = writeln!(
        words,
        "  sawing     {} counted with curves and stopped cuts by their factors, {}",
        face(placement.work_mm2),
        time(minutes)
    );
    let _ = writeln!(
        words,
        "  trims      {} running off, {stopped} stopped",
        placement.trims.len() - stopped
    );
    let _ = writeln!(words, "  turned     {}", angle(placement.pose.turn));
    let _ = writeln!(words, "  reused     {}", reused(job, placement));
    let _ = writeln!(
        words,
        "  to spare   {} at least",
        figures.small(placement.least_spare_mm)
    );
    if placement.least_spare_mm < 2.0 * job.slab.tape_error_mm {
        words.push_str("             within the error of the tape: measure again\n");
    }
    let left = placement.best_rectangle(job.slab.shape.outline());
    let left = left.map_or_else(
        || "no rectangle".to_owned(),
        |r| {
            let (long, short) = r.sides();
            format!(
                "{} × {} in one offcut, kerf not taken off",
                figures.size(long),
                figures.size(short)
            )
        },
    );
    let _ = writeln!(words, "  left       {left}");
    words.push_str("  to fix it  [place]\n");
    for line in place::fixing_lines(placement) {
        let _ = writeln!(words, "             {line}");
    }
    words
}

fn reused(job: &Job, placement: &Placement) -> String {
    let uses = placement.uses.iter().enumerate();
    let names: Vec<String> = uses
        .filter_map(|(edge, used)| match used {
            EdgeUse::Flush { slab_edge, .. } => Some(format!(
                "slab {} for edge {}",
                job.slab.shape.edge_name(*slab_edge),
                job.top.shape.edge_name(edge)
            )),
            _ => None,
        })
        .collect();
    if names.is_empty() {
        "no edge of the slab".to_owned()
    } else {
        names.join(", ")
    }
}
