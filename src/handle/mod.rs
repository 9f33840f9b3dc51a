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
//! | [`bend`] | bending under its own weight, flat and on edge |
//! | [`judged`] | a way of lying against what the stone may be stressed |
//! | [`poses`] | the ways of lying that are worked out |
//! | [`trestles`] | where two supports stress a flat stone least |
//! | [`mod@bench`] | where they stand while the stone is cut |
//! | [`rail`], [`neck`], [`splint`] | narrow stone beside cutouts and at inside corners, and its brace |
//! | [`support`] | what each support under the top carries |
//! | [`continuous`] | a stone bent over several supports |
//! | [`overhang`], [`span`], [`lean`] | what reaches beyond them and between them, and a person on it |
//! | [`moving`] | the three below together |
//! | [`aid`] | what a trolley, a vacuum lifter, slings need |
//! | [`fall`] | a stone standing on edge: what knocks it over, what holds it |
//! | [`route`] | the way in: doors and corners |
//!
//! Lengths mm, masses kg, stresses `MPa`, points in the slab's frame.

pub mod aid;
pub mod axes;
pub mod bench;
pub mod bend;
pub mod continuous;
mod course;
pub mod fall;
pub(crate) mod finding;
pub mod guideline;
pub mod judged;
pub mod lean;
pub mod lift;
pub mod moving;
pub mod neck;
pub mod niosh;
pub mod overhang;
pub mod plate;
pub mod poses;
pub mod rail;
pub mod route;
pub mod span;
pub mod splint;
pub mod stand;
pub mod strip;
pub mod support;
pub mod trestles;
mod words;

pub use poses::{HANDLING_FACTOR, Strength};

use serde::Serialize;

use crate::diag::Findings;
use crate::geom::{Outline, Point, Pose, Region, Seg};
use crate::job::Job;
use crate::tables::Source;
use crate::units::MassRange;
use axes::Axes;
use bench::Bench;
use bend::Beam;
use guideline::{Guideline, guideline};
use judged::Bending;
use lift::{Lift, Tilt};
use moving::Moving;
use neck::Neck;
use rail::{Held, Rail};
use strip::Strip;
use support::Setting;

/// One piece of stone at one moment of the job.
#[derive(Clone, Debug)]
pub struct Load {
    /// Name as printed: "slab as delivered", "after cut 2", "finished top".
    pub name: String,
    /// Its outline, in the slab's frame.
    pub region: Region,
    /// Its mass.
    pub mass: MassRange,
}

/// Every stone that is lifted, carried or lain down in the course of the job.
#[derive(Clone, Debug)]
pub struct Loads {
    /// The slab as delivered.
    pub slab: Load,
    /// The kept stone after each cut.
    pub states: Vec<Load>,
    /// The finished top.
    pub top: Load,
    /// Names of the top's parts.
    pub marks: Marks,
}

/// Names of the top's parts, in the slab's frame.
#[derive(Clone, Debug, Default)]
pub struct Marks {
    /// Its corners.
    pub corners: Vec<(String, Point)>,
    /// Its edges: the name, and the piece of the outline.
    pub edges: Vec<(String, Seg)>,
    /// Its openings.
    pub cutouts: Vec<(String, Outline)>,
}

/// Lifting, carrying and bending of the slab, of the stone after each cut and of the top, and how
/// the top is set down.
#[derive(Clone, Debug, Serialize)]
pub struct Handling {
    /// The slab as delivered.
    pub slab: Piece,
    /// The stone left after each cut that changes it.
    pub states: Vec<Piece>,
    /// The finished top.
    pub top: Piece,
    /// Where two trestles stand while the slab is cut.
    pub bench: Vec<Bench>,
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

impl Handling {
    /// Every stone in the order of the job.
    pub fn pieces(&self) -> impl Iterator<Item = &Piece> {
        let first = std::iter::once(&self.slab).chain(&self.states);
        first.chain(std::iter::once(&self.top))
    }
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
    /// Narrow stone beside cutouts.
    pub rails: Vec<Rail>,
    /// Narrow stone at inside corners.
    pub necks: Vec<Neck>,
}

impl Piece {
    /// Every way of lying that was worked out.
    pub fn bendings(&self) -> impl Iterator<Item = &Bending> {
        let s = &self.strength;
        let flat = [&s.best, &s.ends_only, &s.one_end_lifted];
        let on_edge = [&s.best_on_edge, &s.ends_on_edge];
        flat.into_iter().chain(&s.carried).chain(on_edge)
    }

