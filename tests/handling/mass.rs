//! Mass, balance point and second moments against two other libraries: `parry2d-f64`, a mechanics
//! library, adds up triangles; `kurbo` integrates along curves.

use std::f64::consts::TAU;

use kerfwright::geom::{Outline, Point, Pose, Region, Vector};
use kerfwright::handle::axes::Axes;
use kerfwright::handle::strip::BeamProfile;
use kurbo::{ParamCurveMoments, Shape};
use parry2d_f64::mass_properties::MassProperties;

#[allow(clippy::wildcard_imports)]
use crate::fixtures::*;

/// A star of corners about a middle, and a round hole in it.
struct Star {
    middle: Point,
    corners: Vec<Point>,
    hole: (Point, f64),
}

impl Star {
    fn random(spread: &mut Spread, count: u32) -> Self {
        let middle = spread.point();
        let corner = |k: u32, far: f64| {
            let turn = TAU * f64::from(k) / f64::from(count);
            middle + Vector::new(turn.cos() * 1100.0, turn.sin() * 400.0) * far
        };
        let corners = (0..count)
            .map(|k| corner(k, 0.5 + 0.5 * spread.next()))
            .collect();
        // Half the least way out, at an angle no chord cuts off.
        let hole = (middle, 40.0 + 25.0 * spread.next());
        Self {
            middle,
            corners,
            hole,
        }
    }

    fn region(&self) -> Region {
        let (at, radius) = self.hole;
        Region {
            outer: Outline::polygon(&self.corners).unwrap(),
            holes: vec![Outline::circle(at, radius).unwrap()],
        }
    }

    fn triangles(&self) -> impl Iterator<Item = [Point; 3]> {
        let next = self.corners.iter().cycle().skip(1);
        self.corners
            .iter()
            .zip(next)
            .map(|(a, b)| [self.middle, *a, *b])
    }
}

/// Area, balance point and polar second moment about it, by the mechanics library.
fn by_mechanics(star: &Star) -> (f64, Point, f64) {
    let vector = |p: Point| parry2d_f64::math::Vector::new(p.x, p.y);
    // Each triangle as a convex polygon: `from_triangle` of that library takes the second moment about
    // a corner for that about the middle.
    let parts = star
        .triangles()
        .map(|t| MassProperties::from_convex_polygon(1.0, &t.map(vector)));
    let whole: MassProperties = parts.reduce(|a, b| a + b).unwrap();
    let (at, radius) = star.hole;
    let mut hole = MassProperties::from_ball(1.0, radius);
    hole.local_com = vector(at);
    let left = whole - hole;
    let middle = p(left.local_com.x, left.local_com.y);
    (left.mass(), middle, left.principal_inertia())
}

#[test]
fn area_balance_and_polar_moment_agree_with_a_mechanics_library() {
    let mut spread = Spread(77);
    for round in 0..300 {
        let star = Star::random(&mut spread, 3 + round % 9);
        let region = star.region();
        let (area, middle, polar) = by_mechanics(&star);
        close(region.area() / area, 1.0, 1e-9);
        close(region.centroid().distance(middle), 0.0, 1e-6);
        let axes = Axes::of(&region);
        let both = [axes, axes.across(&region)].map(|a| second_moment(&region, a));
        close((both[0] + both[1]) / polar, 1.0, 1e-5);
    }
}

/// Second moment about the balance point along a frame, from the beam's cross-sections alone: twice
/// the sum of the moments of what lies left of each is the second moment about the far end.
fn second_moment(region: &Region, axes: Axes) -> f64 {
    let strip = BeamProfile::new(region, axes);
    let [from, to] = strip.reach();
    let steps = 2000_u32;
    let step = (to - from) / f64::from(steps);
    let turn = |k: u32| strip.left_of(from + step * f64::from(k)).1;
    let inner: f64 = (1..steps)
        .map(|k| turn(k) * if k % 2 == 1 { 4.0 } else { 2.0 })
        .sum();
    let sum = (turn(0) + inner + turn(steps)) * step / 3.0;
    2.0 * sum - strip.area() * (to - strip.middle()).powi(2)
}

/// The counter's outline and hole as curves of the other library.
fn counter_by_curves() -> kurbo::Moments {
    let mut path = kurbo::BezPath::new();
    path.move_to((0.0, 0.0));
    path.line_to((1830.0, 0.0));
    let end = kurbo::Arc::new((1830.0, 320.0), (320.0, 320.0), -TAU / 4.0, TAU / 2.0, 0.0);
    path.extend(end.append_iter(1e-9));
    path.line_to((0.0, 640.0));
    path.close_path();
    let hole = kurbo::Circle::new((620.0, 330.0), 180.0).to_path(1e-9);
    let (outer, inner) = (path.moments(), hole.moments());
    kurbo::Moments {
        moment_x: outer.moment_x - inner.moment_x,
        moment_y: outer.moment_y - inner.moment_y,
        moment_xx: outer.moment_xx - inner.moment_xx,
        moment_xy: outer.moment_xy - inner.moment_xy,
        moment_yy: outer.moment_yy - inner.moment_yy,
    }
}

#[test]
fn second_moments_of_a_round_ended_holed_top_agree_with_a_curve_library() {
    let region = counter();
    let moments = counter_by_curves();
    let (area, middle) = (region.area(), region.centroid());
    let mut about = [
        moments.moment_xx - area * middle.x * middle.x,
        moments.moment_yy - area * middle.y * middle.y,
    ];
    about.sort_by(f64::total_cmp);
    let axes = Axes::of(&region);
    let across = second_moment(&region, axes.across(&region));
    let along = second_moment(&region, axes);
    close(across / about[0], 1.0, 1e-6);
    close(along / about[1], 1.0, 1e-6);
}

#[test]
fn what_lies_left_of_a_section_is_the_same_from_either_end() {
    let mut spread = Spread(5);
    for round in 0..100 {
        let region = Star::random(&mut spread, 3 + round % 9).region();
        let about = Pose::new(TAU / 2.0, Vector::default());
        let turned = Region {
            outer: region.outer.posed(about),
            holes: region.holes.iter().map(|h| h.posed(about)).collect(),
        };
        let (here, there) = (strip(&region), strip(&turned));
        let length = here.length_mm();
        let u = length * spread.next();
        let (left, turn) = here.left_of(u);
        let (right, back) = there.left_of(length - u);
        close((left + right) / here.area(), 1.0, 1e-9);
        // Left turning less right turning is the whole's moment about the section.
        let whole = here.area() * (u - here.middle());
        close((turn - back - whole) / (here.area() * length), 0.0, 1e-9);
    }
}
