//! Where two trestles or bench strips stand while the slab is cut.
//!
//! They stay put as long as every state of the stone in turn lies safely on them; then they are
//! moved, with the stone lifted off. The waste side of each cut wants strips of its own.

use serde::Serialize;

use crate::geom::Point;
use crate::handle::bending::bend::Orientation;
use crate::handle::loads::{Load, Loads};
use crate::job::Job;
use crate::units::Mass;

use super::axes::Axes;
use super::bend::Beam;
use super::judged::{BendVerdict, Bending};
use super::poses;
use super::strip::BeamProfile;
use super::trestles::{TrestleRanges, best_supports, shared_supports};

/// One place of the two trestles, and the states of the stone that lie on them.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Bench {
    /// Where they come from.
    pub places: Places,
    /// Distances from the slab's end along its length, mm.
    pub at_mm: [f64; 2],
    /// The trestles as lines across the slab, slab frame.
    pub lines: [[Point; 2]; 2],
    /// The most that each bears of any state of the stone on them, by the lever; nothing where a balance point is not
    /// between them.
    #[serde(rename = "bears_kg", skip_serializing_if = "Option::is_none")]
    pub bears: Option<[Mass; 2]>,
    /// The cut before which they are moved here, the stone lifted off; nothing for the first place.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub before_cut: Option<usize>,
    /// Name of the first state of the stone on them, as in the list of pieces.
    pub from: String,
    /// Name of the last one.
    pub to: String,
    /// How each state lies; the most stressed one of them.
    pub lies: Lies,
}

impl Bench {
    fn is_bedded(&self) -> bool {
        matches!(self.lies, Lies::Bedded { .. })
    }
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
    /// No two trestles are enough for this state: it lies on a full flat board, and the places only bear
    /// that board.
    Bedded {
        /// Its name.
        state: String,
        /// Greatest stress on the best two trestles without the board, `MPa`.
        stress_mpa: f64,
    },
    /// In this state the balance point is not between them, or the stone does not reach them.
    Falls {
        /// Its name.
        state: String,
    },
}

/// The trestles' places in the order of the cuts; at least one: a single one for the whole job when there
/// is one. Cost: a search of the supports for each halving of the run of states.
#[must_use]
pub fn settings(job: &Job, loads: &Loads) -> Vec<Bench> {
    let axes = Axes::of(&loads.slab.region);
    let states: Vec<&Load> = std::iter::once(&loads.slab)
        .chain(loads.changes())
        .collect();
    let profiles: Vec<BeamProfile> = states
        .iter()
        .map(|l| BeamProfile::new(&l.region, axes))
        .collect();
    let beams = states.iter().zip(&profiles);
    let beams: Vec<Beam<'_>> = beams
        .map(|(load, strip)| Beam::new(strip, poses::section(load, &job.stone)))
        .collect();
    let run = BenchStates {
        job,
        loads: states,
        beams,
        last_cut: loads.states.iter().filter_map(|l| l.after_cut).max(),
    };
    match job.lift.trestles[..] {
        [first, second] => vec![run.bench(Places::Given, 0, run.beams.len(), [first, second])],
        _ => run.proposed(),
    }
}

/// What each of two lines under a stone bears of its high mass.
fn shares(load: &Load, lines: [[Point; 2]; 2]) -> Option<[Mass; 2]> {
    let balance = load.region.centroid();
    let [first, second] = lines.map(|[a, b]| (balance - a).cross((b - a).unit()));
    let (one, two) = (first.abs(), second.abs());
    let share = |of: f64| Mass::from_kg(load.mass.high.kg() * of / (one + two));
    (first * second < 0.0).then(|| [share(two), share(one)])
}

struct BenchStates<'a> {
    job: &'a Job,
    loads: Vec<&'a Load>,
    beams: Vec<Beam<'a>>,
    last_cut: Option<usize>,
}

