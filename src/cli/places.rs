//! `kerfwright places JOB`: the best few places that differ, each with what it costs and a drawing.

use std::fmt::Write;
use std::path::{Path, PathBuf};

use super::fit::{planned, turn};
use super::no_fit::no_fit_words;
use super::{Ending, JobArgument, files, own_failure, read_job, write};
use crate::job::{Job, PlaceHow};
use crate::place::{self, EdgeUse, NoFit, Placement, several};
use crate::plan::Plan;
use crate::words::{Language, System, Unit, Value, Writer};
use crate::{document, layout, render};

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
    let (now, places) = match places(&job, usize::from(options.most)) {
        Ok(found) => found,
        Err(no_fit) => {
            files::say(&no_fit_words(&text.name, &job, &no_fit));
            return Ending::JobAtFault;
        }
    };
    let (mut words, mut ending) = (String::new(), Ending::JobAtFault);
    for (i, placement) in places.iter().enumerate() {
        let (number, fixed) = (i + 1, fixed(&job, placement));
        words.push_str(&told(number, &now, placement));
        words.push_str(&to_fix(placement));
        let plan = match Plan::of(&fixed) {
            Ok(plan) => plan,
            Err(no_fit) => {
                files::say(&no_fit_words("this place", &fixed, &no_fit));
                return Ending::OwnFailure;
            }
        };
        words.push_str(&stopped(&plan));
        if plan.stops.is_empty() {
            ending = Ending::Done;
        }
        let Some(target) = &options.svg else {
            continue;
        };
        let path = drawing_path(target, &text.stem, number);
        if let Err(ending) = draw(&plan, &path) {
            return ending;
        }
        let _ = writeln!(words, "  drawing    {}", path.display());
    }
    match files::print(&words) {
        Ok(()) => ending,
        Err(fault) => own_failure(&fault),
    }
}

/// The best few places; the one that the cutting has, with what is left of the job, when it has begun.
pub(super) fn places(job: &Job, most: usize) -> Result<(Job, Vec<Placement>), NoFit> {
    if job.as_cut.is_none() {
        return Ok((job.clone(), several::several(job, most)?));
    }
    let (now, placement, _) = planned(job)?;
    Ok((now, vec![placement]))
}

/// What stops the job at a place.
pub(super) fn stopped(plan: &Plan) -> String {
    let writer = plan.writer().english();
    let titles = plan.stops.iter().map(|s| writer.say(&s.message));
    let titles: Vec<String> = titles.collect();
    if titles.is_empty() {
        "  stops      none\n".to_owned()
    } else {
        format!("  stops      {}\n", titles.join("\n             "))
    }
}

/// The job with this place fixed; as it is when its cutting has begun.
pub(super) fn fixed(job: &Job, placement: &Placement) -> Job {
    let mut fixed = job.clone();
    if job.as_cut.is_some() {
        return fixed;
    }
    fixed.place.how = PlaceHow::Fixed {
        at: crate::geom::Point::ORIGIN + placement.pose.shift,
        turn_deg: placement.pose.turn.to_degrees(),
    };
    fixed
}

fn draw(plan: &Plan, path: &Path) -> Result<(), Ending> {
    let writer = Writer::new(System::from(plan.job.units), Language::English);
    let (page, size) = layout::drawing_page(&document::overview(plan), writer);
    let svg = render::svg::svg_page(&page, size);
    let folder = path
        .parent()
        .filter(|folder| !folder.as_os_str().is_empty());
    let made = folder.map_or(Ok(()), write::folder);
    made.and_then(|()| write::whole(path, svg.as_bytes()))
        .map_err(|fault| own_failure(&fault))
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

/// What a place costs and leaves.
pub(super) fn told(number: usize, job: &Job, placement: &Placement) -> String {
    let writer = Writer::new(job.units.into(), Language::English);
    let minutes = placement.work_mm2 / 100.0 / job.passes.rate_cm2_per_min;
    let stopped = placement.trims.iter().filter(|t| !t.runs_off()).count();
    let mut words = format!("Place {number}\n");
    let _ = writeln!(
        words,
        "  sawing     {} counted with curves and stopped cuts by their factors, {}",
        writer.write(&Value::of(placement.work_mm2, Unit::Area)),
        writer.write(&Value::of(minutes, Unit::Minute).up())
    );
    let _ = writeln!(
        words,
        "  trims      {} running off, {stopped} stopped",
        placement.trims.len() - stopped
    );
    let _ = writeln!(words, "  turned     {}", writer.write(&turn(placement)));
    let _ = writeln!(words, "  reused     {}", reused(job, placement));
    let _ = writeln!(
        words,
        "  to spare   {} at least",
        writer.write(&Value::fine(placement.spare_mm()))
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
                writer.write(&Value::size(long)),
                writer.write(&Value::size(short))
            )
        },
    );
    let _ = writeln!(words, "  left       {left}");
    words
}

/// The lines of a job file that fix a place.
fn to_fix(placement: &Placement) -> String {
    let mut words = "  to fix it  [place]\n".to_owned();
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
