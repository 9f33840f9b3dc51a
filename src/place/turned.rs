//! The shifts worth judging at one turn of the top.
//!
//! The shifts at which a convex piece of the top meets a convex obstacle are a convex hull (their
//! Minkowski sum); what all hulls leave of the shifts that keep the top in the slab's hull is the
//! inner-fit region. Work is least at its corners, where an edge lies on an edge of the slab, or where
//! a face runs through an inside corner of the slab.

use crate::geom::free::{Blocked, Free, TOUCH_MM, carve};
use crate::geom::hull::{Hull, Zone};
use crate::geom::{Bounds, Line, Point, Pose, Vector};
use crate::job::{Finish, Shape};

use super::allowance::edge_allowance;
use super::edge::edge_span;
use super::ground::{Body, FINE_MM, Ground, Rim};
use super::guide_line::{self, FlushLine};
use super::room::ENDS_A_STRIP;

/// Beside an edge of the slab an obstacle gives way by this much, mm: more than the straight sides that
/// stand for arcs can be off, so that no place is missed for them.
const GIVE_MM: f64 = 4.0 * FINE_MM;
/// An edge that must lie along one of the slab may be off its lines by this much at first sight, mm.
const MUST_MM: f64 = 0.01;
/// Shifts closer than this are one, mm.
const SAME_SHIFT_MM: f64 = 1e-5;

/// The top at one turn, its origin at the slab's.
pub(super) struct Turned {
    pub(super) turn: f64,
    pub(super) top: Shape,
    /// Lines of shifts that lay an edge on an edge of the slab.
    pub(super) flush: Vec<FlushLine>,
    finished: Body,
    /// The top as sawn: all round, then with bare edges.
    bodies: Vec<Body>,
    windows: Vec<Vec<Hull>>,
}

impl Turned {
    pub(super) fn of(ground: &mut Ground<'_>, turn: f64) -> Self {
        let job = ground.job;
        let top = job.top.shape.posed(Pose::new(turn, Vector::default()));
        let flush = guide_line::flush(job, &top);
        let mut bodies = Vec::new();
        for bare in bare_sets(job, &flush) {
            let body = ground.variant(&bare).body.as_ref();
            bodies.extend(body.map(|b| b.turned(turn)));
        }
        let openings: Vec<Hull> = ground.openings.iter().map(|o| o.turned(turn)).collect();
        Self {
            turn,
            windows: windows(ground, &openings, 0.0),
            finished: ground.finished.turned(turn),
            bodies,
            flush,
            top,
        }
    }

    /// Shifts at which a place may be valid, those with the least work among them.
    pub(super) fn shifts(&self, ground: &Ground<'_>) -> Vec<Point> {
        let keys = guide_line::keys(ground, self.turn);
        let flush = || match self.flush[..] {
            [] => Vec::new(),
            _ => self.flush_shifts(ground, &keys),
        };
        let (mut found, sawn) = rayon::join(flush, || self.where_all_is_sawn(ground, &keys));
        found.extend(sawn);
        distinct(found)
    }

    /// Shifts along the slab's edges at which the finished top may lie in the slab and clear of flaws.
    fn flush_shifts(&self, ground: &Ground<'_>, keys: &[Line]) -> Vec<Point> {
        let domain = domain(ground, &self.finished);
        let (mut left, mut hulls) = (domain.clone(), Vec::new());
        touching(&ground.pockets, &self.finished.parts, &domain, &mut hulls);
        hulls.extend(self.flaw_hulls(ground, &domain));
        carve(&mut left, &mut hulls);
        let loose = Free::new(&left, &hulls, GIVE_MM);
        if loose.is_covered() {
            return Vec::new();
        }
        let mut found = self.along_flush(ground, &domain, keys);
        found.retain(|p| self.lies_where_it_must(ground, *p) && loose.holds(*p));
        found
    }

