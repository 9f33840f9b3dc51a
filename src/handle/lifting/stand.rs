//! Where the lifters stand when the job file does not say.

use crate::geom::{Line, Point, Region};
use crate::handle::bending::axes::Axes;

/// Hands keep this far from a corner, mm (judgement: a hand's breadth off the weakest stone).
const CLEAR_OF_CORNER_MM: f64 = 60.0;
/// Hands keep this far from an opening, mm: a hand's width (judgement).
pub(crate) const CLEAR_OF_CUTOUT_MM: f64 = 100.0;
/// A change of direction that makes a corner, as the sine of about 15° (judgement).
pub(crate) const CORNER_SINE: f64 = 0.26;
/// Pairs stand this share of the way from the balance point to the nearer end away from it: a
/// fifth of the length from either end of an even strip (judgement, next to 0.2071).
const PAIR_SHARE: f64 = 0.6;
/// Places tried on either side of the wanted one, and the step between them.
const TRIES: u8 = 24;
const STEP_MM: f64 = 20.0;
const STEP_DEG: f64 = 0.5;
/// The line between two people turns off the long direction in steps of this, so many either way.
const TURN_DEG: f64 = 2.0;
const MOST_TURNS: u8 = 30;

/// Places for a number of people on the stone's outline, reached from outside it.
///
/// One: under the balance point. Two: the ends, on a line through the balance point. Three: one
/// at the nearer end and a pair on the long sides half as far on the other side of the balance
/// point, which gives equal shares on an even strip. Four: two pairs on the long sides, equally
/// far to either side of the balance point. More: further pairs between those, an odd one at the
/// nearer end. All are moved until they are clear of corners and openings, if they can be.
#[must_use]
pub fn propose(region: &Region, axes: &Axes, people: usize) -> Vec<Point> {
    let balance = region.centroid();
    let crew = Crew {
        region,
        axes,
        balance,
    };
    match people {
        0 => Vec::new(),
        1 => vec![balance],
        2 => crew.ends(),
        3 => crew.three(),
        more => crew.pairs(more),
    }
}

/// Places for two on lines through the balance point: from the ends on, turned further and further either
/// way, those clear of corners and openings.
pub(crate) fn across_balance<'a>(
    region: &'a Region,
    axes: &'a Axes,
) -> impl Iterator<Item = [Point; 2]> + 'a {
    let crew = Crew {
        region,
        axes,
        balance: region.centroid(),
    };
    let turns = (0..=MOST_TURNS).flat_map(|k| [f64::from(k), -f64::from(k)]);
    turns.filter_map(move |k| {
        let line = Line {
            point: crew.balance,
            along: crew.axes.direction().turned((k * TURN_DEG).to_radians()),
        };
        let grips = crew.grips(&line);
        let clear = grips.iter().all(|p| crew.is_clear(*p));
        <[Point; 2]>::try_from(grips).ok().filter(|_| clear)
    })
}

struct Crew<'a> {
    region: &'a Region,
    axes: &'a Axes,
    balance: Point,
}

