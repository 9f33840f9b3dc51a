//! A place at any turn, or the proof that there is none.
//!
//! Branch and bound over the turn. When the top turns about a point, none of its points moves farther
//! than the farthest one's distance times the angle. So what the top, eroded by that much, has no room
//! for at the middle of an interval of turns, the whole top has no room for at any turn in it. Intervals
//! with room are halved until a place is found in their middle or the erosion is below [`WITHIN_MM`].
//! The steps are counted, and with them the time is bounded: [`MOST_STEPS`].

use std::collections::HashMap;
use std::f64::consts::PI;

use rayon::iter::{IntoParallelRefIterator, ParallelIterator};

use crate::geom::arc::wrapped;
use crate::geom::free::{Blocked, Free, TOUCH_MM, carve};
use crate::geom::hull::Hull;
use crate::geom::{Bounds, Point, Seg};
use crate::job::{EdgeState, Finish, Job};
use crate::place::evaluator::Evaluator;

use super::allowance::edge_allowance;
use super::edge::{edge_span, flush_allowance};
use super::ground::{Approximation, Body, FINE_MM, Ground};
use super::room::ENDS_A_STRIP;
use super::turned::{add_touching, bounds, domain, touching, windows};
use super::{Placement, vein};

/// A proof covers a top that is smaller by this much all round, mm.
pub const WITHIN_MM: f64 = 0.1;
/// Intervals at the start.
const ROOTS: u32 = 64;
/// The most steps of geometry (edges × obstacles, about a hundredth of a microsecond each) that are spent
/// on one question; beyond it nothing is proved (judgement).
const MOST_STEPS: usize = 8_000_000;
/// So many intervals are looked at side by side before the steps are counted.
const TOGETHER: usize = 16;
/// The most turns at which a place is looked for (judgement).
const MOST_LOOKS: u32 = 96;

/// What the search over all turns came to.
pub(super) enum Sweep {
    /// A place.
    Found(Box<Placement>),
    /// There is none, to within [`WITHIN_MM`].
    Proved,
    /// None was found, and it is not proved that there is none.
    Open,
}

/// A straight edge of the top about its turning centre, and the slab's edges it may lie on.
struct Straight {
    edge: usize,
    from: Point,
    to: Point,
    /// The finished edge is still there, and not used up by roundings.
    whole: bool,
    allowance_mm: f64,
    /// For each: the turn that lays the edge along it, how far off the turn may be, and whether the slab's
    /// edge is finished.
    beside: Vec<(f64, f64, bool)>,
}

/// Turns within `half` of `middle`, radians.
#[derive(Clone, Copy)]
struct Turns {
    middle: f64,
    half: f64,
}

/// A body by how often the turns were halved and by its bare edges; the finished top without them.
type Which = (u32, Option<Vec<usize>>);

/// What is asked of an interval of turns.
struct Asked {
    turns: Turns,
    finished: Which,
    sawn: Which,
    /// The edges that lie on none of the slab's at any of the turns: each wants its strip.
    strips: Vec<usize>,
}

struct Search<'a> {
    job: &'a Job,
    ground: Ground<'a>,
    centre: Point,
    /// The farthest that a point which matters lies from the centre, mm.
    radius: f64,
    edges: Vec<Straight>,
    openings: Vec<Hull>,
    bodies: HashMap<Which, Option<Body>>,
    steps: usize,
}

/// Looks for a place at any turn.
pub(super) fn sweep(job: &Job) -> Sweep {
    let (top, finishes) = (&job.top.shape, &job.top.finishes);
    // A bowed edge is sawn wherever it lies: none is the slab's own.
    if (0..top.count()).any(|e| finishes[e] == Finish::Factory && !top.is_straight(e)) {
        return Sweep::Proved;
    }
    let mut search = Search::of(job);
    let mut evaluator = Evaluator::of(job);
    let half = PI / f64::from(ROOTS);
    let root = |k: u32| Turns {
        middle: f64::from(2 * k + 1) * half,
        half,
    };
    let mut open: Vec<Turns> = (0..ROOTS).map(root).collect();
    let mut looks = 0;
    for level in 0.. {
        let Some(still) = search.those_that_may_fit(&open, level) else {
            return Sweep::Open;
        };
        open = still;
        if open.is_empty() {
            return Sweep::Proved;
        }
        let mut found: Option<Placement> = None;
        for turns in &open {
            if looks < MOST_LOOKS && search.has_room(turns.middle) {
                looks += 1;
                evaluator.look_at(turns.middle, &mut found);
            }
        }
        if let Some(found) = found {
            let found = evaluator.eased(found, open[0].half);
            return Sweep::Found(Box::new(found));
        }
        let off = search.radius * open[0].half;
        if off <= WITHIN_MM - 2.0 * FINE_MM {
            return Sweep::Open;
        }
        open = open.iter().flat_map(Turns::halves).collect();
    }
    Sweep::Open
}

