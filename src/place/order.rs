//! The order of the straight trims with the least length sawn.
//!
//! A trim made after its neighbour's waste is gone is shorter. Where two runs cross in the stone, the
//! one made first takes the end of the other away: that is all that one trim does to another, so the
//! lengths follow from the crossings alone. What is left after a set of trims does not depend on
//! their order, so the search goes over the 2ⁿ sets, not the n! orders.

use crate::geom::SAME_MM;

use super::trim::{Trim, TrimEnd};

/// More trims than this are taken one by one, each time the one that is then the shortest to saw
/// compared with what the others would gain by waiting.
const MOST_SEARCHED: usize = 12;
/// A gain below this is rounding, mm: the earlier name stays first.
const SAME_LENGTH_MM: f64 = 0.01;
/// Two trims that stop this near to each other stop in the same corner, mm.
const SAME_CORNER_MM: f64 = 1e-3;
/// In a set of trims: the one that is never made.
const NEVER: u64 = 1 << 63;

/// Runs through the stone, and where they cross.
#[derive(Clone, Debug)]
pub(super) struct Crossings {
    /// The stretch of each that is sawn when it is the first, as distances along its face.
    pub(super) spans: Vec<(f64, f64)>,
    /// Where the middle of the finished edge lies.
    pub(super) middles: Vec<f64>,
    /// For each run, the others that cross it and where, from its middle outwards.
    pub(super) meets: Vec<Vec<(usize, f64)>>,
    /// For each run, the set that must have been made before its waste is gone.
    pub(super) frees: Vec<u64>,
}

impl Crossings {
    /// The crossings of some runs.
    pub(super) fn of(runs: &[Trim]) -> Self {
        let on = |i: usize, at: f64| {
            let (from, to) = runs[i].span;
            at >= from - SAME_MM && at <= to + SAME_MM
        };
        let meets = (0..runs.len()).map(|i| {
            let others = (0..runs.len()).filter(|j| *j != i);
            let crossing = |j: usize| {
                let (a, b) = (&runs[i].face, &runs[j].face);
                let at = a.meet(b)?;
                let (here, there) = (a.foot(at), b.foot(at));
                (on(i, here) && on(j, there)).then_some((j, here))
            };
            let middle = runs[i].foot();
            outwards(others.filter_map(crossing).collect(), middle)
        });
        Self {
            spans: runs.iter().map(|r| r.span).collect(),
            middles: runs.iter().map(Trim::foot).collect(),
            meets: meets.collect(),
            frees: frees(runs),
        }
    }

    /// Length of a run after a set of others, mm.
    pub(super) fn length(&self, run: usize, after: u64) -> f64 {
        let (from, to) = self.span(run, after);
        (to - from).max(0.0)
    }

    /// What is left of a run after a set of others, as distances along its face.
    fn span(&self, run: usize, after: u64) -> (f64, f64) {
        let (mut from, mut to) = self.spans[run];
        let (mut back, mut ahead) = (false, false);
        // From the middle outwards: the first that is gone on either side ends the run.
        for &(other, at) in &self.meets[run] {
            if after & self.frees[other] != self.frees[other] {
                continue;
            }
            if at >= self.middles[run] {
                if !ahead {
                    (to, ahead) = (to.min(at), true);
                }
            } else if !back {
                (from, back) = (from.max(at), true);
            }
            if back && ahead {
                break;
            }
        }
        (from, to)
    }

    /// The least total length of some runs over every order of them when others are done before, mm; nothing when they are too many
    /// for all orders to be searched.
    pub(super) fn least_total(&self, of: &[usize], done: u64) -> Option<f64> {
        (of.len() <= MOST_SEARCHED).then(|| {
            let mut after = done;
            let each = self.searched(of, done).into_iter().map(|run| {
                let length = self.length(run, after);
                after |= 1 << run;
                length
            });
            each.sum()
        })
    }

    /// The order of some runs with the least total length, when others are done before.
    fn best_order(&self, of: &[usize], done: u64) -> Vec<usize> {
        if of.len() <= MOST_SEARCHED {
            self.searched(of, done)
        } else {
            self.one_by_one(of, done)
        }
    }