impl Crew<'_> {
    fn ends(&self) -> Vec<Point> {
        let line = |degrees: f64| Line {
            point: self.balance,
            along: self.axes.direction().turned(degrees.to_radians()),
        };
        let at = |k: f64| self.grips(&line(k * STEP_DEG));
        self.first_clear(at)
    }

    fn three(&self) -> Vec<Point> {
        let Some(single) = self.nearer_end() else {
            return vec![self.balance; 3];
        };
        let (middle, _) = self.axes.seen(self.balance);
        let (end, _) = self.axes.seen(single);
        let mut stand = vec![single];
        stand.extend(self.pair(middle + 0.5 * (middle - end)));
        stand
    }

    /// Pairs at even steps from one end of the crew to the other, mirror images of each other
    /// about the balance point.
    fn pairs(&self, people: usize) -> Vec<Point> {
        let pairs = people / 2;
        let mut stand: Vec<Point> = Vec::new();
        for k in 0..pairs / 2 {
            #[allow(clippy::cast_precision_loss)] // a handful of people
            let share = PAIR_SHARE * (1.0 - 2.0 * k as f64 / (pairs - 1) as f64);
            let (before, after) = self.two_pairs(share);
            let middle = stand.len() / 2;
            stand.splice(middle..middle, before.into_iter().chain(after));
        }
        if pairs % 2 == 1 {
            let (middle, _) = self.axes.seen(self.balance);
            let at = stand.len() / 2;
            stand.splice(at..at, self.pair(middle));
        }
        if people % 2 == 1 {
            stand.extend(self.nearer_end());
        }
        stand
    }

    /// Two pairs equally far to either side of the balance point, shifted together.
    fn two_pairs(&self, share: f64) -> (Vec<Point>, Vec<Point>) {
        let (middle, _) = self.axes.seen(self.balance);
        let away = share * middle.min(self.axes.length_mm() - middle);
        let side = |sign: f64, k: f64| self.across(middle + sign * (away + k * STEP_MM));
        let both = |k: f64| {
            let mut places = side(-1.0, k);
            places.extend(side(1.0, k));
            places
        };
        let together = self.shifted(both);
        match together {
            Some(k) => (side(-1.0, k), side(1.0, k)),
            None => (self.pair(middle - away), self.pair(middle + away)),
        }
    }

    fn nearer_end(&self) -> Option<Point> {
        self.ends().into_iter().min_by(|a, b| {
            a.distance(self.balance)
                .total_cmp(&b.distance(self.balance))
        })
    }

    /// Two people opposite each other on the long sides, shifted off corners towards the middle.
    fn pair(&self, u: f64) -> Vec<Point> {
        let inwards = if u < 0.5 * self.axes.length_mm() {
            1.0
        } else {
            -1.0
        };
        self.first_clear(|k| self.across(u + k * inwards * STEP_MM))
    }

    fn across(&self, u: f64) -> Vec<Point> {
        self.grips(&Line {
            point: self.axes.point(u, 0.0),
            along: self.axes.direction().left(),
        })
    }

    /// Where a line first enters and last leaves the stone: nothing of it lies outside them.
    fn grips(&self, line: &Line) -> Vec<Point> {
        let (low, high) = self
            .region
            .outer
            .segs()
            .iter()
            .flat_map(|s| s.line_crossings(line))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |s, d| {
                (s.0.min(d), s.1.max(d))
            });
        if low < high {
            vec![line.at(low), line.at(high)]
        } else {
            Vec::new()
        }
    }

    /// The wanted places or the nearest that are clear; the wanted ones if none is.
    fn first_clear(&self, at: impl Fn(f64) -> Vec<Point>) -> Vec<Point> {
        let step = self.shifted(&at);
        at(step.unwrap_or(0.0))
    }

    /// The fewest steps to places that are all clear.
    fn shifted(&self, at: impl Fn(f64) -> Vec<Point>) -> Option<f64> {
        let mut steps = (0..=TRIES).flat_map(|k| [f64::from(k), -f64::from(k)]);
        steps.find(|k| {
            let points = at(*k);
            !points.is_empty() && points.iter().all(|p| self.is_clear(*p))
        })
    }

    fn is_clear(&self, point: Point) -> bool {
        let segs = self.region.outer.segs();
        let clear_of_corners = segs
            .iter()
            .zip(segs.iter().cycle().skip(1))
            .filter(|(a, b)| a.heading(1.0).cross(b.heading(0.0)).abs() > CORNER_SINE)
            .all(|(_, b)| b.start().distance(point) >= CLEAR_OF_CORNER_MM);
        let mut holes = self.region.holes.iter();
        clear_of_corners && holes.all(|h| h.distance(point) >= CLEAR_OF_CUTOUT_MM)
    }
}
