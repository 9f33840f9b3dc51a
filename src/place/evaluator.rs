//! Places judged, the best kept: branch and bound over the turns that lay an edge on an edge.

use std::f64::consts::{FRAC_PI_2, TAU};

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::geom::{Point, Pose};
use crate::job::{Job, Shape};

use super::bound::{Bound, Faces};
use super::candidate::valid;
use super::ground::{Approximation, Ground};
use super::turned::Turned;
use super::{Miss, Placement, vein};

/// An open node of the branch and bound: a turn at which a place may be valid.
#[derive(Clone, Debug)]
struct OpenNode {
    turn: f64,
    /// Its bound: the least work it can take, mm².
    least_mm2: f64,
    /// Its shifts with the least work each can take, quickly found; empty once the orders of the cuts
    /// have been looked at.
    quick: Vec<(f64, Point)>,
}

/// The open nodes of a branch and bound over the turns. Their bounds take arcs and clearances roughly, and in the top's
/// favour.
pub(super) struct OpenNodes<'a> {
    ground: Ground<'a>,
    faces: Faces,
    turns: Vec<OpenNode>,
}

impl<'a> OpenNodes<'a> {
    pub(super) fn of(job: &'a Job) -> Self {
        Self::at(job, turns(job))
    }

    /// The same of other turns.
    pub(super) fn at(job: &'a Job, turns: impl IntoIterator<Item = f64>) -> Self {
        let mut ground = Ground::of(job, Approximation::Outer);
        let faces = Faces::of(&ground);
        let mut turned = Vec::new();
        for turn in turns {
            if vein::against(job, turn).is_none() {
                turned.push(Turned::of(&mut ground, turn));
            }
        }
        let node = |turned: &Turned| {
            let shifts = some_of(turned.shifts(&ground), &faces);
            let bound = Bound::of(&ground, &faces, turned.turn);
            let quick = in_order(&bound, &ground, turned, shifts);
            let least_mm2 = quick.first()?.0;
            Some(OpenNode {
                turn: turned.turn,
                least_mm2,
                quick,
            })
        };
        let nodes = turned.par_iter().filter_map(node).collect();
        Self {
            ground,
            faces,
            turns: nodes,
        }
    }

    /// The next turn in the order of the least work, unless that is above a limit, mm².
    pub(super) fn next(&mut self, limit_mm2: f64) -> Option<f64> {
        loop {
            let turns = self.turns.iter().enumerate();
            let (at, first) = turns.min_by(|a, b| a.1.least_mm2.total_cmp(&b.1.least_mm2))?;
            if first.least_mm2 > limit_mm2 {
                return None;
            }
            if first.quick.is_empty() {
                return Some(self.turns.swap_remove(at).turn);
            }
            let quick = std::mem::take(&mut self.turns[at].quick);
            self.turns[at].least_mm2 = self.least_in_order(self.turns[at].turn, &quick);
        }
    }

    /// The least work over some shifts at a turn, each in the best order of its cuts, mm².
    fn least_in_order(&mut self, turn: f64, shifts: &[(f64, Point)]) -> f64 {
        let turned = Turned::of(&mut self.ground, turn);
        let bound = Bound::of(&self.ground, &self.faces, turn);
        let mut least = f64::INFINITY;
        for (quick, shift) in shifts {
            if *quick >= least {
                break;
            }
            least = least.min(bound.ordered_work_mm2(&self.ground, &turned, *shift));
        }
        least
    }
}

/// Judges the places at turns, one turn after the other.
pub(super) struct Evaluator<'a> {
    job: &'a Job,
    ground: Ground<'a>,
    faces: Faces,
    /// Work above which nothing is of interest, mm².
    limit_mm2: f64,
    /// Places judged since the last that was of interest.
    in_vain: usize,
}

/// So many shifts are tried at a turn before it is known whether it is worth a closer look, where the bounds
/// are not sharp.
const FIRST_LOOK: usize = 24;

