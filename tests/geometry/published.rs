//! Printed answers, each with its source beside it.

use std::f64::consts::PI;

use kerfwright::cut::tangents::polygon_corner;
use kerfwright::geom::{Arc, Outline, Point, Region, Seg, seg};

fn near(got: f64, printed: f64, half_a_digit: f64) {
    assert!(
        (got - printed).abs() <= half_a_digit,
        "{got} is not {printed}"
    );
}

fn rectangle(x: f64, y: f64, long: f64, deep: f64) -> Outline {
    let at = |dx, dy| Point::new(x + dx, y + dy);
    Outline::polygon(&[at(0.0, 0.0), at(long, 0.0), at(long, deep), at(0.0, deep)])
        .expect("a rectangle")
}

/// A circular segment standing on its chord along x, from its radius and its angle.
fn segment(radius: f64, angle: f64) -> Outline {
    let arc = Arc {
        centre: Point::new(0.0, 0.0),
        radius,
        start: (PI - angle) / 2.0,
        sweep: angle,
    };
    let arc = Seg::Arc(arc);
    Outline::new(vec![Seg::Line(arc.end(), arc.start()), arc]).expect("a segment")
}

/// Area and balance point of parts added and taken away.
fn composed(parts: &[(f64, Outline)]) -> (f64, f64, f64) {
    let sum = parts.iter().fold((0.0, 0.0, 0.0), |sum, (sign, outline)| {
        let (a, x, y) = outline.first_moments();
        (sum.0 + sign * a, sum.1 + sign * x, sum.2 + sign * y)
    });
    (sum.0, sum.1 / sum.0, sum.2 / sum.0)
}

/// `MatheAss`, help page "circle parts": chord 21, rise 6 give r 12.1875, 118.97953°, arc 25.308373,
/// area 89.254148.
#[test]
fn segment_of_chord_21_and_rise_6() {
    let (chord, rise) = (21.0_f64, 6.0);
    let radius = (chord * chord / 4.0 + rise * rise) / (2.0 * rise);
    near(radius, 12.1875, 5e-9);
    let angle = 2.0 * (chord / 2.0 / radius).asin();
    near(angle.to_degrees(), 118.97953, 5e-6);
    let outline = segment(radius, angle);
    near(outline.area(), 89.254148, 5e-7);
    near(outline.perimeter() - chord, 25.308373, 5e-7);
    near(outline.bounds().height(), rise, 1e-9);
    near(
        outline.bounds().width(),
        2.0 * radius.min(chord / 2.0),
        1e-9,
    );
}

/// `MatheAss`, help page "circle parts": arc 1 and 45° give r 1.2732395, chord 0.97449536, rise
/// 0.096919589, area 0.063460604.
#[test]
fn segment_of_arc_1_and_45_degrees() {
    let angle = PI / 4.0;
    let outline = segment(1.0 / angle, angle);
    near(1.0 / angle, 1.2732395, 5e-8);
    near(outline.bounds().width(), 0.97449536, 5e-9);
    near(outline.bounds().height(), 0.096919589, 5e-10);
    near(outline.area(), 0.063460604, 5e-10);
    near(outline.perimeter(), 1.0 + 0.97449536, 5e-9);
}

/// Archimedes' recurrence for the polygon outside a circle of radius 1: n·tan(π/n) is 3.464101615,
/// 3.159659942, 3.142714600 for 6, 24, 96.
#[test]
fn polygon_outside_a_unit_circle() {
    for (sides, printed) in [(6_u32, 3.464101615), (24, 3.159659942), (96, 3.142714600)] {
        let out = 1.0 + polygon_corner(1.0, sides);
        let corner = |i: u32| {
            let angle = 2.0 * PI * f64::from(i) / f64::from(sides);
            Point::new(out * angle.cos(), out * angle.sin())
        };
        let corners: Vec<Point> = (0..sides).map(corner).collect();
        let polygon = Outline::polygon(&corners).expect("a polygon");
        // Around the unit circle area and half the perimeter are the same number.
        near(polygon.area(), printed, 1e-9);
        near(polygon.perimeter() / 2.0, printed, 1e-9);
    }
}

