//! The rules of a place, written down a second time: section by section from the trade's, not from
//! the planner's code. For slabs and tops without inside corners.

use crate::convex::{Line, chord, clipped, gap, lines};
use crate::polygon::strip;
use crate::replay::plane::{Place, apart, moved, on_circle};
use crate::replay::random_job::{Corner, Flaw, RandomJob};

/// Rounding, mm.
const SAME: f64 = 1e-6;
/// Tangents that stand for an arc.
const TANGENTS: u32 = 96;
/// The finished top keeps so far off a rough edge, mm: the default of `slab.rough_margin`.
pub(crate) const ROUGH_MARGIN: f64 = 25.0;
/// A curve counts so many times.
const CURVE_FACTOR: f64 = 3.0;

/// One position of the top.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Pose {
    pub(crate) turn: f64,
    pub(crate) shift: Place,
}

impl Pose {
    pub(crate) fn apply(&self, p: Place) -> Place {
        let (sin, cos) = self.turn.sin_cos();
        [
            p[0] * cos - p[1] * sin + self.shift[0],
            p[0] * sin + p[1] * cos + self.shift[1],
        ]
    }
}

/// The top in its own frame.
#[derive(Clone, Debug)]
pub(crate) struct Top {
    /// The two ends of each edge's straight piece.
    spans: Vec<(Place, Place)>,
    used_up: Vec<bool>,
    /// Centre, radius, first direction and sweep of each rounded corner.
    arcs: Vec<Option<(Place, f64, f64, f64)>>,
    /// Points close together along the outline.
    pub(crate) ring: Vec<Place>,
    corner_allowances: Vec<f64>,
    edge_allowances: Vec<f64>,
    arc_length: f64,
}

fn finish_allowance(job: &RandomJob, finish: &str) -> f64 {
    match finish {
        "polish" => job.allowances[0],
        "ease" => job.allowances[1],
        "saw" => job.allowances[2],
        _ => 0.0,
    }
}

impl Top {
    pub(crate) fn of(job: &RandomJob) -> Self {
        let n = job.top.len();
        let unit = |i: usize| Line::through(job.top[i % n], job.top[(i + 1) % n]).along;
        let turn = |i: usize| {
            let (u, v) = (unit(i + n - 1), unit(i));
            (u[0] * v[1] - u[1] * v[0]).atan2(u[0] * v[0] + u[1] * v[1])
        };
        let back = |i: usize| match job.corners[i % n] {
            Corner::Sharp => 0.0,
            Corner::Clip(by) => by,
            Corner::Round(radius) => radius * (turn(i % n) / 2.0).tan(),
            Corner::Scoop(radius) => radius,
        };
        let spans: Vec<(Place, Place)> = (0..n)
            .map(|i| {
                let from = moved(job.top[i], unit(i), back(i));
                (from, moved(job.top[(i + 1) % n], unit(i), -back(i + 1)))
            })
            .collect();
        let used_up: Vec<bool> = spans.iter().map(|(a, b)| apart(*a, *b) <= SAME).collect();
        let arcs: Vec<Option<(Place, f64, f64, f64)>> = (0..n)
            .map(|i| {
                let Corner::Round(radius) = job.corners[i] else {
                    return None;
                };
                let along = unit(i + n - 1);
                let left = [-along[1], along[0]];
                let from = moved(job.top[i], along, -back(i));
                let start = (-left[1]).atan2(-left[0]);
                Some((moved(from, left, radius), radius, start, turn(i)))
            })
            .collect();
        let group = |i: usize| {
            let mut edges = Vec::new();
            for k in 1..=n {
                edges.push((i + n - k) % n);
                if !used_up[(i + n - k) % n] {
                    break;
                }
            }
            for k in 0..n {
                edges.push((i + k) % n);
                if !used_up[(i + k) % n] {
                    break;
                }
            }
            if edges.iter().all(|e| job.finishes[*e] == "factory") {
                return job.allowances[0];
            }
            let each = edges
                .iter()
                .map(|e| finish_allowance(job, job.finishes[*e]));
            each.fold(0.0, f64::max)
        };
        let corner_allowances: Vec<f64> = (0..n).map(group).collect();
        let edge_allowances = (0..n)
            .map(|i| {
                if used_up[i] {
                    corner_allowances[i]
                } else {
                    finish_allowance(job, job.finishes[i])
                }
            })
            .collect();
        let mut ring = Vec::new();
        for i in 0..n {
            match arcs[i] {
                Some((centre, radius, start, sweep)) => {
                    let step = sweep / f64::from(TANGENTS);
                    ring.extend(
                        (0..TANGENTS)
                            .map(|k| on_circle(centre, radius, start + step * f64::from(k))),
                    );
                }
                None => ring.push(spans[(i + n - 1) % n].1),
            }
            ring.push(spans[i].0);
        }
        ring.dedup_by(|a, b| apart(*a, *b) < SAME);
        while ring.len() > 1 && apart(ring[0], ring[ring.len() - 1]) < SAME {
            ring.pop();
        }
        Self {
            arc_length: arcs.iter().flatten().map(|a| a.1 * a.3).sum(),
            spans,
            used_up,
            arcs,
            ring,
            corner_allowances,
            edge_allowances,
        }
    }

