//! The least work that a position can take, found without judging it.

use crate::geom::{Line, Point, SAME_MM, Vector};
use crate::job::Part;

use super::candidate::steady_work_mm2;
use super::edge::{edge_span, flush_with};
use super::ground::{FINE_MM, Ground};
use super::order::{Crossings, Freed, MOST_SEARCHED, outwards};
use super::turned::Turned;
use super::{room, trim};

/// A face in the top's own frame, as far as it is the same wherever the top lies.
#[derive(Clone, Debug)]
struct TrimFace {
    part: Part,
    /// Roundings have used the edge up: it is sawn only where there is room to saw it square.
    used_up: bool,
    line: Line,
    /// Where along it the middle of the finished edge lies, and kept stone to either side.
    middle: f64,
    limits: (f64, f64),
    /// Other faces that cross it: which, where on this one and where on the other.
    meets: Vec<(usize, f64, f64)>,
    /// Earlier faces on the same line, and where along them the middle of this one lies.
    in_line: Vec<(usize, f64)>,
}

/// The faces of a top, for any position of it.
#[derive(Clone, Debug)]
pub(super) struct Faces {
    each: Vec<TrimFace>,
    steady_mm2: f64,
    /// What the allowances may take off the faces and the kept stone at all of them together, mm.
    slack_mm: f64,
    thickness: f64,
    stopped_factor: f64,
}

impl Faces {
    /// Whether every order of the trims is searched wherever the top lies, so that the work of a place is
    /// the least there is.
    pub(super) fn all_orders(&self) -> bool {
        self.each.len() <= MOST_SEARCHED
    }

    pub(super) fn of(ground: &Ground<'_>) -> Self {
        let job = ground.job;
        let mut faces: Vec<TrimFace> = ground
            .faces
            .iter()
            .map(|t| TrimFace {
                part: t.part,
                used_up: matches!(t.part, Part::Edge(e) if job.top.shape.edge_seg(e).is_none()),
                line: t.face,
                middle: t.foot(),
                limits: ground
                    .sawn_all_round()
                    .map_or((f64::NEG_INFINITY, f64::INFINITY), |sawn| {
                        trim::limits(t, sawn)
                    }),
                meets: Vec::new(),
                in_line: Vec::new(),
            })
            .collect();
        let lines: Vec<Line> = faces.iter().map(|f| f.line).collect();
        for (i, face) in faces.iter_mut().enumerate() {
            let middle = face.line.at(face.middle);
            let same = |l: &Line| {
                l.along.dot(face.line.along) > 1.0 - 1e-9 && l.left_of(middle).abs() <= SAME_MM
            };
            let earlier = lines[..i].iter().enumerate().filter(|(_, l)| same(l));
            face.in_line = earlier.map(|(j, l)| (j, l.foot(middle))).collect();
            let others = lines.iter().enumerate().filter(|(j, _)| *j != i);
            face.meets = others
                .filter_map(|(j, other)| {
                    let at = face.line.meet(other)?;
                    Some((j, face.line.foot(at), other.foot(at)))
                })
                .collect();
        }
        let allowances = &job.top.allowances;
        let most = [allowances.polish_mm, allowances.ease_mm, allowances.saw_mm];
        let most = most.into_iter().fold(0.0, f64::max);
        // A stopped face ends earlier where its neighbour has no allowance.
        let slack = |f: &TrimFace| {
            let stops = f.limits.0.is_finite() || f.limits.1.is_finite();
            10.0 * FINE_MM + if stops { 4.0 * most } else { 0.0 }
        };
        Self {
            steady_mm2: steady_work_mm2(job, &job.top.shape),
            slack_mm: faces.iter().map(slack).sum(),
            each: faces,
            thickness: job.stone.thickness.mean,
            stopped_factor: job.passes.stopped_factor,
        }
    }
}

/// A room this much narrower or wider than the least strip may be either, mm: what is roughly known is
/// known to this.
const DOUBT_MM: f64 = 3.0;

/// A hair, far above rounding, mm.
const BESIDE_MM: f64 = 1e-5;

/// The stretch of a face that is sawn when it is the first, as distances along it.
#[derive(Clone, Copy, Debug)]
struct Stretch {
    from: f64,
    to: f64,
    /// False where it is not sure that it is sawn at all: it may shorten others and costs nothing.
    counts: bool,
}

/// Room to saw an edge square that roundings have used up.
#[derive(Clone, Copy, PartialEq)]
enum SquareRoom {
    None,
    Doubtful,
    Enough,
}

/// The faces at one turn, and the slab as seen along each of them.
pub(super) struct Bound<'a> {
    faces: &'a Faces,
    lines: Vec<(Vector, Point)>,
    /// For each face, the slab's corners: how far to its left, and how far along.
    views: Vec<Vec<(f64, f64)>>,
}

