//! The largest upright rectangle in a straight-sided ring.
//!
//! Between two neighbouring levels of corners for its lower side and two for its upper side the same
//! edges bound it to the left and to the right. Each edge bounds it at one of the two heights only, by a
//! straight line: the width is a concave function of the two heights, its product with the height
//! difference has a concave logarithm and one peak. For a given lower side the upper one is found by cutting planes,
//! exactly and in a few steps; the lower side by golden section, given up as soon as the concave logarithm proves that
//! no better rectangle is left. Cost: pairs of bands × edges that can bind.

use super::point::Point;

/// Levels closer than this are one, mm.
const SAME_LEVEL_MM: f64 = 1e-6;
/// Steps of a search for a peak: each leaves 0.618 of the range.
const STEPS: u32 = 26;
/// The share of a range at which a peak is looked for: the golden section.
const GOLDEN: f64 = 0.618_033_988_749_894_9;
/// A width is found to a millionth of a millimetre: so much may the logarithm of an area be short of what it is.
const ROUNDING: f64 = 1e-5;

/// A ring seen by the heights of its corners.
pub(super) struct Levels {
    edges: Vec<(Point, Point)>,
    heights: Vec<f64>,
}

/// A gap between edges, for a lower side between two levels and an upper side between two others.
struct Gap {
    /// No rectangle in it is larger, mm².
    most: f64,
    lower: (f64, f64),
    upper: (f64, f64),
    left: Bounds,
    right: Bounds,
}

/// What bounds a gap on one side, as ways inwards that grow with what is taken of the gap.
struct Bounds {
    /// By the height of the lower side.
    low: Vec<Ramp>,
    /// By the height of the upper side.
    high: Vec<Ramp>,
}

/// A straight line: its value at a height and how it grows upwards.
#[derive(Clone, Copy)]
struct Ramp {
    y: f64,
    value: f64,
    slope: f64,
}

impl Ramp {
    fn at(&self, y: f64) -> f64 {
        self.value + self.slope * (y - self.y)
    }

    const fn level(value: f64) -> Self {
        Self {
            y: 0.0,
            value,
            slope: 0.0,
        }
    }

    /// Where the area between a lower side and the height `y` peaks for this width; the top of the range
    /// for a width that does not shrink.
    fn peak(&self, low: f64, top: f64) -> f64 {
        if self.slope < 0.0 {
            0.5 * (low + self.y - self.value / self.slope)
        } else {
            top
        }
    }
}

/// The one that reaches farthest at a height.
fn farthest(ramps: &[Ramp], y: f64) -> Ramp {
    let nothing = Ramp::level(f64::NEG_INFINITY);
    ramps.iter().fold(
        nothing,
        |best, r| if r.at(y) > best.at(y) { *r } else { best },
    )
}

/// Leaves out what another one covers over a whole band.
fn binding(ramps: &mut Vec<Ramp>, band: (f64, f64)) {
    let ends = |r: &Ramp| (r.at(band.0), r.at(band.1));
    let covered = ramps.iter().map(|r| ends(r).0.min(ends(r).1));
    let covered = covered.fold(f64::NEG_INFINITY, f64::max);
    ramps.retain(|r| ends(r).0.max(ends(r).1) >= covered);
}

/// A band for the lower side of a rectangle and one for its upper side.
struct Pair {
    /// No rectangle between them is larger, mm².
    most: f64,
    lower: (f64, f64),
    upper: (f64, f64),
}

impl Pair {
    /// What lies in every strip from the one band to the other.
    fn inner(&self) -> (f64, f64) {
        if self.lower == self.upper {
            let middle = f64::midpoint(self.lower.0, self.lower.1);
            (middle, middle)
        } else {
            (self.lower.1, self.upper.0)
        }
    }
}

impl Levels {
    pub(super) fn of(ring: &[Point]) -> Self {
        let mut heights: Vec<f64> = ring.iter().map(|p| p.y).collect();
        heights.sort_by(f64::total_cmp);
        heights.dedup_by(|a, b| *a - *b < SAME_LEVEL_MM);
        let next = ring.iter().cycle().skip(1);
        Self {
            edges: ring.iter().zip(next).map(|(a, b)| (*a, *b)).collect(),
            heights,
        }
    }

