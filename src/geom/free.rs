//! The corners of what convex obstacles leave of a convex domain.

use super::hull::{Hull, Zone};
use super::point::{Bounds, Line, Point};

/// An obstacle gives way by this much, mm, so that what only touches is free.
pub const TOUCH_MM: f64 = 1e-7;

/// A convex obstacle, with convex windows in which it is none.
#[derive(Clone, Debug)]
pub struct Blocked {
    /// Its hull.
    pub hull: Hull,
    /// Where it is no obstacle all the same.
    pub windows: Vec<Hull>,
}

impl Blocked {
    /// An obstacle without windows.
    #[must_use]
    pub const fn solid(hull: Hull) -> Self {
        Self {
            hull,
            windows: Vec::new(),
        }
    }
}

/// Takes off a convex domain what single obstacles cut off it, and drops the obstacles that are settled so:
/// those that keep clear of the domain, and those that take a whole cap off it. What is left of both
/// leaves the same free region, to [`TOUCH_MM`]. Obstacles × their sides × corners of the domain.
pub fn carve(domain: &mut Hull, obstacles: &mut Vec<Blocked>) {
    obstacles.retain(|obstacle| {
        if obstacle.hull.0.len() < 3 || domain.0.len() < 3 {
            return true;
        }
        if obstacle.hull.keeps_clear_of(domain) {
            return false;
        }
        if !obstacle.windows.is_empty() {
            return true;
        }
        match without_cap(domain, &obstacle.hull) {
            Some(left) => {
                *domain = left;
                false
            }
            None => true,
        }
    });
}

/// What is left of a domain when an obstacle covers all of it on the inner side of one of its sides; nothing
/// when it does not, or when too little would be left to have corners.
fn without_cap(domain: &Hull, obstacle: &Hull) -> Option<Hull> {
    let zone = Zone::inside(obstacle, -TOUCH_MM);
    let held: Vec<bool> = domain.0.iter().map(|p| zone.holds(*p)).collect();
    // A cap has a corner of the domain, and all of them that lie on its side.
    if !held.contains(&true) {
        return None;
    }
    obstacle.sides().find_map(|side| {
        let mut edges = domain.edges().zip(&held);
        let whole = edges.all(|((p, q), held)| {
            let [from, to] = [p, q].map(|p| side.left_of(p));
            let crosses = (from < 0.0) != (to < 0.0);
            (*held || from < 0.0) && (!crosses || zone.holds(p + (q - p) * (from / (from - to))))
        });
        let back = Line {
            point: side.point,
            along: -side.along,
        };
        let left = whole.then(|| domain.left_of(&back, 0.0))?;
        (left.0.len() > 2).then_some(left)
    })
}

/// What many obstacles leave of a domain, made ready for questions.
#[derive(Clone, Debug)]
pub struct Free {
    domain: Hull,
    within: Zone,
    reach: Bounds,
    covers: Vec<Cover>,
    edges: Vec<(Point, Point)>,
}

#[derive(Clone, Debug)]
struct Cover {
    zone: Zone,
    windows: Vec<Zone>,
}