    /// Whether each edge that must use a finished edge of the slab lies along one, between the lines that are as near
    /// and as far in as may be.
    fn lies_where_it_must(&self, ground: &Ground<'_>, shift: Point) -> bool {
        let finishes = ground.job.top.finishes.iter().enumerate();
        let mut musts = finishes.filter(|(_, finish)| **finish == Finish::Factory);
        musts.all(|(edge, _)| {
            let lines: Vec<&FlushLine> = self.flush.iter().filter(|f| f.edge == edge).collect();
            lines.chunks(2).any(|of_slab_edge| {
                let off = of_slab_edge.iter().map(|f| f.line.left_of(shift));
                let [least, most] = off.fold([f64::INFINITY, f64::NEG_INFINITY], |[a, b], off| {
                    [a.min(off), b.max(off)]
                });
                least <= MUST_MM && most >= -MUST_MM
            })
        })
    }

    /// Shifts at which a place nearly fits: edges laid along edges, whatever else they touch.
    pub(super) fn near_shifts(&self, ground: &Ground<'_>) -> Vec<Point> {
        let everywhere = Hull::upright(&reach(ground, &self.finished));
        let mut found = self.where_all_is_sawn(ground, &[]);
        found.extend(self.along_flush(ground, &everywhere, &[]));
        let centred = ground.slab_hull.0.iter();
        let middle = |points: &mut dyn Iterator<Item = Point>| Bounds::around(points).centre();
        let slab = middle(&mut centred.copied());
        let top = middle(&mut self.finished.hull.0.iter().copied());
        found.push(Point::ORIGIN + (slab - top));
        distinct(found)
    }

    /// How far the finished top sticks out over the slab's hull on its worst side, mm.
    pub(super) fn sticks_out_mm(&self, ground: &Ground<'_>, shift: Point) -> f64 {
        let out = ground.slab_hull.sides().map(|side| {
            let out = side.along.right();
            self.finished.hull.reach(out) + (shift - side.point).dot(out)
        });
        out.fold(0.0, f64::max)
    }

    /// Corners of the region in which every straight edge is sawn and has its strip.
    fn where_all_is_sawn(&self, ground: &Ground<'_>, keys: &[Line]) -> Vec<Point> {
        let must_be_flush = ground.job.top.finishes.contains(&Finish::Factory);
        let Some(body) = self.bodies.first().filter(|_| !must_be_flush) else {
            return Vec::new();
        };
        let mut domain = domain(ground, body);
        let mut hulls = Vec::new();
        touching(&ground.pockets, &body.parts, &domain, &mut hulls);
        carve(&mut domain, &mut hulls);
        let strips = strips(ground, &self.top, &domain).into_iter();
        hulls.extend(strips.map(Blocked::solid));
        hulls.extend(self.flaw_hulls(ground, &domain));
        carve(&mut domain, &mut hulls);
        let free = Free::new(&domain, &hulls, TOUCH_MM);
        if free.is_covered() {
            return Vec::new();
        }
        let mut found = free.corners();
        let far = |line: &Line| free.bare(line, f64::NEG_INFINITY, f64::INFINITY);
        for (i, line) in keys.iter().enumerate() {
            let bare = far(line);
            found.extend(bare.iter().flat_map(|(a, b)| [line.at(*a), line.at(*b)]));
            if !bare.is_empty() {
                let meets = keys[..i].iter().filter_map(|other| line.meet(other));
                found.extend(meets.filter(|p| free.holds(*p)));
            }
        }
        found
    }

    /// Along every line that lays an edge on an edge of the slab: where it meets another, and where it
    /// enters or leaves a hull.
    fn along_flush(&self, ground: &Ground<'_>, domain: &Hull, keys: &[Line]) -> Vec<Point> {
        if self.flush.is_empty() {
            return Vec::new();
        }
        let mut zones: Vec<Hull> = strips(ground, &self.top, domain);
        let flaws = self.flaw_hulls(ground, domain).into_iter();
        zones.extend(flaws.flat_map(|b| b.windows.into_iter().chain([b.hull])));
        let mut found: Vec<Point> = self.flush.iter().flat_map(|f| f.ends).collect();
        let mut corners = Vec::new();
        for body in &self.bodies {
            let held = self::domain(ground, body);
            let mut hulls = self.flaw_hulls(ground, &held);
            touching(&ground.pockets, &body.parts, &held, &mut hulls);
            corners.extend(Free::new(&held, &hulls, TOUCH_MM).corners());
            zones.extend(hulls.into_iter().map(|b| b.hull));
            zones.push(held);
        }
        let zones: Vec<Zone> = zones.iter().map(|h| Zone::inside(h, 0.0)).collect();
        for (i, line) in self.flush.iter().map(|f| f.line).enumerate() {
            let others = self.flush[..i].iter().map(|f| &f.line).chain(keys);
            found.extend(others.filter_map(|other| line.meet(other)));
            let ends = zones.iter().filter_map(|z| z.stretch(&line));
            found.extend(ends.flat_map(|(a, b)| [line.at(a), line.at(b)]));
        }
        // What is exactly on a line comes first.
        found.extend(corners);
        found
    }

