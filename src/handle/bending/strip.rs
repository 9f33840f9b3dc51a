//! A stone as a beam along its long direction: width of every cross-section, and the stone and
//! its moment to the left of it, in closed form for straight edges and arcs.

use super::axes::Axes;
use super::course::{BoundaryCourse, courses};
use crate::geom::{Point, Region, SAME_MM};

/// Stations are no farther apart than this part of the stone's length. Between them a peak is
/// sharpened on the exact sections; a search that looks at stations alone misses at most
/// `(1/2 · 1/128)² / 2 · 8 ≈ 6·10⁻⁵` of an even strip's greatest moment.
const STATIONS: f64 = 128.0;

/// A stone as a beam.
#[derive(Clone, Debug)]
pub struct BeamProfile {
    axes: Axes,
    spans: Vec<UniformStretch>,
    stations: Vec<Station>,
    area: f64,
    middle: f64,
}

/// A stretch in which the same pieces of boundary bound the stone.
#[derive(Clone, Debug)]
struct UniformStretch {
    from: f64,
    to: f64,
    courses: Vec<BoundaryCourse>,
    /// Stone and its moment about `u = 0` left of the span, less what its courses sweep there.
    before: (f64, f64),
}

/// One cross-section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Station {
    /// Which stretch it belongs to; a place where the width jumps has a station on either side.
    pub(crate) span: usize,
    /// Distance from the end of the stone, mm.
    pub(crate) u: f64,
    /// Moment of the stone to the left about this cross-section, mm³.
    pub(crate) turn: f64,
    /// Net width, mm.
    pub(crate) width: f64,
}

impl BeamProfile {
    /// The stone as a beam along the given frame's `u`.
    #[must_use]
    pub fn new(region: &Region, axes: Axes) -> Self {
        let mut spans = spans(region, &axes);
        let (mut area, mut moment) = (0.0, 0.0);
        for span in &mut spans {
            let start = span.swept(span.from);
            span.before = (area - start.0, moment - start.1);
            (area, moment) = span.left_of(span.to);
        }
        let mut strip = Self {
            axes,
            spans,
            stations: Vec::new(),
            area,
            middle: if area > 0.0 { moment / area } else { 0.0 },
        };
        strip.stations = strip.laid_out();
        strip
    }

    /// The frame.
    #[must_use]
    pub fn axes(&self) -> &Axes {
        &self.axes
    }

    /// Length of the beam, mm.
    #[must_use]
    pub fn length_mm(&self) -> f64 {
        self.axes.length_mm()
    }

    /// Where the stone begins and ends along the frame, mm.
    #[must_use]
    pub fn reach(&self) -> [f64; 2] {
        let first = self.spans.first().map_or(0.0, |s| s.from);
        [first, self.spans.last().map_or(0.0, |s| s.to)]
    }