    /// The finished top where it lies.
    pub(crate) fn lying(&self, pose: &Pose) -> Vec<Place> {
        self.ring.iter().map(|p| pose.apply(*p)).collect()
    }

    /// The line along an edge where it lies.
    pub(crate) fn edge_line(job: &RandomJob, edge: usize, pose: &Pose) -> Line {
        let n = job.top.len();
        Line::through(
            pose.apply(job.top[edge]),
            pose.apply(job.top[(edge + 1) % n]),
        )
    }

    pub(crate) fn edge_allowance(&self, edge: usize) -> f64 {
        self.edge_allowances[edge]
    }

    /// Half planes that make up the sawn top, with the tangents of its arcs.
    fn faces(&self, job: &RandomJob, pose: &Pose, by: &[f64]) -> Vec<Line> {
        let mut faces = Vec::new();
        for (i, by) in by.iter().enumerate() {
            if !self.used_up[i] {
                faces.push(Self::edge_line(job, i, pose).moved_out(*by));
            }
            let own = self.corner_allowances[i];
            if let Some((centre, radius, start, sweep)) = self.arcs[i] {
                let centre = pose.apply(centre);
                for k in 0..=TANGENTS {
                    let angle = pose.turn + start + sweep * f64::from(k) / f64::from(TANGENTS);
                    faces.push(Line {
                        at: on_circle(centre, radius + own, angle),
                        along: [-angle.sin(), angle.cos()],
                    });
                }
            } else if matches!(job.corners[i], Corner::Clip(_)) {
                faces.push(self.flat(i, pose).moved_out(own));
            }
        }
        faces
    }

    fn flat(&self, corner: usize, pose: &Pose) -> Line {
        let before = self.spans[(corner + self.spans.len() - 1) % self.spans.len()].1;
        Line::through(pose.apply(before), pose.apply(self.spans[corner].0))
    }
}

/// What becomes of an edge.
enum Use {
    Sawn(f64),
    Flush(f64),
    UsedUp,
}

/// A job made ready for judging many places.
pub(crate) struct Judge<'a> {
    pub(crate) job: &'a RandomJob,
    pub(crate) top: Top,
    pub(crate) slab: Vec<Line>,
    thickness: f64,
}

impl<'a> Judge<'a> {
    pub(crate) fn new(job: &'a RandomJob) -> Self {
        let count = job.thickness.len() as f64;
        Self {
            top: Top::of(job),
            slab: lines(&job.slab),
            thickness: job.thickness.iter().sum::<f64>() / count,
            job,
        }
    }

    /// The sawing work at a place; nothing when it breaks a rule or cannot be under `below`. The
    /// sawn top may stand over the slab by `slack` mm.
    pub(crate) fn work(&self, pose: &Pose, below: f64, slack: f64) -> Option<f64> {
        let lying = self.top.lying(pose);
        let held = |ring: &[Place]| {
            ring.iter()
                .all(|p| self.slab.iter().all(|l| l.left_of(*p) >= -slack))
        };
        if !held(&lying) || !self.off_rough_edges(&lying, slack) {
            return None;
        }
        let uses: Vec<Use> = (0..self.job.top.len())
            .map(|i| self.edge_use(i, pose))
            .collect::<Option<_>>()?;
        let mut least = CURVE_FACTOR * self.top.arc_length;
        for (i, (a, b)) in self.top.spans.iter().enumerate() {
            if matches!(uses[i], Use::Sawn(_)) {
                least += apart(*a, *b);
            }
        }
        if least * self.thickness >= below || !self.clear_of_flaws(&shrunk(&lying, slack)) {
            return None;
        }
        let by: Vec<f64> = uses
            .iter()
            .map(|u| match u {
                Use::Sawn(by) | Use::Flush(by) => *by,
                Use::UsedUp => 0.0,
            })
            .collect();
        let far = 1e5;
        let big = vec![[-far, -far], [far, -far], [far, far], [-far, far]];
        let faces = self.top.faces(self.job, pose, &by);
        let sawn = faces.iter().fold(big, |ring, face| clipped(&ring, face));
        // Tangents stand a little outside the arc between their touching points: with no slack a
        // place is judged a hair too strictly, never too kindly.
        if !sawn
            .iter()
            .all(|p| self.slab.iter().all(|l| l.left_of(*p) >= -slack))
        {
            return None;
        }
        let straight = least_total(&self.job.slab, &self.trims(pose, &uses));
        Some((straight + CURVE_FACTOR * self.top.arc_length) * self.thickness)
    }