    /// The largest upright rectangle, by its lower left and upper right corners, if it is larger than `goal` mm². If none
    /// is, then one that is larger than `least`, which is no more than the goal; nothing when there is none.
    pub(super) fn best(&self, least: f64, goal: f64) -> Option<(Point, Point)> {
        let (mut area, mut best) = (least.max(0.0), None);
        for pair in self.pairs(area) {
            if pair.most <= area {
                break;
            }
            let mut gaps = Vec::new();
            self.add_gaps(pair.lower, pair.upper, pair.inner(), area, &mut gaps);
            gaps.sort_by(|a, b| b.most.total_cmp(&a.most));
            for gap in &gaps {
                if gap.most <= area {
                    break;
                }
                let Some((low, high)) = gap.peak(area, goal) else {
                    continue;
                };
                let (left, right) = gap.sides(low, high);
                let here = (high - low) * (right - left);
                if here > area {
                    // From the first one on only what reaches the goal is of interest.
                    area = here.max(goal);
                    best = Some((Point::new(left, low), Point::new(right, high)));
                }
            }
        }
        best
    }

    /// Every pair of bands between which more than `beat` mm² may lie, the most first.
    fn pairs(&self, beat: f64) -> Vec<Pair> {
        let bands: Vec<(f64, f64)> = self.heights.windows(2).map(|w| (w[0], w[1])).collect();
        let widths: Vec<f64> = bands.iter().map(|band| self.widest(*band)).collect();
        let across = self.edges.iter().map(|e| e.0.x);
        let (left, right) = across.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, r), x| {
            (l.min(x), r.max(x))
        });
        let mut pairs = Vec::new();
        for (i, lower) in bands.iter().enumerate() {
            // A rectangle that spans a whole band is no wider than the widest gap there.
            let mut width = right - left;
            for (j, upper) in bands.iter().enumerate().skip(i) {
                if j > i + 1 {
                    width = width.min(widths[j - 1]);
                }
                let most = (upper.1 - lower.0) * width;
                if most > beat {
                    pairs.push(Pair {
                        most,
                        lower: *lower,
                        upper: *upper,
                    });
                }
            }
        }
        pairs.sort_by(|a, b| b.most.total_cmp(&a.most));
        pairs
    }

    /// The widest gap between the edges that meet a band, mm.
    fn widest(&self, band: (f64, f64)) -> f64 {
        let mut taken: Vec<(f64, f64)> = (0..self.edges.len())
            .filter(|e| self.meets(*e, band.0, band.1))
            .map(|e| self.range(e, band.0, band.1))
            .collect();
        taken.sort_by(|a, b| a.0.total_cmp(&b.0));
        let (mut widest, mut reached) = (0.0_f64, f64::INFINITY);
        for (from, to) in taken {
            if reached.is_infinite() {
                reached = to;
            }
            widest = widest.max(from - reached);
            reached = reached.max(to);
        }
        widest
    }

    /// Whether an edge meets a strip, not only its rim.
    fn meets(&self, edge: usize, low: f64, high: f64) -> bool {
        let (a, b) = self.edges[edge];
        a.y.min(b.y) < high - SAME_LEVEL_MM && a.y.max(b.y) > low + SAME_LEVEL_MM
    }

    fn add_gaps(
        &self,
        lower: (f64, f64),
        upper: (f64, f64),
        inner: (f64, f64),
        beat: f64,
        found: &mut Vec<Gap>,
    ) {
        // The edges that every such strip meets, and what they take of the inner one.
        let mut taken: Vec<(f64, f64, usize)> = (0..self.edges.len())
            .filter(|e| self.meets(*e, lower.0, upper.1))
            .map(|e| {
                let (from, to) = self.range(e, inner.0, inner.1);
                (from, to, e)
            })
            .collect();
        taken.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut reached = f64::NEG_INFINITY;
        for (k, (from, to, _)) in taken.iter().enumerate() {
            let most = (upper.1 - lower.0) * (from - reached);
            let middle = Point::new(
                f64::midpoint(reached, *from),
                f64::midpoint(inner.0, inner.1),
            );
            if reached.is_finite() && *from > reached && most > beat && self.holds(middle) {
                found.push(Gap {
                    most,
                    lower,
                    upper,
                    left: self.side(&taken[..k], lower, upper, 1.0),
                    right: self.side(&taken[k..], lower, upper, -1.0),
                });
            }
            reached = reached.max(*to);
        }
    }

    /// The range across that an edge takes of a strip; of the level nearest to it when it only reaches
    /// beside the strip.
    fn range(&self, edge: usize, low: f64, high: f64) -> (f64, f64) {
        let (a, b) = self.edges[edge];
        if (a.y - b.y).abs() < SAME_LEVEL_MM {
            return (a.x.min(b.x), a.x.max(b.x));
        }
        let at = |y: f64| {
            let y = y.clamp(a.y.min(b.y), a.y.max(b.y));
            a.x + (b.x - a.x) * (y - a.y) / (b.y - a.y)
        };
        let (p, q) = (at(low), at(high));
        (p.min(q), p.max(q))
    }

    /// What edges take of a gap that lies to their right (`sign` 1) or left (−1): each at the height of its
    /// strip where it reaches farthest into it.
    fn side(
        &self,
        edges: &[(f64, f64, usize)],
        lower: (f64, f64),
        upper: (f64, f64),
        sign: f64,
    ) -> Bounds {
        let (mut low, mut high) = (Vec::new(), Vec::new());
        for (_, _, e) in edges {
            let (a, b) = self.edges[*e];
            let rises = (b.x - a.x) * (b.y - a.y) * sign >= 0.0;
            let (band, ramps) = if rises {
                (upper, &mut high)
            } else {
                (lower, &mut low)
            };
            let reach = |y: f64| {
                let (from, to) = self.range(*e, y, y);
                (from * sign).max(to * sign)
            };
            let (value, end) = (reach(band.0), reach(band.1));
            ramps.push(Ramp {
                y: band.0,
                value,
                slope: (end - value) / (band.1 - band.0),
            });
        }
        binding(&mut low, lower);
        binding(&mut high, upper);
        Bounds { low, high }
    }

    /// Whether a place lies inside the ring.
    fn holds(&self, p: Point) -> bool {
        let crossed = self.edges.iter().filter(|(a, b)| {
            (a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y)
        });
        crossed.count() % 2 == 1
    }
}

