//! One piece of an outline: a straight segment or a circular arc.

use std::f64::consts::{FRAC_PI_2, PI};

use serde::Serialize;
use serde::ser::{SerializeMap, Serializer};

use super::arc::{Arc, arc_moments, circles_meet, line_meets_circle, line_moments};
use super::point::{Bounds, Line, Point, Pose, Vector};
use super::{FLATTEN_MM, SAME_MM};

/// A straight segment or an arc, run through from its start to its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Seg {
    /// From the first point straight to the second.
    Line(Point, Point),
    /// Along a circle.
    Arc(Arc),
}

impl Seg {
    /// First point.
    #[must_use]
    pub fn start(&self) -> Point {
        match self {
            Self::Line(a, _) => *a,
            Self::Arc(arc) => arc.at_angle(arc.start),
        }
    }

    /// Last point.
    #[must_use]
    pub fn end(&self) -> Point {
        match self {
            Self::Line(_, b) => *b,
            Self::Arc(arc) => arc.at_angle(arc.start + arc.sweep),
        }
    }

    /// Length along the piece, mm.
    #[must_use]
    pub fn length(&self) -> f64 {
        match self {
            Self::Line(a, b) => a.distance(*b),
            Self::Arc(arc) => arc.radius * arc.sweep.abs(),
        }
    }

    /// The point at a share of the way, 0 to 1.
    #[must_use]
    pub fn at(&self, share: f64) -> Point {
        match self {
            Self::Line(a, b) => *a + (*b - *a) * share,
            Self::Arc(arc) => arc.at_angle(arc.start + arc.sweep * share),
        }
    }

    /// Direction of travel at a share of the way, length 1.
    #[must_use]
    pub fn heading(&self, share: f64) -> Vector {
        match self {
            Self::Line(a, b) => (*b - *a).unit(),
            Self::Arc(arc) => {
                Vector::at_angle(arc.start + arc.sweep * share).left() * arc.sweep.signum()
            }
        }
    }

    /// The same piece run through the other way.
    #[must_use]
    pub fn reversed(&self) -> Self {
        match *self {
            Self::Line(a, b) => Self::Line(b, a),
            Self::Arc(arc) => Self::Arc(Arc {
                start: arc.start + arc.sweep,
                sweep: -arc.sweep,
                ..arc
            }),
        }
    }

    /// The part between two shares of the way, `from < to`.
    #[must_use]
    pub fn part(&self, from: f64, to: f64) -> Self {
        match *self {
            Self::Line(..) => Self::Line(self.at(from), self.at(to)),
            Self::Arc(arc) => Self::Arc(Arc {
                start: arc.start + arc.sweep * from,
                sweep: arc.sweep * (to - from),
                ..arc
            }),
        }
    }

    /// The piece carried along by a pose.
    #[must_use]
    pub fn posed(&self, pose: Pose) -> Self {
        match *self {
            Self::Line(a, b) => Self::Line(pose.apply(a), pose.apply(b)),
            Self::Arc(arc) => Self::Arc(Arc {
                centre: pose.apply(arc.centre),
                start: arc.start + pose.turn,
                ..arc
            }),
        }
    }

    /// Shortest distance to a point, mm.
    #[must_use]
    pub fn distance(&self, point: Point) -> f64 {
        match self {
            Self::Line(..) => self.at(self.nearest(point)).distance(point),
            Self::Arc(arc) => {
                let out = point - arc.centre;
                if arc.share_at(out.angle(), 0.0).is_some() {
                    (out.length() - arc.radius).abs()
                } else {
                    point.distance(self.start()).min(point.distance(self.end()))
                }
            }
        }
    }

    /// No more than the distance to a point, mm, and for an arc sooner known: that from its circle.
    pub(super) fn least_distance(&self, point: Point) -> f64 {
        match self {
            Self::Line(..) => 0.0,
            Self::Arc(arc) => ((point - arc.centre).length() - arc.radius).abs(),
        }
    }

    /// The share of the way at which the piece comes nearest to a point.
    #[must_use]
    pub fn nearest(&self, point: Point) -> f64 {
        match self {
            Self::Line(a, b) => {
                let along = *b - *a;
                ((point - *a).dot(along) / along.dot(along)).clamp(0.0, 1.0)
            }
            Self::Arc(arc) => {
                let out = point - arc.centre;
                arc.share_at(out.angle(), 0.0).unwrap_or_else(|| {
                    let to_start = point.distance(self.start());
                    if to_start <= point.distance(self.end()) {
                        0.0
                    } else {
                        1.0
                    }
                })
            }
        }
    }