    /// No point of the finished top within 25 mm of a rough edge.
    fn off_rough_edges(&self, lying: &[Place], slack: f64) -> bool {
        let slab = &self.job.slab;
        let rough = (0..slab.len()).filter(|i| self.job.states[*i] == "rough");
        let ends = rough.map(|i| [slab[i], slab[(i + 1) % slab.len()]]);
        ends.into_iter()
            .all(|e| gap(lying, &e) >= ROUGH_MARGIN - slack)
    }

    fn edge_use(&self, edge: usize, pose: &Pose) -> Option<Use> {
        let (job, top) = (self.job, &self.top);
        let (from, to) = top.spans[edge];
        let (from, to) = (pose.apply(from), pose.apply(to));
        let line = Top::edge_line(job, edge, pose);
        let (own, near) = (top.edge_allowances[edge], 2.0 * job.tape);
        for (i, slab) in self.slab.iter().enumerate() {
            let by = match job.states[i] {
                "factory" => 0.0,
                "sawn" if job.finishes[edge] != "factory" => own,
                _ => continue,
            };
            let gaps = [from, to].map(|p| slab.left_of(p) - by);
            let (a, b) = (job.slab[i], job.slab[(i + 1) % job.slab.len()]);
            let beside = [from, to]
                .iter()
                .all(|p| crate::replay::plane::to_stretch(*p, a, b) <= near + by + SAME);
            let same_way = slab.along[0] * line.along[0] + slab.along[1] * line.along[1] > 0.0;
            if same_way && beside && gaps.iter().all(|g| *g >= -SAME && *g <= near + SAME) {
                return Some(Use::Flush(by));
            }
        }
        if job.finishes[edge] == "factory" {
            return None;
        }
        let face = Line {
            at: moved(from, line.out(), own),
            along: line.along,
        };
        let strip = strip(&job.slab, &face, apart(from, to), SAME);
        if strip >= job.least_strip - SAME {
            Some(Use::Sawn(own))
        } else if top.used_up[edge] {
            Some(Use::UsedUp)
        } else {
            None
        }
    }

    fn clear_of_flaws(&self, lying: &[Place]) -> bool {
        self.job.flaws.iter().all(|(flaw, clear)| {
            let gap = match flaw {
                Flaw::Spot(at, across) => gap(lying, &[*at]) - across / 2.0,
                Flaw::Line(points) => gap(lying, points),
                Flaw::Area(points) => {
                    let mut closed = points.clone();
                    closed.push(points[0]);
                    gap(lying, &closed)
                }
            };
            gap >= *clear && gap > 0.0
        })
    }

    fn trims(&self, pose: &Pose, uses: &[Use]) -> Vec<Line> {
        let mut trims = Vec::new();
        for (i, used) in uses.iter().enumerate() {
            if matches!(self.job.corners[i], Corner::Clip(_)) {
                let flat = self.top.flat(i, pose);
                trims.push(flat.moved_out(self.top.corner_allowances[i]));
            }
            if let Use::Sawn(by) = used {
                trims.push(Top::edge_line(self.job, i, pose).moved_out(*by));
            }
        }
        trims
    }
}

/// A polygon a little smaller, for what may touch its boundary but not lie in it.
fn shrunk(ring: &[Place], by: f64) -> Vec<Place> {
    lines(ring).iter().fold(ring.to_vec(), |ring, line| {
        clipped(&ring, &line.moved_out(-by))
    })
}

/// The least total length of all trims over every order.
fn least_total(slab: &[Place], trims: &[Line]) -> f64 {
    let sets = 1_usize << trims.len();
    let mut stone: Vec<Vec<Place>> = vec![slab.to_vec()];
    let mut least = vec![f64::INFINITY; sets];
    least[0] = 0.0;
    for set in 1..sets {
        let low = set.trailing_zeros() as usize;
        stone.push(clipped(&stone[set & (set - 1)], &trims[low]));
    }
    for set in 0..sets {
        for (i, trim) in trims.iter().enumerate() {
            if set & (1 << i) == 0 {
                let total = least[set] + chord(&stone[set], trim);
                let with = set | (1 << i);
                least[with] = least[with].min(total);
            }
        }
    }
    least[sets - 1]
}