impl<'a> Bound<'a> {
    pub(super) fn of(ground: &Ground<'_>, faces: &'a Faces, turn: f64) -> Self {
        let turned = |l: &Line| {
            let point = Point::ORIGIN + l.point.to_vector().turned(turn);
            (l.along.turned(turn), point)
        };
        let lines: Vec<(Vector, Point)> = faces.each.iter().map(|f| turned(&f.line)).collect();
        let view = |along: Vector| {
            let seen = |p: Point| (along.cross(p.to_vector()), along.dot(p.to_vector()));
            ground.ring.iter().map(|p| seen(*p)).collect()
        };
        Self {
            faces,
            views: lines.iter().map(|(along, _)| view(*along)).collect(),
            lines,
        }
    }

    /// Work that no order of the cuts gets below when the top is shifted so, mm²: quickly found.
    pub(super) fn least_work_mm2(&self, ground: &Ground<'_>, at: &Turned, shift: Point) -> f64 {
        let spans = self.spans(ground, at, shift);
        let lengths: Vec<Length> = (0..spans.len()).map(|i| self.length(i, &spans)).collect();
        let least: f64 = lengths.iter().map(|l| l.weight * l.least).sum();
        self.work_mm2(least + first_of_each_pair(&lengths))
    }

    /// The same, no lower than the best order of the cuts that run off the stone: found with more
    /// work.
    pub(super) fn ordered_work_mm2(&self, ground: &Ground<'_>, at: &Turned, shift: Point) -> f64 {
        let spans = self.spans(ground, at, shift);
        let (mut straight, mut off) = (0.0, Vec::new());
        let mut made = vec![false; spans.len()];
        for (i, made) in made.iter_mut().enumerate() {
            let length = self.length(i, &spans);
            if length.stopped {
                straight += length.weight * length.least;
            } else if length.weight > 0.0 {
                off.push(i);
            } else {
                *made = true;
            }
        }
        let crossings = Crossings {
            meets: (0..spans.len())
                .map(|i| {
                    outwards(
                        self.crossings(i, &spans).collect(),
                        self.faces.each[i].middle,
                    )
                })
                .collect(),
            spans: spans
                .iter()
                .map(|s| s.map_or((0.0, 0.0), |s| (s.from, s.to)))
                .collect(),
            middles: self.faces.each.iter().map(|f| f.middle).collect(),
            freed: (0..spans.len()).map(|i| Freed::By(vec![i])).collect(),
        };
        match crossings.least_total(&off, &made) {
            Some(total) => self.work_mm2(straight + total),
            None => self.least_work_mm2(ground, at, shift),
        }
    }

    fn work_mm2(&self, straight: f64) -> f64 {
        (straight - self.faces.slack_mm).max(0.0) * self.faces.thickness + self.faces.steady_mm2
    }

    /// The stretch of every face that is sawn when it is the first; none where the edge lies on the
    /// slab's.
    fn spans(&self, ground: &Ground<'_>, at: &Turned, shift: Point) -> Vec<Option<Stretch>> {
        let by = shift.to_vector();
        let flush = |part: Part| matches!(part, Part::Edge(e) if is_flush(ground, at, e, by));
        let faces = self.faces.each.iter().enumerate();
        let mut spans: Vec<Option<Stretch>> = faces
            .map(|(i, face)| {
                let room = if face.used_up {
                    self.room(ground, i, by)
                } else {
                    SquareRoom::Enough
                };
                if room == SquareRoom::None || flush(face.part) {
                    None
                } else {
                    self.span(i, by, room == SquareRoom::Enough)
                }
            })
            .collect();
        // One run makes every face that lies in it.
        for i in 0..spans.len() {
            let in_run = |(other, middle): &(usize, f64)| {
                spans[*other].is_some_and(|s| s.counts && s.from < *middle && *middle < s.to)
            };
            if self.faces.each[i].in_line.iter().any(in_run) {
                spans[i] = None;
            }
        }
        spans
    }

    /// Whether there is room to saw a used-up edge square.
    fn room(&self, ground: &Ground<'_>, face: usize, by: Vector) -> SquareRoom {
        let (along, point) = self.lines[face];
        let line = Line {
            point: point + by,
            along,
        };
        let touch = line.at(self.faces.each[face].middle);
        let slab = ground.job.slab.shape.outline();
        let more = room::beyond(slab, &line, touch, touch) - ground.job.place.least_strip_mm;
        if more < -DOUBT_MM {
            SquareRoom::None
        } else if more < DOUBT_MM {
            SquareRoom::Doubtful
        } else {
            SquareRoom::Enough
        }
    }

    /// The stretch of a face in the slab and out of kept stone, as distances along it.
    fn span(&self, face: usize, by: Vector, counts: bool) -> Option<Stretch> {
        let own = &self.faces.each[face];
        let (along, point) = self.lines[face];
        let start = (point.to_vector() + by).dot(along);
        let (level, middle) = (along.cross(point.to_vector() + by), start + own.middle);
        // Along an edge of the slab a cut ends: of a hair to either side what is in both.
        let (first, second) = (
            self.run(face, level - BESIDE_MM, middle)?,
            self.run(face, level + BESIDE_MM, middle)?,
        );
        let (from, to) = (first.0.max(second.0), first.1.min(second.1));
        let stretch = Stretch {
            from: (from - start).max(own.limits.0),
            to: (to - start).min(own.limits.1),
            counts,
        };
        (stretch.from < stretch.to).then_some(stretch)
    }