    fn searched(&self, of: &[usize], done: u64) -> Vec<usize> {
        let sets = 1_usize << of.len();
        let mut least: Vec<(f64, usize)> = vec![(f64::INFINITY, 0); sets];
        let mut made: Vec<u64> = vec![done; sets];
        least[0].0 = 0.0;
        for set in 0..sets {
            if set > 0 {
                let lowest = set.trailing_zeros() as usize;
                made[set] = made[set & (set - 1)] | 1 << of[lowest];
            }
            for next in (0..of.len()).filter(|k| set & (1 << k) == 0) {
                let total = least[set].0 + self.length(of[next], made[set]);
                let there = &mut least[set | (1 << next)];
                if total < there.0 - SAME_LENGTH_MM || there.0.is_infinite() {
                    *there = (total, next);
                }
            }
        }
        let (mut order, mut set) = (Vec::new(), sets - 1);
        while set != 0 {
            let last = least[set].1;
            order.push(of[last]);
            set &= !(1 << last);
        }
        order.reverse();
        order
    }

    fn one_by_one(&self, of: &[usize], done: u64) -> Vec<usize> {
        let (mut left, mut order, mut after) = (of.to_vec(), Vec::new(), done);
        while !left.is_empty() {
            // What waiting would save the run, less what its going first saves the others.
            let cost = |run: usize| {
                let rest = left.iter().fold(after, |all, i| all | 1 << i) & !(1 << run);
                let own = self.length(run, after) - self.length(run, rest);
                let others = left.iter().filter(|i| **i != run);
                let saved =
                    others.map(|i| self.length(*i, after) - self.length(*i, after | 1 << run));
                own - saved.sum::<f64>()
            };
            let costs: Vec<f64> = left.iter().map(|run| cost(*run)).collect();
            let first = (0..left.len()).min_by(|a, b| costs[*a].total_cmp(&costs[*b]));
            let run = left.remove(first.unwrap_or(0));
            after |= 1 << run;
            order.push(run);
        }
        order
    }
}

/// Crossings in the order of their distance from a middle.
pub(super) fn outwards(mut meets: Vec<(usize, f64)>, middle: f64) -> Vec<(usize, f64)> {
    meets.sort_by(|a, b| (a.1 - middle).abs().total_cmp(&(b.1 - middle).abs()));
    meets
}

/// The set of runs that must have been made before the waste of each is gone: itself alone when it
/// runs off the stone, all that meet it from corner to corner when it stops in an inside corner.
fn frees(runs: &[Trim]) -> Vec<u64> {
    let stops = |run: &Trim| {
        run.ends.into_iter().filter_map(|end| match end {
            TrimEnd::Stops(at) => Some(at),
            TrimEnd::RunOff => None,
        })
    };
    let mut sets: Vec<u64> = (0..runs.len()).map(|i| 1 << i).collect();
    for (i, run) in runs.iter().enumerate() {
        for at in stops(run) {
            let shares = |other: &Trim| stops(other).any(|p| p.distance(at) <= SAME_CORNER_MM);
            let other = (0..runs.len()).find(|j| *j != i && shares(&runs[*j]));
            sets[i] |= other.map_or(NEVER, |j| 1 << j);
        }
    }
    // A chain of corners is one waste: take in the sets of all members until nothing is added.
    for _ in 0..runs.len() {
        let before = sets.clone();
        for set in &mut sets {
            let members = (0..runs.len()).filter(|j| *set & (1 << j) != 0);
            *set = members.fold(*set, |all, j| all | before[j]);
        }
        if sets == before {
            break;
        }
    }
    sets
}

/// Puts runs into the order with the least total length sawn, those that run off the stone first,
/// and fills in each length. Runs of which nothing is left at their turn are left out.
pub(super) fn least_sawing(runs: &[Trim]) -> Vec<Trim> {
    // As many as a set can name; far more than a top has edges.
    let runs = &runs[..runs.len().min(62)];
    let crossings = Crossings::of(runs);
    let (off, stopped): (Vec<usize>, Vec<usize>) =
        (0..runs.len()).partition(|i| runs[*i].runs_off());
    let mut order = crossings.best_order(&off, 0);
    let done = off.iter().fold(0, |all, i| all | 1 << i);
    order.extend(crossings.best_order(&stopped, done));
    let (mut after, mut trims) = (0, Vec::new());
    for i in order {
        let span = crossings.span(i, after);
        let length_mm = span.1 - span.0;
        after |= 1 << i;
        if length_mm > SAME_MM {
            let trim = runs[i].clone();
            trims.push(Trim {
                span,
                length_mm,
                ..trim
            });
        }
    }
    trims
}