/// Beer and Johnston, Vector Mechanics for Engineers: Statics, problem 5.1: 8 × 6 with its middle
/// at (−4, 9) and 16 × 12 at (8, 6) balance at (5.60, 6.60).
#[test]
fn beer_and_johnston_5_1() {
    let (_, x, y) = composed(&[
        (1.0, rectangle(-8.0, 6.0, 8.0, 6.0)),
        (1.0, rectangle(0.0, 0.0, 16.0, 12.0)),
    ]);
    near(x, 5.60, 5e-3);
    near(y, 6.60, 5e-3);
}

/// Beer and Johnston, problem 5.2: a triangle of 2250 at (40, 25) and 105 × 75 at (112.5, 37.5)
/// balance at (96.4, 34.7), area 10 125.
#[test]
fn beer_and_johnston_5_2() {
    let corners = [(0.0, 0.0), (60.0, 0.0), (60.0, 75.0)].map(|(x, y)| Point::new(x, y));
    let triangle = Outline::polygon(&corners).expect("a triangle");
    near(triangle.area(), 2250.0, 1e-9);
    near(
        triangle.centroid().distance(Point::new(40.0, 25.0)),
        0.0,
        1e-9,
    );
    let (area, x, y) = composed(&[(1.0, triangle), (1.0, rectangle(60.0, 0.0, 105.0, 75.0))]);
    near(area, 10_125.0, 1e-9);
    near(x, 96.4, 0.05);
    near(y, 34.7, 0.05);
}

/// Beer and Johnston, problem 5.5: 120 × 200 less a half circle of r 60 (5654.9 at (94.5, 120)) is
/// 18 345 and balances at (49.4, 93.8).
#[test]
fn beer_and_johnston_5_5() {
    let bite = Arc {
        centre: Point::new(120.0, 120.0),
        radius: 60.0,
        start: 3.0 * PI / 2.0,
        sweep: -PI,
    };
    let p = Point::new;
    let outline = Outline::new(vec![
        Seg::Line(p(0.0, 0.0), p(120.0, 0.0)),
        Seg::Line(p(120.0, 0.0), p(120.0, 60.0)),
        Seg::Arc(bite),
        Seg::Line(p(120.0, 180.0), p(120.0, 200.0)),
        Seg::Line(p(120.0, 200.0), p(0.0, 200.0)),
        Seg::Line(p(0.0, 200.0), p(0.0, 0.0)),
    ])
    .expect("an outline");
    near(outline.area(), 18_345.0, 0.5);
    near(outline.centroid().x, 49.4, 0.05);
    near(outline.centroid().y, 93.8, 0.05);
}

/// Beer and Johnston, problem 5.6: 14 × 20 less a circle of r 4 at (6, 12) is 229.73 and balances
/// at (7.22, 9.56).
#[test]
fn beer_and_johnston_5_6() {
    let plate = Region {
        outer: rectangle(0.0, 0.0, 14.0, 20.0),
        holes: vec![Outline::circle(Point::new(6.0, 12.0), 4.0).expect("a circle")],
    };
    near(plate.area(), 229.73, 5e-3);
    near(plate.centroid().x, 7.22, 5e-3);
    near(plate.centroid().y, 9.56, 5e-3);
}

/// Gere, Mechanics of Materials, chapter 12: a half circle balances 4r/3π from its diameter.
#[test]
fn half_circle_balances() {
    let half = segment(75.0, PI);
    near(half.centroid().y, 4.0 * 75.0 / (3.0 * PI), 1e-9);
    near(half.area(), PI * 75.0 * 75.0 / 2.0, 1e-8);
    let whole: f64 = seg::circle(Point::ORIGIN, 75.0)
        .iter()
        .map(Seg::length)
        .sum();
    near(whole, 2.0 * PI * 75.0, 1e-9);
}
