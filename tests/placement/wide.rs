//! The rules of a place once more, for figures with inside corners; a search by brute force.

use clipper2_rust::{EndType, JoinType, inflate_paths_64};

use crate::convex::Line;
use crate::polygon::{cut, edges, foot, gap, inside, on, runs, sides, sticks_out, strip, to_ring};
use crate::replay::plane::{Place, Stone, apart, moved, to_stretch};
use crate::replay::random_job::{Dice, Flaw};
use crate::rules::{Pose, ROUGH_MARGIN};
use crate::wide_job::{Straight, WideJob};

/// Rounding, mm.
const SAME: f64 = 1e-6;
/// Curves and stopped cuts count so many times.
const FACTORS: (f64, f64) = (3.0, 2.0);

/// A job made ready for judging many places.
pub(crate) struct Wide<'a> {
    pub(crate) job: &'a WideJob,
    ring: Vec<Place>,
    sawn: Vec<Place>,
    straights: Vec<Straight>,
    steady: f64,
}

impl<'a> Wide<'a> {
    pub(crate) fn new(job: &'a WideJob) -> Self {
        let (ring, straights, curved) = job.outline();
        let around = job
            .opening
            .map_or(0.0, |(_, across)| std::f64::consts::PI * across);
        Self {
            sawn: if job.allowance > 0.0 {
                grown(&ring, job.allowance)
            } else {
                ring.clone()
            },
            ring,
            straights,
            steady: FACTORS.0 * (curved + around),
            job,
        }
    }

    /// The work at a place; nothing when a rule is broken or it cannot be below a limit.
    pub(crate) fn work(&self, pose: &Pose, below: f64, slack: f64) -> Option<f64> {
        let carry =
            |ring: &[Place]| -> Vec<Place> { ring.iter().map(|p| pose.apply(*p)).collect() };
        let slab = &self.job.slab;
        if self.job.top.iter().zip(&self.job.corners).any(|(p, c)| {
            let p = pose.apply(*p);
            *c == crate::wide_job::Corner::Sharp && !inside(slab, p) && to_ring(slab, p) > slack
        }) {
            return None;
        }
        let lying: Vec<Straight> = self
            .straights
            .iter()
            .map(|s| Straight {
                edge: s.edge,
                from: pose.apply(s.from),
                to: pose.apply(s.to),
            })
            .collect();
        let mut faces = Vec::new();
        let mut least = self.steady;
        for s in &lying {
            if s.edge.is_none() || !self.is_flush(s) {
                if s.edge.is_some() && self.strip(s, slack) < self.job.least_strip - SAME - slack {
                    return None;
                }
                least += apart(s.from, s.to) - 4.0 * self.job.allowance;
                let middle = [
                    f64::midpoint(s.from[0], s.to[0]),
                    f64::midpoint(s.from[1], s.to[1]),
                ];
                faces.push((
                    Line::through(s.from, s.to).moved_out(self.job.allowance),
                    middle,
                ));
            }
        }
        if least * self.job.thickness >= below {
            return None;
        }
        let sawn = carry(&self.sawn);
        let ring = carry(&self.ring);
        let rough = edges(slab).zip(&self.job.states);
        let mut rough = rough.filter(|(_, state)| **state == "rough");
        if rough.any(|((a, b), _)| gap(&ring, &[a, b]) < ROUGH_MARGIN - slack) {
            return None;
        }
        if sticks_out(&sawn, slab) > slack.max(0.004)
            || !self.clear(pose, &carry(&self.ring), slack)
        {
            return None;
        }
        let (length, trims) = least_total(slab, &sawn, &faces);
        let allowed = |t: &Trimmed| self.job.flaws.iter().all(|f| !self.along(t, f, slack));
        trims
            .iter()
            .all(allowed)
            .then_some((length + self.steady) * self.job.thickness)
    }

