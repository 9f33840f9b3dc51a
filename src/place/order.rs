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
pub(super) const MOST_SEARCHED: usize = 12;
/// A gain below this is rounding, mm: the earlier name stays first.
const SAME_LENGTH_MM: f64 = 0.01;
/// Two trims that stop this near to each other stop in the same corner, mm.
const SAME_CORNER_MM: f64 = 1e-3;

/// When the waste of a run is gone.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Freed {
    /// Once these runs have been made, itself among them; in the order of their numbers.
    By(Vec<usize>),
    /// Never: its cut stops in the stone and no other meets it there.
    Never,
}

/// Runs through the stone, and where they cross.
#[derive(Clone, Debug)]
pub(super) struct Crossings {
    /// The stretch of each that is sawn when it is the first, as distances along its face.
    pub(super) spans: Vec<(f64, f64)>,
    /// Where the middle of the finished edge lies.
    pub(super) middles: Vec<f64>,
    /// For each run, the others that cross it and where, from its middle outwards.
    pub(super) meets: Vec<Vec<(usize, f64)>>,
    /// For each run, when its waste is gone.
    pub(super) freed: Vec<Freed>,
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
            freed: freed(runs),
        }
    }

    /// What is left of a run after those made, as distances along its face.
    fn span(&self, run: usize, made: &[bool]) -> (f64, f64) {
        let gone = |other: usize| match &self.freed[other] {
            Freed::By(runs) => runs.iter().all(|r| made[*r]),
            Freed::Never => false,
        };
        let crossings = self.meets[run]
            .iter()
            .map(|(other, at)| (gone(*other), *at));
        left_of_span(self.spans[run], self.middles[run], crossings)
    }

    /// Length of a run after those made, mm.
    fn length(&self, run: usize, made: &[bool]) -> f64 {
        let (from, to) = self.span(run, made);
        (to - from).max(0.0)
    }

    /// The least total length of some runs over every order of them when others are made before, mm;
    /// nothing when they are too many for all orders to be searched.
    pub(super) fn least_total(&self, of: &[usize], made: &[bool]) -> Option<f64> {
        (of.len() <= MOST_SEARCHED).then(|| {
            let mut made = made.to_vec();
            let each = self.searched(of, &made).into_iter().map(|run| {
                let length = self.length(run, &made);
                made[run] = true;
                length
            });
            each.sum()
        })
    }

    /// The order of some runs with the least total length, when others are made before.
    fn best_order(&self, of: &[usize], made: &[bool]) -> Vec<usize> {
        if of.len() <= MOST_SEARCHED {
            self.searched(of, made)
        } else {
            self.one_by_one(of, made)
        }
    }

    /// Over all sets of runs: 2ⁿ·n steps.
    fn searched(&self, of: &[usize], made: &[bool]) -> Vec<usize> {
        let sets = 1_usize << of.len();
        let meets: Vec<Vec<(usize, f64)>> =
            of.iter().map(|run| self.within(*run, of, made)).collect();
        let length = |k: usize, set: usize| {
            let crossings = meets[k].iter().map(|(needs, at)| (needs & !set == 0, *at));
            let (from, to) = left_of_span(self.spans[of[k]], self.middles[of[k]], crossings);
            (to - from).max(0.0)
        };
        let mut least: Vec<(f64, usize)> = vec![(f64::INFINITY, 0); sets];
        least[0].0 = 0.0;
        for set in 0..sets {
            for next in (0..of.len()).filter(|k| set & (1 << k) == 0) {
                let total = least[set].0 + length(next, set);
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

    /// The crossings of a run that count once a set of the runs `of` is made, as bits of `of`, and where.
    fn within(&self, run: usize, of: &[usize], made: &[bool]) -> Vec<(usize, f64)> {
        let needs = |other: usize| {
            let Freed::By(runs) = &self.freed[other] else {
                return None;
            };
            let left = runs.iter().filter(|r| !made[**r]);
            left.map(|r| of.iter().position(|o| o == r))
                .try_fold(0, |needs, k| Some(needs | 1 << k?))
        };
        let meets = self.meets[run].iter();
        meets
            .filter_map(|(other, at)| Some((needs(*other)?, *at)))
            .collect()
    }

    /// Each time the run whose going first costs the least: n³ steps, each short.
    fn one_by_one(&self, of: &[usize], made: &[bool]) -> Vec<usize> {
        let (mut left, mut order, mut made) = (of.to_vec(), Vec::new(), made.to_vec());
        while !left.is_empty() {
            let now: Vec<f64> = left.iter().map(|run| self.length(*run, &made)).collect();
            let all = |made: &[bool]| {
                let mut all = made.to_vec();
                for run in &left {
                    all[*run] = true;
                }
                all
            };
            let after_all = all(&made);
            // What waiting would save the run, less what its going first saves the others.
            let mut cost = |k: usize| {
                let run = left[k];
                let own = now[k] - self.length(run, &after_all);
                made[run] = true;
                let others = left.iter().zip(&now).filter(|(i, _)| **i != run);
                let saved = others.map(|(i, now)| now - self.length(*i, &made));
                let cost = own - saved.sum::<f64>();
                made[run] = false;
                cost
            };
            let costs: Vec<f64> = (0..left.len()).map(&mut cost).collect();
            let first = (0..left.len()).min_by(|a, b| costs[*a].total_cmp(&costs[*b]));
            let run = left.remove(first.unwrap_or(0));
            made[run] = true;
            order.push(run);
        }
        order
    }
}

/// What crossings leave of a span, given from its middle outwards: whether what lies beyond is gone, and
/// where. The first that is gone on either side ends it.
fn left_of_span(
    (mut from, mut to): (f64, f64),
    middle: f64,
    crossings: impl Iterator<Item = (bool, f64)>,
) -> (f64, f64) {
    let (mut back, mut ahead) = (false, false);
    for (_, at) in crossings.filter(|(gone, _)| *gone) {
        if at >= middle {
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

/// Crossings in the order of their distance from a middle.
pub(super) fn outwards(mut meets: Vec<(usize, f64)>, middle: f64) -> Vec<(usize, f64)> {
    meets.sort_by(|a, b| (a.1 - middle).abs().total_cmp(&(b.1 - middle).abs()));
    meets
}

/// When the waste of each run is gone: once it is made when it runs off the stone; when it stops in an
/// inside corner, once all are made that meet it from corner to corner.
fn freed(runs: &[Trim]) -> Vec<Freed> {
    let n = runs.len();
    let stops = |run: &Trim| -> Vec<crate::geom::Point> {
        let each = run.ends.into_iter().filter_map(|end| match end {
            TrimEnd::Stops(at) => Some(at),
            TrimEnd::RunOff => None,
        });
        each.collect()
    };
    let stops: Vec<_> = runs.iter().map(stops).collect();
    let partner = |i: usize, at: crate::geom::Point| {
        let shares = |j: &usize| stops[*j].iter().any(|p| p.distance(at) <= SAME_CORNER_MM);
        (0..n).filter(|j| *j != i).find(shares)
    };
    let partners: Vec<Vec<Option<usize>>> = (0..n)
        .map(|i| stops[i].iter().map(|at| partner(i, *at)).collect())
        .collect();
    // A chain of corners is one waste.
    let chain = |start: usize| {
        let mut chain = vec![start];
        let mut next = 0;
        while next < chain.len() {
            for other in &partners[chain[next]] {
                let Some(other) = *other else {
                    return Freed::Never;
                };
                if !chain.contains(&other) {
                    chain.push(other);
                }
            }
            next += 1;
        }
        chain.sort_unstable();
        Freed::By(chain)
    };
    (0..n).map(chain).collect()
}

/// Puts runs into the order with the least total length sawn, those that run off the stone first,
/// and fills in each length. Runs of which nothing is left at their turn are left out.
pub(super) fn least_sawing(runs: &[Trim]) -> Vec<Trim> {
    let crossings = Crossings::of(runs);
    let (off, stopped): (Vec<usize>, Vec<usize>) =
        (0..runs.len()).partition(|i| runs[*i].runs_off());
    let mut made = vec![false; runs.len()];
    let mut order = crossings.best_order(&off, &made);
    for run in &off {
        made[*run] = true;
    }
    order.extend(crossings.best_order(&stopped, &made));
    made.fill(false);
    let mut trims = Vec::new();
    for i in order {
        let span = crossings.span(i, &made);
        let length_mm = span.1 - span.0;
        made[i] = true;
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