impl Turns {
    fn halves(&self) -> [Self; 2] {
        let half = self.half / 2.0;
        [-half, half].map(|by| Self {
            middle: self.middle + by,
            half,
        })
    }
}

impl<'a> Search<'a> {
    fn of(job: &'a Job) -> Self {
        let mut ground = Ground::of(job, Approximation::FineOuter);
        let centre = Bounds::around(ground.finished.hull.0.iter().copied()).centre();
        let edges = straights(job, centre);
        let far = |body: &Body| {
            let away = body.hull.0.iter().map(|p| p.distance(centre));
            away.fold(0.0, f64::max)
        };
        let strip =
            edges.iter().map(|e| e.allowance_mm).fold(0.0, f64::max) + job.place.least_strip_mm;
        let finished = far(&ground.finished) + strip;
        let sawn = ground.variant(&[]).body.as_ref().map_or(0.0, far);
        let openings = ground.openings.iter().map(|o| o.about(centre)).collect();
        Self {
            job,
            centre,
            radius: finished.max(sawn),
            edges,
            openings,
            bodies: HashMap::new(),
            steps: 0,
            ground,
        }
    }

    /// Whether the top may have room at the middle turn itself.
    fn has_room(&mut self, turn: f64) -> bool {
        let exact = Turns {
            middle: turn,
            half: 0.0,
        };
        let still = self.those_that_may_fit(&[exact], u32::MAX);
        still.is_some_and(|turns| !turns.is_empty())
    }

    /// The intervals without those at whose turns the top surely has no place; nothing once [`MOST_STEPS`] are spent.
    fn those_that_may_fit(&mut self, all: &[Turns], level: u32) -> Option<Vec<Turns>> {
        let mut still = Vec::new();
        for turns in all.chunks(TOGETHER) {
            let asked: Vec<Asked> = turns.iter().filter_map(|t| self.asked(*t, level)).collect();
            let answers: Vec<(bool, usize)> = asked.par_iter().map(|a| self.may_fit(a)).collect();
            self.steps += answers.iter().map(|(_, steps)| steps).sum::<usize>();
            if self.steps > MOST_STEPS {
                return None;
            }
            let kept = asked.iter().zip(answers).filter(|(_, (may, _))| *may);
            still.extend(kept.map(|(asked, _)| asked.turns));
        }
        Some(still)
    }

    /// What is to be asked of an interval; nothing when its turns are ruled out by the edges or the vein alone.
    fn asked(&mut self, turns: Turns, level: u32) -> Option<Asked> {
        let job = self.job;
        if !vein::may_allow(job, turns.middle, turns.half) {
            return None;
        }
        let lies = |e: &Straight, finished: bool| {
            let near = |(turn, off, factory): &(f64, f64, bool)| {
                let away = wrapped(turns.middle - turn);
                away.min(2.0 * PI - away) <= turns.half + off && (*factory || !finished)
            };
            e.beside.iter().any(near)
        };
        let must = |e: &Straight| job.top.finishes[e.edge] == Finish::Factory;
        if self.edges.iter().any(|e| must(e) && !lies(e, true)) {
            return None;
        }
        let bare: Vec<usize> = self
            .edges
            .iter()
            .filter(|e| e.allowance_mm > 0.0 && (!e.whole || lies(e, true)))
            .map(|e| e.edge)
            .collect();
        let strips: Vec<usize> = (0..self.edges.len())
            .filter(|i| self.edges[*i].whole && !lies(&self.edges[*i], false))
            .collect();
        let off = self.radius * turns.half;
        let (finished, sawn) = ((level, None), (level, Some(bare)));
        self.make(&finished, off);
        self.make(&sawn, off);
        Some(Asked {
            turns,
            finished,
            sawn,
            strips,
        })
    }

    /// Whether the top may have a place at any of the turns, and the steps that this took.
    fn may_fit(&self, asked: &Asked) -> (bool, usize) {
        let turns = asked.turns;
        let off = self.radius * turns.half;
        let [finished, sawn] = [&asked.finished, &asked.sawn]
            .map(|which| self.bodies[which].as_ref().map(|b| b.turned(turns.middle)));
        let Some(sawn) = sawn.or_else(|| finished.clone()) else {
            // Too thin to be eroded so much: nothing is known yet.
            return (true, 0);
        };
        let mut domain = domain(&self.ground, &sawn);
        if domain.0.len() < 3 {
            return (false, 0);
        }
        let mut blocked = Vec::new();
        touching(&self.ground.pockets, &sawn.parts, &domain, &mut blocked);
        let mut steps = corners(&blocked) * domain.0.len();
        carve(&mut domain, &mut blocked);
        let reach = bounds(&domain);
        let mut hulls = Vec::new();
        for i in &asked.strips {
            self.add_strip(&self.edges[*i], turns, off, &reach, &mut hulls);
        }
        blocked.extend(hulls.into_iter().map(Blocked::solid));
        steps += corners(&blocked) * domain.0.len();
        carve(&mut domain, &mut blocked);
        if let Some(finished) = &finished {
            self.add_flaws(turns, off, finished, &domain, &mut blocked);
            steps += corners(&blocked) * domain.0.len();
            carve(&mut domain, &mut blocked);
        }
        steps += (corners(&blocked) + domain.0.len()) * (blocked.len() + 8);
        let room = !Free::new(&domain, &blocked, TOUCH_MM).is_empty();
        (room, steps)
    }

