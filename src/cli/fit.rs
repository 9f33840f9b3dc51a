//! `kerfwright fit JOB`: before buying, does it fit, what is left, what is there to lift.

use std::fmt::Write;

use super::{Ending, JobArgument, files, no_fit_words, own_failure, read_job};
use crate::geom::Outline;
use crate::handle::guideline::{LARGEST_TEAM, guideline};
use crate::handle::lift::{PeopleNeeded, people_needed, team_limit};
use crate::job::Job;
use crate::piece;
use crate::place::{self, EdgeUse, Placement};
use crate::sheet::figure::{Figures, angle};
use crate::units::{Mass, MassRange};

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
    if let Some(aids) = instead(job, [&slab_mass, &top_mass]) {
        let _ = writeln!(words, "         {aids}");
    }
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

/// Whether a mass is a lift by hand, and for how many people, by what a team may count on.
fn hands(job: &Job, mass: &MassRange) -> String {
    let guideline = guideline(job.region).at_height(job.lift.hands_mm);
    let own = strengths(job);
    match people_needed(mass.high, own, guideline) {
        PeopleNeeded::AtLeast(1) => "1 person or more".to_owned(),
        PeopleNeeded::AtLeast(people) => format!("{people} people or more"),
        PeopleNeeded::MoreThanATeam => "no hand lift".to_owned(),
    }
}

/// What each lifter may lift, where the job file says so.
fn strengths(job: &Job) -> &[Mass] {
    if job.lift.each_is_guideline {
        &[]
    } else {
        &job.lift.each
    }
}

/// Why a stone is no lift by hand, and what lifts it; nothing when hands lift both.
fn instead(job: &Job, masses: [&MassRange; 2]) -> Option<String> {
    let guideline = guideline(job.region).at_height(job.lift.hands_mm);
    let own = strengths(job);
    let too_heavy =
        |m: &MassRange| people_needed(m.high, own, guideline) == PeopleNeeded::MoreThanATeam;
    let team = Figures { units: job.units }.mass(team_limit(own, guideline, LARGEST_TEAM));
    masses.into_iter().any(too_heavy).then(|| {
        format!(
            "a team of {LARGEST_TEAM} may count on {team}, and more do not lift as one: a trolley on \
             edge, a vacuum lifter or a gantry"
        )
    })
}
