//! Points, vectors, the pose of a shape, and infinite lines.

use std::ops::{Add, Mul, Neg, Sub};

use serde::{Serialize, Serializer};

/// A place in the plane, mm.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Up.
    pub y: f64,
}

/// A displacement in the plane, mm, or a direction when its length is 1.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Vector {
    /// To the right.
    pub x: f64,
    /// Up.
    pub y: f64,
}

impl Point {
    /// The origin of the frame.
    pub const ORIGIN: Self = Self::new(0.0, 0.0);

    /// A point from its coordinates, mm.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// Distance to another point, mm.
    #[must_use]
    pub fn distance(self, other: Self) -> f64 {
        (other - self).length()
    }

    /// The point halfway to another.
    #[must_use]
    pub fn midpoint(self, other: Self) -> Self {
        self + (other - self) * 0.5
    }

    /// The vector from the origin to this point.
    #[must_use]
    pub const fn to_vector(self) -> Vector {
        Vector::new(self.x, self.y)
    }

    /// True when both coordinates are finite numbers.
    #[must_use]
    pub fn is_finite(self) -> bool {
        self.x.is_finite() && self.y.is_finite()
    }
}

impl Vector {
    /// A vector from its components, mm.
    #[must_use]
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// The unit vector at an angle counter-clockwise from x.
    #[must_use]
    pub fn at_angle(angle: f64) -> Self {
        Self::new(angle.cos(), angle.sin())
    }

    /// Length, mm.
    #[must_use]
    pub fn length(self) -> f64 {
        // Lengths on a slab neither overflow nor vanish when squared.
        (self.x * self.x + self.y * self.y).sqrt()
    }

    /// Angle counter-clockwise from x, in (−π, π].
    #[must_use]
    pub fn angle(self) -> f64 {
        self.y.atan2(self.x)
    }

    /// Scalar product.
    #[must_use]
    pub fn dot(self, other: Self) -> f64 {
        self.x * other.x + self.y * other.y
    }

    /// The z component of the vector product: positive when `other` lies to the left.
    #[must_use]
    pub fn cross(self, other: Self) -> f64 {
        self.x * other.y - self.y * other.x
    }

    /// The same direction at length 1. The zero vector gives non-finite components.
    #[must_use]
    pub fn unit(self) -> Self {
        self * (1.0 / self.length())
    }

    /// The same direction with length 1; another one where there is none.
    #[must_use]
    pub fn unit_or(self, other: Self) -> Self {
        if self.length() > super::SAME_MM {
            self.unit()
        } else {
            other
        }
    }

    /// Turned a quarter to the left.
    #[must_use]
    pub const fn left(self) -> Self {
        Self::new(-self.y, self.x)
    }

    /// Turned a quarter to the right: outwards for an edge of a counter-clockwise outline.
    #[must_use]
    pub const fn right(self) -> Self {
        Self::new(self.y, -self.x)
    }

    /// Turned counter-clockwise by an angle.
    #[must_use]
    pub fn turned(self, angle: f64) -> Self {
        let (sin, cos) = angle.sin_cos();
        Self::new(cos * self.x - sin * self.y, sin * self.x + cos * self.y)
    }
}

impl Sub for Point {
    type Output = Vector;
    fn sub(self, other: Self) -> Vector {
        Vector::new(self.x - other.x, self.y - other.y)
    }
}

impl Add<Vector> for Point {
    type Output = Self;
    fn add(self, by: Vector) -> Self {
        Self::new(self.x + by.x, self.y + by.y)
    }
}

impl Sub<Vector> for Point {
    type Output = Self;
    fn sub(self, by: Vector) -> Self {
        self + -by
    }
}

impl Add for Vector {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Vector {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self + -other
    }
}

impl Neg for Vector {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.x, -self.y)
    }
}

impl Mul<f64> for Vector {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        Self::new(self.x * by, self.y * by)
    }
}

/// Written as `[x, y]`.
impl Serialize for Point {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        [self.x, self.y].serialize(serializer)
    }
}

/// Written as `[x, y]`.
impl Serialize for Vector {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        [self.x, self.y].serialize(serializer)
    }
}

/// Where a shape lies: turned about its own origin, then shifted. Never mirrored.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pose {
    /// Counter-clockwise turn, radians.
    pub turn: f64,
    /// Where the shape's origin comes to lie, mm.
    pub shift: Vector,
}