    /// Area of the stone from its cross-sections, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        self.area
    }

    /// Balance point from its cross-sections, as a distance from the end, mm.
    #[must_use]
    pub fn middle(&self) -> f64 {
        self.middle
    }

    /// Stone left of a cross-section, mm², and its moment about that cross-section, mm³.
    #[must_use]
    pub fn left_of(&self, u: f64) -> (f64, f64) {
        let [first, last] = self.reach();
        if u <= first {
            return (0.0, 0.0);
        }
        if u >= last {
            return (self.area, self.area * (u - self.middle));
        }
        let span = self.spans_at(u).last().and_then(|i| self.spans.get(i));
        span.map_or((0.0, 0.0), |s| {
            let (area, moment) = s.left_of(u);
            (area, u * area - moment)
        })
    }

    /// Net width of the cross-section at `u`, holes taken off, mm; 0 off the stone.
    ///
    /// Where the width jumps, the narrower of the two.
    #[must_use]
    pub fn width_at(&self, u: f64) -> f64 {
        let widths = self.spans_at(u).filter_map(|i| self.spans.get(i));
        widths.map(|s| s.width(u)).reduce(f64::min).unwrap_or(0.0)
    }

    /// The outermost points of the stone on the cross-section at `u`; off the stone, its whole width.
    #[must_use]
    pub fn chord_at(&self, u: f64) -> [Point; 2] {
        let [low, high] = self.sides_at(u);
        let sides = if low <= high {
            [low, high]
        } else {
            [0.0, self.axes.width_mm()]
        };
        sides.map(|v| self.axes.point(u, v))
    }

    /// The least and the most `v` of the stone on the cross-section at `u`, mm.
    #[must_use]
    pub fn sides_at(&self, u: f64) -> [f64; 2] {
        let spans = self.spans_at(u).filter_map(|i| self.spans.get(i));
        spans
            .flat_map(|s| s.courses.iter().map(|c| c.v(u)))
            .fold([f64::INFINITY, f64::NEG_INFINITY], |s, v| {
                [s[0].min(v), s[1].max(v)]
            })
    }

    /// The pieces of stone in a cross-section, as stretches of `v` from the right-hand side on, mm.
    /// Where the section jumps, that of the narrower side.
    #[must_use]
    pub fn rails_at(&self, u: f64) -> Vec<[f64; 2]> {
        let spans = self.spans_at(u).filter_map(|i| self.spans.get(i));
        let narrowest = spans.min_by(|a, b| a.width(u).total_cmp(&b.width(u)));
        narrowest.map_or_else(Vec::new, |s| s.rails(u))
    }

    pub(crate) fn stations(&self) -> &[Station] {
        &self.stations
    }

    /// Section modulus on edge over the thickness, mm²: rails that bend to the same curve,
    /// `Σ b³ / (6·b)` with the widest rail's `b` below.
    pub(crate) fn edge_modulus(&self, span: usize, u: f64) -> f64 {
        let rails = self.spans.get(span).map_or_else(Vec::new, |s| s.rails(u));
        let widths = rails.iter().map(|r| r[1] - r[0]);
        let deepest = widths.clone().fold(0.0, f64::max);
        widths.map(|b| b.powi(3)).sum::<f64>() / (6.0 * deepest)
    }

    /// The cross-section at any `u` within a stretch.
    pub(crate) fn station_in(&self, span: usize, u: f64) -> Option<Station> {
        self.spans.get(span).map(|s| s.station(span, u))
    }

    /// Every stretch that holds `u`, ends included.
    pub(crate) fn spans_at(&self, u: f64) -> impl Iterator<Item = usize> + Clone {
        let first = self.spans.partition_point(|s| s.to < u - SAME_MM);
        let ends = self.spans.partition_point(|s| s.from <= u + SAME_MM);
        first..ends.max(first)
    }

    fn laid_out(&self) -> Vec<Station> {
        let [first, last] = self.reach();
        let apart = (last - first) / STATIONS;
        let mut stations = Vec::new();
        for (i, span) in self.spans.iter().enumerate() {
            let steps = ((span.to - span.from) / apart).ceil().max(1.0);
            let mut step = 0.0;
            while step <= steps {
                let u = span.from + (span.to - span.from) * (step / steps);
                stations.push(span.station(i, u));
                step += 1.0;
            }
        }
        stations
    }
}

impl UniformStretch {
    fn width(&self, u: f64) -> f64 {
        let width: f64 = self.courses.iter().map(|c| c.width_share(u)).sum();
        width.max(0.0)
    }

    /// What its courses sweep from their starts to `u`: area, and moment about `u = 0`.
    fn swept(&self, u: f64) -> (f64, f64) {
        let parts = self.courses.iter().map(|c| c.swept(u));
        parts.fold((0.0, 0.0), |sum, part| (sum.0 + part.0, sum.1 + part.1))
    }

    fn left_of(&self, u: f64) -> (f64, f64) {
        let swept = self.swept(u);
        (self.before.0 + swept.0, self.before.1 + swept.1)
    }

    fn station(&self, span: usize, u: f64) -> Station {
        let (area, moment) = self.left_of(u);
        Station {
            span,
            u,
            turn: u * area - moment,
            width: self.width(u),
        }
    }

    fn rails(&self, u: f64) -> Vec<[f64; 2]> {
        let mut marks: Vec<f64> = self.courses.iter().map(|c| c.v(u)).collect();
        marks.sort_by(f64::total_cmp);
        marks.chunks_exact(2).map(|c| [c[0], c[1]]).collect()
    }
}

fn spans(region: &Region, axes: &Axes) -> Vec<UniformStretch> {
    let mut all: Vec<BoundaryCourse> = Vec::new();
    for (i, boundary) in region.boundaries().enumerate() {
        all.extend(boundary.segs().iter().flat_map(|s| courses(s, axes, i > 0)));
    }
    let mut marks: Vec<f64> = all.iter().flat_map(BoundaryCourse::ends).collect();
    marks.sort_by(f64::total_cmp);
    marks.dedup_by(|a, b| (*a - *b).abs() <= SAME_MM);
    all.sort_by(|a, b| a.ends()[0].total_cmp(&b.ends()[0]));
    marks
        .windows(2)
        .map(|w| {
            let middle = f64::midpoint(w[0], w[1]);
            let begun = all.partition_point(|c| c.ends()[0] <= middle);
            let met = all.iter().take(begun).filter(|c| c.covers(middle));
            UniformStretch {
                from: w[0],
                to: w[1],
                courses: met.copied().collect(),
                before: (0.0, 0.0),
            }
        })
        .collect()
}
