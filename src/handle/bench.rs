//! Where two trestles or bench strips stand while the slab is cut.
//!
//! They stay put as long as every state of the stone in turn lies safely on them; then they are
//! moved, with the stone lifted off. The waste side of each cut wants strips of its own.

use serde::Serialize;

use super::Load;
use super::axes::Axes;
use super::bend::Beam;
use super::judged::{BendVerdict, Bending};
use super::poses;
use super::strip::Strip;
use super::trestles::{Room, shared_supports};
use crate::geom::Point;
use crate::handle::bend::Lie;
use crate::job::Job;

/// One place of the two trestles, and the states of the stone that lie on them.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bench {
    /// Where they come from.
    pub places: Places,
    /// Distances from the slab's end along its length, mm.
    pub at_mm: [f64; 2],
    /// The trestles as lines across the slab, slab frame.
    pub lines: [[Point; 2]; 2],
    /// Name of the first state of the stone on them, as in the list of pieces.
    pub from: String,
    /// Name of the last one.
    pub to: String,
    /// How each state lies; the most stressed one of them.
    pub lies: Lies,
}

/// Where the places come from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Places {
    /// From the job file.
    Given,
    /// Worked out.
    Proposed,
}

/// How the stone lies on the trestles.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lies {
    /// The most stressed state, by name, and its stress.
    Judged {
        /// Its name.
        state: String,
        /// Greatest stress, `MPa`.
        stress_mpa: f64,
        /// How that stands to what is allowed.
        verdict: BendVerdict,
    },
    /// In this state the balance point is not between them, or the stone does not reach them.
    Falls {
        /// Its name.
        state: String,
    },
}

/// The trestles' places in the order of the cuts; at least one.
#[must_use]
pub fn settings<'a>(
    job: &Job,
    slab: &'a Load,
    states: impl Iterator<Item = &'a Load>,
) -> Vec<Bench> {
    let axes = Axes::of(&slab.region);
    let loads: Vec<&Load> = std::iter::once(slab).chain(states).collect();
    let strips: Vec<Strip> = loads.iter().map(|l| Strip::new(&l.region, axes)).collect();
    let beams = loads.iter().zip(&strips);
    let beams: Vec<Beam<'_>> = beams
        .map(|(load, strip)| Beam::new(strip, poses::slice(load, &job.stone)))
        .collect();
    let run = Run { job, loads, beams };
    match job.lift.trestles[..] {
        [first, second] => vec![run.bench(Places::Given, 0, run.beams.len(), [first, second])],
        _ => run.proposed(),
    }
}

struct Run<'a> {
    job: &'a Job,
    loads: Vec<&'a Load>,
    beams: Vec<Beam<'a>>,
}

impl Run<'_> {
    fn proposed(&self) -> Vec<Bench> {
        let mut benches = Vec::new();
        let mut from = 0;
        while from < self.beams.len() {
            let (to, bench) = self.longest(from);
            benches.push(bench);
            from = to;
        }
        benches
    }

    /// The longest run of states from `from` on that may lie on the same trestles.
    fn longest(&self, from: usize) -> (usize, Bench) {
        let mut rooms = Vec::new();
        for beam in self.beams.iter().skip(from) {
            let room = Room::under(beam);
            let shared = match rooms.last() {
                None => Some(room),
                Some(before) => room.shared(*before),
            };
            let Some(shared) = shared else { break };
            rooms.push(shared);
        }
        let mut last = None;
        for (count, room) in rooms.iter().enumerate().rev() {
            let to = from + count + 1;
            let beams = self.beams.get(from..to).unwrap_or_default();
            let bench = self.bench(Places::Proposed, from, to, shared_supports(beams, *room));
            let safe = matches!(&bench.lies, Lies::Judged { verdict, .. } if !verdict.is_above());
            last = Some((to, bench));
            if safe {
                break;
            }
        }
        last.unwrap_or_else(|| {
            let ends = self
                .beams
                .get(from)
                .map_or([0.0, 0.0], |b| b.strip().reach());
            (from + 1, self.bench(Places::Proposed, from, from + 1, ends))
        })
    }

    /// The states from `from` to before `to` on trestles at given places.
    fn bench(&self, places: Places, from: usize, to: usize, at_mm: [f64; 2]) -> Bench {
        let name = |i: usize| {
            self.loads
                .get(i)
                .map_or_else(String::new, |l| l.name.clone())
        };
        let slab = self.beams.first().map(Beam::strip);
        let lines = at_mm.map(|u| slab.map_or([Point::ORIGIN; 2], |s| s.chord_at(u)));
        Bench {
            places,
            at_mm,
            lines,
            from: name(from),
            to: name(to.saturating_sub(1)),
            lies: self.lies(from, to, at_mm),
        }
    }

    fn lies(&self, from: usize, to: usize, at_mm: [f64; 2]) -> Lies {
        let allowed = self.job.stone.strength_mpa / self.job.stone.safety_factor;
        let mut worst: Option<(String, Bending)> = None;
        let states = self.beams.iter().zip(&self.loads);
        for (beam, load) in states.skip(from).take(to.saturating_sub(from)) {
            let (middle, [low, high]) = (beam.strip().middle(), beam.strip().reach());
            let [first, second] = at_mm;
            if !(low <= first && first < middle && middle < second && second <= high) {
                return Lies::Falls {
                    state: load.name.clone(),
                };
            }
            let props = beam.on_two(at_mm);
            let bending = Bending::of(beam, "flat on the trestles", Lie::Flat, &props, allowed);
            let above = |w: &(String, Bending)| bending.worst.stress_mpa > w.1.worst.stress_mpa;
            if worst.as_ref().is_none_or(above) {
                worst = Some((load.name.clone(), bending));
            }
        }
        worst.map_or_else(
            || Lies::Falls {
                state: String::new(),
            },
            |(state, bending)| Lies::Judged {
                state,
                stress_mpa: bending.worst.stress_mpa,
                verdict: bending.verdict,
            },
        )
    }
}