    /// Whether a narrow part of it wants a splint.
    #[must_use]
    pub fn is_braced(&self) -> bool {
        self.rails.iter().any(|r| r.splint.is_some())
            || self.necks.iter().any(|n| n.splint.is_some())
    }
}

/// Works out the handling of the slab as delivered, of the stone after each cut and of the
/// finished top.
///
/// `pose` carries the top's frame into the slab's. Places in `job.lift.stand` are for the top; the
/// other stones' lifters are always proposed.
#[must_use]
pub fn assess(job: &Job, loads: &Loads, pose: Pose) -> (Handling, Findings) {
    let stage = Stage {
        job,
        rule: guideline(job.region),
        marks: &loads.marks,
        pose,
    };
    let given: Vec<Point> = job.lift.stand.iter().map(|p| pose.apply(*p)).collect();
    let (moving, of_moving) = Moving::assess(job, &loads.slab, &loads.top);
    let mut handling = Handling {
        slab: stage.piece(&loads.slab, &[]),
        states: changes(loads).map(|s| stage.piece(s, &[])).collect(),
        top: stage.piece(&loads.top, &given),
        bench: bench::settings(job, &loads.slab, changes(loads)),
        setting: support::setting(&loads.top, job, &loads.marks, pose),
        moving,
        sources: Vec::new(),
        guideline: stage.rule,
    };
    handling.sources = sources(&handling, job);
    let mut findings = finding::findings(job, &loads.top, &handling);
    findings.append(of_moving);
    (handling, findings)
}

/// The states that differ from the one before.
fn changes(loads: &Loads) -> impl Iterator<Item = &Load> {
    let before = std::iter::once(&loads.slab).chain(&loads.states);
    let pairs = before.zip(&loads.states);
    pairs
        .filter(|(before, after)| before.region != after.region)
        .map(|(_, after)| after)
}

/// What every piece is judged by.
struct Stage<'a> {
    job: &'a Job,
    rule: Guideline,
    marks: &'a Marks,
    pose: Pose,
}

impl Stage<'_> {
    fn piece(&self, load: &Load, given: &[Point]) -> Piece {
        let axes = Axes::of(&load.region);
        let strip = Strip::new(&load.region, axes);
        let slice = poses::slice(load, &self.job.stone);
        let beam = Beam::new(&strip, slice);
        let lift = lift::plan(load, &axes, &self.job.lift, given, &self.rule);
        let strength = Strength::of(&beam, &self.job.stone, &lift);
        let held = self.held(&beam, &strength, &lift);
        Piece {
            name: load.name.clone(),
            mass: load.mass,
            balance: load.region.centroid(),
            length_mm: axes.length_mm(),
            width_mm: axes.width_mm(),
            base_line: [axes.point(0.0, 0.0), axes.point(axes.length_mm(), 0.0)],
            tilts: lift::tilts(load, &axes),
            rails: rail::rails(load, &held, self.marks),
            necks: neck::necks(load, slice, strength.allowed_mpa, self.marks),
            strength,
            lift,
        }
    }

    /// How a piece is held when its narrow parts are looked at: on the best two supports, in the
    /// lifters' hands, on edge.
    fn held<'a>(&self, beam: &'a Beam<'a>, strength: &Strength, lift: &Lift) -> Held<'a> {
        let best = match strength.best.worst.supports_mm[..] {
            [first, second] => beam.on_two([first, second]).to_vec(),
            _ => Vec::new(),
        };
        let hands = poses::hands(beam, lift);
        Held {
            beam,
            flat: hands.into_iter().chain([best.clone()]).collect(),
            on_edge: best,
            allowed_mpa: strength.allowed_mpa,
            pose: self.pose,
        }
    }
}

fn sources(handling: &Handling, job: &Job) -> Vec<Source> {
    let rule = &handling.guideline;
    let mut sources = vec![
        guideline::L23_TEAM,
        guideline::TEAM_OF_FOUR,
        guideline::NIOSH_EQUATION,
        guideline::L23_CARRY,
        guideline::L23_PUSH,
        poses::HANDLING_SOURCE,
        finding::AID_SOURCE,
        aid::AID_PRACTICE,
        fall::FALL_ZONE,
    ];
    if job.lift.each_is_guideline && !sources.contains(&rule.source) {
        sources.insert(0, rule.source.clone());
    }
    if handling.setting.is_some() {
        sources.extend([overhang::LIMIT_SOURCE, overhang::PERSON_SOURCE]);
    }
    if handling.pieces().any(|p| !p.rails.is_empty()) {
        sources.push(rail::WIDTH_SOURCE);
    }
    if handling.pieces().any(Piece::is_braced) {
        sources.push(splint::TIMBER_SOURCE);
    }
    sources
}
