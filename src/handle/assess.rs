//! Works out the handling of every stone of a job.

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use super::bending::axes::Axes;
use super::bending::bend::{Beam, Orientation, Reaction};
use super::bending::poses::Strength;
use super::bending::rail::Held;
use super::bending::strip::BeamProfile;
use super::bending::{bench, neck, poses, rail, support};
use super::finding;
use super::handling::Handling;
use super::lifting::guideline::{Guideline, guideline};
use super::lifting::lift;
use super::lifting::waste::Waste;
use super::loads::{Load, Loads, Marks};
use super::piece::HandledPiece;
use super::transport::moving::Moving;
use crate::diag::Findings;
use crate::geom::{Point, Pose};
use crate::job::Job;
use crate::tables::{Source, documents as doc};

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
    // No stone's handling asks for another's: they are worked out side by side.
    let laid = || {
        (
            Moving::assess(job, &loads.slab, &loads.top),
            bench::settings(job, loads),
            support::setting(&loads.top, job, &loads.marks, pose),
        )
    };
    let changes: Vec<&Load> = loads.changes().collect();
    let piece = |load: &&Load| stage.piece(load, &[]);
    let bare = || {
        let slab = || stage.piece(&loads.slab, &[]);
        rayon::join(slab, || changes.par_iter().map(piece).collect())
    };
    let pieces = || rayon::join(bare, || stage.piece(&loads.top, &given));
    let (((moving, of_moving), bench, setting), ((slab, states), top)) = rayon::join(laid, pieces);
    let mut handling = Handling {
        slab,
        states,
        top,
        waste: Vec::new(),
        people: job.lift.people.max(given.len()),
        bench,
        setting,
        moving,
        sources: Vec::new(),
        guideline: stage.rule,
    };
    let team_limit = handling.top.lift.team_limit;
    let waste = loads.waste.iter();
    handling.waste = waste
        .map(|free| Waste::of(free, team_limit, job, &handling.guideline))
        .collect();
    handling.sources = sources(&handling, job);
    let mut findings = finding::findings(job, &loads.top, &handling);
    findings.append(of_moving);
    (handling, findings)
}

/// What every piece is judged by.
struct Stage<'a> {
    job: &'a Job,
    rule: Guideline,
    marks: &'a Marks,
    pose: Pose,
}

impl Stage<'_> {
    fn piece(&self, load: &Load, given: &[Point]) -> HandledPiece {
        let axes = Axes::of(&load.region);
        let strip = BeamProfile::new(&load.region, axes);
        let slice = poses::section(load, &self.job.stone);
        let beam = Beam::new(&strip, slice);
        let stone = &self.job.stone;
        let allowed_mpa = stone.strength_mpa / stone.safety_factor;
        let lift = lift::plan(load, &beam, allowed_mpa, &self.job.lift, given, &self.rule);
        let hands = lift.props(&beam, &load.region);
        let strength = Strength::of(&beam, stone, &lift, hands.as_deref());
        let held = self.held(
            &beam,
            &strength,
            hands.filter(|_| lift.orientation == Orientation::Flat),
        );
        HandledPiece {
            name: load.name.clone(),
            mass: load.mass,
            balance: load.balance,
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
    fn held<'a>(
        &self,
        beam: &'a Beam<'a>,
        strength: &Strength,
        hands: Option<Vec<Reaction>>,
    ) -> Held<'a> {
        let best = match strength.best.worst.supports_mm[..] {
            [first, second] => beam.on_two([first, second]).to_vec(),
            _ => Vec::new(),
        };
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
        doc::L23_TEAM,
        doc::TEAM_OF_FOUR,
        doc::NIOSH_EQUATION,
        doc::L23_CARRY,
        doc::L23_PUSH,
        doc::HANDLING_FACTOR,
        doc::VACUUM_FACTOR,
        doc::AID_PRACTICE,
        doc::FALL_ZONE,
    ];
    if job.lift.each_is_guideline && !sources.contains(&rule.source) {
        sources.insert(0, rule.source);
    }
    if handling.setting.is_some() {
        sources.extend([doc::REACH_LIMITS, doc::PERSON_ON_EDGE]);
    }
    if handling.pieces().any(|p| !p.rails.is_empty()) {
        sources.push(doc::RAIL_WIDTHS);
    }
    if handling.pieces().any(HandledPiece::is_braced) {
        sources.push(doc::EN_338);
    }
    sources
}
