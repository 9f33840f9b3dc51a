//! Where the lifters stand when the job file does not say.

use super::axes::Axes;
use crate::geom::{Line, Point, Region};

/// Hands keep this far from a corner, mm (judgement: a hand's breadth off the weakest stone).
const CLEAR_OF_CORNER_MM: f64 = 60.0;
/// A change of direction that makes a corner, as the sine of about 15° (judgement).
const CORNER_SINE: f64 = 0.26;
/// Pairs stand this share of the length in from each end (judgement, next to 0.2071).
const PAIR_SHARE: f64 = 0.2;
/// Places tried on either side of the wanted one, and the step between them.
const TRIES: u8 = 8;
const STEP_MM: f64 = 20.0;
const STEP_DEG: f64 = 1.0;

/// Places for a number of people on the stone's outline.
///
/// One: under the balance point. Two: the ends, on a line through the balance point. Three: one
/// at the nearer end and a pair on the long sides half as far on the other side of the balance
/// point, which gives equal shares on an even strip. Four: two pairs on the long sides, a fifth
/// of the length from each end. More: further pairs between those, an odd one at the nearer end.
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

    fn pairs(&self, people: usize) -> Vec<Point> {
        let pairs = people / 2;
        let length = self.axes.length_mm();
        let mut stand = Vec::new();
        for k in 0..pairs {
            #[allow(clippy::cast_precision_loss)] // a handful of people
            let share = PAIR_SHARE + (1.0 - 2.0 * PAIR_SHARE) * k as f64 / (pairs - 1) as f64;
            stand.extend(self.pair(share * length));
        }
        if people % 2 == 1 {
            stand.extend(self.nearer_end());
        }
        stand
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
        let at = |k: f64| {
            self.grips(&Line {
                point: self.axes.point(u + k * inwards * STEP_MM, 0.0),
                along: self.axes.direction().left(),
            })
        };
        self.first_clear(at)
    }

    /// Where a line first enters and last leaves the stone.
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

    /// The wanted places or the nearest that are clear of corners; the wanted ones if none is.
    fn first_clear(&self, at: impl Fn(f64) -> Vec<Point>) -> Vec<Point> {
        (0..=TRIES)
            .flat_map(|k| [f64::from(k), -f64::from(k)])
            .map(&at)
            .find(|points| !points.is_empty() && points.iter().all(|p| self.is_clear(*p)))
            .unwrap_or_else(|| at(0.0))
    }

    fn is_clear(&self, point: Point) -> bool {
        let segs = self.region.outer.segs();
        segs.iter()
            .zip(segs.iter().cycle().skip(1))
            .filter(|(a, b)| a.heading(1.0).cross(b.heading(0.0)).abs() > CORNER_SINE)
            .all(|(_, b)| b.start().distance(point) >= CLEAR_OF_CORNER_MM)
    }
}