    /// Where a line so far to the left of the origin runs through the slab about a place along it.
    fn run(&self, face: usize, level: f64, middle: f64) -> Option<(f64, f64)> {
        let view = &self.views[face];
        let (mut from, mut to) = (f64::NEG_INFINITY, f64::INFINITY);
        let (mut before, mut inside) = (view.last()?, false);
        for here in view {
            if (before.0 > level) != (here.0 > level) {
                let share = (level - before.0) / (here.0 - before.0);
                let at = before.1 + (here.1 - before.1) * share;
                if at > middle {
                    inside = !inside;
                    to = to.min(at);
                } else {
                    from = from.max(at);
                }
            }
            before = here;
        }
        inside.then_some((from, to))
    }

    /// The other faces that a face crosses within the stretches of both: which, and where.
    fn crossings<'s>(
        &'s self,
        face: usize,
        spans: &'s [Option<Stretch>],
    ) -> impl Iterator<Item = (usize, f64)> + 's {
        let on = |span: Option<Stretch>, at: f64| {
            span.is_some_and(|s| at >= s.from - SAME_MM && at <= s.to + SAME_MM)
        };
        let meets = self.faces.each[face].meets.iter();
        meets
            .filter(move |(other, here, there)| on(spans[face], *here) && on(spans[*other], *there))
            .map(|(other, here, _)| (*other, *here))
    }

    /// Length of a face when all others have been sawn before it, and what it is longer when one of
    /// them has not: the nearest at either end.
    fn length(&self, face: usize, spans: &[Option<Stretch>]) -> Length {
        let Some(Stretch { from, to, counts }) = spans[face] else {
            return Length::default();
        };
        let own = &self.faces.each[face];
        let (mut back, mut ahead) = (End::at(from), End::at(to));
        for (other, here) in self.crossings(face, spans) {
            if here >= own.middle {
                ahead.nearer(other, here, f64::lt);
            } else {
                back.nearer(other, here, f64::gt);
            }
        }
        let stopped = from == own.limits.0 || to == own.limits.1;
        Length {
            weight: match (counts, stopped) {
                (false, _) => 0.0,
                (true, true) => self.faces.stopped_factor,
                (true, false) => 1.0,
            },
            stopped,
            least: (ahead.nearest - back.nearest).max(0.0),
            longer: [
                (back.by, back.nearest - back.next),
                (ahead.by, ahead.next - ahead.nearest),
            ],
        }
    }
}

/// Where two faces cross, one of them goes first: the shorter of what that costs, over all pairs. A
/// stopped one never goes first. Each face is shortened by two at most, so there are no more pairs than
/// twice the faces.
fn first_of_each_pair(lengths: &[Length]) -> f64 {
    let mut pairs: Vec<(usize, usize)> = Vec::with_capacity(2 * lengths.len());
    for (i, a) in lengths.iter().enumerate() {
        let others = a.longer.iter().filter_map(|(by, _)| *by);
        pairs.extend(others.map(|j| (i.min(j), i.max(j))));
    }
    pairs.sort_unstable();
    pairs.dedup();
    let cost = |(i, j): (usize, usize)| {
        let (a, b) = (&lengths[i], &lengths[j]);
        let (first, second) = (a.weight * a.without(j), b.weight * b.without(i));
        match (a.stopped, b.stopped) {
            (false, false) => first.min(second),
            (false, true) => first,
            (true, false) => second,
            (true, true) => 0.0,
        }
    };
    pairs.into_iter().map(cost).sum()
}

/// The length of a face after all others.
#[derive(Clone, Copy, Debug, Default)]
struct Length {
    weight: f64,
    stopped: bool,
    least: f64,
    /// At either end: the face that shortens it the most, and by how much.
    longer: [(Option<usize>, f64); 2],
}

impl Length {
    /// What the face is longer when another has not been sawn before it.
    fn without(&self, other: usize) -> f64 {
        let ends = self.longer.iter().filter(|(by, _)| *by == Some(other));
        ends.map(|(_, longer)| longer).sum()
    }
}

/// One end of a face as others shorten it.
struct End {
    nearest: f64,
    by: Option<usize>,
    next: f64,
}

impl End {
    const fn at(place: f64) -> Self {
        Self {
            nearest: place,
            by: None,
            next: place,
        }
    }

    fn nearer(&mut self, by: usize, at: f64, nearer: impl Fn(&f64, &f64) -> bool) {
        if nearer(&at, &self.nearest) {
            self.next = self.nearest;
            (self.nearest, self.by) = (at, Some(by));
        } else if nearer(&at, &self.next) {
            self.next = at;
        }
    }
}

fn is_flush(ground: &Ground<'_>, at: &Turned, edge: usize, by: Vector) -> bool {
    at.flush.iter().filter(|f| f.edge == edge).any(|f| {
        let (from, to) = edge_span(&at.top, edge);
        flush_with(ground.job, edge, f.slab_edge, from + by, to + by).is_some()
    })
}
