//! A stone bent over several supports: what each of them pushes up with.
//!
//! The stone is an elastic beam along one direction whose stiffness follows its width; across it the
//! stone stays straight and may tilt. Each support is a spring. Reactions follow from equal deflections
//! of stone and spring (the method of forces), no support pulls, and one that lifts off may come back when
//! the others give way. Shear and twist are neglected.

use super::bend::{Beam, Reaction};
use super::splint::STONE_MPA;

/// Widths below this, mm, are taken as this: a support is never on the very tip of an end.
const TIP_MM: f64 = 1.0;
/// Posts that spread less than this across the beam, mm, are one line: nothing there keeps the stone from
/// tilting (judgement: rounding of a tape).
const ONE_LINE_MM: f64 = 1.0;
/// A post that has lifted off keeps this part of its stiffness: far below what any figure shows, and so the sums have
/// an answer whichever posts hold.
const LIFTED: f64 = 1e-12;
/// A post that has lifted off is taken back when the stone sinks on it by more than this, mm: rounding.
const SLACK_MM: f64 = 1e-9;
/// So many times all posts that are wrong let go or take hold together, before they do so one by one.
const ALL_AT_ONCE: usize = 20;

/// A support along the beam.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Post {
    /// Distance from the end of the stone, mm.
    pub at_mm: f64,
    /// Distance from the stone's right-hand side, mm.
    pub across_mm: f64,
    /// Stiffness, N/mm, > 0.
    pub stiffness: f64,
}

/// A beam on posts, ready for loads.
pub struct Continuous<'a> {
    beam: &'a Beam<'a>,
    posts: Vec<Post>,
    /// The stone's balance point across the beam, mm.
    balance_across_mm: f64,
    /// Running integrals from the first post on, one entry a station between the posts.
    sums: Vec<Sums>,
    /// The inverse of the equations with every post holding, row by row: what each post pushes up with, then how far the
    /// whole stone sinks, tilts along and, where the posts spread across it, tilts across.
    inverse: Vec<Vec<f64>>,
    /// How far the stone's own weight lets each post's place sink, the stone clamped at the first, mm.
    own: Vec<f64>,
}

/// `∫ds/EI`, `∫s·ds/EI`, `∫s²·ds/EI`, and `∫m·ds/EI`, `∫m·s·ds/EI` with `m` the moment of the stone
/// right of `s` about it; `s` and `u` counted from the first post.
#[derive(Clone, Copy, Debug, Default)]
struct Sums {
    u: f64,
    parts: [f64; 5],
}

impl<'a> Continuous<'a> {
    /// A beam on posts in any order, those level with each other in the order given; nothing when they stand
    /// at fewer than two places along it. `balance_across_mm` is the stone's balance point across the beam.
    #[must_use]
    pub fn new(beam: &'a Beam<'a>, posts: &[Post], balance_across_mm: f64) -> Option<Self> {
        let mut posts = posts.to_vec();
        posts.sort_by(|a, b| a.at_mm.total_cmp(&b.at_mm));
        let (first, last) = (posts.first()?.at_mm, posts.last()?.at_mm);
        if first >= last {
            return None;
        }
        let mut sought = Self {
            beam,
            posts,
            balance_across_mm,
            sums: Vec::new(),
            inverse: Vec::new(),
            own: Vec::new(),
        };
        sought.sums = sought.summed(first, last);
        let places: Vec<f64> = sought.posts.iter().map(|p| p.at_mm - first).collect();
        sought.own = places.iter().map(|a| sought.own(*a)).collect();
        sought.inverse = sought.inverted(&places)?;
        Some(sought)
    }

    /// The equations inverted: equal deflections of stone and spring at every post, then balance. `places` are those of
    /// the posts, counted from the first.
    fn inverted(&self, places: &[f64]) -> Option<Vec<Vec<f64>>> {
        let n = self.posts.len();
        let across = self.posts.iter().map(|p| p.across_mm);
        let [low, high] = across.fold([f64::INFINITY, f64::NEG_INFINITY], |s, v| {
            [s[0].min(v), s[1].max(v)]
        });
        let rigid = if high - low > ONE_LINE_MM { 3 } else { 2 };
        let size = n + rigid;
        let moved = |i: usize, k: usize| [1.0, places[i], self.posts[i].across_mm][k];
        let mut rows = vec![vec![0.0; 2 * size]; size];
        for i in 0..n {
            for j in 0..=i {
                let both = self.flexibility(places[i], places[j]);
                (rows[i][j], rows[j][i]) = (both, both);
            }
            rows[i][i] += 1.0 / self.posts[i].stiffness;
            for k in 0..rigid {
                rows[i][n + k] = -moved(i, k);
                rows[n + k][i] = moved(i, k);
            }
        }
        for (i, row) in rows.iter_mut().enumerate() {
            row[size + i] = 1.0;
        }
        eliminated(rows)
    }

