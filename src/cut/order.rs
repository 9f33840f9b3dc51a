//! The order of the cuts, and the way to them.
//!
//! Core holes at inside corners of the top come first, while the slab is whole and bears the bit all
//! round. Then the trims that run off, in the placement's order; the cuts that stop at inside
//! corners; curves; the openings last, single holes before sawn openings, because an opening
//! weakens the top and nothing should be sawn beside its rails. Where it saves a change of disc, curves
//! come before the stopped cuts. At every stage the stone holds the whole finished top, so the kept
//! stone never hangs on less than the top itself ([`super::rail`] looks at that).

use crate::cut::course::{Course, Group, groups};
use crate::diag::{Finding, Findings};
use crate::geom::{Line, Outline, Point, Seg};
use crate::job::Job;
use crate::place::{Placement, Trim};

use super::disc::{self, Task};
use super::inside::InsidePlace;
use super::kept::{Kept, Ring, Whose};
use super::missing::{Missing, Spot};
use super::{Because, Cut, CutKind, SetOut, core, curve, cutout, offsets, rail, relief, straight};

/// A strip narrower than this is no stone to saw off, mm (judgement: no tape or disc can tell).
const NO_STRIP_MM: f64 = 0.01;

/// Plans every cut in its order.
///
/// Pieces are not yet known: [`Cut::frees`] is filled by the next stage, which also tells what no tool of
/// the kit can make, with the waste that stays on for it.
#[must_use]
pub fn plan(job: &Job, placement: &Placement) -> (Vec<Cut>, Vec<Missing>, Findings) {
    let (kept, bores) = cutout::bored(job, Kept::of(job, placement), placement);
    let mut course = Course {
        job,
        placement,
        kept,
        stone: job.slab.shape.outline().clone(),
        cuts: Vec::new(),
        missing: Vec::new(),
        findings: Findings::default(),
    };
    let ring = course.kept.rings[0].clone();
    let places = course.places(&ring);
    course.holes(&ring, &places, &Because::SlabWhole);
    let stopped = course.run_off_trims(&ring);
    let groups = groups(&ring, &stopped);
    if course.curves_before(&groups) {
        course.curves(&ring);
        course.groups(&ring, &places, &groups);
    } else {
        course.groups(&ring, &places, &groups);
        course.curves(&ring);
    }
    cutout::all(&mut course, &bores);
    course.say_why();
    offsets::measure(&mut course.cuts);
    course
        .findings
        .warnings
        .extend(core::close(&course.cuts, &job.slab.begun.drilled));
    course.findings.append(rail::findings(job));
    let Course {
        cuts,
        missing,
        mut findings,
        ..
    } = course;
    once(&mut findings.stops);
    once(&mut findings.warnings);
    (cuts, missing, findings)
}

/// Each finding once, in the order they came.
fn once(findings: &mut Vec<Finding>) {
    let mut told: Vec<Finding> = Vec::new();
    findings.retain(|f| {
        let new = !told.contains(f);
        if new {
            told.push(f.clone());
        }
        new
    });
}

