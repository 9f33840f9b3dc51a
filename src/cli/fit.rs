//! `kerfwright fit JOB`: before buying, does it fit, what is left, what is there to lift.

use std::fmt::Write;

use crate::diag::Finding;
use crate::geom::Outline;
use crate::handle::guideline::{LARGEST_TEAM, guideline};
use crate::handle::lift::{people_needed, team_limit};
use crate::handle::lifting::record::PeopleNeeded;
use crate::job::Job;
use crate::place::{self, EdgeUse, NoFit, Placement};
use crate::plan::Plan;
use crate::units::{Mass, MassRange};
use crate::words::{Language, Quantity, Unit, Value, Writer};
use crate::{piece, repair};

use super::no_fit::no_fit_words;
use super::{Ending, JobArgument, files, own_failure, read_job};

/// The most stops that are named; the sheet has them all.
const MOST_STOPS: usize = 3;

/// What `fit` can be told.
#[derive(Debug, clap::Args)]
pub struct Options {
    #[command(flatten)]
    job: JobArgument,
}

/// Says in a few lines whether the top fits the slab, and what stops the job; ends well only when it surely
/// fits and nothing stops it.
#[must_use]
pub fn run(options: &Options) -> Ending {
    let (text, job) = match read_job(&options.job) {
        Ok(read) => read,
        Err(ending) => return ending,
    };
    let (answer, ending) = match planned(&job) {
        Ok((now, placement, plan)) => {
            let words = fits(&verdict(&plan), &now, &placement);
            (words, Ending::of(&plan))
        }
        Err(no_fit) => (no_fit_words(&text.name, &job, &no_fit), Ending::JobAtFault),
    };
    match files::print(&answer) {
        Ok(()) => ending,
        Err(fault) => own_failure(&fault),
    }
}

/// The job as it stands (what is left of it, when the cutting has begun), its place, and the whole plan.
pub(super) fn planned(job: &Job) -> Result<(Job, Placement, Plan), NoFit> {
    let plan = Plan::of(job)?;
    let now = repair::after(job)?.map_or_else(|| job.clone(), |rest| rest.job);
    let (placement, _) = place::place(&now)?;
    Ok((now, placement, plan))
}

/// Whether the job can be done: it fits, and no stop stands.
fn verdict(plan: &Plan) -> String {
    let again = |f: &Finding| f.id() == place::MEASURE_AGAIN.id;
    let mut words = match (plan.stops.len(), plan.open.len()) {
        _ if plan.stops.iter().any(again) => {
            "Measure again: it fits only within the error of the tape.".to_owned()
        }
        (0, 0) => "Fits.".to_owned(),
        (0, _) => "Fits; to be looked at before the start:".to_owned(),
        (1, _) => "It fits, but one stop stands: do not start.".to_owned(),
        (stops, _) => format!("It fits, but {stops} stops stand: do not start."),
    };
    let named = if plan.stops.is_empty() {
        &plan.open
    } else {
        &plan.stops
    };
    let writer = plan.writer().english();
    for finding in named.iter().take(MOST_STOPS) {
        let _ = write!(words, "\n         {}", writer.say(&finding.message));
    }
    if named.len() > MOST_STOPS {
        let _ = write!(words, "\n         and {} more", named.len() - MOST_STOPS);
    }
    words
}

fn fits(verdict: &str, job: &Job, placement: &Placement) -> String {
    let writer = Writer::new(job.units.into(), Language::English);
    let size = |outline: &Outline| {
        let bounds = outline.bounds();
        format!(
            "{} × {}",
            writer.write(&Value::size(bounds.width())),
            writer.write(&Value::size(bounds.height()))
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
        writer.write(&masses(&slab_mass))
    );
    let top = job.top.shape.outline();
    let _ = writeln!(
        words,
        "top      {}, {}",
        size(top),
        writer.write(&masses(&top_mass))
    );
    let _ = writeln!(words, "lies     {}", lies(job, placement));
    let _ = writeln!(
        words,
        "spare    {} at least, tape good to ±{}",
        writer.write(&Value::fine(placement.spare_mm())),
        writer.write(&Value::fine(job.slab.tape_error_mm))
    );
    let left = placement.best_rectangle(slab).map_or_else(
        || "no rectangle in an offcut".to_owned(),
        |r| {
            let (long, short) = r.sides();
            format!(
                "{} × {} in one offcut, kerf not taken off",
                writer.write(&Value::size(long)),
                writer.write(&Value::size(short))
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

/// The least and the most that a stone may weigh.
fn masses(range: &MassRange) -> Value {
    let mass = |m: Mass| Quantity::new(m.kg(), Unit::Mass);
    Value::between(mass(range.low), mass(range.high))
}

/// How far the top is turned.
pub(super) fn turn(placement: &Placement) -> Value {
    let degrees = placement.pose.turn.to_degrees().rem_euclid(360.0);
    Value::of(degrees, Unit::Degree)
}

fn lies(job: &Job, placement: &Placement) -> String {
    let writer = Writer::new(job.units.into(), Language::English);
    let turned = format!("turned {}", writer.write(&turn(placement)));
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
    let writer = Writer::new(job.units.into(), Language::English);
    let team = Value::mass(team_limit(own, guideline, LARGEST_TEAM)).down();
    let team = writer.write(&team);
    masses.into_iter().any(too_heavy).then(|| {
        format!(
            "a team of {LARGEST_TEAM} may count on {team}, and more do not lift as one: a trolley on \
             edge, a vacuum lifter or a gantry"
        )
    })
}