    /// What the posts push up with under the stone's weight and a force of `load_n` pressing down
    /// at a distance along and across, in order along the beam; nothing when it tips.
    #[must_use]
    pub fn unilateral(&self, load_n: f64, (at_mm, across_mm): (f64, f64)) -> Option<Vec<Reaction>> {
        let count = self.posts.len();
        let from = self.posts.first()?.at_mm;
        let deflection = |(post, own): (&Post, &f64)| {
            own + load_n * self.flexibility(post.at_mm - from, at_mm - from)
        };
        let deflections: Vec<f64> = self.posts.iter().zip(&self.own).map(deflection).collect();
        let balanced = self.balanced(load_n, at_mm - from, across_mm);
        let known: Vec<f64> = deflections.into_iter().chain(balanced).collect();
        let answer = |row: &Vec<f64>| row.iter().zip(&known).map(|(a, b)| a * b).sum();
        let all: Vec<f64> = self.inverse.iter().map(answer).collect();
        let mut holds = vec![true; count];
        for step in 0..ALL_AT_ONCE + 3 * count {
            let (forces, sinks) = self.solved(&holds, &all)?;
            let slack = 1e-9 * (load_n + self.beam.weight_n());
            let wrong = |i: &usize| {
                if holds[*i] {
                    forces[*i] < -slack
                } else {
                    sinks[*i] > SLACK_MM
                }
            };
            let wrong: Vec<usize> = (0..count).filter(wrong).collect();
            if wrong.is_empty() {
                return self.pushing(&holds, &forces, load_n);
            }
            let by = |i: &usize| sinks[*i].abs() * self.posts[*i].stiffness;
            let worst = wrong.iter().copied().max_by(|a, b| by(a).total_cmp(&by(b)));
            // Letting go and taking back all at once may run in a circle; one by one it ends.
            let turned = if step < ALL_AT_ONCE {
                wrong
            } else {
                worst.into_iter().collect()
            };
            for i in turned {
                holds[i] = !holds[i];
            }
        }
        None
    }

    /// What the posts that hold push up with; nothing when they push more than there is to carry: then the stone
    /// hangs on the others.
    fn pushing(&self, holds: &[bool], forces: &[f64], load_n: f64) -> Option<Vec<Reaction>> {
        let held = self.posts.iter().zip(forces).zip(holds);
        let props: Vec<Reaction> = held
            .map(|((post, force), holds)| Reaction {
                at_mm: post.at_mm,
                force_n: if *holds { *force } else { 0.0 },
            })
            .collect();
        let carried: f64 = props.iter().map(|p| p.force_n).sum();
        let whole = self.beam.weight_n() + load_n;
        ((carried - whole).abs() <= 1e-4 * whole).then_some(props)
    }

    /// Forces of the posts as if they could pull too, those that do not hold next to nothing, and how far the
    /// stone sinks at every post, mm. `all` is the answer with every post holding; each that lets go makes its
    /// equation softer (Woodbury's identity), so that only those are solved for: r³ for r of them.
    fn solved(&self, holds: &[bool], all: &[f64]) -> Option<(Vec<f64>, Vec<f64>)> {
        let n = self.posts.len();
        let lifted: Vec<usize> = (0..n).filter(|i| !holds[*i]).collect();
        let softer = |(at, i): (usize, &usize)| {
            let mut row: Vec<f64> = lifted.iter().map(|j| self.inverse[*i][*j]).collect();
            row[at] += self.posts[*i].stiffness * LIFTED;
            row.push(all[*i]);
            row
        };
        let rows = lifted.iter().enumerate().map(softer).collect();
        let sunk: Vec<f64> = eliminated(rows)?.into_iter().map(|x| x[0]).collect();
        let force = |i: usize| {
            let gone = lifted.iter().zip(&sunk);
            all[i] - gone.map(|(j, mm)| self.inverse[i][*j] * mm).sum::<f64>()
        };
        let forces: Vec<f64> = (0..n).map(force).collect();
        let springs = forces.iter().zip(&self.posts);
        let mut sinks: Vec<f64> = springs.map(|(f, post)| f / post.stiffness).collect();
        for (i, mm) in lifted.iter().zip(&sunk) {
            sinks[*i] += mm;
        }
        Some((forces, sinks))
    }

    /// What the posts balance of the stone's weight and a load: force, moment along about the first post, and moment
    /// across, which is left out of the sums where the posts stand in one line.
    fn balanced(&self, load_n: f64, along_mm: f64, across_mm: f64) -> [f64; 3] {
        let weight = self.beam.weight_n();
        let from = self.posts.first().map_or(0.0, |p| p.at_mm);
        let along = weight * (self.beam.strip().middle() - from) + load_n * along_mm;
        let across = weight * self.balance_across_mm + load_n * across_mm;
        [weight + load_n, along, across]
    }