impl BenchStates<'_> {
    fn proposed(&self) -> Vec<Bench> {
        let mut benches: Vec<Bench> = Vec::new();
        let mut from = 0;
        while from < self.beams.len() {
            let (to, bench) = self.longest(from);
            match benches.last_mut() {
                // A board stays under the stone as long as it wants one.
                Some(last) if last.is_bedded() && bench.is_bedded() => last.to = bench.to,
                _ => benches.push(bench),
            }
            from = to;
        }
        benches
    }

    /// The longest run of states from `from` on that may lie on the same trestles; a single one on a board
    /// where not even that may.
    fn longest(&self, from: usize) -> (usize, Bench) {
        let rooms = self.rooms(from);
        let lain = |count: usize| {
            let room = rooms.get(count.checked_sub(1)?)?;
            let beams = self.beams.get(from..from + count)?;
            let at_mm = shared_supports(beams, *room);
            Some(self.bench(Places::Proposed, from, from + count, at_mm))
        };
        let (mut good, mut bad, mut count) = (0, rooms.len() + 1, rooms.len());
        let mut longest = None;
        while bad - good > 1 {
            let bench = lain(count)
                .filter(|b| matches!(&b.lies, Lies::Judged { verdict, .. } if !verdict.is_above()));
            if bench.is_some() {
                (good, longest) = (count, bench);
            } else {
                bad = count;
            }
            count = usize::midpoint(good, bad);
        }
        match longest {
            Some(bench) => (from + good, bench),
            None => (from + 1, self.bedded(from)),
        }
    }

    /// Where trestles may stand under the states from `from` on, for each count of them as long as there is
    /// such a place.
    fn rooms(&self, from: usize) -> Vec<TrestleRanges> {
        let mut rooms: Vec<TrestleRanges> = Vec::new();
        for beam in self.beams.iter().skip(from) {
            let room = TrestleRanges::under(beam);
            let shared = match rooms.last() {
                None => Some(room),
                Some(before) => room.shared(*before),
            };
            let Some(shared) = shared else { break };
            rooms.push(shared);
        }
        rooms
    }

    fn bedded(&self, from: usize) -> Bench {
        let beam = self.beams.get(from);
        let at_mm = beam.map_or([0.0, 0.0], best_supports);
        let bench = self.bench(Places::Proposed, from, from + 1, at_mm);
        let (state, stress_mpa) = match bench.lies {
            Lies::Judged {
                state, stress_mpa, ..
            } => (state, stress_mpa),
            Lies::Bedded { state, .. } | Lies::Falls { state } => (state, 0.0),
        };
        Bench {
            lies: Lies::Bedded { state, stress_mpa },
            ..bench
        }
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
            bears: self.bears(from, to, lines),
            before_cut: self.before_cut(from),
            from: name(from),
            to: name(to.saturating_sub(1)),
            lies: self.lies(from, to, at_mm),
        }
    }

    /// The most that each of two lines bears of the states from `from` to before `to`.
    fn bears(&self, from: usize, to: usize, lines: [[Point; 2]; 2]) -> Option<[Mass; 2]> {
        let states = self.loads.iter().skip(from).take(to.saturating_sub(from));
        let each: Option<Vec<[Mass; 2]>> = states.map(|load| shares(load, lines)).collect();
        let greater = |a: Mass, b: Mass| if a.kg() < b.kg() { b } else { a };
        let most = |[a, b]: [Mass; 2], [c, d]: [Mass; 2]| [greater(a, c), greater(b, d)];
        each?.into_iter().reduce(most)
    }

    /// The cut that follows the state before which trestles are moved.
    fn before_cut(&self, from: usize) -> Option<usize> {
        let after = self.loads.get(from)?.after_cut?;
        (Some(after) < self.last_cut).then_some(after + 1)
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
            let bending = Bending::of(
                beam,
                "flat on the trestles",
                Orientation::Flat,
                &props,
                allowed,
            );
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
