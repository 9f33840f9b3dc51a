//! `kerfwright fit JOB`: before buying, does it fit, what is left, what is there to lift.

use std::fmt::Write;

use super::{Ending, JobArgument, files, no_fit_words, own_failure, read_job};
use crate::geom::Outline;
use crate::job::Job;
use crate::piece;
use crate::place::{self, EdgeUse, Placement};
use crate::sheet::figure::{Figures, angle};
use crate::units::MassRange;

/// More people than this are not a team that lifts together.
const MOST_HANDS: f64 = 4.0;

/// As much as is read before buying.
const MOST_LINES: usize = 10;

/// What `fit` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
}

/// Says in at most ten lines whether the top fits the slab; ends well only when it surely does.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, job) = match read_job(&options.job) {
        Ok(read) => read,
        Err(ending) => return ending,
    };
    let (answer, ending) = match place::place(&job) {
        Ok((placement, findings)) if findings.stops.is_empty() => {
            (fits("Fits.", &job, &placement), Ending::Done)
        }
        Ok((placement, _)) => {
            let again = "Measure again: it fits only within the error of the tape.";
            (fits(again, &job, &placement), Ending::JobAtFault)
        }
        Err(no_fit) => (no_fit_words(&text.name, &no_fit), Ending::JobAtFault),
    };
    let lines: Vec<&str> = answer.lines().take(MOST_LINES).collect();
    match files::print(&(lines.join("\n") + "\n")) {
        Ok(()) => ending,
        Err(fault) => own_failure(&fault),
    }
}

fn fits(verdict: &str, job: &Job, placement: &Placement) -> String {
    let figures = Figures { units: job.units };
    let size = |outline: &Outline| {
        let bounds = outline.bounds();
        format!(
            "{} × {}",
            figures.size(bounds.width()),
            figures.size(bounds.height())
        )
    };
    let slab = job.slab.shape.outline();
    let (slab_mass, top_mass) = (
        piece::mass_of(&job.stone, slab.area()),
        piece::mass_of(&job.stone, job.top.area()),
    );
    let mut words = format!("{verdict}\n");
    let _ = writeln!(
        words,
        "slab     {}, {}",
        size(slab),
        figures.mass_range(&slab_mass)
    );
    let top = job.top.shape.outline();
    let _ = writeln!(
        words,
        "top      {}, {}",
        size(top),
        figures.mass_range(&top_mass)
    );
    let _ = writeln!(words, "lies     {}", lies(job, placement));
    let _ = writeln!(
        words,
        "spare    {} at least, tape good to ±{}",
        figures.small(placement.least_spare_mm),
        figures.small(job.slab.tape_error_mm)
    );
    let left = placement.best_rectangle(slab).map_or_else(
        || "no rectangle in an offcut".to_owned(),
        |r| {
            let (long, short) = r.sides();
            format!(
                "{} × {} in one offcut, kerf not taken off",
                figures.size(long),
                figures.size(short)
            )
        },
    );
    let _ = writeln!(words, "left     {left}");
    let _ = writeln!(
        words,
        "to lift  slab: {}; top: {}",
        hands(job, &slab_mass),
        hands(job, &top_mass)
    );
    words
}

fn lies(job: &Job, placement: &Placement) -> String {
    let turned = format!("turned {}", angle(placement.pose.turn));
    let names: Vec<String> = placement
        .uses
        .iter()
        .enumerate()
        .filter_map(|(edge, used)| match used {
            EdgeUse::Flush { slab_edge, .. } => Some(format!(
                "{} on {}",
                job.top.shape.edge_name(edge),
                job.slab.shape.edge_name(*slab_edge)
            )),
            _ => None,
        })
        .collect();
    if names.is_empty() {
        format!("{turned}, every edge sawn")
    } else {
        format!("{turned}, edge {}", names.join(", "))
    }
}

/// How many people a mass needs by what each may lift.
fn hands(job: &Job, mass: &MassRange) -> String {
    let each = job
        .lift
        .each
        .iter()
        .map(|m| m.kg())
        .fold(f64::INFINITY, f64::min);
    let needed = (mass.high.kg() / each).ceil();
    let figures = Figures { units: job.units };
    if !needed.is_finite() {
        "weigh it".to_owned()
    } else if needed > MOST_HANDS {
        format!(
            "no hand lift ({needed:.0} people at {} each)",
            figures.mass(job.lift.each[0])
        )
    } else {
        format!("{needed:.0} people or more")
    }
}