impl Course<'_> {
    /// Makes the trims that run off, in the placement's order, and gives the sawn pieces that do not.
    fn run_off_trims(&mut self, ring: &Ring) -> Vec<usize> {
        let mut waiting = self.trims(ring);
        loop {
            let next = waiting.iter().position(|trim| self.runs_off(trim));
            let Some(next) = next else { break };
            let trim = waiting.remove(next);
            self.run_off(&trim);
        }
        let piece = |trim: &Trim| {
            ring.pieces
                .iter()
                .position(|p| p.parts.contains(&trim.part))
        };
        waiting
            .iter()
            .filter(|trim| self.stone.chord(&trim.face, trim.middle).is_some())
            .filter_map(piece)
            .collect()
    }

    /// The placement's trims, and behind them any straight sawn piece that it left out.
    fn trims(&self, ring: &Ring) -> Vec<Trim> {
        let mut trims = self.placement.trims.clone();
        let slab = self.job.slab.shape.outline();
        for piece in ring.pieces.iter().filter(|p| p.sawn) {
            let Seg::Line(a, b) = piece.seg else { continue };
            if trims.iter().any(|t| t.part == piece.part()) {
                continue;
            }
            let trim = Trim {
                part: piece.part(),
                face: Line::through(a, b),
                middle: a.midpoint(b),
                allowance_mm: piece.allowance_mm,
                ends: [crate::place::TrimEnd::RunOff; 2],
                span: (0.0, 0.0),
                length_mm: 0.0,
            };
            trims.push(trim);
        }
        let beyond = |t: &Trim| t.face.shifted_right(NO_STRIP_MM);
        trims.retain(|t| slab.chord(&beyond(t), t.middle).is_some());
        trims
    }

    fn run_off(&mut self, trim: &Trim) {
        let choice = disc::choose(self.job, Task::RunOff);
        self.findings.stops.extend(disc::too_small(&choice));
        let planned = straight::plan(self.job, self.placement, trim, &self.stone, choice.disc);
        if let Some((cut, kept)) = planned {
            self.push(cut);
            self.stone = kept;
        } else {
            // What the trim would have left, so that the others are still planned.
            if let Some(chord) = self.stone.chord(&trim.face, trim.middle) {
                let name = self.placement.top.part_name(trim.part);
                let line = Seg::Line(chord.start, chord.end);
                let place = Spot::straight(Whose::Top, name, line);
                self.lacks(straight::no_room_for_guide(self.job), place);
                self.stone = chord.left;
            }
        }
    }

    /// Whether the curves come before the stopped cuts: when that saves a change of disc.
    fn curves_before(&self, groups: &[Group]) -> bool {
        let disc = |task| &disc::choose(self.job, task).disc.name;
        let stopped = Task::Stopped {
            room_mm: f64::INFINITY,
        };
        !groups.is_empty()
            && disc(Task::Outside) == disc(Task::RunOff)
            && disc(stopped) != disc(Task::RunOff)
    }

    /// The outside curves of the top.
    fn curves(&mut self, ring: &Ring) {
        self.relief(ring);
        for piece in 0..ring.pieces.len() {
            if ring.pieces[piece].bulging().is_some() {
                self.outside(ring, piece, Because::AfterTrims);
            }
        }
        let top = &self.placement.top;
        let arcs = top.outline().segs().iter().zip(top.parts());
        for (seg, part) in arcs {
            let outside = matches!(seg, Seg::Arc(arc) if arc.sweep > 0.0);
            if outside && ring.pieces.iter().all(|p| !p.parts.contains(part)) {
                let caution = curve::ground_only(ring.whose, &top.part_name(*part));
                self.findings.warnings.push(caution);
            }
        }
    }

    /// The relief cuts that the curves' waste needs.
    fn relief(&mut self, ring: &Ring) {
        let disc = disc::choose(self.job, Task::Outside).disc;
        let arcs = ring.pieces.iter().filter(|p| !p.ready);
        let arcs = arcs.filter_map(|piece| {
            Some(relief::Beside {
                part: piece.part(),
                wanted: self.wanted(ring.whose, piece, piece.bulging()?, Because::AfterTrims),
            })
        });
        let arcs: Vec<relief::Beside<'_>> = arcs.collect();
        relief::before(self, &arcs, disc);
    }

    fn groups(&mut self, ring: &Ring, places: &[InsidePlace], groups: &[Group]) {
        for group in groups {
            self.group(ring, places, group, &Because::AfterRunOff);
        }
    }

    /// Why each run-off trim comes where it does: what it takes off the later ones.
    fn say_why(&mut self) {
        let mut stone = self.job.slab.shape.outline().clone();
        let trims: Vec<(usize, Line, Point)> = self
            .cuts
            .iter()
            .filter(|c| c.kind == CutKind::Straight && c.run_off && c.cutout.is_none())
            .filter_map(|c| {
                let SetOut::Guide(set_out) = &c.set_out else {
                    return None;
                };
                let [a, b] = set_out.sawn;
                Some((c.number, Line::through(a, b), a.midpoint(b)))
            })
            .collect();
        for (i, (number, face, middle)) in trims.iter().enumerate() {
            let Some(after) = stone.chord(face, *middle).map(|c| c.left) else {
                continue;
            };
            let length = |stone: &Outline, t: &(usize, Line, Point)| {
                stone.chord(&t.1, t.2).map_or(0.0, |c| c.length())
            };
            let gains = trims[i + 1..].iter().map(|t| {
                let gain = length(&stone, t) - length(&after, t);
                (t.0, gain)
            });
            let gains: Vec<(usize, f64)> = gains.filter(|g| g.1 > 0.5).collect();
            if !gains.is_empty() {
                self.cuts[number - 1].because = Because::Shortens {
                    cuts: gains.iter().map(|g| g.0).collect(),
                    by_mm: gains.iter().map(|g| g.1).sum(),
                };
            }
            stone = after;
        }
    }
}