impl Free {
    /// What obstacles leave of a convex domain when each gives way by so many mm, [`TOUCH_MM`] at
    /// least; those that keep clear of the domain are dropped.
    #[must_use]
    pub fn new<'a>(
        domain: &Hull,
        blocked: impl IntoIterator<Item = &'a Blocked>,
        give_mm: f64,
    ) -> Self {
        let reach = Bounds::around(domain.0.iter().copied());
        let (mut covers, mut edges) = (Vec::new(), Vec::new());
        for obstacle in blocked {
            let zone = Zone::inside(&obstacle.hull, give_mm);
            if !zone.may_meet(&reach) {
                continue;
            }
            edges.extend(obstacle.hull.edges());
            edges.extend(obstacle.windows.iter().flat_map(Hull::edges));
            let windows = obstacle.windows.iter();
            covers.push(Cover {
                zone,
                windows: windows.map(|w| Zone::inside(w, -give_mm)).collect(),
            });
        }
        edges.extend(domain.edges());
        Self {
            domain: domain.clone(),
            within: Zone::inside(domain, -give_mm),
            reach,
            covers,
            edges,
        }
    }

    /// True when nothing of the domain is free. As [`Free::corners`], up to the first that is found.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.is_covered() || self.bare_edges().next().is_none()
    }

    /// True when one obstacle covers the whole domain.
    #[must_use]
    pub fn is_covered(&self) -> bool {
        let covers =
            |c: &Cover| c.windows.is_empty() && self.domain.0.iter().all(|p| c.zone.holds(*p));
        self.domain.0.is_empty() || self.covers.iter().any(covers)
    }

    /// True when a point lies in the domain and on no obstacle.
    #[must_use]
    pub fn holds(&self, p: Point) -> bool {
        self.within.holds(p) && !self.covers.iter().any(|c| c.holds(p))
    }

    /// The corners of the free region: where edges come out of the obstacles. Exact to rounding.
    /// Cost: edges × obstacles, most of them passed over by their boxes.
    #[must_use]
    pub fn corners(&self) -> Vec<Point> {
        self.bare_edges().flatten().collect()
    }

    /// The free stretches of all edges, by their two ends.
    fn bare_edges(&self) -> impl Iterator<Item = [Point; 2]> {
        let mut last = 0;
        let bare = move |&(a, b): &(Point, Point)| {
            let bounds = Bounds::around([a, b]);
            // Neighbouring edges are mostly buried in the same obstacle.
            let buried = |c: &Cover| c.windows.is_empty() && c.zone.holds(a) && c.zone.holds(b);
            if a == b
                || bounds.keeps_off(&self.reach, 0.0)
                || self.covers.get(last).is_some_and(buried)
            {
                return Vec::new();
            }
            if let Some(cover) = self.covers.iter().position(buried) {
                last = cover;
                return Vec::new();
            }
            let line = Line::through(a, b);
            let stretches = self.bare(&line, 0.0, a.distance(b)).into_iter();
            stretches
                .map(|(from, to)| [line.at(from), line.at(to)])
                .collect()
        };
        self.edges.iter().flat_map(bare)
    }

    /// The free parts of a stretch of a line, as distances along it.
    #[must_use]
    pub fn bare(&self, line: &Line, from: f64, to: f64) -> Vec<(f64, f64)> {
        let Some((enters, leaves)) = self.within.stretch(line) else {
            return Vec::new();
        };
        let (from, to) = (from.max(enters), to.min(leaves));
        if from > to {
            return Vec::new();
        }
        let bounds = Bounds::around([line.at(from), line.at(to)]);
        let mut covered: Vec<(f64, f64)> = Vec::new();
        for cover in self.covers.iter().filter(|c| c.zone.may_meet(&bounds)) {
            for (a, b) in cover.stretches(line) {
                if a < from && b > to {
                    return Vec::new();
                }
                if b >= from && a <= to {
                    covered.push((a, b));
                }
            }
        }
        covered.sort_by(|p, q| p.0.total_cmp(&q.0));
        left_bare(&covered, from, to)
    }
}

impl Cover {
    fn holds(&self, p: Point) -> bool {
        self.zone.holds(p) && !self.windows.iter().any(|w| w.holds(p))
    }

    /// The stretches of a line that it covers.
    fn stretches(&self, line: &Line) -> Vec<(f64, f64)> {
        let Some((from, to)) = self.zone.stretch(line) else {
            return Vec::new();
        };
        if self.windows.is_empty() {
            return vec![(from, to)];
        }
        let mut open: Vec<(f64, f64)> = self
            .windows
            .iter()
            .filter_map(|w| w.stretch(line))
            .collect();
        open.sort_by(|p, q| p.0.total_cmp(&q.0));
        left_bare(&open, from, to)
    }
}

/// What stretches, in the order of their starts, leave of one.
fn left_bare(covered: &[(f64, f64)], from: f64, to: f64) -> Vec<(f64, f64)> {
    let (mut bare, mut reached) = (Vec::new(), from);
    for (a, b) in covered {
        if *a >= reached {
            bare.push((reached, a.min(to)));
        }
        reached = reached.max(*b);
        if reached > to {
            return bare;
        }
    }
    bare.push((reached, to));
    bare
}