impl Pose {
    /// A pose from a turn in radians and a shift.
    #[must_use]
    pub const fn new(turn: f64, shift: Vector) -> Self {
        Self { turn, shift }
    }

    /// The point's place after the pose is applied.
    #[must_use]
    pub fn apply(self, point: Point) -> Point {
        Point::ORIGIN + point.to_vector().turned(self.turn) + self.shift
    }

    /// The point that this pose carries to `point`.
    #[must_use]
    pub fn undo(self, point: Point) -> Point {
        Point::ORIGIN + (point.to_vector() - self.shift).turned(-self.turn)
    }

    /// The pose that carries everything back.
    #[must_use]
    pub fn inverse(self) -> Self {
        Self::new(-self.turn, self.undo(Point::ORIGIN).to_vector())
    }
}

/// An infinite straight line with a direction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// A point on it.
    pub point: Point,
    /// Its direction, length 1.
    pub along: Vector,
}

impl Line {
    /// The line through two different points, running from the first to the second.
    #[must_use]
    pub fn through(a: Point, b: Point) -> Self {
        Self {
            point: a,
            along: (b - a).unit(),
        }
    }

    /// The point at a signed distance along the line from its base point, mm.
    #[must_use]
    pub fn at(&self, distance: f64) -> Point {
        self.point + self.along * distance
    }

    /// How far along the line the foot of a point lies, mm.
    #[must_use]
    pub fn foot(&self, point: Point) -> f64 {
        (point - self.point).dot(self.along)
    }

    /// Signed distance of a point, mm: positive to the left.
    #[must_use]
    pub fn left_of(&self, point: Point) -> f64 {
        self.along.cross(point - self.point)
    }

    /// The parallel line shifted to its right, mm; outwards for a counter-clockwise outline.
    #[must_use]
    pub fn shifted_right(&self, by: f64) -> Self {
        Self {
            point: self.point + self.along.right() * by,
            along: self.along,
        }
    }

    /// Where two lines meet; nothing when they are parallel to within 1e-12.
    #[must_use]
    pub fn meet(&self, other: &Self) -> Option<Point> {
        let across = self.along.cross(other.along);
        (across.abs() > 1e-12)
            .then(|| self.at((other.point - self.point).cross(other.along) / across))
    }
}

/// An upright box around something, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    /// Lower left corner.
    pub min: Point,
    /// Upper right corner.
    pub max: Point,
}

impl Bounds {
    /// The box around points; an inverted box when there are none.
    #[must_use]
    pub fn around(points: impl IntoIterator<Item = Point>) -> Self {
        let nothing = Self {
            min: Point::new(f64::INFINITY, f64::INFINITY),
            max: Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY),
        };
        points.into_iter().fold(nothing, |b, p| Self {
            min: Point::new(b.min.x.min(p.x), b.min.y.min(p.y)),
            max: Point::new(b.max.x.max(p.x), b.max.y.max(p.y)),
        })
    }

    /// The box around both.
    #[must_use]
    pub fn joined(self, other: Self) -> Self {
        Self::around([self.min, self.max, other.min, other.max])
    }

    /// Distance between two boxes, mm; 0 where they meet.
    #[must_use]
    pub fn gap(&self, other: &Self) -> f64 {
        let apart = |low: f64, high: f64| low.max(high).max(0.0);
        let x = apart(self.min.x - other.max.x, other.min.x - self.max.x);
        let y = apart(self.min.y - other.max.y, other.min.y - self.max.y);
        x.hypot(y)
    }

    /// Whether two boxes are farther apart than a distance along x or y, mm.
    #[must_use]
    pub fn keeps_off(&self, other: &Self, by_mm: f64) -> bool {
        self.max.x + by_mm < other.min.x
            || other.max.x + by_mm < self.min.x
            || self.max.y + by_mm < other.min.y
            || other.max.y + by_mm < self.min.y
    }

    /// Width, mm.
    #[must_use]
    pub fn width(&self) -> f64 {
        self.max.x - self.min.x
    }

    /// Height, mm.
    #[must_use]
    pub fn height(&self) -> f64 {
        self.max.y - self.min.y
    }

    /// Centre of the box.
    #[must_use]
    pub fn centre(&self) -> Point {
        self.min.midpoint(self.max)
    }
}
