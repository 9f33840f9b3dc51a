//! One outline: area, balance point, length, inside and outside, offset, chords, rectangle.

use cavalier_contours::polyline::PlineSource;
use kerfwright::geom::rectangle::best_along_edges;
use kerfwright::geom::{Line, Outline, Point, Side, Vector};
use kurbo::Shape as _;
use proptest::prelude::*;

use crate::other::{cavalier, cavalier_area, kurbo_moments, kurbo_path};
use crate::outlines::{has_arc, outline, smooth};

fn near(a: f64, b: f64, slack: f64) -> Result<(), TestCaseError> {
    prop_assert!((a - b).abs() <= slack, "{a} is not {b} to {slack}");
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn area_and_balance_point(outline in outline()) {
        let (area, x, y) = kurbo_moments(&outline);
        let slack = 1e-8 * area.max(outline.perimeter());
        near(outline.area(), area, slack)?;
        near(outline.area(), cavalier(&outline).area(), slack)?;
        let balance = outline.centroid();
        near(balance.x, x, 1e-5)?;
        near(balance.y, y, 1e-5)?;
    }

    #[test]
    fn length_around(outline in outline()) {
        near(outline.perimeter(), cavalier(&outline).path_length(), 1e-6)?;
    }

    #[test]
    fn box_around(outline in outline()) {
        let (ours, theirs) = (outline.bounds(), kurbo_path(&outline).bounding_box());
        near(ours.min.x, theirs.x0, 1e-6)?;
        near(ours.min.y, theirs.y0, 1e-6)?;
        near(ours.max.x, theirs.x1, 1e-6)?;
        near(ours.max.y, theirs.y1, 1e-6)?;
    }

    #[test]
    fn inside_and_outside(outline in outline(), x in -0.1..1.1_f64, y in -0.1..1.1_f64) {
        let bounds = outline.bounds();
        let p = Point::new(
            bounds.min.x + x * bounds.width(),
            bounds.min.y + y * bounds.height(),
        );
        let there = cavalier_contours::core::math::Vector2::new(p.x, p.y);
        let line = cavalier(&outline);
        let closest = line.closest_point(there, 1e-9).expect("not empty").distance;
        near(outline.distance(p), closest, 1e-7)?;
        if closest > 1e-5 {
            let inside = line.winding_number(there) != 0;
            prop_assert_eq!(outline.side(p) == Side::Inside, inside);
            prop_assert_eq!(outline.depth(p) > 0.0, inside);
        }
    }

    #[test]
    fn equal_offsets_of_smooth_outlines(outline in smooth(), by in -30.0..30.0_f64) {
        prop_assume!(has_arc(&outline));
        let Ok(ours) = outline.offset_each(&vec![by; outline.segs().len()]) else {
            // An arc smaller than the offset has nowhere to go.
            prop_assert!(by < 0.0);
            return Ok(());
        };
        // A positive offset goes inwards there.
        let theirs = cavalier(&outline).parallel_offset(-by);
        near(ours.area(), cavalier_area(&theirs), 1e-6 * outline.area())?;
        let grown = outline.area() + outline.perimeter() * by + std::f64::consts::PI * by * by;
        near(ours.area(), grown, 1e-8 * outline.area())?;
    }

    #[test]
    fn both_sides_of_a_chord_make_the_whole(
        outline in outline(),
        turn in 0.0..6.2_f64,
        x in 0.2..0.8_f64,
        y in 0.2..0.8_f64,
    ) {
        let bounds = outline.bounds();
        let near_to = Point::new(
            bounds.min.x + x * bounds.width(),
            bounds.min.y + y * bounds.height(),
        );
        let line = Line { point: near_to, along: Vector::at_angle(turn) };
        let Some(chord) = outline.chord(&line, near_to) else {
            return Ok(());
        };
        let (left, right) = (kurbo_moments(&chord.left), kurbo_moments(&chord.right));
        near(left.0 + right.0, outline.area(), 1e-7 * outline.area())?;
        near(chord.left.area(), left.0, 1e-7 * outline.area())?;
        let (a, x, y) = outline.first_moments();
        near((left.0 * left.1 + right.0 * right.1) / a, x / a, 1e-4)?;
        near((left.0 * left.2 + right.0 * right.2) / a, y / a, 1e-4)?;
        prop_assert!(outline.distance(chord.start) < 1e-5 && outline.distance(chord.end) < 1e-5);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// The rectangle lies inside, and no rectangle of a grid of positions and sizes at any edge's
    /// turn is much larger.
    #[test]
    fn rectangle_inside(outline in outline()) {
        let Some(best) = best_along_edges(&outline) else {
            return Ok(());
        };
        let held = |corners: &[Point]| {
            let inner = Outline::polygon(corners).expect("a rectangle");
            let theirs = cavalier(&inner);
            let outer = cavalier(&outline);
            let all = theirs.iter_vertexes().all(|v| {
                outer.winding_number(v.pos()) != 0
                    || outer.closest_point(v.pos(), 1e-9).expect("not empty").distance < 0.02
            });
            all && outline.flattened().iter().all(|p| inner.depth(*p) < 0.02)
        };
        prop_assert!(held(&best.corners), "{best:?} sticks out");
        // The search keeps a quarter of a millimetre away from arcs.
        let coarse = brute(&outline, &held);
        let (long, short) = best.sides();
        let slack = 0.6 * (long + short);
        prop_assert!(coarse <= best.area() + slack, "{} beats {}", coarse, best.area());
    }
}

/// The largest upright rectangle of a coarse grid that is held.
fn brute(outline: &Outline, held: &dyn Fn(&[Point]) -> bool) -> f64 {
    const STEPS: usize = 9;
    let kerfwright::geom::Seg::Line(a, b) = outline
        .segs()
        .iter()
        .find(|s| matches!(s, kerfwright::geom::Seg::Line(..)))
        .expect("a rectangle was found along a straight edge")
    else {
        return 0.0;
    };
    let along = (*b - *a).unit();
    let feet = |d: Vector| {
        let all: Vec<f64> = outline
            .flattened()
            .iter()
            .map(|p| p.to_vector().dot(d))
            .collect();
        let low = all.iter().copied().fold(f64::INFINITY, f64::min);
        let high = all.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        (0..=STEPS)
            .map(|i| low + (high - low) * i as f64 / STEPS as f64)
            .collect::<Vec<f64>>()
    };
    let (us, vs) = (feet(along), feet(along.left()));
    let at = |u: f64, v: f64| Point::ORIGIN + along * u + along.left() * v;
    let mut best = 0.0_f64;
    for (i, u) in us.iter().enumerate() {
        for w in &us[i + 1..] {
            for (j, v) in vs.iter().enumerate() {
                for x in &vs[j + 1..] {
                    let area = (w - u) * (x - v);
                    if area > best && held(&[at(*u, *v), at(*w, *v), at(*w, *x), at(*u, *x)]) {
                        best = area;
                    }
                }
            }
        }
    }
    best
}