    fn flaw_hulls(&self, ground: &Ground<'_>, domain: &Hull) -> Vec<Blocked> {
        let mut hulls = Vec::new();
        for (flaw, windows) in ground.flaws.iter().zip(&self.windows) {
            let mut own = Vec::new();
            touching(&flaw.parts, &self.finished.parts, domain, &mut own);
            for mut blocked in own {
                blocked.windows.clone_from(windows);
                hulls.push(blocked);
            }
        }
        hulls
    }
}

/// The sets of edges that may be without an allowance at this turn: none, each that may lie on a
/// factory edge of the slab, all of these.
fn bare_sets(job: &crate::job::Job, flush: &[FlushLine]) -> Vec<Vec<usize>> {
    let mut all: Vec<usize> = flush
        .iter()
        .filter(|f| f.bare && edge_allowance(job, f.edge) > 0.0)
        .map(|f| f.edge)
        .collect();
    all.sort_unstable();
    all.dedup();
    let mut sets = vec![Vec::new()];
    sets.extend(all.iter().map(|e| vec![*e]));
    if all.len() > 1 {
        sets.push(all);
    }
    sets
}

/// The shifts at which the box round a body may lie in that round the slab, and a margin.
fn reach(ground: &Ground<'_>, body: &Body) -> Bounds {
    let slab = Bounds::around(ground.slab_hull.0.iter().copied());
    let own = Bounds::around(body.hull.0.iter().copied());
    let (low, high) = (slab.min - own.min, slab.max - own.max);
    let margin = Vector::new(1.0, 1.0);
    let corners = [low - margin, high + margin, low + margin, high - margin];
    Bounds::around(corners.map(|v| Point::ORIGIN + v))
}

/// The shifts that keep a body in the slab's hull.
pub(super) fn domain(ground: &Ground<'_>, body: &Body) -> Hull {
    let within = |slack: f64| {
        let whole = Hull::upright(&reach(ground, body));
        ground.slab_hull.sides().fold(whole, |left, side| {
            let out = side.along.right();
            let line = Line {
                point: side.point - out * body.hull.reach(out),
                along: side.along,
            };
            left.left_of(&line, slack)
        })
    };
    let exact = within(0.0);
    // What only just fits leaves no more than rounding.
    if exact.0.len() < 3 {
        within(TOUCH_MM)
    } else {
        exact
    }
}

/// Adds the shifts at which pieces touch zones, those aside that keep clear of the domain.
pub(super) fn touching(zones: &[Hull], parts: &[Hull], domain: &Hull, found: &mut Vec<Blocked>) {
    let (reach, mut hulls) = (bounds(domain), Vec::new());
    for zone in zones {
        for part in parts {
            add_touching(zone, part, &reach, &mut hulls);
        }
    }
    found.extend(hulls.into_iter().map(Blocked::solid));
}

/// Adds the shifts at which a piece touches a zone, unless they all lie beside a box.
pub(super) fn add_touching(zone: &Hull, part: &Hull, reach: &Bounds, found: &mut Vec<Hull>) {
    let (around, own) = (bounds(zone), bounds(part));
    let (low, high) = (around.min - own.max, around.max - own.min);
    let clear =
        low.x > reach.max.x || high.x < reach.min.x || low.y > reach.max.y || high.y < reach.min.y;
    if !clear {
        found.push(Hull::shifts_that_touch(zone, part));
    }
}

pub(super) fn bounds(hull: &Hull) -> Bounds {
    Bounds::around(hull.0.iter().copied())
}

