//! Difference and intersection of regions; the only file that names `geo`.
//!
//! `geo` works on straight-sided rings and snaps them to a grid of about 1e-6 mm. Its answer is
//! used for what it is sure of: which boundaries bound which piece. Each edge it returns is traced
//! back to the line or arc it came from, and each corner is computed again as the exact meeting
//! point of those two, so that areas stay exact and arcs stay arcs. Corners that cannot be
//! recomputed (two carriers that never meet near the place) keep `geo`'s point.

use std::f64::consts::PI;

use geo::{BooleanOps, Coord, LineString, MultiPolygon, Polygon, unary_union};

use super::arc::Arc;
use super::outline::Outline;
use super::point::{Bounds, Point};
use super::region::Region;
use super::seg::Seg;
use super::{FLATTEN_MM, SAME_MM};

/// Edges of a boolean's answer shorter than this are its grid's doing, mm.
const GRID_NOISE_MM: f64 = 1e-4;
/// Rebuilt pieces smaller than this are its grid's doing, mm².
const SLIVER_MM2: f64 = 1e-4;
/// Farthest an exact corner may lie from the boolean's, mm.
const CORNER_SEARCH_MM: f64 = 0.2;
/// The farthest a shallow crossing is looked for from where the chords cross, mm.
const LONGEST_SHIFT_MM: f64 = 20.0;

/// The stone left of `stone` when the cutters' insides are taken away, in pieces.
///
/// Cutters may overlap each other. Exact to the file's note; n log n in the edges.
#[must_use]
pub fn difference(stone: &[Region], cutters: &[Outline]) -> Vec<Region> {
    combine(stone, cutters, BooleanOps::difference)
}

/// The part of `stone` that lies inside any of the cutters, in pieces.
#[must_use]
pub fn intersection(stone: &[Region], cutters: &[Outline]) -> Vec<Region> {
    combine(stone, cutters, BooleanOps::intersection)
}

fn combine(
    stone: &[Region],
    cutters: &[Outline],
    operation: impl Fn(&MultiPolygon, &MultiPolygon) -> MultiPolygon,
) -> Vec<Region> {
    let boundaries = stone.iter().flat_map(Region::boundaries);
    let sources: Vec<Seg> = boundaries
        .chain(cutters)
        .flat_map(|o| o.segs().iter().copied())
        .collect();
    let a = MultiPolygon::new(stone.iter().map(flat_region).collect());
    let cutters: Vec<Polygon> = cutters
        .iter()
        .map(|o| Polygon::new(flat_ring(o), vec![]))
        .collect();
    let b = unary_union(&cutters);
    let rebuilt = |ring: &LineString| rebuild(ring, &sources);
    operation(&a, &b)
        .into_iter()
        .filter_map(|polygon| {
            Some(Region {
                outer: rebuilt(polygon.exterior())?,
                holes: polygon.interiors().iter().filter_map(rebuilt).collect(),
            })
        })
        .collect()
}

fn flat_ring(outline: &Outline) -> LineString {
    let points = outline.flattened();
    LineString::new(points.iter().map(|p| Coord { x: p.x, y: p.y }).collect())
}

fn flat_region(region: &Region) -> Polygon {
    let holes = region.holes.iter().map(flat_ring).collect();
    Polygon::new(flat_ring(&region.outer), holes)
}

/// A run of the boolean's ring that came from one source piece.
struct SourceRun {
    source: usize,
    from: Point,
    /// The end of its first chord: tells which way round an arc it goes.
    next: Point,
    to: Point,
}

/// The exact outline behind a flat ring; nothing when there is none worth the name.
fn rebuild(ring: &LineString, sources: &[Seg]) -> Option<Outline> {
    let points = clean_points(ring);
    let runs = runs_of(&points, sources);
    if let [whole] = runs.as_slice()
        && let Seg::Arc(arc) = sources[whole.source]
    {
        return whole_circle(&arc, &points);
    }
    if runs.len() < 2 {
        return None;
    }
    let outline = outline_of(runs, sources, &points)?;
    (outline.area() > SLIVER_MM2).then_some(outline)
}

