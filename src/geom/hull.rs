//! Convex hulls, and the forbidden shifts that placement reasons with.

use super::point::{Line, Point};

/// A convex ring of points, counter-clockwise, at least three unless the input had fewer.
#[derive(Clone, Debug, PartialEq)]
pub struct Hull(pub Vec<Point>);

impl Hull {
    /// The convex hull of points. Collinear points are dropped. n log n.
    #[must_use]
    pub fn around(mut points: Vec<Point>) -> Self {
        points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
        points.dedup();
        if points.len() < 3 {
            return Self(points);
        }
        let half = |points: &mut dyn Iterator<Item = Point>| {
            let mut chain: Vec<Point> = Vec::new();
            for p in points {
                while chain.len() > 1 && {
                    let (a, b) = (chain[chain.len() - 2], chain[chain.len() - 1]);
                    (b - a).cross(p - b) <= 0.0
                } {
                    chain.pop();
                }
                chain.push(p);
            }
            chain.pop();
            chain
        };
        let mut lower = half(&mut points.iter().copied());
        lower.extend(half(&mut points.iter().rev().copied()));
        Self(lower)
    }

    /// The shifts at which a convex shape touches or covers some part of a convex zone, both given
    /// by their points: the hull of the zone with the shape turned inside out.
    #[must_use]
    pub fn shifts_that_touch(zone: &[Point], shape: &[Point]) -> Self {
        let reach = |z: &Point| {
            let z = *z;
            shape.iter().map(move |p| Point::ORIGIN + (z - *p))
        };
        Self::around(zone.iter().flat_map(reach).collect())
    }

    /// The stretch of a line inside the hull, as distances along the line; nothing when the line
    /// misses it or only touches.
    #[must_use]
    pub fn stretch(&self, line: &Line) -> Option<(f64, f64)> {
        let (mut from, mut to) = (f64::NEG_INFINITY, f64::INFINITY);
        for (a, b) in self.edges() {
            let edge = Line::through(a, b);
            let (inside, closing) = (edge.left_of(line.point), edge.along.cross(line.along));
            if closing.abs() <= 1e-12 {
                if inside <= 0.0 {
                    return None;
                }
            } else if closing > 0.0 {
                from = from.max(-inside / closing);
            } else {
                to = to.min(-inside / closing);
            }
        }
        (from < to).then_some((from, to))
    }

    fn edges(&self) -> impl Iterator<Item = (Point, Point)> {
        let next = self.0.iter().cycle().skip(1);
        self.0.iter().zip(next).map(|(a, b)| (*a, *b))
    }
}