/// So many places are judged side by side behind the first at a turn.
const TOGETHER: usize = 8;

/// How often a place at a free turn is turned on, by half as much each time: to a hundredth of a degree.
const EASING_STEPS: u32 = 9;

/// Where not every order of the trims is searched, the bounds are far below the work, and the search ends
/// after so many places in a row that were no better (judgement).
const PATIENCE: usize = 300;

impl<'a> Evaluator<'a> {
    pub(super) fn of(job: &'a Job) -> Self {
        let ground = Ground::of(job, Approximation::Inner);
        Self {
            job,
            faces: Faces::of(&ground),
            ground,
            limit_mm2: f64::INFINITY,
            in_vain: 0,
        }
    }

    /// The same, where more work than a limit is of no interest, mm².
    pub(super) fn below(job: &'a Job, limit_mm2: f64) -> Self {
        Self {
            limit_mm2,
            ..Self::of(job)
        }
    }

    /// False once the search has gone on in vain for long enough.
    pub(super) fn is_patient(&self) -> bool {
        self.faces.all_orders() || self.in_vain < PATIENCE
    }

    /// True when a position at a turn is valid.
    pub(super) fn any(&mut self, turn: f64) -> bool {
        let turned = Turned::of(&mut self.ground, turn);
        let shifts = turned.shifts(&self.ground).into_iter();
        let mut poses = shifts.map(|shift| Pose::new(turn, shift.to_vector()));
        poses.any(|pose| valid(self.job, pose).is_some())
    }

    /// Takes the best place at a turn, where it is better than the one found so far.
    pub(super) fn look_at(&mut self, turn: f64, found: &mut Option<Placement>) {
        let turned = Turned::of(&mut self.ground, turn);
        for shift in turned.shifts(&self.ground) {
            if let Some(place) = valid(self.job, Pose::new(turn, shift.to_vector()))
                && found.as_ref().is_none_or(|best| self.safer(&place, best))
            {
                *found = Some(place);
            }
        }
    }

    /// Whether one place is better than another: sure in spite of the tape's error, then less work, then
    /// more to spare.
    fn safer(&self, place: &Placement, other: &Placement) -> bool {
        let enough = 2.0 * self.job.slab.tape_error_mm;
        let short = |p: &Placement| (enough - p.least_spare_mm).max(0.0);
        short(place)
            .total_cmp(&short(other))
            .then(
                rounded(place.work_mm2 / SAME_WORK_MM2)
                    .total_cmp(&rounded(other.work_mm2 / SAME_WORK_MM2)),
            )
            .then(other.least_spare_mm.total_cmp(&place.least_spare_mm))
            .is_lt()
    }

    /// A place turned on, by steps of `step` radians at first, as long as that makes it better.
    pub(super) fn eased(&mut self, place: Placement, step: f64) -> Placement {
        let (mut turn, mut step, mut best) = (place.pose.turn, step, None);
        for _ in 0..EASING_STEPS {
            step /= 2.0;
            for by in [step, -step] {
                self.look_at(turn + by, &mut best);
            }
            turn = best.as_ref().map_or(turn, |b| b.pose.turn);
        }
        best.filter(|b| self.safer(b, &place)).unwrap_or(place)
    }