/// The outline of runs, each from its exact corner to the next.
///
/// A run that the flat ring has and the exact one has not (a corner that lies a hair inside an arc
/// lies outside its chord) comes out turned round: where the corners make no outline, it is left
/// out, and its neighbours meet.
fn outline_of(mut runs: Vec<SourceRun>, sources: &[Seg], points: &[Point]) -> Option<Outline> {
    loop {
        let segs = exact(&runs, sources);
        let turned = (0..segs.len()).find(|i| is_turned(&runs[*i], &segs[*i]));
        let long: Vec<Seg> = segs.into_iter().filter(|s| s.length() > SAME_MM).collect();
        if long.len() < 2 {
            return None;
        }
        match (Outline::new(long.clone()), turned) {
            (Ok(outline), _) if encloses_the_same(&outline, points) => return Some(outline),
            (_, Some(at)) if runs.len() > 2 => leave_out(&mut runs, at, sources),
            _ => return Some(touching(long, points)),
        }
    }
}

/// The exact lines and arcs of runs, from corner to corner.
fn exact(runs: &[SourceRun], sources: &[Seg]) -> Vec<Seg> {
    let n = runs.len();
    let corners: Vec<Point> = (0..n)
        .map(|i| corner(&runs[(i + n - 1) % n], &runs[i], sources))
        .collect();
    let each = runs.iter().enumerate().map(|(i, run)| {
        let (from, to) = (corners[i], corners[(i + 1) % n]);
        match sources[run.source] {
            Seg::Line(..) => Seg::Line(from, to),
            Seg::Arc(arc) => arc_run(&arc, run, from, to),
        }
    });
    each.collect()
}

/// Whether an exact line or arc runs against the run it was made for.
fn is_turned(run: &SourceRun, exact: &Seg) -> bool {
    match exact {
        Seg::Line(from, to) => (*to - *from).dot(run.to - run.from) < 0.0,
        Seg::Arc(arc) => {
            let rough = Arc::between(arc.centre, run.from, run.to, arc.sweep);
            arc.sweep.abs() - rough.sweep.abs() > PI
        }
    }
}

/// Takes a run out; neighbours on the same carrier become one.
fn leave_out(runs: &mut Vec<SourceRun>, at: usize, sources: &[Seg]) {
    runs.remove(at);
    let n = runs.len();
    let (before, after) = ((at + n - 1) % n, at % n);
    if n > 2 && same_carrier(runs[before].source, runs[after].source, sources) {
        runs[before].to = runs[after].to;
        runs.remove(after);
    }
}

/// The circle behind a ring that lies on one circle alone; nothing when the ring is only a sliver
/// between two boundaries that share the circle.
fn whole_circle(arc: &Arc, points: &[Point]) -> Option<Outline> {
    let circle = Outline::circle(arc.centre, arc.radius).ok()?;
    encloses_the_same(&circle, points).then_some(circle)
}

/// A boundary that touches itself in a point, which an [`Outline`] may not: two slots that just
/// meet leave one. No stone is lost for that; where the exact pieces do not enclose what the flat
/// ring does, the flat ring stands.
fn touching(segs: Vec<Seg>, points: &[Point]) -> Outline {
    let turned = |segs: Vec<Seg>| {
        let outline = Outline::trusted(segs);
        if outline.area() < 0.0 {
            Outline::trusted(outline.clockwise())
        } else {
            outline
        }
    };
    let exact = turned(segs);
    if encloses_the_same(&exact, points) {
        exact
    } else {
        turned(super::seg::ring(points))
    }
}

/// Whether an exact outline encloses what the flat ring does, as far as chords can tell.
fn encloses_the_same(exact: &Outline, points: &[Point]) -> bool {
    let flat = Outline::trusted(super::seg::ring(points));
    (exact.area() - flat.area().abs()).abs() <= FLATTEN_MM * flat.perimeter()
}

fn clean_points(ring: &LineString) -> Vec<Point> {
    let mut points: Vec<Point> = ring.coords().map(|c| Point::new(c.x, c.y)).collect();
    points.pop();
    points.dedup_by(|a, b| a.distance(*b) < GRID_NOISE_MM);
    while points.len() > 1 && points[0].distance(points[points.len() - 1]) < GRID_NOISE_MM {
        points.pop();
    }
    points
}

fn runs_of(points: &[Point], sources: &[Seg]) -> Vec<SourceRun> {
    let boxes: Vec<Bounds> = sources.iter().map(Seg::bounds).collect();
    let next = points.iter().cycle().skip(1);
    let mut runs: Vec<SourceRun> = Vec::new();
    for (&from, &to) in points.iter().zip(next) {
        let source = source_of(from, to, sources, &boxes);
        match runs.last_mut() {
            Some(last) if same_carrier(last.source, source, sources) => last.to = to,
            _ => runs.push(SourceRun {
                source,
                from,
                next: to,
                to,
            }),
        }
    }
    let wraps =
        runs.len() > 1 && same_carrier(runs[0].source, runs[runs.len() - 1].source, sources);
    if wraps && let Some(last) = runs.pop() {
        runs[0].from = last.from;
        runs[0].next = last.next;
    }
    runs
}