    fn add_flaws(
        &self,
        turns: Turns,
        off: f64,
        finished: &Body,
        domain: &Hull,
        blocked: &mut Vec<Blocked>,
    ) {
        let openings: Vec<Hull> = self
            .openings
            .iter()
            .map(|o| o.turned(turns.middle))
            .collect();
        let windows = windows(&self.ground, &openings, off);
        for (zone, windows) in self.ground.flaws.iter().zip(windows) {
            let mut own = Vec::new();
            touching(&zone.parts, &finished.parts, domain, &mut own);
            blocked.extend(own.into_iter().map(|b| Blocked {
                windows: windows.clone(),
                ..b
            }));
        }
    }

    /// The shifts at which the strip beyond an edge is too narrow at all of the turns.
    fn add_strip(
        &self,
        edge: &Straight,
        turns: Turns,
        off: f64,
        reach: &Bounds,
        hulls: &mut Vec<Hull>,
    ) {
        let (from, to) = [edge.from, edge.to]
            .map(|p| Point::ORIGIN + p.to_vector().turned(turns.middle))
            .into();
        let along = (to - from).unit();
        let (near, far) = (
            edge.allowance_mm + off,
            edge.allowance_mm + self.job.place.least_strip_mm - off,
        );
        if from.distance(to) <= 2.0 * off || near >= far {
            return;
        }
        let (from, to, out) = (from + along * off, to - along * off, along.right());
        let strip = Hull(vec![
            from + out * far,
            to + out * far,
            to + out * near,
            from + out * near,
        ]);
        for piece in &self.ground.rim {
            let rise = (piece.to - piece.from).unit().dot(out).abs();
            let narrows = piece.of_arc || rise + turns.half < ENDS_A_STRIP;
            let end = if narrows { piece.to } else { piece.from };
            let ends = if narrows {
                vec![piece.from, end]
            } else {
                vec![piece.from]
            };
            add_touching(&Hull(ends), &strip, reach, hulls);
        }
    }

    /// Makes a body eroded by so much, about the centre, unless it is there; nothing where it is too thin.
    fn make(&mut self, which: &Which, off: f64) {
        if self.bodies.contains_key(which) {
            return;
        }
        let whole = match &which.1 {
            Some(bare) => self.ground.variant(bare).body.clone(),
            None => Some(self.ground.finished.clone()),
        };
        let about = whole.map(|body| body.about(self.centre));
        let made = about.and_then(|b| if off > 0.0 { b.eroded(off) } else { Some(b) });
        self.bodies.insert(which.clone(), made);
    }
}

fn corners(blocked: &[Blocked]) -> usize {
    blocked.iter().map(|b| b.hull.0.len()).sum()
}

/// The straight edges of a top about a centre.
fn straights(job: &Job, centre: Point) -> Vec<Straight> {
    let top = &job.top.shape;
    let straight = |edge: &usize| top.is_straight(*edge);
    let about = |p: Point| p - centre.to_vector();
    let one = |edge: usize| {
        let (from, to) = edge_span(top, edge);
        Straight {
            edge,
            from: about(from),
            to: about(to),
            whole: top.edge_seg(edge).is_some(),
            allowance_mm: edge_allowance(job, edge),
            beside: beside(job, edge, from.distance(to)),
        }
    };
    (0..top.count()).filter(straight).map(one).collect()
}

/// The turns that lay an edge along edges of the slab, and how far off they may be: as far as two tape
/// errors let both ends be off, and as far as a bowed edge of the slab turns.
fn beside(job: &Job, edge: usize, long: f64) -> Vec<(f64, f64, bool)> {
    let (slab, own) = (&job.slab, job.top.shape.edge_line(edge).along.angle());
    let one = |s: usize| {
        flush_allowance(job, edge, s)?;
        let bow = match slab.shape.edge_seg(s)? {
            Seg::Line(..) => 0.0,
            Seg::Arc(arc) => arc.sweep.abs(),
        };
        let slack = 2.0 * slab.tape_error_mm + 2.0 * FINE_MM;
        let off = (slack / long.max(slack)).asin() + bow;
        let factory = slab.edges[s] == EdgeState::Factory;
        Some((slab.shape.edge_line(s).along.angle() - own, off, factory))
    };
    (0..slab.shape.count()).filter_map(one).collect()
}