impl Gap {
    /// The left and the right side of the widest rectangle between two heights.
    fn sides(&self, low: f64, high: f64) -> (f64, f64) {
        let reach = |b: &Bounds| {
            let at_low = farthest(&b.low, low).at(low);
            at_low.max(farthest(&b.high, high).at(high))
        };
        (reach(&self.left), -reach(&self.right))
    }

    /// The heights between which the rectangle is the largest; nothing when it is proved not to be larger than `least`
    /// mm², and any that makes it larger than that when it is proved not to reach the goal.
    fn peak(&self, least: f64, goal: f64) -> Option<(f64, f64)> {
        let area = |low: f64| {
            let high = self.best_upper(low);
            let (left, right) = self.sides(low, high);
            // Below nothing it still tells which way is better.
            (high - low).max(0.0) * (right - left)
        };
        let low = highest(self.lower, least, goal, area)?;
        Some((low, self.best_upper(low)))
    }

    /// The upper side with which the rectangle on a lower one is the largest: the width is at most what
    /// two lines that touch it say; where their product with the height peaks a better line is laid.
    fn best_upper(&self, low: f64) -> f64 {
        let fixed = [&self.left, &self.right].map(|b| farthest(&b.low, low).at(low));
        let (mut from, mut to) = (self.upper.0.max(low), self.upper.1);
        let (mut rising, mut falling) = (self.width(fixed, from), self.width(fixed, to));
        for _ in 0..STEPS {
            let high = peak_under([&rising, &falling], low, [from, to]);
            let here = self.width(fixed, high);
            let most = rising.at(high).min(falling.at(high));
            if most - here.at(high) <= SAME_LEVEL_MM {
                return high;
            }
            if here.at(high) + (high - low) * here.slope > 0.0 {
                (from, rising) = (high, here);
            } else {
                (to, falling) = (high, here);
            }
        }
        f64::midpoint(from, to)
    }

