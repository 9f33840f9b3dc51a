//! Lifting, carrying, bending and setting down.
//!
//! | file | what it works out |
//! |---|---|
//! | [`axes`] | the long direction of a stone and its frame |
//! | [`plate`] | a rigid plate on springs: who carries what |
//! | [`stand`] | where lifters stand |
//! | [`lift`] | shares, limits, verdict, tilting up on edge |
//! | [`mod@guideline`] | published guideline weights and team factors |
//! | [`niosh`] | the lifting equation |
//! | [`strip`] | a stone as a beam: width, area and moment of every cross-section |
//! | [`bend`] | bending on two supports, flat and on edge |
//! | [`trestles`] | where two supports stress a flat stone least |
//! | [`support`] | what each support under the top carries |
//! | [`moving`] | the three below together |
//! | [`aid`] | what a trolley, a vacuum lifter, slings need |
//! | [`fall`] | a stone standing on edge: what knocks it over, what holds it |
//! | [`route`] | the way in: doors and corners |
//!
//! Lengths mm, masses kg, stresses `MPa`, points in the slab's frame.

pub mod aid;
pub mod axes;
pub mod bend;
mod course;
pub mod fall;
mod finding;
pub mod guideline;
pub mod lift;
pub mod moving;
pub mod niosh;
pub mod plate;
mod poses;
pub mod route;
pub mod stand;
pub mod strip;
pub mod support;
pub mod trestles;
mod words;

pub use poses::{HANDLING_FACTOR, Strength};

use serde::Serialize;

use crate::diag::Findings;
use crate::geom::{Point, Pose, Region};
use crate::job::Job;
use crate::tables::Source;
use crate::units::MassRange;
use axes::Axes;
use bend::Bending;
use guideline::{Guideline, guideline};
use lift::{Lift, Tilt};
use moving::Moving;
use support::Setting;

/// One piece of stone at one moment of the job.
#[derive(Clone, Debug)]
pub struct Load {
    /// Name as printed: "slab as delivered", "finished top".
    pub name: String,
    /// Its outline, in the slab's frame.
    pub region: Region,
    /// Its mass.
    pub mass: MassRange,
}

/// Lifting, carrying and bending of the slab and the top, and how the top is set down.
#[derive(Clone, Debug, Serialize)]
pub struct Handling {
    /// The slab as delivered.
    pub slab: Piece,
    /// The finished top.
    pub top: Piece,
    /// The top on its supports; nothing when the job file names none.
    pub setting: Option<Setting>,
    /// Aids, standing on edge, and the way in.
    #[serde(flatten)]
    pub moving: Moving,
    /// The region's guideline weight.
    pub guideline: Guideline,
    /// Every document a figure above comes from.
    pub sources: Vec<Source>,
}

/// The handling of one piece.
#[derive(Clone, Debug, Serialize)]
pub struct Piece {
    /// Name as printed.
    pub name: String,
    /// Its mass, kg.
    pub mass: MassRange,
    /// Its balance point, slab frame.
    pub balance: Point,
    /// Length along its long direction, mm.
    pub length_mm: f64,
    /// Width across it, mm.
    pub width_mm: f64,
    /// The end that distances along it are counted from, and the other end: the ends of its
    /// right-hand long side, looking along it, slab frame.
    pub base_line: [Point; 2],
    /// Lifting by hand.
    pub lift: Lift,
    /// Tilting up about either long side.
    pub tilts: [Tilt; 2],
    /// Bending under its own weight.
    pub strength: Strength,
}

impl Piece {
    /// Every way of lying that was worked out.
    pub fn bendings(&self) -> impl Iterator<Item = &Bending> {
        let s = &self.strength;
        [
            &s.best,
            &s.ends_only,
            &s.one_end_lifted,
            &s.best_on_edge,
            &s.ends_on_edge,
        ]
        .into_iter()
    }
}

/// Works out the handling of the slab as delivered and of the finished top.
///
/// `pose` carries the top's frame into the slab's. Places in `job.lift.stand` are for the top; the
/// slab's lifters are always proposed.
#[must_use]
pub fn assess(job: &Job, slab: &Load, top: &Load, pose: Pose) -> (Handling, Findings) {
    let rule = guideline(job.region);
    let given: Vec<Point> = job.lift.stand.iter().map(|p| pose.apply(*p)).collect();
    let (moving, of_moving) = Moving::assess(job, slab, top);
    let handling = Handling {
        slab: piece(job, slab, &[], &rule),
        top: piece(job, top, &given, &rule),
        setting: support::setting(top, &job.supports, pose),
        moving,
        sources: sources(job, &rule),
        guideline: rule,
    };
    let mut findings = finding::findings(job, top, &handling);
    findings.append(of_moving);
    (handling, findings)
}

fn piece(job: &Job, load: &Load, given: &[Point], rule: &Guideline) -> Piece {
    let axes = Axes::of(&load.region);
    Piece {
        name: load.name.clone(),
        mass: load.mass,
        balance: load.region.centroid(),
        length_mm: axes.length_mm(),
        width_mm: axes.width_mm(),
        base_line: [axes.point(0.0, 0.0), axes.point(axes.length_mm(), 0.0)],
        lift: lift::plan(load, &axes, &job.lift, given, rule),
        tilts: lift::tilts(load, &axes),
        strength: Strength::of(load, axes, &job.stone),
    }
}

fn sources(job: &Job, rule: &Guideline) -> Vec<Source> {
    let mut sources = vec![
        guideline::L23_TEAM,
        guideline::TEAM_OF_FOUR,
        guideline::NIOSH_EQUATION,
        guideline::L23_PUSH,
        poses::HANDLING_SOURCE,
        finding::AID_SOURCE,
        aid::AID_PRACTICE,
        fall::FALL_ZONE,
    ];
    if job.lift.each_is_guideline && !sources.contains(&rule.source) {
        sources.insert(0, rule.source.clone());
    }
    sources
}