    fn is_flush(&self, s: &Straight) -> bool {
        let along = Line::through(s.from, s.to).along;
        let near = 2.0 * self.job.tape;
        edges(&self.job.slab)
            .zip(&self.job.states)
            .any(|((a, b), state)| {
                let slab = Line::through(a, b);
                let by = if *state == "factory" {
                    0.0
                } else {
                    self.job.allowance
                };
                let fits = |p: Place| {
                    let gap = slab.left_of(p) - by;
                    gap >= -SAME && gap <= near + SAME && to_stretch(p, a, b) <= near + by + SAME
                };
                let same_way = slab.along[0] * along[0] + slab.along[1] * along[1] > 0.0;
                *state != "rough" && same_way && fits(s.from) && fits(s.to)
            })
    }

    fn strip(&self, s: &Straight, slack: f64) -> f64 {
        // Looking for places, no more may pass here than does where the outline is held in the slab.
        let over = if slack < 1e-3 { 0.005 } else { SAME };
        let face = Line::through(s.from, s.to).moved_out(self.job.allowance);
        strip(&self.job.slab, &face, apart(s.from, s.to), over)
    }

    fn clear(&self, pose: &Pose, ring: &[Place], slack: f64) -> bool {
        self.job.flaws.iter().all(|(flaw, clear)| {
            let (path, around) = match flaw {
                Flaw::Spot(at, across) => (vec![*at], across / 2.0),
                Flaw::Line(points) => (points.clone(), 0.0),
                Flaw::Area(points) => ([points.clone(), vec![points[0]]].concat(), 0.0),
            };
            let taken_out = self.job.opening.is_some_and(|(at, across)| {
                let at = pose.apply(at);
                let far = path.iter().map(|p| apart(*p, at)).fold(0.0, f64::max);
                far + around + clear <= across / 2.0 + slack
            });
            let apart = gap(ring, &path);
            // What only touches is clear when nothing is to be kept clear.
            let clear_by = if apart > 0.0 || touches_only(ring, &path, slack) {
                apart - around
            } else {
                -1.0
            };
            taken_out || clear_by >= clear - slack
        })
    }

    /// Whether a trim stays beside a line flaw for longer than a crossing at 30° would.
    fn along(&self, trim: &Trimmed, (flaw, clear): &(Flaw, f64), slack: f64) -> bool {
        let Flaw::Line(points) = flaw else {
            return false;
        };
        let band = 2.0 * clear + self.job.kerf;
        let samples = 4000;
        let mut beside = 0.0;
        for w in points.windows(2) {
            let long = apart(w[0], w[1]);
            let along = Line::through(w[0], w[1]);
            let step = long / f64::from(samples);
            for k in 0..samples {
                let p = on(&along, (f64::from(k) + 0.5) * step);
                let (at, out) = (foot(&trim.face, p), -trim.face.left_of(p));
                if at > trim.run.0 && at < trim.run.1 && out > -clear && out < clear + self.job.kerf
                {
                    let cos =
                        along.along[0] * trim.face.along[0] + along.along[1] * trim.face.along[1];
                    beside += step * cos.abs();
                }
            }
        }
        beside > 2.0 * band + 0.5 + 100.0 * slack
    }
}

fn touches_only(ring: &[Place], path: &[Place], slack: f64) -> bool {
    let deep = |p: &Place| inside(ring, *p) && to_ring(ring, *p) > slack.max(SAME);
    !path.iter().any(deep) && !path.windows(2).any(|w| deep(&mid(w[0], w[1])))
}

fn mid(a: Place, b: Place) -> Place {
    [f64::midpoint(a[0], b[0]), f64::midpoint(a[1], b[1])]
}

/// A ring grown all round, sharp corners kept, by clipper2.
fn grown(ring: &[Place], by: f64) -> Vec<Place> {
    const GRID: f64 = 1e5;
    let path = Stone::ring(ring).0;
    let grown = inflate_paths_64(
        &path,
        by * GRID,
        JoinType::Miter,
        EndType::Polygon,
        50.0,
        0.0,
    );
    let place = |p: &clipper2_rust::Point64| [p.x as f64 / GRID, p.y as f64 / GRID];
    grown[0].iter().map(place).collect()
}