    /// The upright box around the piece.
    #[must_use]
    pub fn bounds(&self) -> Bounds {
        let ends = Bounds::around([self.start(), self.end()]);
        match self {
            Self::Line(..) => ends,
            Self::Arc(arc) => (0..4)
                .map(|quarter| f64::from(quarter) * FRAC_PI_2)
                .filter(|&angle| arc.share_at(angle, 0.0).is_some())
                .fold(ends, |b, angle| {
                    b.joined(Bounds::around([arc.at_angle(angle)]))
                }),
        }
    }

    /// An upright box that holds the piece, quickly found: round an arc, that of its circle.
    #[must_use]
    pub fn rough_bounds(&self) -> Bounds {
        match self {
            Self::Line(a, b) => Bounds::around([*a, *b]),
            Self::Arc(arc) => {
                let radius = Vector::new(arc.radius, arc.radius);
                Bounds {
                    min: arc.centre - radius,
                    max: arc.centre + radius,
                }
            }
        }
    }

    /// Points along the piece, its start included and its end not, on the piece and no farther
    /// than `tolerance` mm from it in between.
    #[must_use]
    pub fn flattened(&self, tolerance: f64) -> Vec<Point> {
        match self {
            Self::Line(a, _) => vec![*a],
            Self::Arc(arc) => {
                let n = arc.chords_within(tolerance);
                #[allow(clippy::cast_precision_loss)]
                (0..n).map(|i| self.at(i as f64 / n as f64)).collect()
            }
        }
    }

    /// How far the piece turns about a point that is not on it, radians, counter-clockwise.
    #[must_use]
    pub fn winding_about(&self, point: Point) -> f64 {
        let turn = |a: Point, b: Point| {
            let (u, v) = (a - point, b - point);
            u.cross(v).atan2(u.dot(v))
        };
        match self {
            Self::Line(a, b) => turn(*a, *b),
            Self::Arc(arc) => {
                // Split where the radius through the point meets the arc, and into pieces of less
                // than a half circle: then no chord of a piece has the point on its outer side.
                let radial = arc.share_at((point - arc.centre).angle(), 0.0);
                let mut shares = vec![0.0, 1.0 / 3.0, 2.0 / 3.0, 1.0];
                shares.extend(radial);
                shares.sort_by(f64::total_cmp);
                shares
                    .windows(2)
                    .map(|w| turn(self.at(w[0]), self.at(w[1])))
                    .sum()
            }
        }
    }

    /// Area and first moments added by this piece in Green's theorem about `base`:
    /// `(½∮(x dy − y dx), ½∮x² dy, −½∮y² dx)`.
    #[must_use]
    pub fn moments(&self, base: Point) -> (f64, f64, f64) {
        match self {
            Self::Line(a, b) => line_moments(*a - base, *b - base),
            Self::Arc(arc) => arc_moments(arc, arc.centre - base),
        }
    }

    /// Where this piece and another meet: their common points. For pieces that lie on each other,
    /// the ends of the common part.
    #[must_use]
    pub fn meets(&self, other: &Self) -> Vec<Point> {
        let far = 2.0 * SAME_MM;
        if self.rough_bounds().keeps_off(&other.rough_bounds(), far)
            || self.lies_beside(other, far)
            || other.lies_beside(self, far)
        {
            return Vec::new();
        }
        let mut found = self.carrier_meets(other);
        found.extend([self.start(), self.end()]);
        found.extend([other.start(), other.end()]);
        let mut common: Vec<Point> = Vec::new();
        for p in found {
            let on_both = self.distance(p) <= SAME_MM && other.distance(p) <= SAME_MM;
            if on_both && common.iter().all(|q| q.distance(p) > SAME_MM) {
                common.push(p);
            }
        }
        common
    }

    /// Whether all of a straight piece lies to one side of this straight one's line, farther off than a distance, mm.
    fn lies_beside(&self, other: &Self, by_mm: f64) -> bool {
        let (Self::Line(a, b), Self::Line(c, d)) = (self, other) else {
            return false;
        };
        let along = *b - *a;
        let least = by_mm * along.length();
        let [c, d] = [*c, *d].map(|p| along.cross(p - *a));
        (c > least && d > least) || (c < -least && d < -least)
    }

    /// Shortest distance to another piece, mm; 0 where they meet. Exact.
    #[must_use]
    pub fn gap(&self, other: &Self) -> f64 {
        if !self.meets(other).is_empty() {
            return 0.0;
        }
        let from_ends = |of: &Self, to: &Self| to.distance(of.start()).min(to.distance(of.end()));
        let ends = from_ends(self, other).min(from_ends(other, self));
        square_to_both(self, other).fold(ends, f64::min)
    }

