//! A stone as a beam along its long direction: width of every cross-section, and the stone and
//! its moment to the left of it.

use std::f64::consts::PI;

use super::axes::Axes;
use super::course::{Course, courses};
use crate::geom::{Point, Region, SAME_MM};

/// Steps of the numerical integration in each stretch between two changes of the outline.
///
/// Steps are laid closer towards the ends of the stretch (equal steps of θ in
/// `u = ½(1 − cos θ)`), so that round ends integrate as smoothly as straight ones.
pub const STEPS: usize = 96;

/// A stone as a beam.
#[derive(Clone, Debug)]
pub struct Strip {
    axes: Axes,
    spans: Vec<Span>,
    nodes: Vec<Node>,
}

/// A stretch in which the same pieces of boundary bound the stone.
#[derive(Clone, Debug)]
struct Span {
    from: f64,
    to: f64,
    courses: Vec<Course>,
}

/// One station of the integration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Node {
    /// Which stretch it belongs to; a place where the width jumps has a node on either side.
    pub(super) span: usize,
    /// Distance from the end of the stone, mm.
    pub(super) u: f64,
    /// Stone to the left, mm².
    pub(super) area: f64,
    /// Its moment about the end of the stone, mm³.
    pub(super) moment: f64,
    /// Net width of the cross-section, mm.
    pub(super) width: f64,
}

impl Strip {
    /// The stone as a beam along the given frame's `u`.
    #[must_use]
    pub fn new(region: &Region, axes: Axes) -> Self {
        let spans = spans(region, &axes);
        let mut strip = Self {
            axes,
            spans,
            nodes: Vec::new(),
        };
        strip.nodes = strip.integrated();
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

    /// How many stations the integration has.
    #[must_use]
    pub fn stations(&self) -> usize {
        self.nodes.len()
    }

    /// Area of the stone by the integration, mm².
    #[must_use]
    pub fn area(&self) -> f64 {
        self.nodes.last().map_or(0.0, |n| n.area)
    }

    /// Balance point by the integration, as a distance from the end, mm.
    #[must_use]
    pub fn middle(&self) -> f64 {
        self.nodes.last().map_or(0.0, |n| n.moment / n.area)
    }

    /// Net width of the cross-section at `u`, holes taken off, mm; 0 off the stone.
    ///
    /// Where the width jumps, the narrower of the two.
    #[must_use]
    pub fn width_at(&self, u: f64) -> f64 {
        let near = |s: &&Span| s.from - SAME_MM <= u && u <= s.to + SAME_MM;
        let widths = self.spans.iter().filter(near).map(|s| s.width(u));
        widths.reduce(f64::min).unwrap_or(0.0)
    }

    /// The outermost points of the stone on the cross-section at `u`.
    #[must_use]
    pub fn chord_at(&self, u: f64) -> [Point; 2] {
        let near = |s: &&Span| s.from - SAME_MM <= u && u <= s.to + SAME_MM;
        let (low, high) = self
            .spans
            .iter()
            .filter(near)
            .flat_map(|s| s.courses.iter().map(|c| c.v(u)))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |s, v| {
                (s.0.min(v), s.1.max(v))
            });
        [self.axes.point(u, low), self.axes.point(u, high)]
    }

    pub(super) fn nodes(&self) -> &[Node] {
        &self.nodes
    }

    /// Widths of the separate pieces of stone in a cross-section of a stretch, mm.
    pub(super) fn rails_in(&self, span: usize, u: f64) -> Vec<f64> {
        let Some(span) = self.spans.get(span) else {
            return Vec::new();
        };
        let mut marks: Vec<f64> = span.courses.iter().map(|c| c.v(u)).collect();
        marks.sort_by(f64::total_cmp);
        marks.chunks_exact(2).map(|c| c[1] - c[0]).collect()
    }

    /// The node at any `u` within a stretch.
    pub(super) fn node_in(&self, span: usize, u: f64) -> Option<Node> {
        let stretch = self.spans.get(span)?;
        let theta = stretch.theta(u);
        let step = PI / as_f64(STEPS);
        let last = self
            .nodes
            .get(span * (STEPS + 1)..(span + 1) * (STEPS + 1))?;
        let before = last.partition_point(|n| n.u <= u).saturating_sub(1);
        let base = last.get(before)?;
        Some(stretch.onward(base, as_f64(before) * step, theta))
    }

    /// Every stretch that holds `u`, ends included.
    pub(super) fn spans_at(&self, u: f64) -> impl Iterator<Item = usize> {
        let holds = move |s: &Span| s.from - SAME_MM <= u && u <= s.to + SAME_MM;
        let found = self.spans.iter().enumerate();
        found.filter(move |(_, s)| holds(s)).map(|(i, _)| i)
    }

    fn integrated(&self) -> Vec<Node> {
        let step = PI / as_f64(STEPS);
        let mut nodes: Vec<Node> = Vec::with_capacity(self.spans.len() * (STEPS + 1));
        for (i, span) in self.spans.iter().enumerate() {
            let (area, moment) = nodes.last().map_or((0.0, 0.0), |n| (n.area, n.moment));
            let mut node = Node {
                span: i,
                u: span.from,
                area,
                moment,
                width: span.width(span.from),
            };
            nodes.push(node);
            for k in 0..STEPS {
                node = span.onward(&node, as_f64(k) * step, as_f64(k + 1) * step);
                nodes.push(node);
            }
        }
        nodes
    }
}

impl Span {
    fn width(&self, u: f64) -> f64 {
        let width: f64 = self.courses.iter().map(|c| c.width_share(u)).sum();
        width.max(0.0)
    }

    fn u(&self, theta: f64) -> f64 {
        self.from + (self.to - self.from) * 0.5 * (1.0 - theta.cos())
    }

    fn theta(&self, u: f64) -> f64 {
        let share = (u - self.from) / (self.to - self.from);
        (1.0 - 2.0 * share.clamp(0.0, 1.0)).acos()
    }

    /// The node at `to` from that at `from`, by Simpson's rule in θ.
    fn onward(&self, node: &Node, from: f64, to: f64) -> Node {
        let weights = [1.0, 4.0, 1.0];
        let thetas = [from, f64::midpoint(from, to), to];
        let (mut area, mut moment, mut width) = (node.area, node.moment, node.width);
        for (weight, theta) in weights.into_iter().zip(thetas) {
            let u = self.u(theta);
            let stretch = 0.5 * (self.to - self.from) * theta.sin();
            width = self.width(u);
            let part = weight * (to - from) / 6.0 * stretch * width;
            area += part;
            moment += part * u;
        }
        Node {
            span: node.span,
            u: self.u(to),
            area,
            moment,
            width,
        }
    }
}

fn spans(region: &Region, axes: &Axes) -> Vec<Span> {
    let mut all: Vec<Course> = Vec::new();
    for (i, boundary) in region.boundaries().enumerate() {
        all.extend(boundary.segs().iter().flat_map(|s| courses(s, axes, i > 0)));
    }
    let mut marks: Vec<f64> = all.iter().flat_map(Course::ends).collect();
    marks.sort_by(f64::total_cmp);
    marks.dedup_by(|a, b| (*a - *b).abs() <= SAME_MM);
    marks
        .windows(2)
        .map(|w| {
            let middle = f64::midpoint(w[0], w[1]);
            Span {
                from: w[0],
                to: w[1],
                courses: all.iter().filter(|c| c.covers(middle)).copied().collect(),
            }
        })
        .collect()
}

#[allow(clippy::cast_precision_loss)] // step counts, far below 2^52
fn as_f64(count: usize) -> f64 {
    count as f64
}