/// A trim as it is made: its face, and the run along it.
struct Trimmed {
    face: Line,
    run: (f64, f64),
}

/// Total length, the stone left, and the order of the trims that led there.
type Made = (f64, Vec<Place>, Vec<usize>);

/// The least total length over every order, stopped cuts last and counted by their factor; and the
/// trims in that order.
fn least_total(slab: &[Place], sawn: &[Place], faces: &[(Line, Place)]) -> (f64, Vec<Trimmed>) {
    let faces = &one_for_each_run(slab, faces);
    // A hair outside the face the line leaves the edge's own stone alone.
    let limits: Vec<(f64, f64)> = faces
        .iter()
        .map(|(face, middle)| {
            let at = foot(face, *middle);
            let kept = runs(sawn, &face.moved_out(2e-3));
            let ahead = kept.iter().filter(|r| r.0 >= at).map(|r| r.0);
            let back = kept.iter().filter(|r| r.1 <= at).map(|r| r.1);
            (back.fold(-1e9, f64::max), ahead.fold(1e9, f64::min))
        })
        .collect();
    let runs_off = |i: usize| {
        let near = foot(&faces[i].0, faces[i].1);
        let run = cut(slab, &faces[i].0, near).map_or((near, near), |c| c.0);
        limits[i].0 <= run.0 + 0.01 && limits[i].1 >= run.1 - 0.01
    };
    let (off, stopped): (Vec<usize>, Vec<usize>) = (0..faces.len()).partition(|i| runs_off(*i));
    let sets = 1_usize << off.len();
    let mut best: Vec<Option<Made>> = vec![None; sets];
    best[0] = Some((0.0, slab.to_vec(), Vec::new()));
    for set in 0..sets {
        let Some((total, stone, order)) = best[set].clone() else {
            continue;
        };
        for (k, i) in off.iter().enumerate().filter(|(k, _)| set & (1 << k) == 0) {
            let made = cut(&stone, &faces[*i].0, foot(&faces[*i].0, faces[*i].1));
            let (length, left) = made.map_or((0.0, stone.clone()), |(r, left)| (r.1 - r.0, left));
            let there = &mut best[set | (1 << k)];
            if there.as_ref().is_none_or(|t| total + length < t.0 - 0.01) {
                *there = Some((total + length, left, [order.clone(), vec![*i]].concat()));
            }
        }
    }
    let (mut total, last, order) = best[sets - 1].clone().unwrap_or_default();
    let mut trims = Vec::new();
    let mut stone = slab.to_vec();
    for i in order {
        if let Some((run, left)) = cut(&stone, &faces[i].0, foot(&faces[i].0, faces[i].1)) {
            trims.push(Trimmed {
                face: faces[i].0,
                run,
            });
            stone = left;
        }
    }
    for i in stopped {
        if let Some((run, _)) = cut(&last, &faces[i].0, foot(&faces[i].0, faces[i].1)) {
            let run = (run.0.max(limits[i].0), run.1.min(limits[i].1));
            total += FACTORS.1 * (run.1 - run.0).max(0.0);
            trims.push(Trimmed {
                face: faces[i].0,
                run,
            });
        }
    }
    (total, trims)
}

/// The faces without those that lie in the run of an earlier one: one cut makes both.
fn one_for_each_run(slab: &[Place], faces: &[(Line, Place)]) -> Vec<(Line, Place)> {
    let mut kept: Vec<(Line, Place)> = Vec::new();
    for (face, middle) in faces {
        let same = |(other, at): &(Line, Place)| {
            let along = other.along[0] * face.along[0] + other.along[1] * face.along[1];
            let run = cut(slab, other, foot(other, *at)).map_or((0.0, 0.0), |c| c.0);
            let here = foot(other, *middle);
            along > 1.0 - 1e-9
                && other.left_of(face.at).abs() < SAME
                && here > run.0
                && here < run.1
        };
        if !kept.iter().any(same) {
            kept.push((*face, *middle));
        }
    }
    kept
}