    /// Where the whole lines or circles that carry two pieces meet; empty when they never do or
    /// are the same.
    #[must_use]
    pub fn carrier_meets(&self, other: &Self) -> Vec<Point> {
        match (self, other) {
            (Self::Line(a, b), Self::Line(c, d)) => Line::through(*a, *b)
                .meet(&Line::through(*c, *d))
                .into_iter()
                .collect(),
            (Self::Line(a, b), Self::Arc(arc)) | (Self::Arc(arc), Self::Line(a, b)) => {
                line_meets_circle(&Line::through(*a, *b), arc.centre, arc.radius)
            }
            (Self::Arc(a), Self::Arc(b)) => circles_meet(a, b),
        }
    }

    /// How far along an infinite line this piece meets it, mm; the ends when it lies on the line.
    #[must_use]
    pub fn line_crossings(&self, line: &Line) -> Vec<f64> {
        if let Self::Line(a, b) = self {
            let (a, b) = (line.left_of(*a), line.left_of(*b));
            if a.min(b) > SAME_MM || a.max(b) < -SAME_MM {
                return Vec::new();
            }
        }
        let whole = match self {
            Self::Line(a, b) => Line::through(*a, *b).meet(line).into_iter().collect(),
            Self::Arc(arc) => line_meets_circle(line, arc.centre, arc.radius),
        };
        let ends = [self.start(), self.end()];
        whole
            .into_iter()
            .chain(
                ends.into_iter()
                    .filter(|e| line.left_of(*e).abs() <= SAME_MM),
            )
            .filter(|p| self.distance(*p) <= SAME_MM)
            .map(|p| line.foot(p))
            .collect()
    }
}

/// Distances of two pieces that do not meet, at the points inside one of them from which the shortest way
/// to the other's circle leaves square to both.
fn square_to_both(a: &Seg, b: &Seg) -> impl Iterator<Item = f64> {
    let candidates = match (a, b) {
        (Seg::Line(..), Seg::Line(..)) => Vec::new(),
        (line @ Seg::Line(..), Seg::Arc(arc)) | (Seg::Arc(arc), line @ Seg::Line(..)) => {
            vec![line.at(line.nearest(arc.centre))]
        }
        (Seg::Arc(first), Seg::Arc(second)) => {
            let angle = (second.centre - first.centre).angle();
            vec![first.at_angle(angle), first.at_angle(angle + PI)]
        }
    };
    let (a, b) = (*a, *b);
    let both = move |p: Point| a.distance(p) + b.distance(p);
    let on_either = move |p: &Point| a.distance(*p) <= SAME_MM || b.distance(*p) <= SAME_MM;
    candidates.into_iter().filter(on_either).map(both)
}

/// Written as `{"line": [[x, y], [x, y]]}` or
/// `{"arc": {"centre": [x, y], "radius": r, "start": degrees, "sweep": degrees}}`.
impl Serialize for Seg {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        #[derive(Serialize)]
        struct ArcData {
            centre: Point,
            radius: f64,
            start: f64,
            sweep: f64,
        }
        let mut map = serializer.serialize_map(Some(1))?;
        match self {
            Self::Line(a, b) => map.serialize_entry("line", &[a, b])?,
            Self::Arc(arc) => map.serialize_entry(
                "arc",
                &ArcData {
                    centre: arc.centre,
                    radius: arc.radius,
                    start: arc.start.to_degrees(),
                    sweep: arc.sweep.to_degrees(),
                },
            )?,
        }
        map.end()
    }
}

/// Two half circles that make a full circle, counter-clockwise.
#[must_use]
pub fn circle(centre: Point, radius: f64) -> Vec<Seg> {
    [0.0, PI]
        .map(|start| {
            Seg::Arc(Arc {
                centre,
                radius,
                start,
                sweep: PI,
            })
        })
        .to_vec()
}

/// The closed ring at a distance round a straight piece from `a` to `b`; a circle when they are the
/// same point. Nothing when the distance is 0.
#[must_use]
pub fn capsule(a: Point, b: Point, distance: f64) -> Vec<Seg> {
    if distance <= SAME_MM {
        return Vec::new();
    }
    if a.distance(b) <= SAME_MM {
        return circle(a, distance);
    }
    let out = (b - a).unit().right() * distance;
    let half = |centre: Point, start: f64| {
        Seg::Arc(Arc {
            centre,
            radius: distance,
            start,
            sweep: PI,
        })
    };
    vec![
        Seg::Line(a + out, b + out),
        half(b, out.angle()),
        Seg::Line(b - out, a - out),
        half(a, (-out).angle()),
    ]
}

/// Straight segments around a closed ring of points.
#[must_use]
pub fn ring(points: &[Point]) -> Vec<Seg> {
    let next = points.iter().cycle().skip(1);
    points
        .iter()
        .zip(next)
        .map(|(a, b)| Seg::Line(*a, *b))
        .collect()
}

/// Chords of every piece, closed, at the tolerance booleans use.
#[must_use]
pub fn flattened_ring(segs: &[Seg]) -> Vec<Point> {
    segs.iter().flat_map(|s| s.flattened(FLATTEN_MM)).collect()
}