/// Shifts at which the strip beyond a straight edge would be too narrow: hulls of the slab's edges that
/// lie along it, and of the slab's other corners.
fn strips(ground: &Ground<'_>, top: &Shape, domain: &Hull) -> Vec<Hull> {
    let job = ground.job;
    let reach = bounds(domain);
    let mut hulls = Vec::new();
    for edge in 0..top.count() {
        if !top.is_straight(edge)
            || top.edge_seg(edge).is_none()
            || job.top.finishes[edge] == Finish::Factory
        {
            continue;
        }
        let (from, to) = edge_span(top, edge);
        let out = top.edge_line(edge).along.right();
        let own = edge_allowance(job, edge);
        let far = own + job.place.least_strip_mm;
        let strip = Hull(vec![
            from + out * far,
            to + out * far,
            to + out * own,
            from + out * own,
        ]);
        let narrows = |r: &Rim| r.of_arc || (r.to - r.from).unit().dot(out).abs() < ENDS_A_STRIP;
        let mut after_steep = ground.rim.last().is_some_and(|r| !narrows(r));
        // Where the strip may come to lie, square to the edge.
        let on = from.to_vector().dot(out) + far;
        let farthest = on + domain.reach(out);
        let nearest = on - job.place.least_strip_mm - domain.reach(-out);
        for piece in &ground.rim {
            let steep = !narrows(piece);
            let ends = [piece.from, piece.to].map(|p| p.to_vector().dot(out));
            if ends[0].min(ends[1]) > farthest || ends[0].max(ends[1]) < nearest {
                after_steep = steep;
                continue;
            }
            if !steep {
                add_touching(
                    &Hull(vec![piece.from, piece.to]),
                    &strip,
                    &reach,
                    &mut hulls,
                );
            } else if after_steep {
                add_touching(&Hull(vec![piece.from]), &strip, &reach, &mut hulls);
            }
            after_steep = steep;
        }
    }
    hulls
}

/// For every flaw the shifts at which one piece of an opening holds all of it with its clearance, or lacks
/// no more than `slack` mm.
pub(super) fn windows(ground: &Ground<'_>, openings: &[Hull], slack: f64) -> Vec<Vec<Hull>> {
    let of_flaw = |flaw: &super::ground::FlawZone| {
        let held = |opening: &Hull| {
            let slab = Bounds::around(ground.slab_hull.0.iter().copied());
            let own = Bounds::around(opening.0.iter().copied());
            let far = Vector::new(own.width() + slab.width(), own.height() + slab.height());
            let around = Bounds {
                min: slab.min - own.max.to_vector() - far,
                max: slab.max - own.min.to_vector() + far,
            };
            opening.sides().fold(Hull::upright(&around), |left, side| {
                let out = side.along.right();
                let outmost = flaw.points.iter().map(|p| p.to_vector().dot(out));
                let outmost = outmost.fold(f64::NEG_INFINITY, f64::max) + flaw.around;
                // The opening's side must lie outside of all of the flaw.
                let by = outmost - side.point.to_vector().dot(out);
                let line = Line {
                    point: Point::ORIGIN + out * by,
                    along: -side.along,
                };
                left.left_of(&line, slack)
            })
        };
        let held = openings.iter().map(held);
        held.filter(|h| h.0.len() > 2).collect()
    };
    ground.flaws.iter().map(of_flaw).collect()
}

/// The points without those that are the same as an earlier one, to 1e-5 mm.
fn distinct(points: Vec<Point>) -> Vec<Point> {
    let mut sorted: Vec<(usize, Point)> = points.into_iter().enumerate().collect();
    sorted.retain(|(_, p)| p.is_finite());
    sorted.sort_by(|(_, a), (_, b)| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let mut kept: Vec<(usize, Point)> = Vec::new();
    for (i, p) in sorted {
        let beside = kept
            .iter_mut()
            .rev()
            .take_while(|(_, q)| p.x - q.x <= SAME_SHIFT_MM)
            .find(|(_, q)| (p.y - q.y).abs() <= SAME_SHIFT_MM);
        match beside {
            Some(other) if i < other.0 => *other = (i, p),
            Some(_) => {}
            None => kept.push((i, p)),
        }
    }
    kept.into_iter().map(|(_, p)| p).collect()
}