/// Sources farther than this from an edge of the boolean's answer are not looked at, mm: the edge lies
/// on its source to within the flattening.
const NEAR_SOURCE_MM: f64 = 1.0;

/// Whether a box comes near a point.
fn comes_near(bounds: &Bounds, p: Point) -> bool {
    let near = NEAR_SOURCE_MM;
    (bounds.min.x - near..=bounds.max.x + near).contains(&p.x)
        && (bounds.min.y - near..=bounds.max.y + near).contains(&p.y)
}

/// The source piece whose ends and middle come nearest to an edge of the boolean's answer.
fn source_of(from: Point, to: Point, sources: &[Seg], boxes: &[Bounds]) -> usize {
    let middle = from.midpoint(to);
    let miss = |s: &Seg| {
        let ends = s.distance(from).max(s.distance(to));
        // A chord's middle lies off its arc by up to the flattening tolerance.
        let slack = if matches!(s, Seg::Arc(_)) {
            FLATTEN_MM
        } else {
            0.0
        };
        ends.max(s.distance(middle) - slack)
    };
    let nearby = (0..sources.len()).filter(|i| comes_near(&boxes[*i], middle));
    let misses = nearby.map(|i| (i, miss(&sources[i])));
    let best = misses.min_by(|a, b| a.1.total_cmp(&b.1));
    best.map_or(0, |(i, _)| i)
}

/// True when two sources are the same piece or lie on the same line or circle.
fn same_carrier(a: usize, b: usize, sources: &[Seg]) -> bool {
    if a == b {
        return true;
    }
    match (sources[a], sources[b]) {
        (Seg::Line(p, q), Seg::Line(r, s)) => {
            let line = super::Line::through(p, q);
            let along = (s - r).unit();
            line.left_of(r).abs().max(line.left_of(s).abs()) <= SAME_MM
                && line.along.cross(along).abs() <= 1e-9
        }
        (Seg::Arc(a), Seg::Arc(b)) => {
            a.centre.distance(b.centre) <= SAME_MM && (a.radius - b.radius).abs() <= SAME_MM
        }
        _ => false,
    }
}

/// The exact point where one run ends and the next begins.
fn corner(before: &SourceRun, after: &SourceRun, sources: &[Seg]) -> Point {
    let rough = after.from;
    let (a, b) = (&sources[before.source], &sources[after.source]);
    let ends = [a.start(), a.end()];
    let shared = ends
        .into_iter()
        .find(|p| b.distance(*p) <= SAME_MM && p.distance(rough) <= CORNER_SEARCH_MM);
    let ends = [b.start(), b.end()];
    let shared = shared.or_else(|| {
        ends.into_iter()
            .find(|p| a.distance(*p) <= SAME_MM && p.distance(rough) <= CORNER_SEARCH_MM)
    });
    shared
        .or_else(|| {
            let on = |run: &SourceRun, p: Point| {
                let carried = |i: &usize| same_carrier(run.source, *i, sources);
                let all = (0..sources.len()).filter(carried);
                all.into_iter().any(|i| sources[i].distance(p) <= SAME_MM)
            };
            a.carrier_meets(b)
                .into_iter()
                .filter(|p| {
                    let off = p.distance(rough);
                    let near = off <= CORNER_SEARCH_MM;
                    near || (off <= crossing_search_mm(a, b, *p) && on(before, *p) && on(after, *p))
                })
                .min_by(|p, q| p.distance(rough).total_cmp(&q.distance(rough)))
        })
        .unwrap_or(rough)
}

/// How far a crossing at `p` may move when chords stand in for arcs, mm: the shallower it is, the
/// farther.
fn crossing_search_mm(a: &Seg, b: &Seg, p: Point) -> f64 {
    let along = |s: &Seg| match s {
        Seg::Line(from, to) => (*to - *from).unit(),
        Seg::Arc(arc) => (p - arc.centre).unit().left(),
    };
    let slant = along(a).cross(along(b)).abs();
    2.0 * FLATTEN_MM / slant.max(FLATTEN_MM / LONGEST_SHIFT_MM)
}

fn arc_run(arc: &Arc, run: &SourceRun, from: Point, to: Point) -> Seg {
    let turn = (run.from - arc.centre).cross(run.next - arc.centre);
    Seg::Arc(Arc::between(arc.centre, from, to, turn))
}