    /// Judges the positions at a turn that may take no more work than is of interest. Whoever takes a
    /// place says what is of interest from then on.
    pub(super) fn look(&mut self, turn: f64, mut take: impl FnMut(Placement) -> f64) {
        let turned = Turned::of(&mut self.ground, turn);
        let shifts = turned.shifts(&self.ground);
        let bound = Bound::of(&self.ground, &self.faces, turn);
        let (job, ground) = (self.job, &self.ground);
        let ordered = in_order(&bound, ground, &turned, shifts);
        // The first alone: it tells what is of interest. Then several side by side, by what is of interest before them.
        let (first, others) = ordered.split_at(ordered.len().min(1));
        for together in std::iter::once(first).chain(others.chunks(TOGETHER)) {
            let limit = self.limit_mm2;
            let judged = |(_, shift): &(f64, Point)| {
                let ordered = bound.ordered_work_mm2(ground, &turned, *shift);
                let place = || valid(job, Pose::new(turn, shift.to_vector()));
                Some((ordered, (ordered <= limit).then(place)??))
            };
            let worth = together.partition_point(|(quick, _)| *quick <= limit);
            let found: Vec<_> = together[..worth].par_iter().map(judged).collect();
            for ((quick, _), place) in together.iter().zip(found) {
                if *quick > self.limit_mm2 || !self.is_patient() {
                    return;
                }
                // The ones before it may have made it of no interest.
                if let Some((ordered, place)) = place
                    && ordered <= self.limit_mm2
                {
                    let better = place.work_mm2 < self.limit_mm2;
                    self.in_vain = if better { 0 } else { self.in_vain + 1 };
                    self.limit_mm2 = take(place);
                }
            }
            if worth < together.len() {
                return;
            }
        }
    }
}

/// The shifts that tell which turns are looked at first: all of them where the bounds are sharp, otherwise a
/// few of them.
fn some_of(shifts: Vec<Point>, faces: &Faces) -> Vec<Point> {
    if faces.all_orders() {
        return shifts;
    }
    let step = shifts.len().div_ceil(FIRST_LOOK).max(1);
    shifts.into_iter().step_by(step).collect()
}

/// Shifts with the least work each can take, mm², in the order of that.
fn in_order(
    bound: &Bound<'_>,
    ground: &Ground<'_>,
    turned: &Turned,
    shifts: Vec<Point>,
) -> Vec<(f64, Point)> {
    let quick = |shift: Point| (bound.least_work_mm2(ground, turned, shift), shift);
    let mut ordered: Vec<(f64, Point)> = shifts.into_iter().map(quick).collect();
    ordered.sort_by(|a, b| a.0.total_cmp(&b.0));
    ordered
}

/// Whether one of two misses is the nearer: by the least that is amiss, then by the fewest reasons.
pub(super) fn nearer(weight: f64, miss: &Miss, least: f64, nearest: &Miss) -> bool {
    let same = (weight - least).abs() <= 1e-6;
    weight < least - 1e-6 || (same && miss.objections.len() < nearest.objections.len())
}

/// Cleared of rounding noise, for comparing equals.
pub(super) fn rounded(value: f64) -> f64 {
    value.round()
}

/// How far a turn is from none, radians.
pub(super) fn smallest(turn: f64) -> f64 {
    turn.rem_euclid(TAU).min(TAU - turn.rem_euclid(TAU))
}

/// Turns that lay a straight edge of the top along one of the slab or along the vein, radians in
/// [0, 2π); none but 0 when there are no straight edges to lay.
pub(super) fn turns(job: &Job) -> Vec<f64> {
    let directions = |s: &Shape| -> Vec<f64> {
        (0..s.count())
            .filter(|e| s.is_straight(*e))
            .map(|e| s.edge_line(e).along.angle())
            .collect()
    };
    let vein = job.slab.vein_deg.map(f64::to_radians);
    let veins = vein
        .into_iter()
        .flat_map(|v| (0..4).map(move |q| v + f64::from(q) * FRAC_PI_2));
    let targets: Vec<f64> = directions(&job.slab.shape)
        .into_iter()
        .chain(veins)
        .collect();
    let mut turns: Vec<f64> = directions(&job.top.shape)
        .into_iter()
        .flat_map(|own| {
            targets
                .iter()
                .map(move |target| (target - own).rem_euclid(TAU))
        })
        // A turn a hair below a full one is none.
        .map(|turn| if smallest(turn) < 1e-9 { 0.0 } else { turn })
        .collect();
    turns.sort_by(f64::total_cmp);
    turns.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    if turns.is_empty() {
        turns.push(0.0);
    }
    turns
}

/// Places whose work differs by less than this are equally good, mm².
pub(super) const SAME_WORK_MM2: f64 = 1.0;