    /// How far 1 N at one place moves another, the stone clamped at the first post, mm.
    fn flexibility(&self, here: f64, there: f64) -> f64 {
        let near = here.min(there);
        if near <= 0.0 {
            return 0.0;
        }
        let [whole, first, second, ..] = self.sums_at(near);
        here * there * whole - (here + there) * first + second
    }

    /// How far the stone's own weight lets a place sink, the stone clamped at the first post, mm.
    fn own(&self, here: f64) -> f64 {
        if here <= 0.0 {
            return 0.0;
        }
        let [.., turn, first_turn] = self.sums_at(here);
        self.beam.slice().weight_n_per_mm2 * (here * turn - first_turn)
    }

    /// The integrals up to a place, a straight line between stations.
    fn sums_at(&self, u: f64) -> [f64; 5] {
        let after = self.sums.partition_point(|s| s.u < u);
        let (Some(high), Some(low)) = (
            self.sums.get(after).or(self.sums.last()),
            self.sums.get(after.saturating_sub(1)),
        ) else {
            return [0.0; 5];
        };
        let width = high.u - low.u;
        let share = if width > 0.0 {
            ((u - low.u) / width).clamp(0.0, 1.0)
        } else {
            1.0
        };
        std::array::from_fn(|k| low.parts[k] + share * (high.parts[k] - low.parts[k]))
    }

    /// Simpson's rule over every stretch between stations, posts and the load's place among them.
    fn summed(&self, first: f64, last: f64) -> Vec<Sums> {
        let strip = self.beam.strip();
        let within = strip.stations().iter().map(|s| s.u);
        let mut places: Vec<f64> = within.filter(|u| *u > first && *u < last).collect();
        places.extend(self.posts.iter().map(|p| p.at_mm));
        places.sort_by(f64::total_cmp);
        places.dedup();
        let mut sums = vec![Sums::default()];
        let mut total = [0.0; 5];
        for pair in places.windows(2) {
            let [from, to] = [pair[0], pair[1]];
            // Just inside the stretch, so that a jump of width counts on its own side.
            let inset = INSET * (to - from);
            let nodes = [from + inset, f64::midpoint(from, to), to - inset];
            for (u, weight) in nodes.into_iter().zip([1.0, 4.0, 1.0]) {
                let part = self.parts(u, first);
                for (sum, value) in total.iter_mut().zip(part) {
                    *sum += weight / 6.0 * (to - from) * value;
                }
            }
            sums.push(Sums {
                u: to - first,
                parts: total,
            });
        }
        sums
    }

    /// What is integrated, at one cross-section.
    fn parts(&self, u: f64, first: f64) -> [f64; 5] {
        let strip = self.beam.strip();
        let t = self.beam.slice().thickness_mm;
        let stiffness = STONE_MPA * strip.width_at(u).max(TIP_MM) * t.powi(3) / 12.0;
        let right = strip.area() * (strip.middle() - u) + strip.left_of(u).1;
        let s = u - first;
        [1.0, s, s * s, right, right * s].map(|part| part / stiffness)
    }
}

/// How far inside a stretch its ends are looked at, as a part of its length.
const INSET: f64 = 1e-6;

/// Solves a square system given with its right-hand sides as last columns, by elimination with pivoting: the answers
/// in the same columns; nothing when there is no single answer. n²·(n + m) for n unknowns and m right-hand sides.
fn eliminated(mut rows: Vec<Vec<f64>>) -> Option<Vec<Vec<f64>>> {
    let n = rows.len();
    for k in 0..n {
        let pivot = (k..n).max_by(|a, b| rows[*a][k].abs().total_cmp(&rows[*b][k].abs()))?;
        rows.swap(k, pivot);
        let mut top = std::mem::take(&mut rows[k]);
        let (_, rest) = top.split_at_mut(k);
        let [first, ..] = *rest else { return None };
        if first == 0.0 {
            return None;
        }
        for value in rest.iter_mut() {
            *value /= first;
        }
        for row in rows.iter_mut().filter(|row| !row.is_empty()) {
            let factor = row[k];
            for (value, above) in row[k..].iter_mut().zip(&*rest) {
                *value -= factor * above;
            }
        }
        rows[k] = top;
    }
    let answers = rows.into_iter().map(|mut row| row.split_off(n));
    let answers: Vec<Vec<f64>> = answers.collect();
    let finite = answers.iter().flatten().all(|a| a.is_finite());
    finite.then_some(answers)
}
