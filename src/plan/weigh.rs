//! Only what a stone weighs and how it is moved: nothing of it needs the cuts, or that the top fits.

use serde::Serialize;

use super::fill::{job_note, stone_note};
use super::note::{JobNote, StoneNote};
use crate::cut::rail;
use crate::diag::{Finding, Findings};
use crate::geom::{Pose, Region, Vector};
use crate::handle::{self, Handling, Load, Loads, Marks};
use crate::job::{Assumption, Job, Thickness};
use crate::place::{self, NoFit};
use crate::words::{Language, Writer};

/// How the keys begin that weighing, lifting and the way in rest on.
const RESTS_ON: [&str; 6] = [
    "job.",
    "stone.density",
    "stone.strength",
    "stone.safety_factor",
    "lift.",
    "route.",
];

/// What a job's slab and top weigh, and how they are lifted, carried and got in.
#[derive(Clone, Debug, Serialize)]
pub struct Weighing {
    /// Version of the planner.
    pub kerfwright: &'static str,
    /// What is printed in the title block.
    pub job: JobNote,
    /// The stone.
    pub stone: StoneNote,
    /// Thickness readings, mm.
    pub thickness: Thickness,
    /// Values that the job file left open and that this rests on.
    pub assumed: Vec<Assumption>,
    /// The job must not start while one of these stands.
    #[serde(skip)]
    pub stops: Vec<Finding>,
    /// Each has a blank to fill or asks for a look before the start.
    #[serde(skip)]
    pub open: Vec<Finding>,
    /// To be read and heeded.
    #[serde(skip)]
    pub warnings: Vec<Finding>,
    /// Whether the top can be had from the slab.
    pub top: TopState,
    /// Lifting, carrying, the way in.
    pub handling: Handling,
    /// Area of the slab and of the top, mm².
    pub area_mm2: [f64; 2],
}

/// Whether the top can be had from the slab.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TopState {
    /// It has a place on the slab; its points are in the slab's frame.
    Placed,
    /// It has none, for these reasons; it is weighed as wanted, its points are in its own frame.
    DoesNotFit(Vec<String>),
}

impl Weighing {
    /// Who writes it: the job's units and language.
    #[must_use]
    pub fn writer(&self) -> Writer {
        Writer::new(self.job.units.into(), self.job.language)
    }

    /// Weighs the slab and the wanted top of a job; gives the miss as well when the top does not
    /// fit.
    #[must_use]
    pub fn of(job: &Job) -> (Self, Option<NoFit>) {
        let (mut weighing, miss) = Self::of_both(job);
        // Narrow rails are measured where the cutouts are planned; whoever lifts must know of them.
        weighing.warnings.extend(rail::findings(job).warnings);
        (weighing, miss)
    }

    fn of_both(job: &Job) -> (Self, Option<NoFit>) {
        match place::place(job) {
            Ok((placement, _)) => {
                let loads = Loads::uncut(job, &placement);
                let weighing = Self::with(job, &loads, placement.pose, TopState::Placed);
                (weighing, None)
            }
            Err(miss) => {
                let top = load(job, "top as wanted", wanted(job));
                let loads = pair(load(job, "slab as delivered", slab(job)), top);
                let writer = Writer::new(job.units.into(), Language::English);
                let reasons = miss.reasons.iter().map(|why| writer.say(why));
                let state = TopState::DoesNotFit(reasons.collect());
                (Self::with(job, &loads, UNMOVED, state), Some(miss))
            }
        }
    }

    /// Weighs one stone: the job's slab, whatever its top.
    #[must_use]
    pub fn of_one(job: &Job) -> Self {
        let stone = load(job, "stone", slab(job));
        let loads = pair(stone.clone(), stone);
        let mut weighing = Self::with(job, &loads, UNMOVED, TopState::Placed);
        for found in [
            &mut weighing.stops,
            &mut weighing.open,
            &mut weighing.warnings,
        ] {
            once(found);
        }
        weighing
    }

    fn with(job: &Job, loads: &Loads, pose: Pose, state: TopState) -> Self {
        let (handling, found) = handle::assess(job, loads, pose);
        let Findings {
            stops,
            open,
            warnings,
        } = found;
        Self {
            kerfwright: env!("CARGO_PKG_VERSION"),
            job: job_note(job),
            stone: stone_note(job),
            thickness: job.stone.thickness,
            assumed: job
                .assumed
                .iter()
                .filter(|a| rests_on(&a.key))
                .cloned()
                .collect(),
            stops,
            open,
            warnings,
            top: state,
            handling,
            area_mm2: [&loads.slab, &loads.top].map(|l| l.region.area()),
        }
    }
}

/// The top's own frame.
const UNMOVED: Pose = Pose::new(0.0, Vector::new(0.0, 0.0));

fn slab(job: &Job) -> Region {
    job.slab.region()
}

fn load(job: &Job, name: &str, region: Region) -> Load {
    Load::of(&job.stone, name, region)
}

/// Slab and top without cuts between them.
fn pair(slab: Load, top: Load) -> Loads {
    Loads {
        slab,
        states: Vec::new(),
        waste: Vec::new(),
        top,
        marks: Marks::default(),
    }
}

/// The top as the job file wants it, in its own frame.
fn wanted(job: &Job) -> Region {
    let cutouts = job.top.cutouts.iter();
    Region {
        outer: job.top.shape.outline().clone(),
        holes: cutouts.map(|c| c.shape.outline().clone()).collect(),
    }
}

fn rests_on(key: &str) -> bool {
    RESTS_ON.iter().any(|start| key.starts_with(start))
}

/// Each finding once.
fn once(found: &mut Vec<Finding>) {
    let mut seen: Vec<Finding> = Vec::new();
    found.retain(|f| {
        let new = !seen.contains(f);
        if new {
            seen.push(f.clone());
        }
        new
    });
}