    /// The width at an upper side's height, by the two edges that bind there; `fixed` is what the lower
    /// side leaves of either side.
    fn width(&self, fixed: [f64; 2], high: f64) -> Ramp {
        let [left, right] = [(&self.left, fixed[0]), (&self.right, fixed[1])].map(|(b, fixed)| {
            let bound = farthest(&b.high, high);
            if bound.at(high) > fixed {
                bound
            } else {
                Ramp::level(fixed)
            }
        });
        Ramp {
            y: high,
            value: -left.at(high) - right.at(high),
            slope: -left.slope - right.slope,
        }
    }
}

/// Where the area on a lower side peaks when two lines, the first for the lower part of a range, bound the
/// width.
fn peak_under([rising, falling]: [&Ramp; 2], low: f64, [from, to]: [f64; 2]) -> f64 {
    let apart = rising.slope - falling.slope;
    let crossing = if apart > 0.0 {
        ((falling.at(from) - rising.at(from)) / apart + from).clamp(from, to)
    } else {
        to
    };
    let (first, second) = (rising.peak(low, to), falling.peak(low, to));
    if first <= crossing {
        first.max(from)
    } else if second >= crossing {
        second.min(to)
    } else {
        crossing
    }
}

/// Where a function with a concave logarithm has its peak: an end of the range, or between; nothing as soon as it is
/// proved to be nowhere greater than `least`. Once it is proved to be nowhere greater than the goal, any place where it is
/// greater than `least` will do.
fn highest((from, to): (f64, f64), least: f64, goal: f64, of: impl Fn(f64) -> f64) -> Option<f64> {
    let inner = |low: f64, high: f64| (high - (high - low) * GOLDEN, low + (high - low) * GOLDEN);
    let (p, q) = inner(from, to);
    let ends = [(from, of(from)), (to, of(to))];
    let [mut low, mut high] = ends;
    let (mut p, mut q) = ((p, of(p)), (q, of(q)));
    for _ in 0..STEPS {
        let most = at_most([low, p, q, high]);
        if most <= least {
            return None;
        }
        let better = if p.1 < q.1 { q } else { p };
        if most <= goal && better.1 > least {
            return Some(better.0);
        }
        if p.1 < q.1 {
            (low, p) = (p, q);
            let next = inner(low.0, high.0).1;
            q = (next, of(next));
        } else {
            (high, q) = (q, p);
            let next = inner(low.0, high.0).0;
            p = (next, of(next));
        }
    }
    let middle = f64::midpoint(low.0, high.0);
    let [first, last] = ends;
    let all = [first, (middle, of(middle)), last];
    let best = all.into_iter().max_by(|a, b| a.1.total_cmp(&b.1));
    best.map(|(at, _)| at)
}

/// What a function with a concave logarithm does not exceed between the first and the last of four places in a row: the
/// line through two of them lies above it everywhere else.
fn at_most(places: [(f64, f64); 4]) -> f64 {
    let apart = places.windows(2).all(|w| w[0].0 < w[1].0);
    if !apart || places.iter().any(|(_, value)| *value <= 0.0) {
        return f64::INFINITY;
    }
    let [a, b, c, d] = places.map(|(at, value)| (at, value.ln()));
    let line = |p: (f64, f64), q: (f64, f64)| {
        let slope = (q.1 - p.1) / (q.0 - p.0);
        move |at: f64| p.1 + slope * (at - p.0)
    };
    let (first, middle, last) = (line(a, b), line(b, c), line(c, d));
    // Between the inner two both outer lines hold: at either end the lower of them, and where they cross.
    let between = first(c.0).min(last(b.0)).max(b.1).max(c.1);
    let most = between.max(middle(a.0)).max(middle(d.0));
    (most + ROUNDING).exp()
}
