//! The largest upright rectangle in a straight-sided ring.
//!
//! Between two neighbouring levels of corners for its lower side and two for its upper side the same
//! edges bound it to the left and to the right, and each bound is the outmost of straight lines: the
//! width is a concave function of the two heights, its product with the height difference has one peak,
//! and that is found by halving.

use super::point::Point;

/// Levels closer than this are one, mm.
const SAME_LEVEL_MM: f64 = 1e-6;
/// Steps of a search for a peak: each leaves 0.618 of the range.
const STEPS: u32 = 26;
/// The share of a range at which a peak is looked for: the golden section.
const GOLDEN: f64 = 0.618_033_988_749_894_9;

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
    left: Vec<usize>,
    right: Vec<usize>,
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

    /// The largest upright rectangle, by its lower left and upper right corners; nothing when none is
    /// larger than `beat` mm².
    pub(super) fn best(&self, beat: f64) -> Option<(Point, Point)> {
        let (mut area, mut best) = (beat.max(0.0), None);
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
                let (low, high) = self.peak(gap);
                let (left, right) = self.bounds(gap, low, high);
                if (high - low) * (right - left) > area {
                    area = (high - low) * (right - left);
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
                    left: taken[..k].iter().map(|t| t.2).collect(),
                    right: taken[k..].iter().map(|t| t.2).collect(),
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

    /// The left and the right side of the widest rectangle in a gap between two heights.
    fn bounds(&self, gap: &Gap, low: f64, high: f64) -> (f64, f64) {
        let left = gap.left.iter().map(|e| self.range(*e, low, high).1);
        let right = gap.right.iter().map(|e| self.range(*e, low, high).0);
        (
            left.fold(f64::NEG_INFINITY, f64::max),
            right.fold(f64::INFINITY, f64::min),
        )
    }

    /// The heights between which the rectangle in a gap is the largest.
    fn peak(&self, gap: &Gap) -> (f64, f64) {
        let area = |low: f64, high: f64| {
            let (left, right) = self.bounds(gap, low, high);
            // Below nothing it still tells which way is better.
            (high - low).max(0.0) * (right - left)
        };
        let best_upper = |low: f64| {
            let from = gap.upper.0.max(low);
            highest(from, gap.upper.1, |high| area(low, high))
        };
        let low = highest(gap.lower.0, gap.lower.1, |low| area(low, best_upper(low)));
        (low, best_upper(low))
    }

    /// Whether a place lies inside the ring.
    fn holds(&self, p: Point) -> bool {
        let crossed = self.edges.iter().filter(|(a, b)| {
            (a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y)
        });
        crossed.count() % 2 == 1
    }
}

/// Where a function with one peak has it: an end of the range, or between.
fn highest(from: f64, to: f64, of: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut high) = (from, to);
    let inner = |low: f64, high: f64| (high - (high - low) * GOLDEN, low + (high - low) * GOLDEN);
    let (mut p, mut q) = inner(low, high);
    let (mut at_p, mut at_q) = (of(p), of(q));
    for _ in 0..STEPS {
        if at_p < at_q {
            low = p;
            (p, at_p) = (q, at_q);
            q = inner(low, high).1;
            at_q = of(q);
        } else {
            high = q;
            (q, at_q) = (p, at_p);
            p = inner(low, high).0;
            at_p = of(p);
        }
    }
    let middle = f64::midpoint(low, high);
    let all = [from, middle, to].map(|at| (at, of(at)));
    let best = all.into_iter().max_by(|a, b| a.1.total_cmp(&b.1));
    best.map_or(middle, |(at, _)| at)
}