/// Turns that lay an edge along an edge.
pub(crate) fn turns(wide: &Wide<'_>) -> Vec<f64> {
    let angle = |l: &Line| l.along[1].atan2(l.along[0]);
    let slab = sides(&wide.job.slab);
    let mut turns: Vec<f64> = wide
        .straights
        .iter()
        .filter(|s| s.edge.is_some())
        .flat_map(|s| {
            let own = angle(&Line::through(s.from, s.to));
            let each = slab
                .iter()
                .map(move |l| (angle(l) - own).rem_euclid(std::f64::consts::TAU));
            each.collect::<Vec<_>>()
        })
        .collect();
    turns.sort_by(f64::total_cmp);
    turns.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    turns
}

/// Places tried at one turn: where lines of touching meet, a few along each, and some anywhere.
pub(crate) fn places(wide: &Wide<'_>, turn: f64, dice: &mut Dice) -> Vec<Place> {
    let none = Pose {
        turn,
        shift: [0.0, 0.0],
    };
    let lying: Vec<Place> = wide
        .sawn
        .iter()
        .step_by(7)
        .map(|p| none.apply(*p))
        .collect();
    let corners: Vec<Place> = wide.job.top.iter().map(|p| none.apply(*p)).collect();
    let mut touches: Vec<(Place, f64)> = Vec::new();
    for slab in sides(&wide.job.slab) {
        let inwards = [-slab.along[1], slab.along[0]];
        let dot = |p: Place| p[0] * inwards[0] + p[1] * inwards[1];
        let far = lying.iter().map(|p| dot(*p)).fold(f64::INFINITY, f64::min);
        let far = corners
            .iter()
            .map(|p| dot(*p) - wide.job.allowance)
            .fold(far, f64::min);
        for depth in [0.0, wide.job.least_strip, wide.job.tape] {
            touches.push((inwards, dot(slab.at) + depth - far));
        }
    }
    for s in &wide.straights {
        let face =
            Line::through(none.apply(s.from), none.apply(s.to)).moved_out(wide.job.allowance);
        let across = [-face.along[1], face.along[0]];
        for p in &wide.job.slab {
            let by = face.left_of(*p);
            touches.extend([(across, by + 0.01), (across, by - 0.01)]);
        }
    }
    let slab = &wide.job.slab;
    let range = |k: usize, of: &[Place]| {
        let all = of.iter().map(|p| p[k]);
        all.fold((f64::MAX, f64::MIN), |m, v| (m.0.min(v), m.1.max(v)))
    };
    let low_high = [0, 1].map(|k| {
        let (s, t) = (range(k, slab), range(k, &corners));
        (s.0 - t.0, s.1 - t.1)
    });
    if low_high.iter().any(|(l, h)| h < l) {
        return Vec::new();
    }
    let anywhere = |dice: &mut Dice| low_high.map(|(l, h)| l + (h - l) * dice.share());
    let mut places: Vec<Place> = (0..40).map(|_| anywhere(dice)).collect();
    for (i, (u, a)) in touches.iter().enumerate() {
        for (v, b) in &touches[..i] {
            let cross = u[0] * v[1] - u[1] * v[0];
            if cross.abs() > 1e-6 {
                places.push([(a * v[1] - b * u[1]) / cross, (u[0] * b - v[0] * a) / cross]);
            }
        }
        for _ in 0..3 {
            let p = anywhere(dice);
            places.push(moved(p, *u, a - (u[0] * p[0] + u[1] * p[1])));
        }
    }
    let held =
        |p: &Place| (0..2).all(|k| p[k] >= low_high[k].0 - 1.0 && p[k] <= low_high[k].1 + 1.0);
    places.retain(held);
    // A fair share of very many.
    let most = 400;
    if places.len() > most {
        let step = places.len() as f64 / most as f64;
        places = (0..most)
            .map(|k| places[(k as f64 * step) as usize])
            .collect();
    }
    places
}
